/** A deck as it stands in the page. */
export interface Deck {
  readonly id: string;
  readonly steps: readonly HTMLElement[];
  readonly titles: readonly string[];
  /** Planned minutes of each step. */
  readonly minutes: readonly number[];
  /** Builds of each step. */
  readonly builds: readonly number[];
}

/** Reads the deck in a page. Throws where there is none. */
export function readDeck(root: HTMLElement): Deck {
  const steps = [...root.querySelectorAll<HTMLElement>('.step')];
  if (steps.length === 0) throw new Error('The page holds no step.');
  return {
    id: root.dataset.deck ?? '',
    steps,
    titles: steps.map((step) => step.querySelector('h2')?.textContent.trim() ?? ''),
    minutes: steps.map((step) => Number(step.dataset.minutes)),
    builds: steps.map((step) => buildsIn(step).length),
  };
}

/**
 * The parts of a step that come on, press by press: elements of class `build` in order, those that carry the same
 * `data-with` together.
 */
export function buildsIn(step: Element): readonly (readonly Element[])[] {
  const presses = new Map<string | Element, Element[]>();
  for (const part of step.querySelectorAll('.build')) {
    const press = part.getAttribute('data-with') ?? part;
    presses.set(press, [...(presses.get(press) ?? []), part]);
  }
  return [...presses.values()];
}

/** Marks what the first `count` presses bring on as shown. */
export function showBuilds(step: Element, count: number): void {
  buildsIn(step).forEach((parts, press) => {
    for (const part of parts) part.toggleAttribute('data-shown', press < count);
  });
}
