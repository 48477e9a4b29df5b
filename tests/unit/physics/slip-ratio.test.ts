import { describe, expect, test } from 'vitest';
import { peakStabilityRatio } from '../../../sims/geometry/index.ts';
import { describeCup, gridOfCups, pushCup, type GridCup } from './cups.ts';

/** A grid takes some 10 s on a free core. */
const TIME_LIMIT = 180_000;

interface Row {
  readonly cup: GridCup;
  readonly friction: number;
  readonly outcome: string;
  /** Measured against theory, −1 … */
  readonly error: number;
  readonly seconds: number;
}

function rowsOf(cups: readonly GridCup[], friction: number): readonly Row[] {
  return cups.map((cup) => {
    const { reading, seconds } = pushCup(cup, friction);
    const theory = peakStabilityRatio(cup.socket, friction);
    const error = (reading.slipRatio ?? NaN) / theory - 1;
    return { cup, friction, outcome: reading.push, error, seconds };
  });
}

/** Prints a grid's errors and returns them. */
function summary(
  name: string,
  rows: readonly Row[],
): { readonly mean: number; readonly worst: number } {
  const errors = rows.map(({ error }) => Math.abs(error));
  const mean = errors.reduce((sum, error) => sum + error, 0) / errors.length;
  const worst = Math.max(...errors);
  const where = rows.find(({ error }) => Math.abs(error) === worst);
  const seconds = rows.map((row) => row.seconds);
  const percent = (share: number): string => `${(100 * share).toFixed(2)} %`;
  process.stdout.write(
    `slip ratio, ${name}: ${rows.length} cups, mean error ${percent(mean)}, worst ${percent(worst)}` +
      ` (${where ? `${describeCup(where.cup)}, μ ${where.friction}` : 'none'}),` +
      ` ${Math.min(...seconds).toFixed(1)} to ${Math.max(...seconds).toFixed(1)} s a push\n`,
  );
  return { mean, worst };
}

describe('slip ratio measured by a push', () => {
  const cups = gridOfCups();

  test('the grid covers what it claims', () => {
    const degrees = cups.map(({ socket }) => (socket.halfArc * 180) / Math.PI);
    const conforming = cups.filter(
      ({ socket, ballRadius }) => socket.curvatureRadius === ballRadius,
    );
    expect(cups.length).toBeGreaterThanOrEqual(60);
    expect(conforming.length).toBeGreaterThanOrEqual(10);
    expect(Math.min(...degrees)).toBeLessThan(3);
    expect(Math.max(...degrees)).toBeGreaterThan(54);
  });

  test(
    'without friction: tan β within 3 % everywhere, within 1 % in fact',
    () => {
      const rows = rowsOf(cups, 0);
      const { mean, worst } = summary('no friction', rows);
      expect(rows.filter(({ outcome }) => outcome !== 'slipped')).toEqual([]);
      expect(worst).toBeLessThan(0.01);
      expect(mean).toBeLessThan(0.003);
      for (const { seconds } of rows) {
        expect(seconds).toBeGreaterThan(2);
        expect(seconds).toBeLessThan(9);
      }
    },
    TIME_LIMIT,
  );

  test(
    'with Coulomb friction 0.05 to 0.3: tan(β + λ) within 5 % everywhere, within 1.5 % in fact',
    () => {
      const rows = [0.05, 0.1, 0.2, 0.3].flatMap((friction, i) =>
        rowsOf(
          cups.filter((_, k) => k % 4 === i),
          friction,
        ),
      );
      const deepest = cups.filter(({ socket }) => socket.halfArc > 0.9);
      const all = [...rows, ...rowsOf(deepest, 0.3)];
      const { mean, worst } = summary('friction 0.05 to 0.3', all);
      expect(all.filter(({ outcome }) => outcome !== 'slipped')).toEqual([]);
      expect(worst).toBeLessThan(0.015);
      expect(mean).toBeLessThan(0.004);
    },
    TIME_LIMIT,
  );
});
