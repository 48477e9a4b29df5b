/** Works answers out while the page goes on. It is asked one question at a time. */
export interface Solver<Question, Answer> {
  readonly solve: (question: Question) => Promise<Answer>;
  /** Gives up what is being worked out, for good. */
  readonly stop: () => void;
}

/**
 * An answer that comes a moment after its question. Questions that are asked meanwhile wait, and of those that wait only the
 * last is worked out: so answers come in the order of their questions, and none that is late lies over a newer one.
 */
export class LateAnswer<Question, Answer> {
  /** The last answer that came, and what it answers. */
  answer = $state.raw<Answer>() as Answer;
  question = $state.raw<Question>() as Question;
  readonly #solver: Solver<Question, Answer>;
  readonly #answers: (given: Question, asked: Question) => boolean;
  #latest: Question;
  #waiting: Question | null = null;
  #isBusy = false;
  #isStopped = false;

  /** @param answers whether the answer to one question answers another as well */
  constructor(
    solver: Solver<Question, Answer>,
    first: { readonly question: Question; readonly answer: Answer },
    answers: (given: Question, asked: Question) => boolean = Object.is,
  ) {
    this.#solver = solver;
    this.#answers = answers;
    this.#latest = first.question;
    this.question = first.question;
    this.answer = first.answer;
  }

  ask(question: Question): void {
    if (this.#isStopped || this.#answers(this.#latest, question)) return;
    this.#latest = question;
    this.#waiting = question;
    if (!this.#isBusy) void this.#work();
  }

  stop(): void {
    this.#isStopped = true;
    this.#solver.stop();
  }

  async #work(): Promise<void> {
    this.#isBusy = true;
    try {
      while (this.#waiting !== null) {
        const question = this.#waiting;
        this.#waiting = null;
        const answer = await this.#solver.solve(question);
        if (this.#isStopped) return;
        this.answer = answer;
        this.question = question;
      }
    } finally {
      this.#isBusy = false;
    }
  }
}
