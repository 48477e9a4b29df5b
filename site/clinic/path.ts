import { idleWarning } from './idle-warning.ts';
import { watchIdle } from './idle.ts';
import { resetEvent } from './reset-event.ts';

/**
 * The path of cards. Which card shows is the address's own affair (`#step-2`, in the style sheet): here the heading
 * takes the focus, and the path goes back to the start when asked to or left alone.
 */
export function runPath(path: HTMLElement, again: HTMLElement, dialog: HTMLDialogElement): void {
  const cards = [...path.querySelectorAll<HTMLElement>('.card')];
  const title = document.title;

  function current(): HTMLElement | undefined {
    return cards.find(({ id }) => `#${id}` === window.location.hash) ?? cards[0];
  }
  function arrive(): void {
    const heading = current()?.querySelector('h2');
    document.title = current() === cards[0] ? title : `${heading?.textContent ?? ''} · ${title}`;
    window.scrollTo({ top: 0, behavior: 'instant' });
    heading?.focus({ preventScroll: true });
  }
  function reset(): void {
    window.dispatchEvent(new Event(resetEvent));
    if (current() === cards[0]) return;
    window.location.replace(`#${cards[0]?.id ?? ''}`);
    window.history.replaceState(null, '', window.location.pathname + window.location.search);
    arrive();
  }

  window.addEventListener('hashchange', arrive);
  again.addEventListener('click', (event) => {
    event.preventDefault();
    reset();
    arrive();
  });
  watchIdle({ isAtStart: () => current() === cards[0], reset, ...idleWarning(dialog) });
}
