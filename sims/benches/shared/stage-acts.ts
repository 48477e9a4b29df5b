import { awakeInSight, type Sleeper } from '../../shared/in-sight.ts';

/** What a bench on the lecture stage does when its acts come and go. */
export interface Staged {
  /** `count` acts have come; `isPressed` if the newest came by one press of the clicker. */
  comeTo(count: number, isPressed: boolean): void;
  /** What runs only while the bench is in sight. */
  readonly sleeper?: Sleeper | undefined;
}

/**
 * Follows the acts of a bench on the stage. Each act is a row of class `build` inside `place`, and whoever turns the
 * deck marks the rows on show with `data-shown`. Tells `staged` at once how many have come, and again at every change.
 *
 * @returns ends the following
 */
export function followActs(place: HTMLElement, staged: Staged): () => void {
  const countShown = (): number => place.querySelectorAll('.build[data-shown]').length;
  let come = countShown();
  staged.comeTo(come, false);
  const rows = new MutationObserver(() => {
    const count = countShown();
    if (count === come) return;
    const isPressed = count === come + 1;
    come = count;
    staged.comeTo(count, isPressed);
  });
  rows.observe(place, { subtree: true, attributeFilter: ['data-shown'] });
  const { sleeper } = staged;
  const stopWatching = sleeper === undefined ? undefined : awakeInSight(place, sleeper);
  return () => {
    rows.disconnect();
    stopWatching?.();
  };
}
