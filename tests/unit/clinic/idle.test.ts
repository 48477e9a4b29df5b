import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { ANSWER, QUIET, watchIdle } from '../../../site/clinic/idle.ts';

class MoveEvent extends Event {
  readonly movementX: number;
  readonly movementY = 0;
  constructor(movementX: number) {
    super('pointermove');
    this.movementX = movementX;
  }
}

describe('a screen left alone', () => {
  let page: EventTarget & { hidden: boolean };
  let screen: EventTarget;
  let isAtStart: boolean;
  let told: string[];
  let stop: () => void;

  beforeEach(() => {
    vi.useFakeTimers();
    page = Object.assign(new EventTarget(), { hidden: false });
    screen = new EventTarget();
    vi.stubGlobal('document', page);
    vi.stubGlobal('window', screen);
    vi.stubGlobal('PointerEvent', MoveEvent);
    isAtStart = false;
    told = [];
    stop = watchIdle({
      isAtStart: () => isAtStart,
      warn: () => told.push('warn'),
      unwarn: (why) => told.push(`unwarn: ${why}`),
      reset: () => told.push('reset'),
    });
  });
  afterEach(() => {
    stop();
    vi.useRealTimers();
    vi.unstubAllGlobals();
  });

  test('is warned, then goes back', () => {
    vi.advanceTimersByTime(QUIET - 1);
    expect(told).toEqual([]);
    vi.advanceTimersByTime(1);
    expect(told).toEqual(['warn']);
    vi.advanceTimersByTime(ANSWER - 1);
    expect(told).toEqual(['warn']);
    vi.advanceTimersByTime(1);
    expect(told).toEqual(['warn', 'unwarn: over', 'reset']);
  });

  test('the warning stands twenty seconds and the whole is ninety', () => {
    expect(ANSWER).toBeGreaterThanOrEqual(20_000);
    expect(QUIET + ANSWER).toBe(90_000);
  });

  test.each(['pointerdown', 'keydown', 'wheel', 'touchmove', 'scroll'])(
    '%s puts it off, twelve times running',
    (name) => {
      for (let i = 0; i < 12; i += 1) {
        vi.advanceTimersByTime(QUIET + ANSWER - 1);
        screen.dispatchEvent(new Event(name));
      }
      expect(told).not.toContain('reset');
      expect(told.filter((word) => word === 'unwarn: answered')).toHaveLength(12);
    },
  );

  test('a pointer that only seems to move, because the page moved, puts nothing off', () => {
    vi.advanceTimersByTime(QUIET);
    screen.dispatchEvent(new MoveEvent(0));
    expect(told).toEqual(['warn']);
    screen.dispatchEvent(new MoveEvent(3));
    expect(told).toEqual(['warn', 'unwarn: answered']);
  });

  test('at the start nothing is asked', () => {
    isAtStart = true;
    vi.advanceTimersByTime(10 * QUIET);
    expect(told).not.toContain('warn');
    expect(told).toContain('reset');
  });

  function hide(hidden: boolean): void {
    page.hidden = hidden;
    page.dispatchEvent(new Event('visibilitychange'));
  }

  test('asleep, it waits; woken late, it warns before it goes back', () => {
    hide(true);
    vi.advanceTimersByTime(10 * QUIET);
    expect(told).toEqual([]);
    hide(false);
    expect(told).toEqual(['warn']);
    vi.advanceTimersByTime(ANSWER);
    expect(told).toContain('reset');
  });

  test('asleep for a moment, it goes on counting', () => {
    vi.advanceTimersByTime(QUIET - 2000);
    hide(true);
    vi.advanceTimersByTime(1000);
    hide(false);
    vi.advanceTimersByTime(999);
    expect(told).toEqual([]);
    vi.advanceTimersByTime(1);
    expect(told).toEqual(['warn']);
  });

  test('put to sleep under the warning, it gives the whole time again', () => {
    vi.advanceTimersByTime(QUIET + ANSWER - 1);
    hide(true);
    vi.advanceTimersByTime(10 * ANSWER);
    hide(false);
    vi.advanceTimersByTime(ANSWER - 1);
    expect(told).toEqual(['warn']);
  });

  test('stopped, it says nothing more', () => {
    stop();
    vi.advanceTimersByTime(10 * QUIET);
    expect(told).toEqual([]);
  });
});
