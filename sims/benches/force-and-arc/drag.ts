import { listenToPointer } from '../../figures/pointer.ts';
import type { Point } from '../../figures/view.ts';
import type { ForceChain } from './arrows.ts';
import { pullBetween } from './arrows.ts';
import type { Layout, ScapulaView } from './layout.ts';
import type { ForceSetting } from './settings.ts';
import type { ForceBench } from './state.svelte.ts';

/** What a pointer on the drawing needs to know. */
export interface Dragged {
  readonly layout: () => Layout;
  readonly view: () => ScapulaView;
  readonly chain: () => ForceChain;
  readonly ceiling: () => number;
  /** The tilt in degrees under a place across the margin plot. */
  readonly plottedTilt: (x: number) => number;
  readonly released: () => void;
}

/** The mark of something that can be taken hold of: `pull-0` … `pull-2`, `tilt`, `plot`. */
export const HANDLE = 'data-handle';

/**
 * Lets a pointer take the heads of the pulls, the end of the socket's centre line, and the point on the margin plot.
 * A touch that turns out to scroll the page puts everything back.
 *
 * @returns how to stop listening
 */
export function dragOn(svg: SVGSVGElement, bench: ForceBench, given: Dragged): () => void {
  let follow: ((point: Point) => void) | null = null;
  let before: ForceSetting | null = null;

  function pointAt(event: PointerEvent): Point {
    const box = svg.getBoundingClientRect();
    const unit = given.layout().width / box.width;
    return { x: (event.clientX - box.left) * unit, y: (event.clientY - box.top) * unit };
  }

  function pulling(index: number, start: Point): ((point: Point) => void) | null {
    const { pulls, perNewton } = given.chain();
    const drawn = pulls[index];
    if (drawn === undefined) return null;
    bench.forceCeiling = given.ceiling();
    const grip = { x: start.x - drawn.to.x, y: start.y - drawn.to.y };
    return (point) => {
      // The ball moves with the force, and the chain with the ball.
      const tail = given.chain().pulls[index]?.from ?? drawn.from;
      const head = { x: point.x - grip.x, y: point.y - grip.y };
      const { size, turn } = pullBetween(tail, head, given.view(), perNewton);
      bench.pull(drawn.pull.id, size, turn);
    };
  }

  function turning(start: Point): (point: Point) => void {
    const angleAt = (point: Point): number => {
      const { aside, out } = given.view().toPlace(point);
      return (Math.atan2(aside, out) * 180) / Math.PI;
    };
    const grip = angleAt(start) - bench.setting[bench.reading.plane.tilt];
    return (point) => bench.turn(angleAt(point) - grip);
  }

  function take(event: PointerEvent): void {
    if (event.button !== 0) return;
    const handle = (event.target as Element).closest(`[${HANDLE}]`)?.getAttribute(HANDLE);
    if (handle === undefined || handle === null) return;
    const start = pointAt(event);
    before = bench.setting;
    if (handle === 'tilt') follow = turning(start);
    else if (handle === 'plot') follow = (point) => bench.turn(given.plottedTilt(point.x));
    else follow = pulling(Number(handle.slice(-1)), start);
    svg.setPointerCapture(event.pointerId);
    if (handle === 'plot') follow?.(start);
  }

  function move(event: PointerEvent): void {
    follow?.(pointAt(event));
  }

  function letGo(): void {
    if (follow === null) return;
    follow = null;
    bench.forceCeiling = null;
    given.released();
  }

  function putBack(): void {
    if (follow === null) return;
    follow = null;
    bench.forceCeiling = null;
    if (before !== null) bench.change(before);
  }

  return listenToPointer(svg, { take, move, letGo, putBack });
}
