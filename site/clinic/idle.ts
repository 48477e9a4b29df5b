/** How long nobody may touch the screen before the warning, and how long the warning waits for an answer, ms. */
export const QUIET = 70_000;
export const ANSWER = 20_000;

export interface IdleOptions {
  /** Whether there is nothing to go back from: then no warning comes, and `reset` runs at once. */
  readonly isAtStart: () => boolean;
  readonly warn: () => void;
  /** Takes the warning away: answered, or because its time is over. */
  readonly unwarn: (why: 'answered' | 'over') => void;
  readonly reset: () => void;
}

const activities = [
  'pointerdown',
  'pointermove',
  'keydown',
  'wheel',
  'touchmove',
  'scroll',
] as const;

/**
 * Goes back to the start when a screen is left alone. Any touch, key or scroll puts it off, before the warning or
 * after, as often as anyone likes. A screen that was asleep warns when it wakes and never resets unseen.
 *
 * @returns how to stop watching
 */
export function watchIdle(options: IdleOptions): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let isWarned = false;
  let lastActive = Date.now();

  function restart(): void {
    clearTimeout(timer);
    isWarned = false;
    lastActive = Date.now();
    timer = setTimeout(grownQuiet, QUIET);
  }
  function grownQuiet(): void {
    if (options.isAtStart()) {
      options.reset();
      restart();
      return;
    }
    if (!isWarned) options.warn();
    isWarned = true;
    timer = setTimeout(leftAlone, ANSWER);
  }
  function leftAlone(): void {
    options.unwarn('over');
    restart();
    options.reset();
  }
  function active(event: Event): void {
    // A browser tells of a pointer that "moved" when the page moved under it.
    const isMove = event instanceof PointerEvent && event.type === 'pointermove';
    if (isMove && event.movementX === 0 && event.movementY === 0) return;
    if (isWarned) options.unwarn('answered');
    restart();
  }
  function seen(): void {
    clearTimeout(timer);
    if (document.hidden) return;
    const left = QUIET - (Date.now() - lastActive);
    if (isWarned || left <= 0) grownQuiet();
    else timer = setTimeout(grownQuiet, left);
  }

  for (const name of activities)
    window.addEventListener(name, active, { capture: true, passive: true });
  document.addEventListener('visibilitychange', seen);
  restart();
  return () => {
    clearTimeout(timer);
    for (const name of activities) window.removeEventListener(name, active, { capture: true });
    document.removeEventListener('visibilitychange', seen);
  };
}
