/** Milliseconds of rest after which what is dear is computed. */
const PAUSE = 80;
/** The longest that it is put off while there is no rest. */
const LONGEST = 500;

/**
 * A value that is dear to compute and may come a moment after what it is computed from: a whole curve beside a point on
 * it. While its key keeps changing it is computed now and then, and once more at the end.
 */
export class Lagging<Key, Value> {
  key = $state.raw<Key>() as Key;
  value = $state.raw<Value>() as Value;
  readonly #compute: (key: Key) => Value;
  #wanted: Key;
  #wantedAt = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(key: Key, compute: (key: Key) => Value) {
    this.#compute = compute;
    this.#wanted = key;
    this.key = key;
    this.value = compute(key);
  }

  follow(key: Key): void {
    if (key !== this.#wanted) this.#wantedAt = performance.now();
    this.#wanted = key;
    if (key === this.key || this.#timer !== undefined) return;
    this.#wait(performance.now());
  }

  /** Computes nothing any more. */
  stop(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
  }

  #wait(since: number): void {
    this.#timer = setTimeout(() => {
      const now = performance.now();
      const isResting = now - this.#wantedAt >= PAUSE;
      if (!isResting && now - since < LONGEST) {
        this.#wait(since);
        return;
      }
      this.#timer = undefined;
      this.value = this.#compute(this.#wanted);
      this.key = this.#wanted;
    }, PAUSE);
  }
}
