/**
 * Says a sentence politely to a screen reader, once the visitor has finished a change.
 *
 * One status region serves the whole page; it is made on first use and stays.
 */
export function announce(sentence: string): void {
  const region = document.getElementById(REGION) ?? createRegion();
  // The same sentence twice in a row is said twice: a no-break space makes it a new text.
  region.textContent = region.textContent === sentence ? `${sentence}\u00a0` : sentence;
}

const REGION = 'said-politely';

function createRegion(): HTMLElement {
  const region = document.createElement('p');
  region.id = REGION;
  region.className = 'visually-hidden';
  region.setAttribute('role', 'status');
  document.body.append(region);
  return region;
}
