import { polyline, type Point, type View } from '../../figures/view.ts';
import type { OutlineCurve } from '../../geometry/outline.ts';
import { riseOf } from './back.ts';
import { reachOfBack, reachOfFace } from './outline.ts';
import { BACK, HOLLOW_RADIUS } from './seat.ts';
import type { Design } from './settings.ts';
import { isRest, type Stand } from './stand.ts';

const ROUND = [500, 200, 100, 50, 20, 10, 5, 2, 1] as const;
/** The largest movement is drawn no longer than this, mm. */
const LONGEST = 4.2;
const ARC_POINTS = 40;
const TAPER = 0.8;
/** How an overturned socket and one that slid off are drawn: not where they are, for there is no such place. */
const TIPPED = 0.16;
const SLID = 6;

/** How many times a movement is drawn. */
export function magnification(stand: Stand): number {
  if (!isRest(stand)) return 1;
  const largest = Math.max(stand.liftOff, stand.pressIn);
  return ROUND.find((times) => times * largest <= LONGEST) ?? 1;
}

/** The pose drawn of a socket that has none. A round back that slides turns about the middle of its sphere. */
export function lostPose(
  { outcome }: Stand,
  backRadius = Infinity,
): { x: number; z: number; turn: number } {
  if (outcome === 'sliding') {
    if (backRadius === Infinity) return { x: SLID, z: 0, turn: 0 };
    const middle = BACK + backRadius;
    return { x: SLID, z: 0, turn: SLID / middle };
  }
  return {
    x: 0,
    z: outcome === 'overturned' ? 1 : 0,
    turn: outcome === 'overturned' ? -TIPPED : 0,
  };
}

/** The socket cut through its middle along a bearing: how far its back reaches both ways, mm. */
export function endsOf(curve: OutlineCurve, bearing: number): { from: number; to: number } {
  return { from: -reachOfBack(curve, bearing + 180), to: reachOfBack(curve, bearing) };
}

export const hollowHeight = (along: number): number =>
  along ** 2 / (HOLLOW_RADIUS + Math.sqrt(HOLLOW_RADIUS ** 2 - along ** 2));

/** The cut back from one end to the other, mm: two places where it is flat. */
export function backLine(
  from: number,
  to: number,
  radius: number,
): readonly { readonly x: number; readonly z: number }[] {
  const count = radius === Infinity ? 1 : ARC_POINTS;
  return Array.from({ length: count + 1 }, (_, i) => {
    const x = from + ((to - from) * i) / count;
    return { x, z: BACK + riseOf(radius, { x, y: 0 }) };
  });
}

/** Outline of the cut socket, unmoved, on the screen. */
export function bodyLine(
  curve: OutlineCurve,
  bearing: number,
  view: View,
  backRadius = Infinity,
): string {
  const { from, to } = endsOf(curve, bearing);
  const low = -reachOfFace(curve, bearing + 180);
  const high = reachOfFace(curve, bearing);
  const arc = Array.from({ length: ARC_POINTS + 1 }, (_, i) => {
    const x = low + ((high - low) * i) / ARC_POINTS;
    return { x, y: hollowHeight(x) };
  });
  const line: readonly Point[] = [
    { x: from, y: hollowHeight(low) },
    ...arc,
    { x: to, y: hollowHeight(high) },
    ...backLine(to - TAPER, from + TAPER, backRadius).map(({ x, z }) => ({ x, y: z })),
  ];
  return `${polyline(line.map(({ x, y }) => ({ x: view.x(x), y: view.y(y) })))}Z`;
}

/** A peg or the keel as the section sees it, mm along the cut. */
export interface Stem {
  readonly which: number | 'keel';
  readonly from: number;
  readonly to: number;
  readonly depth: number;
  /** Where it stands on the back, mm over the face’s deepest point */
  readonly root: number;
  /** The cut goes through it, and it is as wide as the cut is; what stands before or behind is seen at its full width. */
  readonly isCut: boolean;
}

export function stemsOf(
  { pegs, keel }: Design,
  bearing: number,
  backRadius = Infinity,
): readonly Stem[] {
  const turn = (bearing * Math.PI) / 180;
  const [along, up] = [Math.cos(turn), Math.sin(turn)];
  const round = pegs.map(({ x, y, diameter, length: depth }, which): Stem => {
    const at = x * along + y * up;
    const radius = diameter / 2;
    const chord = radius ** 2 - (y * along - x * up) ** 2;
    const half = chord > 0 ? Math.sqrt(chord) : radius;
    const root = BACK + riseOf(backRadius, { x, y });
    return { which, from: at - half, to: at + half, depth, root, isCut: chord > 0 };
  });
  if (keel === null) return round;
  const root = BACK + riseOf(backRadius, keel);
  const across = within(keel.x, keel.thickness / 2, along);
  const upward = within(keel.y, keel.span / 2, up);
  const from = Math.max(across[0], upward[0]);
  const to = Math.min(across[1], upward[1]);
  if (from < to)
    return [...round, { which: 'keel', from, to, depth: keel.depth, root, isCut: true }];
  const at = keel.x * along + keel.y * up;
  const half = (Math.abs(along) * keel.thickness + Math.abs(up) * keel.span) / 2;
  return [
    ...round,
    { which: 'keel', from: at - half, to: at + half, depth: keel.depth, root, isCut: false },
  ];
}

/** Where a line through the middle that advances `rate` each mm lies within `half` of a place. */
function within(place: number, half: number, rate: number): readonly [number, number] {
  if (Math.abs(rate) < 1e-9) return Math.abs(place) < half ? [-Infinity, Infinity] : [0, 0];
  const ends = [(place - half) / rate, (place + half) / rate] as const;
  return ends[0] < ends[1] ? ends : [ends[1], ends[0]];
}

/** Bone under the back: its depth under the face’s deepest point, mm, for a picture. */
export const boneFoot = (deepest: number): number => BACK - deepest - 3;
