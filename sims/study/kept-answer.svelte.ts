import type { Answer } from '../shared/stored-state.ts';
import { deviceStore } from './device-store.ts';

/** Said where an answer was kept that no longer fits: the lesson has changed, or the entry is damaged. */
export const NO_LONGER_FITS =
  'The answer kept on this device no longer fits this question. The question starts afresh.';

/** The answer to one question as the device keeps it. */
export class KeptAnswer {
  current = $state.raw<Answer>();
  /** Something to tell once about what the device keeps. */
  notice = $state('');

  readonly #place: () => readonly [lesson: string, question: string];
  readonly #isUsable: (given: string | number) => boolean;

  /** @param place read anew each time: the lesson’s and the question’s names */
  constructor(
    place: () => readonly [lesson: string, question: string],
    isUsable: (given: string | number) => boolean,
  ) {
    this.#place = place;
    this.#isUsable = isUsable;
  }

  /** Begins to follow what is kept, here and in other tabs. Returns how to stop. For `onMount`. */
  follow(onchange: (answer: Answer | undefined) => void): () => void {
    const store = deviceStore();
    const read = (): void => {
      const found = store.answer(...this.#place());
      const fits = found !== undefined && this.#isUsable(found.given);
      this.current = fits ? found : undefined;
      if (found !== undefined && !fits) this.notice = NO_LONGER_FITS;
      this.notice ||= store.takeNotice() ?? '';
      onchange(this.current);
    };
    read();
    return store.subscribe(read);
  }

  give(given: string | number, isRight: boolean): void {
    const tries = (this.current?.tries ?? 0) + 1;
    this.notice = '';
    deviceStore().keepAnswer(...this.#place(), { given, isRight, tries });
  }
}
