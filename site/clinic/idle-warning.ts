import type { IdleOptions } from './idle.ts';

/** A touch that answers the warning may not also press what lies under it: the warning stays until the finger is up. */
const LINGER = 350;

/** How to show the warning of `watchIdle` and take it away. */
export function idleWarning(dialog: HTMLDialogElement): Pick<IdleOptions, 'warn' | 'unwarn'> {
  dialog.addEventListener('click', () => dialog.close());
  return {
    warn: () => {
      if (!dialog.open) dialog.showModal();
    },
    unwarn: (why) => {
      if (why === 'over') dialog.close();
      else setTimeout(() => dialog.close(), LINGER);
    },
  };
}
