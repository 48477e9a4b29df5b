import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  conduct,
  type ConductBoundary,
  type ConductLayer,
  type Conduction,
} from '../../../sims/mechanics/index.ts';

const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true });
/** Evenly over its powers of ten. */
const power = (min: number, max: number): fc.Arbitrary<number> =>
  between(Math.log(min), Math.log(max)).map(Math.exp);

const layer: fc.Arbitrary<ConductLayer> = fc.record({
  thickness: power(0.1, 20),
  conductivity: power(1e-5, 0.4),
  volumetricHeat: power(1e-4, 1e-2),
  initialTemperature: between(-50, 120),
});
const end: fc.Arbitrary<ConductBoundary> = fc.oneof(
  between(-50, 120).map((temperature) => ({ temperature })),
  fc.constant({ insulated: true } as const),
  fc.record({ film: fc.oneof(fc.constant(0), power(1e-7, 1)), ambient: between(-50, 120) }),
);
const question = fc.record({
  layers: fc.array(layer, { minLength: 1, maxLength: 5 }),
  boundary: fc.record({ left: end, right: end }),
  duration: power(0.1, 1e6),
  cell: power(0.05, 5),
});
/** With so many steps, and perhaps as shells. */
const asked = fc
  .tuple(question, fc.integer({ min: 1, max: 40 }), fc.option(between(0, 10), { nil: undefined }))
  .map(([rest, steps, innerRadius]) => ({ ...rest, step: rest.duration / steps, innerRadius }));

const heats = fc.array(between(-2e-2, 2e-2), { minLength: 5, maxLength: 5 });

/** Share of the heat released that its sum may be off by. */
const ROUNDING = 1e-11;

function temperaturesOf(boundary: ConductBoundary): readonly number[] {
  if ('temperature' in boundary) return [boundary.temperature];
  return 'film' in boundary && boundary.film > 0 ? [boundary.ambient] : [];
}

test('conduct: without sources nothing leaves the range it began in, whatever the step', () => {
  fc.assert(
    fc.property(asked, (given) => {
      const known = [
        ...given.layers.map(({ initialTemperature }) => initialTemperature),
        ...temperaturesOf(given.boundary.left),
        ...temperaturesOf(given.boundary.right),
      ];
      const [low, high] = [Math.min(...known), Math.max(...known)];
      const { temperatures, faces } = conduct(given);
      for (const row of [...temperatures, ...faces.map((one) => one.temperatures)]) {
        expect(Math.min(...row)).toBeGreaterThanOrEqual(low - 1e-9);
        expect(Math.max(...row)).toBeLessThanOrEqual(high + 1e-9);
      }
    }),
    { numRuns: 300 },
  );
});

test('conduct: heat is neither lost nor made', () => {
  fc.assert(
    fc.property(asked, heats, (given, sources) => {
      const run = conduct({
        ...given,
        layers: given.layers.map((one, i) => ({ ...one, source: sources[i] ?? 0 })),
      });
      const { released, entered, stored } = run.heat;
      const missing = released + entered.left + entered.right - stored;
      expect(Math.abs(missing)).toBeLessThanOrEqual(roundingOf(given, run));
    }),
    { numRuns: 200 },
  );
});

/** What rounding may take from a balance of heat, of all the warmth there is and of all that could pass an end. */
function roundingOf(
  { layers, duration, cell }: { layers: readonly ConductLayer[]; duration: number; cell: number },
  { temperatures, faces, heat }: Conduction,
): number {
  const hottest = Math.max(1e-9, ...temperatures.map((row) => Math.max(...row.map(Math.abs))));
  // Shells of up to 10 mm inside have the greatest faces.
  const around = 2 * Math.PI * (10 + (faces.at(-1)?.depth ?? 0));
  const warmth = layers.reduce((all, one) => all + one.volumetricHeat * one.thickness, 0);
  const ways = layers.map((one) => (4 * one.conductivity) / Math.min(cell, one.thickness));
  const passing = Math.max(...ways) * duration;
  return ROUNDING * Math.abs(heat.released) + hottest * around * (1e-11 * warmth + 1e-14 * passing);
}

test('conduct: the mirror image of a question has the mirror image of its answer', () => {
  fc.assert(
    fc.property(question, fc.integer({ min: 1, max: 40 }), (given, steps) => {
      const step = given.duration / steps;
      const there = conduct({ ...given, step });
      const back = conduct({
        ...given,
        step,
        layers: given.layers.toReversed(),
        boundary: { left: given.boundary.right, right: given.boundary.left },
      });
      there.temperatures.forEach((row, n) => {
        const mirrored = back.temperatures[n]?.toReversed() ?? row;
        const off = row.map((temperature, i) => Math.abs(temperature - (mirrored[i] ?? NaN)));
        expect(Math.max(...off)).toBeLessThan(1e-7);
      });
      expect(back.heat.entered.left).toBeCloseTo(there.heat.entered.right, 6);
    }),
    { numRuns: 150 },
  );
});

test('conduct: what is as warm as all round it stays so', () => {
  fc.assert(
    fc.property(asked, between(-50, 120), (given, temperature) => {
      const same = (boundary: ConductBoundary): ConductBoundary => {
        if ('temperature' in boundary) return { temperature };
        return 'film' in boundary ? { film: boundary.film, ambient: temperature } : boundary;
      };
      const { temperatures } = conduct({
        ...given,
        layers: given.layers.map((one) => ({ ...one, initialTemperature: temperature })),
        boundary: { left: same(given.boundary.left), right: same(given.boundary.right) },
      });
      for (const row of temperatures) {
        expect(Math.max(...row.map((value) => Math.abs(value - temperature)))).toBeLessThan(1e-9);
      }
    }),
    { numRuns: 100 },
  );
});

test('conduct: a layer cut in two is one layer', () => {
  fc.assert(
    fc.property(asked, (given) => {
      const [first, ...others] = given.layers;
      if (first === undefined) return;
      const cells = Math.max(1, Math.ceil((first.thickness / given.cell) * (1 - 1e-9)));
      // Cut between two cells, so that both have the same.
      const half = { ...first, thickness: first.thickness / 2 };
      const whole = conduct({
        ...given,
        layers: given.layers,
        cell: first.thickness / (2 * cells),
      });
      const halves = conduct({
        ...given,
        layers: [half, half, ...others],
        cell: first.thickness / (2 * cells),
      });
      whole.temperatures.at(-1)?.forEach((temperature, i) => {
        const same = halves.temperatures.at(-1)?.[i] ?? NaN;
        expect(Math.abs(temperature - same)).toBeLessThan(1e-7);
      });
    }),
    { numRuns: 100 },
  );
});
