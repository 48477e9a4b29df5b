import type { Layout } from './layout.ts';

/** What a pointer on the drawing needs to know and may do. */
export interface Draggable {
  readonly layout: () => Layout;
  readonly position: () => number;
  readonly moveTo: (position: number) => void;
  readonly release: () => void;
}

/**
 * Lets a pointer move the ball on any of the three panels. In the section the ball keeps its place under the pointer;
 * in the plots it comes to where the pointer is.
 *
 * @returns how to stop listening
 */
export function dragOn(svg: SVGSVGElement, bench: Draggable): () => void {
  let grip: number | null = null;

  function pointAt(event: PointerEvent): { mm: number; y: number } {
    const box = svg.getBoundingClientRect();
    const { view, width } = bench.layout();
    const unit = width / box.width;
    return {
      mm: view.toMm((event.clientX - box.left) * unit, 0).x,
      y: (event.clientY - box.top) * unit,
    };
  }
  function take(event: PointerEvent): void {
    if (event.button !== 0) return;
    const { mm, y } = pointAt(event);
    if (y > bench.layout().ratio.bottom + bench.layout().size * 2) return;
    svg.setPointerCapture(event.pointerId);
    const isOnSection = y <= bench.layout().section.bottom;
    grip = isOnSection ? mm - bench.position() : 0;
    if (!isOnSection) bench.moveTo(mm);
  }
  function follow(event: PointerEvent): void {
    if (grip !== null) bench.moveTo(pointAt(event).mm - grip);
  }
  function letGo(): void {
    if (grip === null) return;
    grip = null;
    bench.release();
  }

  svg.addEventListener('pointerdown', take);
  svg.addEventListener('pointermove', follow);
  svg.addEventListener('pointerup', letGo);
  svg.addEventListener('pointercancel', letGo);
  return () => {
    svg.removeEventListener('pointerdown', take);
    svg.removeEventListener('pointermove', follow);
    svg.removeEventListener('pointerup', letGo);
    svg.removeEventListener('pointercancel', letGo);
  };
}
