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
    id: root.dataset['deck'] ?? '',
    steps,
    titles: steps.map((step) => step.querySelector('h2')?.textContent.trim() ?? ''),
    minutes: steps.map((step) => Number(step.dataset['minutes'])),
    builds: steps.map((step) => buildsIn(step).length),
  };
}

/** The parts of a step that come on at a press, in order. */
export function buildsIn(step: HTMLElement): readonly HTMLElement[] {
  return [...step.querySelectorAll<HTMLElement>('.build')];
}

/** Marks the first `count` builds of a step as shown. */
export function showBuilds(step: HTMLElement, count: number): void {
  buildsIn(step).forEach((build, index) => build.toggleAttribute('data-shown', index < count));
}
