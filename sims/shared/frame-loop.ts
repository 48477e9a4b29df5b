/** A loop over animation frames that can be woken and put to sleep. */
export interface FrameLoop {
  /** Starts the loop unless it runs already. */
  readonly wake: () => void;
  readonly sleep: () => void;
}

/**
 * Calls `onFrame` with the seconds since the frame before, until it answers false or `sleep` is called.
 * The browser holds frames back while the page is hidden; the first frame after a pause counts as one ordinary frame.
 */
export function createFrameLoop(onFrame: (seconds: number) => boolean): FrameLoop {
  const ORDINARY_FRAME = 1 / 60;
  const LONGEST_FRAME = 0.25;
  let handle = 0;
  let last: number | null = null;

  function frame(now: number): void {
    const elapsed = last === null ? ORDINARY_FRAME : (now - last) / 1000;
    last = now;
    const isAwake = onFrame(elapsed > LONGEST_FRAME ? ORDINARY_FRAME : elapsed);
    if (isAwake) handle = requestAnimationFrame(frame);
    else rest();
  }

  function rest(): void {
    cancelAnimationFrame(handle);
    handle = 0;
    last = null;
  }

  return {
    wake: () => {
      if (handle === 0) handle = requestAnimationFrame(frame);
    },
    sleep: rest,
  };
}

/** Whether the visitor asked their system for less motion. */
export function wantsStillness(): boolean {
  return typeof matchMedia === 'function' && matchMedia('(prefers-reduced-motion: reduce)').matches;
}
