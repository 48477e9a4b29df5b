import { describe, expect, it } from 'vitest';
import { oneActs, pairActs } from '../../../lessons/06-rim-load/acts.ts';
import { goingOver, kern, placeOf, placeWithFoot } from '../../../lessons/06-rim-load/seats.ts';
import {
  BEYOND,
  oneLevers,
  QUARTER,
  stood,
  twoLevers,
  worn,
} from '../../../lessons/06-rim-load/stage-seats.ts';
import { oneCells, pairCells, settingOf } from '../../../sims/benches/rocking-bench/acts.ts';
import { posedByTheory } from '../../../sims/benches/rocking-bench/posed.ts';
import { kernOf, seatOf } from '../../../sims/benches/rocking-bench/seat.ts';

/** Gaps of the simulation lie this near to the solver’s, and wear makes differences grow. */
const NEAR = 0.05;

const [middle, quarter, beyond, rim, pegged] = oneActs;
const [pressed, rocked, harder, wearing] = pairActs;
if (!middle || !quarter || !beyond || !rim || !pegged) throw new Error('five acts of one');
if (!pressed || !rocked || !harder || !wearing) throw new Error('four acts of two');
const first = (gaps: readonly number[]): number => gaps[0] ?? NaN;
const last = (gaps: readonly number[]): number => gaps.at(-1) ?? NaN;

describe('the acts of one socket', () => {
  it('lift nothing up to a quarter of the way, and the far edge beyond', () => {
    expect(middle.measured.a.gaps).toEqual([0]);
    expect(quarter.measured.a.gaps).toEqual([0]);
    expect(first(beyond.measured.a.gaps)).toBeGreaterThan(0.05);
  });

  it('a quarter of the way is where the line of the press meets the edge of the kern', () => {
    expect(kern).toBe(kernOf(settingOf({ change: {} })));
    expect(placeOf(QUARTER).foot).toBeLessThanOrEqual(kern);
    expect(kern - placeOf(QUARTER).foot).toBeLessThan(0.05);
    expect(placeOf(BEYOND).foot).toBeGreaterThan(kern);
    for (const [share, lifts] of [
      [0.97, false],
      [1.1, true],
    ] as const) {
      const gap = stood(placeWithFoot(share * kern).place).posed.liftOff;
      expect(gap > 1e-5, `${share} of the kern`).toBe(lifts);
    }
  });

  it('a bare back tips at the rim, where the line is off it, and one peg holds it', () => {
    expect(goingOver.place).toBeLessThan(100);
    expect(oneCells(rim.measured.a)).toEqual(['tips', '–']);
    expect(pegged.measured.a.state).toBe('at rest');
    expect(oneCells(pegged.measured.a)[0]).toMatch(/^\d+\u00a0µm$/);
  });

  it.each(oneActs.filter((act) => act !== rim).map((act) => [act.text, act] as const))(
    '%s: the simulation is as near to the solver as is said',
    (_, { change, measured }) => {
      const setting = settingOf({ change });
      const { liftOff, pressIn } = posedByTheory(setting, seatOf(setting, setting.a));
      expect(Math.abs(first(measured.a.gaps) - liftOff)).toBeLessThanOrEqual(NEAR * liftOff);
      expect(Math.abs(measured.a.pressIn - pressIn)).toBeLessThanOrEqual(NEAR * pressIn);
    },
  );
});

describe('the levers of a peg', () => {
  it.each([
    ['one', oneLevers],
    ['two', twoLevers],
  ] as const)(
    '%s: load and pull balance about the middle of what presses, to 6 %%',
    (_, levers) => {
      const turns = levers.setting.press * levers.loadLever;
      expect(Math.abs((levers.pull * levers.pullLever) / turns - 1)).toBeLessThan(0.06);
    },
  );

  it('the far one of two has the longer lever, is pulled less, and the gap is smaller', () => {
    expect(twoLevers.pullLever).toBeGreaterThan(oneLevers.pullLever);
    expect(twoLevers.pull).toBeLessThan(oneLevers.pull);
    expect(twoLevers.posed.liftOff).toBeLessThan(oneLevers.posed.liftOff);
  });
});

describe('the acts of two sockets', () => {
  it('held, neither gap grows as they are rocked', () => {
    for (const name of ['a', 'b'] as const) {
      const { gaps } = rocked.measured[name];
      expect(gaps.length).toBeGreaterThan(4);
      for (const gap of gaps) {
        expect(Math.abs(gap / first(pressed.measured[name].gaps) - 1)).toBeLessThan(1e-3);
      }
    }
  });

  it('slipping makes the gap of one peg larger once; wear makes it grow', () => {
    const slips = harder.measured.a.gaps;
    expect(first(slips)).toBeGreaterThan(1.6 * last(rocked.measured.a.gaps));
    expect(Math.abs(last(slips) / first(slips) - 1)).toBeLessThan(1e-3);
    const wears = wearing.measured.a.gaps;
    expect(wears).toEqual(wears.toSorted((a, b) => a - b));
    expect(last(wears)).toBeGreaterThan(1.4 * first(wears));
    expect(pairCells(wearing.measured)).toEqual([
      expect.stringMatching(/^1\.\d\d\u00a0mm$/),
      expect.stringMatching(/^2\d\d\u00a0µm$/),
    ]);
  });

  it('worn, every gap is as near to the solver as is said', () => {
    expect(worn.gaps).toHaveLength(worn.solved.length);
    worn.gaps.forEach((gap, i) => {
      expect(Math.abs(gap / (worn.solved[i] ?? NaN) - 1)).toBeLessThan(NEAR);
    });
    expect(worn.gaps).toEqual(wearing.measured.a.gaps);
  });
});
