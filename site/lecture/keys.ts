import type { Deed } from './show.ts';

/** What a key asks for: a deed of the show, or something of its own window. */
export type Wish = Deed | 'full-screen' | 'speaker-window';

/** What has the keyboard's focus, as far as keys are concerned. */
export type Focus = 'page' | 'control' | 'text';

export interface KeyPress {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
  readonly altKey: boolean;
  readonly metaKey: boolean;
  readonly repeat: boolean;
}

/** Sent by every clicker. They move the show whatever has the focus, or a slider touched once would hold it fast. */
const clicker: readonly (readonly [string, Wish])[] = [
  ['PageDown', 'forward'],
  ['PageUp', 'back'],
];

/** Letters and points: a control has no use for them, a text field does. */
const letters: readonly (readonly [string, Wish])[] = [
  ['.', 'dark'],
  ['b', 'dark'],
  ['n', 'forward'],
  ['p', 'back'],
  ['f', 'full-screen'],
  ['s', 'speaker-window'],
];

/** Keys by which a control is worked: they move the show only while no control has the focus. */
const shared: readonly (readonly [string, Wish])[] = [
  ['ArrowRight', 'forward'],
  ['ArrowDown', 'forward'],
  [' ', 'forward'],
  ['Enter', 'forward'],
  ['ArrowLeft', 'back'],
  ['ArrowUp', 'back'],
  ['Backspace', 'back'],
  ['Home', 'first'],
  ['End', 'last'],
];

const tables: Readonly<Record<Focus, ReadonlyMap<string, Wish>>> = {
  text: new Map(clicker),
  control: new Map([...clicker, ...letters]),
  page: new Map([...clicker, ...letters, ...shared]),
};

/**
 * What a key asks of the show; null where it is none of the show's business.
 *
 * Esc and F5 are left to the browser on purpose: the one leaves full screen, the other loads the page again, and both
 * keep the place. A key held down counts once.
 */
export function wishOf(press: KeyPress, focus: Focus): Wish | null {
  if (press.ctrlKey || press.altKey || press.metaKey) return null;
  const wish = tables[focus].get(press.key.length === 1 ? press.key.toLowerCase() : press.key);
  if (wish === undefined) return null;
  return press.key === ' ' && press.shiftKey ? 'back' : wish;
}

const TEXT_TYPES = ['text', 'number', 'search', 'email', 'url', 'tel', 'password'];
const CONTROLS = 'input,button,select,textarea,summary,a[href],[tabindex]:not([tabindex="-1"])';

/** Which of the three kinds of focus an element is. */
export function focusOf(element: Element | null): Focus {
  if (element === null) return 'page';
  const isTyped = element instanceof HTMLInputElement && TEXT_TYPES.includes(element.type);
  const isEdited = element instanceof HTMLElement && element.isContentEditable;
  if (isTyped || isEdited || element instanceof HTMLTextAreaElement) return 'text';
  return element.closest(CONTROLS) === null ? 'page' : 'control';
}

/**
 * Listens to the keyboard ahead of everything else on the page.
 *
 * @param grant carries a wish out
 */
export function listenToKeys(grant: (wish: Wish) => void): void {
  window.addEventListener(
    'keydown',
    (event) => {
      const wish = wishOf(event, focusOf(document.activeElement));
      if (wish === null) return;
      event.preventDefault();
      event.stopPropagation();
      if (!event.repeat) grant(wish);
    },
    { capture: true },
  );
}
