import { listenToPointer } from '../../figures/pointer.ts';
import { bearingAt } from './rose-figure.ts';
import type { Rose } from './layout.ts';

/** What a pointer on a rose that is drawn alone needs to know and may do. */
export interface Turnable {
  readonly rose: () => Rose;
  /** Width of the drawing in its own units. */
  readonly width: () => number;
  readonly face: (bearing: number) => void;
}

/** How far (drawing units) a first touch may lie beside the middle: there a direction says nothing. */
const DEAD = 8;

/**
 * Lets a pointer choose a direction anywhere on a rose.
 *
 * @returns how to stop listening
 */
export function turnOn(svg: SVGSVGElement, { rose, width, face }: Turnable): () => void {
  let isTurning = false;
  const at = (event: PointerEvent): { x: number; y: number } => {
    const box = svg.getBoundingClientRect();
    const unit = width() / box.width;
    return { x: (event.clientX - box.left) * unit, y: (event.clientY - box.top) * unit };
  };
  function take(event: PointerEvent): void {
    const { x, y } = at(event);
    const { centre, outer } = rose();
    const away = Math.hypot(x - centre.x, y - centre.y);
    if (event.button !== 0 || away < DEAD || away > outer) return;
    svg.setPointerCapture(event.pointerId);
    isTurning = true;
    face(bearingAt(rose(), { x, y }));
  }
  function move(event: PointerEvent): void {
    if (isTurning) face(bearingAt(rose(), at(event)));
  }
  function letGo(): void {
    isTurning = false;
  }
  return listenToPointer(svg, { take, move, letGo, putBack: letGo });
}
