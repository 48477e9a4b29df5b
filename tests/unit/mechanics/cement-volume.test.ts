import fc from 'fast-check';
import type { ManifoldToplevel } from 'manifold-3d';
import { beforeAll, describe, expect, test } from 'vitest';
import {
  cementVolume,
  type CementDesign,
  type CementedKeel,
  type CementedPeg,
} from '../../../sims/mechanics/index.ts';
import { expectClose } from '../geometry/close.ts';
import { loadKernel } from '../geometry/solid-face.ts';
import { cementOfSolids } from './cement-solids.ts';

const peg: CementedPeg = { x: 0, y: 0, diameter: 5, length: 10, tip: 'flat', gap: 0.5 };
const keel: CementedKeel = { x: 0, y: 0, length: 20, thickness: 4, height: 11, gap: 1 };

/** Half a percent, most of it the flat sides of the kernel’s cylinders. */
const AGREEMENT = { relative: 0.005 };

describe('cementVolume', () => {
  test('cementVolume: a flat peg in its hole', () => {
    const { total, pegs, keel: none } = cementVolume({ pegs: [peg] });
    expectClose(total, Math.PI * (3 ** 2 * 10.5 - 2.5 ** 2 * 10), { relative: 1e-12 });
    expect(pegs[0]?.cement).toBe(total);
    expect(none).toBeNull();
  });

  test('cementVolume: without room round or beyond there is no cement, and nothing is no design', () => {
    expect(
      cementVolume({ pegs: [{ ...peg, gap: 0 }], keel: { ...keel, y: 40, gap: 0 } }).total,
    ).toBe(0);
    expect(cementVolume({}).total).toBe(0);
  });

  test('cementVolume: a straight keel in its slot', () => {
    const { total } = cementVolume({ keel, fitError: 0.25 });
    expectClose(total, 22.5 * 6.5 * 12.25 - 20 * 4 * 11, { relative: 1e-12 });
  });

  test('cementVolume: a small fit error adds a skin over all that is in the bone', () => {
    const skin = 1e-6;
    const at = (fitError: number): number =>
      cementVolume({ pegs: [{ ...peg, tip: 'round', gap: 0 }], fitError }).total;
    // A cylinder with half a ball: 2πrL.
    expectClose(at(skin) / skin, 2 * Math.PI * 2.5 * 10, { relative: 1e-5 });
  });

  test.each([
    ['fitError', { fitError: -0.1 }],
    ['diameter of peg 1', { pegs: [{ ...peg, diameter: 0 }] }],
    [
      'gap of peg 2',
      {
        pegs: [
          { ...peg, x: 30 },
          { ...peg, gap: NaN },
        ],
      },
    ],
    ['length of peg 1', { pegs: [{ ...peg, tip: 'round' as const, length: 2 }] }],
    ['length of peg 1', { pegs: [{ ...peg, length: 0 }] }],
    ['tipGap of peg 1', { pegs: [{ ...peg, tipGap: -1 }] }],
    ['holeEnd of peg 1', { pegs: [{ ...peg, holeEnd: 'round' as const }] }],
    [
      'depth of the hole of peg 1',
      { pegs: [{ ...peg, tip: 'round' as const, length: 2.5, gap: 3, tipGap: 0 }] },
    ],
    ['x of the keel', { keel: { ...keel, x: Infinity } }],
    ['height of the keel', { keel: { ...keel, height: -1 } }],
    ['tipLength of the keel', { keel: { ...keel, tipLength: 21 } }],
    ['tipThickness of the keel', { keel: { ...keel, tipThickness: 0 } }],
    ['distance of pegs 1 and 3', { pegs: [peg, { ...peg, x: 20 }, { ...peg, y: 5.9 }] }],
    ['distance of peg 1 and the slot of the keel', { keel, pegs: [{ ...peg, x: 5 }] }],
    [
      'distance of peg 1 and the slot of the keel',
      { keel, pegs: [{ ...peg, x: 6.3 }], fitError: 0.2 },
    ],
  ] as const)('cementVolume: refuses a wrong %s', (name, design) => {
    const wrong = (): unknown => cementVolume(design);
    expect(wrong).toThrow(RangeError);
    expect(wrong).toThrow(name);
  });

  test('cementVolume: holes may touch', () => {
    expect(cementVolume({ pegs: [peg, { ...peg, y: 6 }] }).pegs).toHaveLength(2);
    expect(cementVolume({ keel, pegs: [{ ...peg, x: 6 }] }).keel?.hole).toBeGreaterThan(0);
  });
});

describe('cementVolume against solids', () => {
  let kernel: ManifoldToplevel;
  beforeAll(async () => {
    kernel = await loadKernel();
  });

  const design: CementDesign = {
    pegs: [
      { ...peg, x: 0, y: 9, tip: 'round' },
      { ...peg, x: -5, y: -6, tipGap: 1.5 },
      { ...peg, x: 5, y: -6, tip: 'round', holeEnd: 'flat', gap: 1 },
    ],
    fitError: 0.2,
  };

  test.each([
    ['three pegs', design],
    ['a straight keel', { keel }],
    ['a keel that narrows', { keel: { ...keel, tipLength: 12, tipThickness: 2.5 }, fitError: 0.4 }],
    ['pegs and a keel', { ...design, keel: { ...keel, x: 22, tipThickness: 3 } }],
  ])('cementVolume: agrees with solids for %s', (_, given) => {
    expectClose(cementVolume(given).total, cementOfSolids(kernel, given), AGREEMENT);
  });

  test('cementVolume: agrees with solids for designs at random', () => {
    const size = (min: number, max: number): fc.Arbitrary<number> =>
      fc.double({ min, max, noNaN: true });
    const tips = fc.constantFrom(
      { tip: 'flat' } as const,
      { tip: 'round' } as const,
      { tip: 'round', holeEnd: 'flat' } as const,
    );
    const pegs = fc.record({
      diameter: size(3, 8),
      length: size(6, 15),
      gap: size(0.1, 2),
      tipGap: size(0.1, 3),
      end: tips,
    });
    const keels = fc.record({
      length: size(12, 24),
      thickness: size(3, 6),
      tipLength: size(6, 12),
      tipThickness: size(1, 3),
      height: size(6, 15),
      gap: size(0.1, 2),
      tipGap: size(0.1, 3),
    });
    fc.assert(
      fc.property(
        fc.array(pegs, { maxLength: 4 }),
        keels,
        size(0, 1),
        (several, plate, fitError) => {
          const given = {
            pegs: several.map(({ end, ...rest }, i) => ({
              ...rest,
              ...end,
              x: 16 * (i + 1),
              y: i,
            })),
            keel: { ...plate, x: -1, y: 2 },
            fitError,
          };
          expectClose(cementVolume(given).total, cementOfSolids(kernel, given), AGREEMENT);
        },
      ),
      { numRuns: 12 },
    );
  });
});
