import { listenToPointer } from '../../figures/pointer.ts';
import type { RockingBench } from './state.svelte.ts';

/** What a pointer on the drawing needs to know. */
export interface Dragged {
  /** Width of the drawing in its own units */
  readonly unitsAcross: () => number;
  /** From the middle of a socket to its rim, in the same units */
  readonly unitsToRim: () => number;
  readonly released: () => void;
}

/**
 * Lets a pointer take a ball. A ball that hardly differs from its hollow moves little while its contact goes all the way
 * to the rim, so it is the contact that follows the pointer.
 *
 * @returns how to stop listening
 */
export function dragOn(svg: SVGSVGElement, bench: RockingBench, given: Dragged): () => void {
  let grip: number | null = null;
  let before = 0;

  function placeAt(event: PointerEvent): number {
    const units = given.unitsAcross() / svg.getBoundingClientRect().width;
    return (100 * event.clientX * units) / given.unitsToRim();
  }
  function take(event: PointerEvent): void {
    if (event.button !== 0) return;
    if ((event.target as Element).closest('[data-handle="ball"]') === null) return;
    before = bench.setting.place;
    grip = placeAt(event) - before;
    svg.setPointerCapture(event.pointerId);
  }
  function move(event: PointerEvent): void {
    if (grip !== null) bench.place(placeAt(event) - grip);
  }
  function letGo(): void {
    if (grip === null) return;
    grip = null;
    given.released();
  }
  /** A touch that turned out to scroll the page. */
  function putBack(): void {
    if (grip === null) return;
    grip = null;
    bench.place(before);
  }

  return listenToPointer(svg, { take, move, letGo, putBack });
}
