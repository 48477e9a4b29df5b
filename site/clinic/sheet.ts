import { idleWarning } from './idle-warning.ts';
import { watchIdle } from './idle.ts';

/** The sheet on the screen: it prints, and when it is left alone it leads back to the start of the cards. */
export function runSheet(print: HTMLElement, start: string, dialog: HTMLDialogElement): void {
  print.addEventListener('click', () => window.print());
  watchIdle({ isAtStart: () => false, reset: () => void leaveFor(start), ...idleWarning(dialog) });
}

/** Goes there only if it is there: a tablet that lost its network keeps the page it has. */
async function leaveFor(address: string): Promise<void> {
  const isThere = await fetch(address).then(
    ({ ok }) => ok,
    () => false,
  );
  if (isThere) window.location.replace(address);
}
