import { listenToPointer } from '../../figures/pointer.ts';
import type { Layout } from './layout.ts';

/** What a pointer on the plot over time needs to know and may do. */
export interface Draggable {
  readonly layout: () => Layout;
  readonly time: () => number;
  readonly moveTo: (time: number) => void;
  readonly release: () => void;
}

/**
 * Lets a pointer move the moment in the plot over time. A touch that turns out to scroll the page puts it back.
 *
 * @returns how to stop listening
 */
export function dragOn(svg: SVGSVGElement, bench: Draggable): () => void {
  let before: number | null = null;

  function timeAt(event: PointerEvent, isTaking: boolean): number | null {
    const { width, time, size } = bench.layout();
    const frame = svg.getBoundingClientRect();
    const unit = width / frame.width;
    const [x, y] = [(event.clientX - frame.left) * unit, (event.clientY - frame.top) * unit];
    const { left, right, top, bottom } = time.box;
    const isOnPlot = x > left - size && x < right + size && y > top && y < bottom + 2 * size;
    return isTaking && !isOnPlot ? null : 60 * time.x.invert(x);
  }
  function follow(event: PointerEvent): void {
    const time = before === null ? null : timeAt(event, false);
    if (time !== null) bench.moveTo(time);
  }

  return listenToPointer(svg, {
    take: (event) => {
      const time = event.button === 0 ? timeAt(event, true) : null;
      if (time === null) return;
      svg.setPointerCapture(event.pointerId);
      before = bench.time();
      bench.moveTo(time);
    },
    move: follow,
    letGo: () => {
      if (before === null) return;
      before = null;
      bench.release();
    },
    putBack: () => {
      if (before === null) return;
      bench.moveTo(before);
      before = null;
    },
  });
}
