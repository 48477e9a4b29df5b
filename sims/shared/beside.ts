import type { Solver } from './late-answer.svelte.ts';

/** Work that is done in pieces, so that others get their turn between them; it ends with its answer. */
export type InPieces<Answer> = Generator<undefined, Answer, undefined>;

/**
 * Answers questions in a thread of its own, opened with the first of them. Where there are no threads, or this one breaks
 * down, the page answers in pieces while it has nothing else to do.
 */
export function besideThePage<Question, Answer>(
  open: () => Worker,
  inPieces: (question: Question) => InPieces<Answer>,
): Solver<Question, Answer> {
  let thread: Worker | null = null;
  let hasThreads = typeof Worker !== 'undefined';
  let isStopped = false;
  let breakDown: (() => void) | null = null;

  function inThread(question: Question): Promise<Answer> {
    return new Promise((resolve, reject) => {
      thread ??= open();
      thread.onmessage = ({ data }: MessageEvent<Answer>) => resolve(data);
      thread.onerror = thread.onmessageerror = () => reject(new Error('the thread broke down'));
      breakDown = () => reject(new Error('stopped'));
      thread.postMessage(question);
    });
  }

  return {
    solve: async (question) => {
      if (hasThreads) {
        try {
          return await inThread(question);
        } catch {
          thread?.terminate();
          thread = null;
          hasThreads = false;
        }
      }
      return whileIdle(inPieces(question), () => isStopped);
    },
    stop: () => {
      isStopped = true;
      thread?.terminate();
      thread = null;
      breakDown?.();
    },
  };
}

/** Milliseconds of work at a time where a browser does not tell when it is idle. */
const PIECE = 8;

/** Goes on with work whenever there is nothing else to do, a piece at least. Once stopped, it never ends. */
export function whileIdle<Answer>(
  work: InPieces<Answer>,
  isStopped: () => boolean = () => false,
): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const goOn = (hasTime: () => boolean): void => {
      try {
        do {
          const piece = work.next();
          if (piece.done === true) {
            resolve(piece.value);
            return;
          }
        } while (hasTime());
        next();
      } catch (error) {
        reject(error instanceof Error ? error : new Error(String(error)));
      }
    };
    const next = (): void => {
      if (isStopped()) return;
      if (typeof requestIdleCallback === 'function') {
        requestIdleCallback((deadline) => goOn(() => deadline.timeRemaining() > 1), {
          timeout: 200,
        });
        return;
      }
      setTimeout(() => {
        const end = performance.now() + PIECE;
        goOn(() => performance.now() < end);
      });
    };
    next();
  });
}
