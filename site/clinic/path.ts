import { idleWarning } from './idle-warning.ts';
import { watchIdle } from './idle.ts';
import { resetEvent } from './reset-event.ts';

/**
 * The path of cards. Which card shows, and that its heading has the focus, is the browser's own affair (`#step-2`, and
 * the style sheet). Here the title follows, and the path goes back to the start when asked to or left alone.
 */
export function runPath(path: HTMLElement, again: HTMLElement, dialog: HTMLDialogElement): void {
  const headings = [...path.querySelectorAll<HTMLElement>('.card h2')];
  const title = document.title;

  function current(): HTMLElement | undefined {
    return headings.find(({ id }) => `#${id}` === window.location.hash) ?? headings[0];
  }
  function isAtStart(): boolean {
    return current() === headings[0];
  }
  function follow(): void {
    document.title = isAtStart() ? title : `${current()?.textContent.trim() ?? ''} · ${title}`;
    window.scrollTo({ top: 0, behavior: 'instant' });
  }
  function reset(): void {
    window.dispatchEvent(new Event(resetEvent));
    if (isAtStart()) return;
    window.location.replace(`#${headings[0]?.id ?? ''}`);
    window.history.replaceState(null, '', window.location.pathname + window.location.search);
    follow();
  }

  window.addEventListener('hashchange', follow);
  // A reload, or a finger that was faster than this script.
  if (!isAtStart()) follow();
  again.addEventListener('click', (event) => {
    event.preventDefault();
    reset();
    headings[0]?.focus();
  });
  watchIdle({ isAtStart, reset, ...idleWarning(dialog) });
}
