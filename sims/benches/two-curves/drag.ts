import { listenToPointer } from '../../figures/pointer.ts';
import type { Layout } from './layout.ts';

/** What a pointer on the panels needs to know and may do. */
export interface Draggable {
  /** null until the drawing is there. */
  readonly layout: () => Layout | null;
  readonly mismatch: () => number;
  readonly moveTo: (mismatch: number) => void;
  readonly release: () => void;
}

/**
 * Lets a pointer move the line of the present mismatch on any of the panels and on both scales under them. A touch that
 * turns out to scroll the page puts it back.
 *
 * @returns how to stop listening
 */
export function dragOn(svg: SVGSVGElement, bench: Draggable): () => void {
  let before: number | null = null;

  function pointAt(
    event: PointerEvent,
    { width }: Layout,
  ): { readonly x: number; readonly y: number } {
    const box = svg.getBoundingClientRect();
    const unit = width / box.width;
    return { x: (event.clientX - box.left) * unit, y: (event.clientY - box.top) * unit };
  }
  function take(event: PointerEvent): void {
    const layout = bench.layout();
    if (event.button !== 0 || layout === null) return;
    const { x, y } = pointAt(event, layout);
    const { plots, panels, size } = layout;
    if (x < plots.left - size || y < panels.play.title - size) return;
    svg.setPointerCapture(event.pointerId);
    before = bench.mismatch();
    bench.moveTo(layout.x.invert(x));
  }
  function follow(event: PointerEvent): void {
    const layout = bench.layout();
    if (before === null || layout === null) return;
    bench.moveTo(layout.x.invert(pointAt(event, layout).x));
  }
  function letGo(): void {
    if (before === null) return;
    before = null;
    bench.release();
  }
  function putBack(): void {
    if (before === null) return;
    bench.moveTo(before);
    before = null;
  }

  return listenToPointer(svg, { take, move: follow, letGo, putBack });
}
