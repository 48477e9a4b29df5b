import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  defaultLayer,
  layerRanges,
  type LayerSetting,
} from '../../../sims/benches/two-curves/layer.ts';
import { pairAt, pairFrom } from '../../../sims/benches/two-curves/pair.ts';
import {
  defaultPair,
  type Change,
  type Held,
  type PairSetting,
} from '../../../sims/benches/two-curves/pair-ranges.ts';
import { whyWords } from '../../../sims/benches/two-curves/reasons.ts';
import {
  mismatches,
  pressureRow,
  pressureRows,
  shapeRow,
  shapeRows,
} from '../../../sims/benches/two-curves/sweep.ts';
import { curvesTable } from '../../../sims/benches/two-curves/table.ts';
import { hertzContact } from '../../../sims/mechanics/index.ts';
import { expectClose } from '../geometry/close.ts';
import { layerContact } from '../mechanics/layer-oracle.ts';

const ways: readonly (readonly [Change, Held])[] = [
  ['socket', 'width'],
  ['socket', 'depth'],
  ['socket', 'arc'],
  ['ball', 'width'],
  ['ball', 'depth'],
  ['ball', 'arc'],
];
/** The same conforming pair, 48 mm and 28 mm, said in each way. */
const conforming = (change: Change, held: Held): PairSetting => {
  const { shape } = pairFrom({ ...defaultPair, mismatch: 0 });
  return { ...defaultPair, change, held, radius: 24, mismatch: 0, ...shape };
};
const peakAt = (change: Change, held: Held, mismatch: number): number =>
  shapeRow(pairAt(conforming(change, held), mismatch)).peakRatio;

describe('the same mismatch made in different ways', () => {
  test('by hand: 3 mm radial from 48 mm and 28 mm', () => {
    const { play, peakRatio, depth } = shapeRow(pairAt(conforming('socket', 'width'), 3));
    // sin β = 14/27: depth 27 − √(27² − 14²), play 3 · 14/27, peak 14/√(27² − 14²).
    const rise = Math.sqrt(27 ** 2 - 14 ** 2);
    expectClose(depth, 27 - rise, { relative: 1e-12 });
    expectClose(play, 42 / 27, { relative: 1e-12 });
    expectClose(peakRatio, 14 / rise, { relative: 1e-12 });
  });

  test('the peak falls most at a held width, less at a held depth, and not at all at a held arc or for a smaller ball', () => {
    for (const mismatch of [1, 3, 6, 9]) {
      const start = peakAt('socket', 'width', 0);
      const [width, depth, arc] = [
        peakAt('socket', 'width', mismatch),
        peakAt('socket', 'depth', mismatch),
        peakAt('socket', 'arc', mismatch),
      ];
      expect(width).toBeLessThan(depth);
      expect(depth).toBeLessThan(start);
      expectClose(arc, start, { relative: 1e-12 });
      for (const held of ['width', 'depth', 'arc'] as const) {
        expectClose(peakAt('ball', held, mismatch), start, { relative: 1e-12 });
      }
    }
  });

  test.each(ways)(
    'changing the %s with the %s held, play grows with every mismatch',
    (change, held) => {
      const rows = shapeRows(conforming(change, held));
      for (const [i, row] of rows.entries()) {
        if (i > 0) expect(row.play).toBeGreaterThan(rows[i - 1]?.play ?? Infinity);
      }
    },
  );

  test.each(ways)(
    'changing the %s with the %s held, the pressure rises with every mismatch',
    (change, held) => {
      const rows = pressureRows({ ...conforming(change, held), ...defaultLayer });
      for (const [i, { layer }] of rows.entries()) {
        if (i > 0) expect(layer).toBeGreaterThan(rows[i - 1]?.layer ?? Infinity);
      }
    },
  );
});

describe('the sentence that says why', () => {
  const said = (change: Change, held: Held, mismatch = 3): string =>
    whyWords(pairAt(conforming(change, held), mismatch)).replaceAll('\u00a0', ' ');

  test('differs by what is changed and held, and its numbers are those of the rows', () => {
    const texts = ways.slice(0, 4).map(([change, held]) => said(change, held));
    expect(new Set(texts).size).toBe(4);
    const { depth, peakRatio } = shapeRow(pairAt(conforming('socket', 'width'), 3));
    expect(texts[0]).toContain(`to ${depth.toFixed(2)} mm, and that costs stability`);
    expect(texts[0]).toContain(`from 0.72 to ${peakRatio.toFixed(2)}`);
    expect(texts[2]).toContain('0.72 whatever the mismatch');
    expect(texts[3]).toContain('to hold one or the other is the same');
  });

  test('without a mismatch it looks ahead to the greatest', () => {
    expect(said('socket', 'width', 0)).toContain('From no mismatch to 10.0 mm of it');
    expect(said('ball', 'width', 0)).toContain('From no mismatch to 9.0 mm of it');
  });

  test('never says one number of a fall twice: what falls, falls', () => {
    for (const [change, held] of ways)
      expect(said(change, held)).not.toMatch(/from ([\d.]+) to \1\b/);
  });
});

describe('the curves', () => {
  test('rise from the least mismatch to the greatest, both among their rows', () => {
    for (const [change, held] of ways) {
      const rows = mismatches(conforming(change, held));
      expect(rows[0]).toBe(0);
      expect(rows.at(-1)).toBe(change === 'socket' ? 10 : 9);
      for (const [i, row] of rows.entries())
        if (i > 0) expect(row).toBeGreaterThan(rows[i - 1] ?? NaN);
    }
  });

  test('the table says radial and diametral, one twice the other, and no number is missing', () => {
    const { header, rows } = curvesTable({ ...defaultPair, ...defaultLayer }, 11);
    expect(header.slice(0, 2)).toEqual(['radial mismatch (mm)', 'diametral mismatch (mm)']);
    for (const row of rows) {
      expect(row).toHaveLength(header.length);
      expect(row[1]).toBe(2 * Number(row[0]));
    }
    expect(rows[0]?.at(-1)).toBe('none');
    const rise = Math.sqrt(27 ** 2 - 14 ** 2);
    const byHand = [27 - rise, (360 / Math.PI) * Math.asin(14 / 27), 42 / 27, 14 / rise];
    expect(rows[3]?.slice(0, 5)).toEqual([3, 6, 27, 24, 28]);
    expect(rows[3]?.slice(5, 9)).toEqual(byHand.map((value) => Number(value.toFixed(5))));
  });
});

describe('the pressure', () => {
  const layers: fc.Arbitrary<LayerSetting> = fc.record({
    load: fc.double({ min: layerRanges.load.min, max: layerRanges.load.max, noNaN: true }),
    thickness: fc.double({
      min: layerRanges.thickness.min,
      max: layerRanges.thickness.max,
      noNaN: true,
    }),
    modulus: fc.double({ min: layerRanges.modulus.min, max: layerRanges.modulus.max, noNaN: true }),
    poisson: fc.double({ min: layerRanges.poisson.min, max: layerRanges.poisson.max, noNaN: true }),
  });

  test('with the ball centred every layer of the controls carries every load of theirs', () => {
    fc.assert(
      fc.property(layers, fc.double({ min: 0, max: 10, noNaN: true }), (layer, mismatch) => {
        expect(pressureRow(pairAt(defaultPair, mismatch), layer).layer).toBeGreaterThan(0);
      }),
    );
  });

  /*
   * The band between the two closed forms is said to hold the peak of a real layer, bonded to its backing, within a tenth.
   * Patch radii over thicknesses as the controls give them where Hertz is told at all.
   */
  test.each([0.3, 0.35, 0.4, 0.46, 0.49])('ν = %d: the exact layer lies in the band', (poisson) => {
    const [thickness, modulus, ballRadius, socketRadius] = [4, 690, 24, 27];
    const effectiveRadius = ballRadius / (1 - ballRadius / socketRadius);
    for (const patch of [0.15, 0.4, 0.6, 0.8, 1, 1.3, 1.8, 2.5, 3.5]) {
      const exact = layerContact({
        contactRadius: patch * thickness,
        thickness,
        modulus,
        poisson,
        effectiveRadius,
      });
      const { hertz, thinLayer } = hertzContact({
        ...{ ballRadius, socketRadius, modulus, poisson, thickness },
        load: exact.load,
      });
      const ends = [hertz?.peakPressure ?? NaN, thinLayer?.peakPressure ?? NaN];
      expect(exact.peakPressure).toBeGreaterThan(0.9 * Math.min(...ends));
      expect(exact.peakPressure).toBeLessThan(1.1 * Math.max(...ends));
    }
  });
});
