import { listenToPointer } from '../../figures/pointer.ts';
import { plottedTranslation, type Layout } from './layout.ts';

/** What a pointer on the drawing needs to know and may do. */
export interface Draggable {
  readonly layout: () => Layout;
  readonly position: () => number;
  readonly moveTo: (position: number) => void;
  readonly release: () => void;
}

/**
 * Lets a pointer move the ball on any of the three panels. In the section the ball keeps its place under the pointer;
 * in the plots it comes to where the pointer is. A touch that turns out to scroll the page puts it back.
 *
 * @returns how to stop listening
 */
export function dragOn(svg: SVGSVGElement, bench: Draggable): () => void {
  let before = 0;
  let translationAt: ((x: number) => number) | null = null;

  function pointAt(event: PointerEvent): { readonly x: number; readonly y: number } {
    const box = svg.getBoundingClientRect();
    const unit = bench.layout().width / box.width;
    return { x: (event.clientX - box.left) * unit, y: (event.clientY - box.top) * unit };
  }
  function take(event: PointerEvent): void {
    if (event.button !== 0) return;
    const layout = bench.layout();
    const { x, y } = pointAt(event);
    const isOnSection = x <= layout.section.right && y <= layout.section.bottom;
    if (!isOnSection && y > layout.ratio.bottom + layout.size * 2) return;
    svg.setPointerCapture(event.pointerId);
    before = bench.position();
    if (isOnSection) {
      const grip = layout.view.toMm(x, 0).x - bench.position();
      translationAt = (place) => bench.layout().view.toMm(place, 0).x - grip;
    } else {
      translationAt = (place) => plottedTranslation(bench.layout(), place);
      bench.moveTo(translationAt(x));
    }
  }
  function follow(event: PointerEvent): void {
    if (translationAt !== null) bench.moveTo(translationAt(pointAt(event).x));
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
