/** Milliseconds between two of a drag's computations of what is not needed at once. */
const PAUSE = 80;

/**
 * A value that is dear to compute and may come a moment after what it is computed from: a whole curve beside a point on
 * it. While its key keeps changing it is computed now and then, and once more at the end.
 */
export class Lagging<Key, Value> {
  key = $state.raw<Key>() as Key;
  value = $state.raw<Value>() as Value;
  readonly #compute: (key: Key) => Value;
  #wanted: Key;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(key: Key, compute: (key: Key) => Value) {
    this.#compute = compute;
    this.#wanted = key;
    this.key = key;
    this.value = compute(key);
  }

  follow(key: Key): void {
    this.#wanted = key;
    if (key === this.key || this.#timer !== undefined) return;
    this.#timer = setTimeout(() => {
      this.#timer = undefined;
      this.value = this.#compute(this.#wanted);
      this.key = this.#wanted;
    }, PAUSE);
  }

  /** Computes nothing any more. */
  stop(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
  }
}
