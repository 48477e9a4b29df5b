import { listenToPointer } from '../../figures/pointer.ts';
import type { Point } from '../../figures/view.ts';
import type { Layout } from './layout.ts';
import { bearingAt } from './rose-figure.ts';

/** What a pointer on the drawing needs to know and may do. */
export interface Draggable {
  readonly layout: () => Layout;
  readonly bearing: () => number;
  readonly translation: () => number;
  readonly face: (bearing: number) => void;
  readonly moveTo: (translation: number) => void;
  readonly release: (what: 'direction' | 'place') => void;
}

/** How far (px) a first touch may lie beside the middle: there a direction says nothing. */
const DEAD = 8;

/**
 * Lets a pointer turn the direction on the rose, and move the ball in the section and in the plot. In the section the
 * ball keeps its place under the pointer; in the plot it comes to where the pointer is. A touch that turns out to
 * scroll the page puts things back.
 *
 * @returns how to stop listening
 */
export function dragOn(svg: SVGSVGElement, bench: Draggable): () => void {
  let follow: ((at: Point) => void) | null = null;
  let what: 'direction' | 'place' = 'direction';
  let before = { bearing: 0, translation: 0 };

  function pointAt(event: PointerEvent): Point {
    const box = svg.getBoundingClientRect();
    const unit = bench.layout().width / box.width;
    return { x: (event.clientX - box.left) * unit, y: (event.clientY - box.top) * unit };
  }

  function take(event: PointerEvent): void {
    if (event.button !== 0) return;
    const at = pointAt(event);
    const next = grip(bench, at);
    if (next === null) return;
    before = { bearing: bench.bearing(), translation: bench.translation() };
    svg.setPointerCapture(event.pointerId);
    what = next.what;
    follow = next.follow;
    if (next.jumps) follow(at);
  }
  function move(event: PointerEvent): void {
    follow?.(pointAt(event));
  }
  function letGo(): void {
    if (follow === null) return;
    follow = null;
    bench.release(what);
  }
  function putBack(): void {
    if (follow === null) return;
    follow = null;
    bench.face(before.bearing);
    bench.moveTo(before.translation);
  }

  return listenToPointer(svg, { take, move, letGo, putBack });
}

interface Grip {
  readonly what: 'direction' | 'place';
  readonly follow: (at: Point) => void;
  /** Whether what is taken comes to the pointer at once. */
  readonly jumps: boolean;
}

function grip(bench: Draggable, at: Point): Grip | null {
  const { rose, section, ratio, size } = bench.layout();
  const away = Math.hypot(at.x - rose.centre.x, at.y - rose.centre.y);
  if (away <= rose.outer + size) {
    if (away < DEAD) return null;
    const follow = (to: Point): void => bench.face(bearingAt(bench.layout().rose, to));
    return { what: 'direction', follow, jumps: true };
  }
  const across = at.x >= section.left && at.x <= section.right;
  const mmAt = ({ x }: Point): number => bench.layout().section.view.toMm(x, 0).x;
  if (across && at.y >= section.top && at.y <= section.bottom) {
    const offset = mmAt(at) - bench.translation();
    return { what: 'place', follow: (to) => bench.moveTo(mmAt(to) - offset), jumps: false };
  }
  if (across && at.y >= ratio.top - size && at.y <= ratio.bottom + size) {
    return { what: 'place', follow: (to) => bench.moveTo(mmAt(to)), jumps: true };
  }
  return null;
}
