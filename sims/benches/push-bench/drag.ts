import type { View } from '../../figures/view.ts';
import type { PushBench } from './state.svelte.ts';

/**
 * Lets a pointer take hold of the ball and draw it sideways. The ball keeps its place under the pointer.
 *
 * @returns how to stop listening
 */
export function dragged(
  ball: SVGCircleElement,
  svg: SVGSVGElement,
  view: () => View,
  bench: PushBench,
): () => void {
  let grip: number | null = null;

  function millimetresAt(event: PointerEvent): number {
    const box = svg.getBoundingClientRect();
    const x = ((event.clientX - box.left) / box.width) * view().width;
    return view().toMm(x, 0).x;
  }
  function take(event: PointerEvent): void {
    if (event.button !== 0) return;
    event.preventDefault();
    ball.setPointerCapture(event.pointerId);
    grip = millimetresAt(event) - bench.reading.translation;
    bench.drag(bench.reading.translation);
  }
  function follow(event: PointerEvent): void {
    if (grip !== null) bench.drag(millimetresAt(event) - grip);
  }
  function letGo(): void {
    if (grip === null) return;
    grip = null;
    bench.drag(null);
  }

  const listeners = {
    pointerdown: take,
    pointermove: follow,
    pointerup: letGo,
    pointercancel: letGo,
    lostpointercapture: letGo,
  } as const;
  for (const [name, listener] of Object.entries(listeners)) {
    ball.addEventListener(name, listener as EventListener);
  }
  return () => {
    for (const [name, listener] of Object.entries(listeners)) {
      ball.removeEventListener(name, listener as EventListener);
    }
  };
}
