import { listenToPointer } from '../../figures/pointer.ts';
import { CURVES, plottedTranslation, type Layout } from './layout.ts';

/** What a pointer on the drawing needs to know and may do. */
export interface Draggable {
  /** null until the drawing is there. */
  readonly layout: () => Layout | null;
  readonly translation: () => number;
  readonly moveTo: (translation: number) => void;
  readonly release: () => void;
}

/**
 * Lets a pointer move the ball: in the section and on the face it keeps its place under the pointer, on the curves it comes
 * to where the pointer is. A touch that turns out to scroll the page puts it back.
 *
 * @returns how to stop listening
 */
export function dragOn(svg: SVGSVGElement, bench: Draggable): () => void {
  let before = 0;
  let translationAt: ((layout: Layout, x: number) => number) | null = null;

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
    const { size, plan, curves } = layout;
    const curve = CURVES.find((name) => {
      const { left, right, top, bottom } = curves[name];
      return x > left - size && x < right + size && y > top - size && y < bottom + size * 2;
    });
    if (curve !== undefined) {
      translationAt = (now, at) => plottedTranslation(now, curve, at);
    } else if (x < plan.box.right && y < plan.box.bottom) {
      const grip = plan.view.toMm(x, 0).x - bench.translation();
      translationAt = (now, at) => now.plan.view.toMm(at, 0).x - grip;
    } else return;
    svg.setPointerCapture(event.pointerId);
    before = bench.translation();
    bench.moveTo(translationAt(layout, x));
  }
  function follow(event: PointerEvent): void {
    const layout = bench.layout();
    if (translationAt === null || layout === null) return;
    bench.moveTo(translationAt(layout, pointAt(event, layout).x));
  }
  function letGo(): void {
    if (translationAt === null) return;
    translationAt = null;
    bench.release();
  }
  function putBack(): void {
    if (translationAt === null) return;
    translationAt = null;
    bench.moveTo(before);
  }

  return listenToPointer(svg, { take, move: follow, letGo, putBack });
}
