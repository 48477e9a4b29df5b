import type { Point } from '../../figures/view.ts';
import type { ForceChain } from './arrows.ts';

export interface ArrowLabel {
  readonly text: string;
  readonly x: number;
  /** Of the baseline. */
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly isNet: boolean;
}

/** Mean width of a letter of the drawing face, and height of a line, in multiples of its size. */
const LETTER = 0.5;
const LINE = 1.15;
/** How much larger the net force is lettered. */
const NET_SIZE = 1.1;
/** Distance from an arrow, in multiples of the size. */
const BESIDE = 0.75;
/** Where along the net force its lettering stands. */
const ALONG_NET = 0.55;
/** Lettering more than this much to one side of its arrow starts or ends there; else it is centred. */
const SIDEWAYS = 0.4;
const NUDGE = 3;
const MOST_NUDGES = 60;

/**
 * Where the lettering of the arrows stands: that of each pull on the far side of it from the net force, that of the
 * last beyond its head, that of the net force on the other side. Everything keeps inside the picture, and what would
 * meet moves apart.
 *
 * @param room width and height of the picture
 */
export function placeLabels(
  chain: ForceChain,
  texts: readonly string[],
  netText: string,
  size: number,
  [width, height]: readonly [number, number],
): readonly ArrowLabel[] {
  const along = direction(chain.from, chain.net);
  const across = { x: along.y, y: -along.x };
  const sides = chain.pulls.map(({ from, to }) => {
    const at = between(from, to, 0.5);
    return { at, side: (at.x - chain.from.x) * across.x + (at.y - chain.from.y) * across.y };
  });
  const lean = sides.reduce((sum, { side }) => sum + side, 0) < 0 ? -1 : 1;
  const beside = (at: Point, sign: number): Hung => ({
    at: { x: at.x + across.x * sign * size * BESIDE, y: at.y + across.y * sign * size * BESIDE },
    anchor: anchorFor(across.x * sign),
  });
  const pulls = chain.pulls.flatMap(({ pull }, i) => {
    const { at, side } = sides[i] ?? { at: chain.from, side: 0 };
    if (pull.size === 0) return [];
    const isLast = i === chain.pulls.length - 1;
    const sign = Math.abs(side) < 1 ? lean : Math.sign(side);
    const hung = isLast ? beyond(chain.net, along, size) : beside(at, sign);
    return [{ text: texts[i] ?? '', isNet: false, ...hung }];
  });
  const net = {
    text: netText,
    isNet: true,
    ...beside(between(chain.from, chain.net, ALONG_NET), -lean),
  };
  return parted(
    [...pulls, net].map((label) => inside(label, size, [width, height])),
    size,
  );
}

/** A place to hang lettering from: the middle of its near edge. */
interface Hung {
  readonly at: Point;
  readonly anchor: ArrowLabel['anchor'];
}

interface Placed extends ArrowLabel {
  readonly left: number;
  readonly right: number;
}

/** The last pull ends where the net force does: its lettering stands beyond both heads. */
function beyond(head: Point, along: Point, size: number): Hung {
  const x = head.x + (0.6 * Math.max(0, along.x) + 0.9) * size;
  return { at: { x, y: head.y + along.y * size }, anchor: 'start' };
}

function anchorFor(away: number): ArrowLabel['anchor'] {
  return away > SIDEWAYS ? 'start' : away < -SIDEWAYS ? 'end' : 'middle';
}

function inside(
  { text, isNet, at, anchor }: Hung & { readonly text: string; readonly isNet: boolean },
  size: number,
  [width, height]: readonly [number, number],
): Placed {
  const long = text.length * size * LETTER * (isNet ? NET_SIZE : 1);
  const before = anchor === 'start' ? 0 : anchor === 'end' ? long : long / 2;
  const left = Math.max(4, Math.min(width - 4 - long, at.x - before));
  const y = Math.max(size * 1.3, Math.min(height - size * 0.5, at.y + size * 0.34));
  return { text, isNet, anchor, x: left + before, y, left, right: left + long };
}

/** Moves lettering up and down until no two meet, or patience ends; none above the top of the picture. */
function parted(labels: readonly Placed[], size: number): readonly ArrowLabel[] {
  const rows = labels.map(({ y }) => y);
  for (let round = 0, hasMet = true; hasMet && round < MOST_NUDGES; round += 1) {
    hasMet = false;
    labels.forEach((one, i) => {
      labels.slice(i + 1).forEach((other, k) => {
        const j = i + 1 + k;
        const [a, b] = [rows[i] ?? 0, rows[j] ?? 0];
        const isAcross = one.left < other.right && other.left < one.right;
        if (!isAcross || Math.abs(a - b) >= size * LINE) return;
        hasMet = true;
        const [upper, lower] = a <= b ? [i, j] : [j, i];
        const up = Math.min(NUDGE / 2, Math.min(a, b) - size * 1.3);
        rows[upper] = Math.min(a, b) - up;
        rows[lower] = Math.max(a, b) + NUDGE - up;
      });
    });
  }
  return labels.map(({ text, isNet, anchor, x }, i) => ({
    text,
    isNet,
    anchor,
    x,
    y: rows[i] ?? 0,
  }));
}

function between(a: Point, b: Point, share: number): Point {
  return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
}

function direction(from: Point, to: Point): Point {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return length === 0
    ? { x: 1, y: 0 }
    : { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}
