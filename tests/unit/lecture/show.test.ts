import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { after, opening, within, type Deed, type Show } from '../../../site/lecture/show.ts';

const builds = [0, 2, 1];
const now = 1000;
const at = (step: number, build: number): Show => ({ ...opening, step, build });
const place = ({ step, build }: Show): readonly [number, number] => [step, build];

const anyBuilds = fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 1, maxLength: 12 });
const anyDeeds = fc.array(
  fc.constantFrom<Deed>('forward', 'back', 'first', 'last', 'dark', 'restart-clock'),
);

describe('after', () => {
  it('goes forward through every build of every step, and stays at the end', () => {
    const places = [[0, 0]];
    let show: Show = opening;
    for (let i = 0; i < 7; i++) {
      show = after(show, 'forward', builds, now);
      places.push([...place(show)]);
    }
    expect(places).toEqual([
      [0, 0],
      [1, 0],
      [1, 1],
      [1, 2],
      [2, 0],
      [2, 1],
      [2, 1],
      [2, 1],
    ]);
  });

  it('goes back into the step before with all its builds shown, and stays at the start', () => {
    expect(place(after(at(2, 0), 'back', builds, now))).toEqual([1, 2]);
    expect(place(after(at(0, 0), 'back', builds, now))).toEqual([0, 0]);
  });

  it('goes to both ends', () => {
    expect(place(after(at(1, 1), 'first', builds, now))).toEqual([0, 0]);
    expect(place(after(at(1, 1), 'last', builds, now))).toEqual([2, 1]);
  });

  it('in the dark, brings the light back and moves nothing', () => {
    const dark = after(at(1, 1), 'dark', builds, now);
    expect(dark.isDark).toBe(true);
    for (const deed of ['forward', 'back', 'first', 'last', 'dark'] as const) {
      expect(after(dark, deed, builds, now)).toEqual(at(1, 1));
    }
  });

  it('starts the clock at the first move forward, once, and again when told to', () => {
    const back = after(opening, 'back', builds, 1);
    expect(back.startedAt).toBeNull();
    const moved = after(back, 'forward', builds, 2);
    expect(moved.startedAt).toBe(2);
    expect(after(moved, 'forward', builds, 3).startedAt).toBe(2);
    expect(after(moved, 'restart-clock', builds, 4).startedAt).toBe(4);
  });

  it('never leaves the deck, whatever is pressed', () => {
    fc.assert(
      fc.property(anyBuilds, anyDeeds, (some, deeds) => {
        let show: Show = opening;
        for (const deed of deeds) show = after(show, deed, some, now);
        expect(within(show, some)).toEqual({ step: show.step, build: show.build });
      }),
    );
  });

  it('one back undoes one forward, except at the end', () => {
    fc.assert(
      fc.property(anyBuilds, fc.nat(60), (some, presses) => {
        let show: Show = opening;
        for (let i = 0; i < presses; i++) show = after(show, 'forward', some, now);
        const next = after(show, 'forward', some, now);
        fc.pre(place(next).join() !== place(show).join());
        expect(place(after(next, 'back', some, now))).toEqual(place(show));
      }),
    );
  });
});

describe('within', () => {
  it('keeps a place the deck has, and brings in one that it has not', () => {
    expect(within({ step: 1, build: 2 }, builds)).toEqual({ step: 1, build: 2 });
    expect(within({ step: 99, build: 99 }, builds)).toEqual({ step: 2, build: 1 });
    expect(within({ step: 0, build: 5 }, builds)).toEqual({ step: 0, build: 0 });
  });
});
