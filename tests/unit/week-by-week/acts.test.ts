import { describe, expect, test } from 'vitest';
import { weekActs } from '../../../lessons/09-layers-and-bone/acts.ts';
import {
  dogs,
  failed,
  LIGHT,
  oneYear,
  pores,
  REST,
  rimShare,
  rimShareBefore,
  took,
  twoYears,
  undisturbed,
} from '../../../lessons/09-layers-and-bone/stage-layers.ts';
import {
  cellsOf,
  endOf,
  STAGE_PACE,
  weekAct,
  weekColumns,
} from '../../../sims/benches/week-by-week/acts.ts';
import { runOf } from '../../../sims/benches/week-by-week/run.ts';
import { MICROMETRES, WEEKS } from '../../../sims/benches/week-by-week/settings.ts';

const [light, twice, early, late, pegged] = weekActs;

describe('the half years of the lecture', () => {
  test.each(weekActs)('$text: its numbers are those of the bench', ({ setting, end }) => {
    const run = runOf(setting);
    expect(end).toEqual(endOf(setting, run));
    expect(end.share).toBe(run.weeks.at(-1)?.share);
    expect(end.motion).toBe(run.weeks[setting.rest]?.motion);
    expect(run.weeks.every(({ outcome }) => outcome === 'balanced')).toBe(true);
    expect(cellsOf(end)).toHaveLength(weekColumns.length);
  });

  test('C is the answer of the vote: twice the press moves twice as far and leaves a third', () => {
    expect([light.setting.press, twice.setting.press]).toEqual([LIGHT, 2 * LIGHT]);
    expect(twice.end.motion / light.end.motion).toBeCloseTo(2, 1);
    expect(twice.end.share / light.end.share).toBeCloseTo(1 / 3, 1);
  });

  test('each says what its press is there to show', () => {
    const answers = ({ setting }: typeof early) =>
      new Set(
        runOf(setting)
          .weeks.at(-1)
          ?.places.map(({ bone }) => bone),
      );
    expect(light.end.motion * MICROMETRES).toBeLessThan(light.setting.lower);
    expect(answers(light)).toEqual(new Set(['grows']));
    expect(answers(early)).toContain('is lost');
    expect(early.end.share).toBeLessThan(0.1);
    expect(late.setting).toEqual({ ...early.setting, rest: REST });
    expect(late.end.share).toBeGreaterThan(0.9 * light.end.share);
    expect(answers(late)).not.toContain('is lost');
    expect(pegged.setting).toEqual({ ...twice.setting, pegs: 'three' });
    expect(pegged.end.share).toBeCloseTo(light.end.share, 2);
  });

  test('rest does not save what is pressed hard near the rim', () => {
    expect(rimShareBefore).toBeGreaterThan(0.6);
    expect(rimShare).toBeLessThan(rimShareBefore / 3);
  });

  test('all weeks go by within five seconds, and where there is no motion there is a dash for it', () => {
    expect(WEEKS / STAGE_PACE).toBeLessThan(5);
    expect(cellsOf({ motion: Infinity, share: 0 })).toEqual(['–', '0']);
    expect(cellsOf(weekAct('rest', { press: 0 }).end)[0]).toBe('0');
  });
});

describe('what the slides after it draw', () => {
  test('in dogs bone ends below where fibrous tissue begins, and the review’s two overlap', () => {
    expect(dogs.joined).toBeLessThan(dogs.most);
    expect(dogs.mixed).toBeGreaterThan(dogs.most);
    expect(dogs.mixed).toBeLessThan(dogs.fibrous);
    expect(dogs.dense).toBe(dogs.fibrous);
    expect(took.from).toBe(0);
    expect(failed.from).toBeLessThan(took.to);
    expect(took.mean).toBeLessThan(failed.from);
  });

  test('the shoulders are whole ones', () => {
    expect(oneYear).toEqual({ all: 26, filled: 21 });
    expect(twoYears).toEqual({ all: 35, filled: 23 });
  });

  test('undisturbed filling passes through what its rates were set by', () => {
    const at = (week: number): number => 100 * (undisturbed[week] ?? NaN);
    expect(at(0)).toBe(0);
    expect(Math.abs(at(2) - pores.twoWeeks)).toBeLessThan(5);
    for (const [week, [low, high]] of [
      [4, pores.fourWeeks],
      [16, pores.later],
    ] as const) {
      expect(at(week)).toBeGreaterThan(low);
      expect(at(week)).toBeLessThan(high);
    }
  });
});
