import { listenToPointer } from '../../../figures/pointer.ts';
/** rad a pixel */
const TURN = 0.008;

/**
 * Lets a pointer turn what is drawn: it follows as if taken hold of.
 *
 * @param turn by and up, rad, as `turned` takes them
 * @returns how to stop listening
 */
export function orbitOn(place: HTMLElement, turn: (by: number, up: number) => void): () => void {
  let last: { readonly x: number; readonly y: number } | null = null;

  function take(event: PointerEvent): void {
    if (event.button !== 0) return;
    place.setPointerCapture(event.pointerId);
    last = { x: event.clientX, y: event.clientY };
  }
  function follow(event: PointerEvent): void {
    if (last === null) return;
    const { x, y } = last;
    last = { x: event.clientX, y: event.clientY };
    turn((x - last.x) * TURN, (last.y - y) * TURN);
  }
  function letGo(): void {
    last = null;
  }

  return listenToPointer(place, { take, move: follow, letGo, putBack: letGo });
}
