import { afterEach, describe, expect, test, vi } from 'vitest';
import { besideThePage, whileIdle, type InPieces } from '../../../sims/shared/beside.ts';

afterEach(() => {
  vi.unstubAllGlobals();
});

function* squares(count: number, seen: number[] = []): InPieces<number> {
  let sum = 0;
  for (let i = 1; i <= count; i++) {
    seen.push(i);
    sum += i * i;
    yield;
  }
  return sum;
}

/** A thread that answers, breaks down, or does neither. */
class Thread {
  onmessage: ((event: { data: unknown }) => void) | null = null;
  onerror: (() => void) | null = null;
  readonly terminate = vi.fn();
  readonly #answer: (question: number) => unknown;
  constructor(answer: (question: number) => unknown) {
    this.#answer = answer;
  }
  postMessage(question: number): void {
    setTimeout(() => {
      try {
        const data = this.#answer(question);
        if (data !== undefined) this.onmessage?.({ data });
      } catch {
        this.onerror?.();
      }
    });
  }
}
const opened = (thread: Thread) => vi.fn(() => thread as unknown as Worker);

describe('work beside the page', () => {
  test('is done by one thread, opened with the first question', async () => {
    vi.stubGlobal('Worker', Thread);
    const open = opened(new Thread((n) => n + 0.5));
    const { solve } = besideThePage<number, number>(open, squares);
    expect(open).not.toHaveBeenCalled();
    expect([await solve(3), await solve(4)]).toEqual([3.5, 4.5]);
    expect(open).toHaveBeenCalledOnce();
  });

  test('is done by the page where there are no threads', async () => {
    vi.stubGlobal('Worker', undefined);
    const open = opened(new Thread(() => 0));
    expect(await besideThePage<number, number>(open, squares).solve(3)).toBe(14);
    expect(open).not.toHaveBeenCalled();
  });

  test.each([
    [
      'cannot be opened',
      () => {
        throw new Error('not allowed here');
      },
      0,
    ],
    ['breaks down', undefined, 1],
  ])('is done by the page from then on where a thread %s', async (_, opening, terminated) => {
    vi.stubGlobal('Worker', Thread);
    const thread = new Thread(() => {
      throw new Error('broken');
    });
    const open = vi.fn(opening ?? opened(thread));
    const { solve } = besideThePage<number, number>(open, squares);
    expect([await solve(3), await solve(2)]).toEqual([14, 5]);
    expect(open).toHaveBeenCalledOnce();
    expect(thread.terminate).toHaveBeenCalledTimes(terminated);
  });

  test('once stopped ends the thread and goes on nowhere', async () => {
    vi.stubGlobal('Worker', Thread);
    const thread = new Thread(() => undefined);
    const seen: number[] = [];
    const { solve, stop } = besideThePage<number, number>(opened(thread), (n) => squares(n, seen));
    const answered = vi.fn();
    void solve(3).then(answered, answered);
    stop();
    await new Promise((done) => setTimeout(done, 20));
    expect(thread.terminate).toHaveBeenCalled();
    expect(answered).not.toHaveBeenCalled();
    expect(seen).toEqual([]);
  });
});

describe('work while the page is idle', () => {
  test('lets others have their turn between pieces, and ends with the answer', async () => {
    const turns: string[] = [];
    vi.stubGlobal('requestIdleCallback', (call: (deadline: object) => void) => {
      turns.push('idle');
      setTimeout(() => call({ timeRemaining: () => 0 }));
    });
    expect(await whileIdle(squares(3))).toBe(14);
    expect(turns).toEqual(['idle', 'idle', 'idle', 'idle']);
  });

  test('hands on what goes wrong', async () => {
    // eslint-disable-next-line require-yield -- it fails before its first piece
    const failing = (function* (): InPieces<number> {
      throw new RangeError('backRadius is 3');
    })();
    await expect(whileIdle(failing)).rejects.toThrow('backRadius is 3');
  });
});
