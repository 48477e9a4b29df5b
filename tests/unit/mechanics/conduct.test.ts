import { describe, expect, test } from 'vitest';
import { conduct, type Conduction, type ConductLayer } from '../../../sims/mechanics/index.ts';
import { erf, rodMean, slabSeries } from './conduct-oracle.ts';

const insulated = { insulated: true } as const;
/** α = 0.1 mm²/s, about that of tissue. */
const stuff: ConductLayer = {
  thickness: 40,
  conductivity: 3e-4,
  volumetricHeat: 3e-3,
  initialTemperature: 20,
};
const diffusivity = 0.1;

const last = ({ temperatures }: Conduction): Float64Array =>
  temperatures.at(-1) ?? new Float64Array();
const sum = (values: ArrayLike<number>): number => Array.from(values).reduce((a, b) => a + b, 0);

describe('conduct against closed forms', () => {
  test('conduct: a half-space whose surface is cooled', () => {
    const { depths, times, temperatures } = conduct({
      layers: [stuff],
      boundary: { left: { temperature: 0 }, right: insulated },
      duration: 600,
      cell: 0.1,
      step: 1,
    });
    for (const n of [60, 200, 600]) {
      const width = 2 * Math.sqrt(diffusivity * (times[n] ?? NaN));
      depths.forEach((depth, i) => {
        expect(Math.abs((temperatures[n]?.[i] ?? NaN) - 20 * erf(depth / width))).toBeLessThan(
          0.02,
        );
      });
    }
  });

  test.each([0.05, 1, 20])('conduct: a slab with a film of Biot number %d', (biot) => {
    const half = 5;
    const { depths, times, temperatures, faces } = conduct({
      layers: [{ ...stuff, thickness: half, initialTemperature: 100 }],
      boundary: {
        left: insulated,
        right: { film: (biot * stuff.conductivity) / half, ambient: 10 },
      },
      duration: 500,
      cell: 0.05,
      step: 0.5,
    });
    for (const n of [100, 400, 1000]) {
      const fourier = (diffusivity * (times[n] ?? NaN)) / half ** 2;
      const exact = (depth: number): number => 10 + 90 * slabSeries(biot, fourier, depth / half);
      for (const i of [0, 30, 70, 99]) {
        expect(temperatures[n]?.[i]).toBeCloseTo(exact(depths[i] ?? NaN), 1);
      }
      expect(faces[1]?.temperatures[n]).toBeCloseTo(exact(half), 1);
    }
  });

  test.each([
    [3e-4, 3e-3, 1.8e-4, 1.5e-3],
    [13e-3, 3.8e-3, 1.9e-4, 1.5e-3],
    [1e-4, 1e-3, 0.4, 4e-3],
  ])('conduct: two half-spaces touch (k %d, ρc %d; k %d, ρc %d)', (k1, c1, k2, c2) => {
    const [b1, b2] = [Math.sqrt(k1 * c1), Math.sqrt(k2 * c2)];
    const thick = (k: number, c: number): number => 12 * Math.sqrt((k / c) * 40);
    const side = (conductivity: number, volumetricHeat: number, initialTemperature: number) => ({
      conductivity,
      volumetricHeat,
      initialTemperature,
      thickness: thick(conductivity, volumetricHeat),
    });
    const { faces } = conduct({
      layers: [side(k1, c1, 80), side(k2, c2, 10)],
      boundary: { left: insulated, right: insulated },
      duration: 40,
      cell: Math.min(thick(k1, c1), thick(k2, c2)) / 400,
      step: 0.2,
    });
    const between = (b1 * 80 + b2 * 10) / (b1 + b2);
    const history = faces[1]?.temperatures ?? new Float64Array();
    for (const temperature of history.subarray(20)) {
      expect(Math.abs(temperature - between)).toBeLessThan(0.002 * 70);
    }
  });

  test('conduct: a warm layer in an endless medium', () => {
    const half = 1.5;
    const { faces, times } = conduct({
      layers: [
        { ...stuff, thickness: 30, initialTemperature: 37 },
        { ...stuff, thickness: 2 * half, initialTemperature: 97 },
        { ...stuff, thickness: 30, initialTemperature: 37 },
      ],
      boundary: { left: insulated, right: insulated },
      duration: 200,
      cell: 0.05,
      step: 0.25,
    });
    for (const n of [20, 80, 300, 800]) {
      const exact = 37 + 30 * erf(half / Math.sqrt(diffusivity * (times[n] ?? NaN)));
      expect(faces[1]?.temperatures[n]).toBeCloseTo(exact, 1);
      expect(faces[2]?.temperatures[n]).toBeCloseTo(exact, 1);
    }
  });

  test('conduct: a rod whose surface is held', () => {
    const radius = 4;
    const run = conduct({
      layers: [{ ...stuff, thickness: radius, initialTemperature: 50 }],
      boundary: { left: { temperature: -1e6 }, right: { temperature: 0 } },
      duration: 80,
      cell: 0.04,
      step: 0.2,
      innerRadius: 0,
    });
    for (const n of [60, 150, 400]) {
      const { depths, times, temperatures } = run;
      const mean = sum(depths.map((r, i) => r * (temperatures[n]?.[i] ?? NaN))) / sum(depths);
      const exact = 50 * rodMean((diffusivity * (times[n] ?? NaN)) / radius ** 2);
      expect(Math.abs(mean - exact)).toBeLessThan(0.02);
    }
    expect(run.heat.entered.left).toBe(0);
  });
});

describe('conduct at rest', () => {
  const layers = [
    { ...stuff, thickness: 3, conductivity: 4e-4 },
    { ...stuff, thickness: 1.3, conductivity: 1.9e-4 },
    { ...stuff, thickness: 8, conductivity: 2.9e-4 },
  ];
  const boundary = { left: { film: 2e-5, ambient: 100 }, right: { temperature: 5 } };
  const atRest = { layers, boundary, duration: 1e7, cell: 0.4, step: 1e5 };

  test('conduct: flat layers share the fall by their resistances', () => {
    const resistances = [1 / 2e-5, 3 / 4e-4, 1.3 / 1.9e-4, 8 / 2.9e-4];
    const fluxOf = 95 / sum(resistances);
    const { faces } = conduct(atRest);
    let temperature = 100;
    faces.forEach(({ temperatures }, i) => {
      temperature -= fluxOf * (resistances[i] ?? NaN);
      expect(temperatures.at(-1)).toBeCloseTo(temperature, 8);
    });
  });

  test('conduct: shells share it by logarithms', () => {
    const inner = 2.5;
    const radii = [2.5, 5.5, 6.8, 14.8];
    const resistances = layers.map(
      ({ conductivity }, i) =>
        Math.log((radii[i + 1] ?? NaN) / (radii[i] ?? NaN)) / (2 * Math.PI * conductivity),
    );
    const film = 1 / (2e-5 * 2 * Math.PI * inner);
    const flow = 95 / (film + sum(resistances));
    const { faces, heat } = conduct({ ...atRest, innerRadius: inner });
    let temperature = 100 - flow * film;
    [0, ...resistances].forEach((resistance, i) => {
      temperature -= flow * resistance;
      expect(faces[i]?.temperatures.at(-1)).toBeCloseTo(temperature, 8);
    });
    expect(heat.entered.left / 1e7).toBeCloseTo(flow, 2);
  });

  test('conduct: a steady source makes a parabola', () => {
    const thickness = 6;
    const source = 2e-5;
    const { depths, ...rest } = conduct({
      layers: [{ ...stuff, thickness, source }],
      boundary: { left: insulated, right: { temperature: 20 } },
      duration: 1e6,
      cell: 0.1,
      step: 1e4,
    });
    depths.forEach((depth, i) => {
      const exact = 20 + (source / (2 * stuff.conductivity)) * (thickness ** 2 - depth ** 2);
      expect(last({ depths, ...rest })[i]).toBeCloseTo(exact, 3);
    });
  });

  test.each([
    ['steady', 3e-3],
    ['rising and falling', (time: number) => 6e-3 * Math.sin((Math.PI * time) / 50) ** 2],
  ])('conduct: without a way out a %s source warms evenly', (_, source) => {
    const { temperatures, heat } = conduct({
      layers: [{ ...stuff, thickness: 2, source }],
      boundary: { left: insulated, right: { film: 0, ambient: -40 } },
      duration: 100,
      cell: 0.5,
      step: 4,
    });
    for (const temperature of temperatures.at(-1) ?? []) expect(temperature).toBeCloseTo(120, 5);
    expect(heat.released).toBeCloseTo(2 * 0.3, 8);
    expect(heat.entered).toStrictEqual({ left: 0, right: 0 });
  });
});

describe('conduct as its cells and steps shrink', () => {
  const half = 5;
  const biot = 2;
  const surface = (cell: number, step: number): number => {
    const { faces } = conduct({
      layers: [{ ...stuff, thickness: half, initialTemperature: 100 }],
      boundary: { left: insulated, right: { film: (biot * 3e-4) / half, ambient: 0 } },
      duration: 200,
      cell,
      step,
    });
    return faces[1]?.temperatures.at(-1) ?? NaN;
  };
  const exact = 100 * slabSeries(biot, (diffusivity * 200) / half ** 2, 1);
  const finest = surface(0.1, 0.2);

  test.each([
    ['cell', [1, 0.5, 0.25].map((cell) => surface(cell, 0.1) - exact)],
    ['step', [20, 10, 5].map((step) => surface(0.1, step) - finest)],
  ])('conduct: half the %s, a quarter of the error', (_, errors) => {
    for (const [i, error] of errors.slice(1).entries()) {
      const ratio = (errors[i] ?? NaN) / error;
      expect(ratio).toBeGreaterThan(3.5);
      expect(ratio).toBeLessThan(4.5);
    }
  });
});

describe('conduct in detail', () => {
  const question = {
    layers: [stuff],
    boundary: { left: insulated, right: insulated },
    duration: 10,
    cell: 1,
    step: 1,
  };

  test('conduct: cells and steps are no greater than asked for, and end where they should', () => {
    const { depths, times, temperatures, faces } = conduct({
      ...question,
      layers: [
        { ...stuff, thickness: 0.25 },
        { ...stuff, thickness: 0.3 },
      ],
      cell: 0.1,
      duration: 1,
      step: 0.3,
    });
    expect(depths).toHaveLength(6);
    expect(depths[3]).toBeCloseTo(0.3, 12);
    expect(times).toHaveLength(5);
    expect(times[4]).toBe(1);
    expect(temperatures).toHaveLength(5);
    const [left, touch, right] = faces.map(({ depth }) => depth);
    expect([left, touch]).toStrictEqual([0, 0.25]);
    expect(right).toBeCloseTo(0.55, 12);
  });

  test('conduct: a step as long as all the time neither rings nor leaves the range', () => {
    const { temperatures } = conduct({
      ...question,
      layers: [
        { ...stuff, thickness: 5, initialTemperature: 90 },
        { ...stuff, thickness: 5, initialTemperature: 10 },
      ],
      boundary: { left: { temperature: 90 }, right: { temperature: 10 } },
      duration: 1e9,
      step: 1e9,
    });
    temperatures.at(-1)?.forEach((temperature, i) => {
      expect(temperature).toBeCloseTo(86 - 8 * i, 4);
    });
  });

  test('conduct: a jump dies away without a swing back', () => {
    const { faces } = conduct({
      ...question,
      layers: [{ ...stuff, thickness: 20, initialTemperature: 100 }],
      boundary: { left: { film: 1e-3, ambient: 0 }, right: insulated },
      duration: 3000,
      step: 30,
      cell: 0.1,
    });
    const history = faces[0]?.temperatures ?? new Float64Array();
    history.slice(1).forEach((temperature, i) => {
      expect(temperature).toBeLessThan(history[i] ?? NaN);
      expect(temperature).toBeGreaterThan(0);
    });
  });

  test.each([
    ['layers', { layers: [] }],
    ['thickness of layer 1', { layers: [{ ...stuff, thickness: 0 }] }],
    ['conductivity of layer 2', { layers: [stuff, { ...stuff, conductivity: -1 }] }],
    ['volumetricHeat of layer 1', { layers: [{ ...stuff, volumetricHeat: NaN }] }],
    ['initialTemperature of layer 1', { layers: [{ ...stuff, initialTemperature: Infinity }] }],
    ['heat of the source of layer 1', { layers: [{ ...stuff, source: () => NaN }] }],
    [
      'temperature of the left boundary',
      { boundary: { left: { temperature: NaN }, right: insulated } },
    ],
    [
      'film of the right boundary',
      { boundary: { left: insulated, right: { film: -1, ambient: 0 } } },
    ],
    [
      'ambient of the right boundary',
      { boundary: { left: insulated, right: { film: 1, ambient: NaN } } },
    ],
    ['duration', { duration: 0 }],
    ['cell', { cell: 0 }],
    ['step', { step: -1 }],
    ['innerRadius', { innerRadius: -1 }],
    ['number of cells', { cell: 1e-6 }],
    ['number of temperatures', { cell: 0.001, step: 0.001 }],
  ])('conduct: refuses a wrong %s', (name, change) => {
    const wrong = (): unknown => conduct({ ...question, ...change });
    expect(wrong).toThrow(RangeError);
    expect(wrong).toThrow(name);
  });
});
