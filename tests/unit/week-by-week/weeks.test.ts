import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { describe as inWords, weekWords } from '../../../sims/benches/week-by-week/describe.ts';
import { layoutFor, LEAST_WIDTH } from '../../../sims/benches/week-by-week/layout.ts';
import { readingsOf } from '../../../sims/benches/week-by-week/readings.ts';
import { momentAt, mostly, runOf } from '../../../sims/benches/week-by-week/run.ts';
import {
  BACK,
  contactOf,
  FLUTED,
  loadOf,
  seatOf,
  socket,
  spaces,
} from '../../../sims/benches/week-by-week/seat.ts';
import {
  defaultWeek,
  ranges,
  SMALL_PEGS,
  weekFields,
  WEEKS,
  type WeekNumber,
  type WeekSetting,
} from '../../../sims/benches/week-by-week/settings.ts';
import { weeksTable } from '../../../sims/benches/week-by-week/table.ts';
import { boneNames, boneOf, peg } from '../../../sims/mechanics/index.ts';
import { nearestAllowed } from '../../../sims/shared/range.ts';
import { readUrlState, writeUrlState } from '../../../sims/shared/url-state.ts';
import { real } from '../geometry/arbitraries.ts';
import { expectClose } from '../geometry/close.ts';

const EXACT = { relative: 1e-9 };

const numberIn = (field: WeekNumber) =>
  real(ranges[field].min, ranges[field].max).map((value) => nearestAllowed(value, ranges[field]));
const settings: fc.Arbitrary<WeekSetting> = fc.record({
  press: numberIn('press'),
  place: numberIn('place'),
  rest: numberIn('rest'),
  pegs: fc.constantFrom(...SMALL_PEGS),
  bone: fc.constantFrom(...boneNames),
  lower: numberIn('lower'),
  upper: numberIn('upper'),
  week: numberIn('week'),
});
const shareAfter = (change: Partial<WeekSetting>): number =>
  runOf({ ...defaultWeek, ...change }).share;

describe('the seat', () => {
  test('the spaces together grip as the peg of the builder does', () => {
    const { elements, growing } = seatOf(defaultWeek);
    const [whole] = peg({
      x: 0,
      y: 0,
      diameter: FLUTED.diameter,
      length: FLUTED.length,
      kind: 'fluted press-fit',
      bone: boneOf(defaultWeek.bone),
      level: BACK,
    });
    expect(growing).toHaveLength(2 * FLUTED.spaces);
    const sum = (part: 'normalStiffness' | 'strength'): number =>
      growing.reduce((total, place) => total + (elements[place]?.[part] ?? NaN), 0);
    expectClose(sum('normalStiffness'), whole?.normalStiffness ?? NaN, EXACT);
    expectClose(sum('strength'), whole?.strength ?? NaN, EXACT);
  });

  test('spaces and discs fill the peg', () => {
    const oneSide = spaces.filter(({ side }) => side === 1);
    const open = oneSide.reduce((sum, { top, bottom }) => sum + top - bottom, 0);
    expectClose(open + FLUTED.spaces * FLUTED.disc, FLUTED.length, EXACT);
    expect(oneSide[0]?.top).toBe(BACK);
  });

  test('the ball pushes square to the surface', () => {
    for (const place of [0, 40, 95]) {
      const { force, point } = loadOf({ press: 100, place });
      const contact = contactOf(place);
      expect(point).toEqual([0, contact.y, contact.z]);
      // Toward the bone, away from the centre of the curve.
      const away = [contact.y, contact.z - socket.curvatureRadius] as const;
      expectClose(force[1] * away[1] - force[2] * away[0], 0, { absolute: 1e-9 });
      expect(force[2]).toBe(-100);
    }
  });
});

describe('the weeks', () => {
  test('a press in the middle lets bone grow; one at the rim does not', () => {
    const shares = [0, 60, 75, 90].map((place) => shareAfter({ place, pegs: 'none' }));
    expect(shares[0]).toBeGreaterThan(0.7);
    expect(shares.at(-1)).toBeLessThan(0.1);
    shares.slice(1).forEach((share, i) => expect(share).toBeLessThanOrEqual(shares[i] ?? NaN));
  });

  test('small pegs hold it still; weak bone does not', () => {
    const rim = { place: 80 };
    expect(shareAfter({ ...rim, pegs: 'three' })).toBeGreaterThan(
      shareAfter({ ...rim, pegs: 'none' }),
    );
    expect(shareAfter({ bone: 'foam grade 10' })).toBeLessThan(
      shareAfter({ bone: 'foam grade 30' }),
    );
  });

  test('rest first leads to more bone under the same load', () => {
    const early = { place: 60, pegs: 'none' } as const;
    expect(shareAfter({ ...early, rest: 6 })).toBeGreaterThan(shareAfter(early) + 0.2);
  });

  test('no load at all: bone grows as far as it can', () => {
    const { weeks, share } = runOf({ ...defaultWeek, press: 0 });
    expect(weeks.every(({ motion }) => motion === 0)).toBe(true);
    expectClose(share, 0.72, { absolute: 1e-3 });
  });
});

describe('a moment', () => {
  const run = runOf(defaultWeek);

  test('on a stroke it is that week’s end, between two of them between', () => {
    expect(momentAt(run, 0).share).toBe(0);
    for (const week of [1, 5, WEEKS]) {
      expectClose(momentAt(run, week).share, run.weeks[week - 1]?.share ?? NaN, EXACT);
      expect(momentAt(run, week).under?.week).toBe(week);
    }
    const [past, next] = [run.weeks[3]?.share ?? NaN, run.weeks[4]?.share ?? NaN];
    expectClose(momentAt(run, 4.25).share, past + 0.25 * (next - past), EXACT);
    expect(momentAt(run, 4.25).under?.week).toBe(5);
  });

  test('what bone mostly does is what it does at most places', () => {
    const place = { element: 0, motion: 0, share: 0 };
    const at = (...bones: readonly ('grows' | 'stays' | 'is lost')[]) =>
      mostly(bones.map((bone) => ({ ...place, bone })));
    expect(at('grows', 'stays', 'stays')).toBe('stays');
    expect(at('is lost', 'is lost', 'grows')).toBe('is lost');
  });
});

describe('what is shown', () => {
  test('everything a visitor can reach can be told', () => {
    fc.assert(
      fc.property(settings, (setting) => {
        const run = runOf(setting);
        const moment = momentAt(run, setting.week);
        for (const { value, note = '' } of readingsOf(setting, run, moment)) {
          expect(value + note).not.toMatch(/NaN|undefined|no limit/);
        }
        expect(inWords(setting, run)).not.toMatch(/NaN|undefined/);
        for (const share of moment.shares) {
          expect(share).toBeGreaterThanOrEqual(0);
          expect(share).toBeLessThanOrEqual(0.72);
        }
        expect(weeksTable(run).rows).toHaveLength(WEEKS);
      }),
      { numRuns: 25 },
    );
  });

  test('panels lie inside the picture', () => {
    fc.assert(
      fc.property(fc.integer({ min: LEAST_WIDTH, max: 1100 }), (width) => {
        const { height, cut, share, motion } = layoutFor(width);
        for (const { left, right, top, bottom } of [cut, share.box, motion.box]) {
          expect(left).toBeGreaterThanOrEqual(-1e-9);
          expect(right).toBeLessThanOrEqual(width + 1e-9);
          expect(bottom).toBeGreaterThan(top);
          expect(bottom).toBeLessThan(height);
        }
      }),
    );
  });

  test('words of a week', () => {
    const run = runOf({ ...defaultWeek, rest: 2 });
    expect(weekWords(0, run)).toBe('Before the first week: no bone between the flutes.');
    expect(weekWords(1, run)).toMatch(/^Week 1: nothing moves; bone grows in;/);
    expect(weekWords(5, run)).toMatch(/^Week 5: the spaces move by up to \d+.µm;/);
  });

  test('a link brings every setting back', () => {
    fc.assert(
      fc.property(settings, (setting) => {
        const { state, problem } = readUrlState(weekFields, writeUrlState(weekFields, setting));
        expect(problem).toBe('');
        expect(state).toEqual(setting);
      }),
    );
    expect(writeUrlState(weekFields, defaultWeek)).toBe('');
  });
});
