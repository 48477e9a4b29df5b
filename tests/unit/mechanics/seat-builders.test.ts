import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { face } from '../../../sims/geometry/index.ts';
import {
  flatBed,
  foundationModulus,
  keel,
  peg,
  solveSeat,
  sphericalBed,
  type HoldKind,
  type SeatElement,
} from '../../../sims/mechanics/index.ts';
import { expectClose } from '../geometry/close.ts';

const bone = { modulus: 200, poisson: 0.3 };
const layer = { thickness: 8, ...bone };
const sum = (elements: readonly SeatElement[], of: (element: SeatElement) => number): number =>
  elements.reduce((total, element) => total + of(element), 0);
/** Rows of elements stand for a curved edge to about this share of the area. */
const EDGE = 2e-3;

describe('a flat bed', () => {
  test.each([
    [{ kind: 'rectangle', width: 24, height: 33 }, 24 * 33],
    [{ kind: 'circle', width: 28 }, Math.PI * 14 ** 2],
    [{ kind: 'ellipse', width: 26, height: 36 }, Math.PI * 13 * 18],
    [
      { kind: 'pear', width: 26, height: 35 },
      face({
        outline: { kind: 'pear', width: 26, height: 35 },
        curvatureRadiusAP: 40,
        curvatureRadiusSI: 40,
      }).area,
    ],
  ] as const)('%o has the stiffness of its area', (outline, area) => {
    const bed = flatBed(outline, { layer, level: -4 });
    const found = sum(bed, ({ normalStiffness }) => normalStiffness) / foundationModulus(layer);
    expectClose(found, area, { relative: EDGE });
    expect(bed.length).toBeGreaterThan(1500);
    expect(bed.length).toBeLessThan(2500);
    expect(new Set(bed.map(({ position }) => position[2]))).toEqual(new Set([-4]));
  });

  test('holds by its bond: none, up to a strength, or at any pull; rough where it is bonded or told so', () => {
    const outline = { kind: 'rectangle', width: 20, height: 30 } as const;
    const [first] = flatBed(outline, { layer, level: 0 });
    expect(first).toMatchObject({ tension: 'none', tangentialStiffness: 0 });
    const bonded = flatBed(outline, { layer, level: 0, bond: 0.5 });
    expectClose(
      sum(bonded, ({ strength }) => strength ?? NaN),
      0.5 * 600,
      { relative: 1e-12 },
    );
    const shear = bone.modulus / 2.6 / layer.thickness;
    expectClose(
      sum(bonded, (element) => element.tangentialStiffness),
      shear * 600,
      {
        relative: 1e-12,
      },
    );
    const glued = flatBed(outline, { layer, level: 0, bond: Infinity, isRough: false });
    expect(glued[0]).toMatchObject({ tension: 'elastic', tangentialStiffness: 0 });
  });
});

describe('a round bed', () => {
  const outline = { kind: 'ellipse', width: 26, height: 34 } as const;

  test('lies on its sphere, every normal toward the middle', () => {
    fc.assert(
      fc.property(fc.double({ min: 20, max: 80, noNaN: true }), (radius) => {
        for (const { position, normal } of sphericalBed(outline, radius, {
          layer,
          level: -5,
          elements: 100,
        })) {
          const [x, y, z] = position;
          expectClose(Math.hypot(x, y, z - (-5 + radius)), radius, { relative: 1e-9 });
          expectClose(Math.hypot(...normal), 1, { absolute: 1e-12 });
          expectClose(x + radius * normal[0], 0, { absolute: 1e-9 });
        }
      }),
      { numRuns: 20 },
    );
  });

  test('of a large radius is the flat one', () => {
    const load = { force: [0, 0, -700], point: [0, -9, 0] } as const;
    const bed = { layer, level: -4, isRough: true };
    const lift = (elements: readonly SeatElement[]): number =>
      solveSeat({ elements, load }).liftOff;
    const flat = lift(flatBed(outline, bed));
    expectClose(lift(sphericalBed(outline, 1e6, bed)), flat, { relative: 1e-3 });
  });

  test('lets a slippery socket turn in its hollow, unless the force goes through the middle of the sphere', () => {
    const under = (force: readonly [number, number, number], height: number) =>
      solveSeat({
        elements: sphericalBed(outline, 40, { layer, level: -4 }),
        load: { force, point: [0, 0, height] },
      }).outcome;
    expect(under([40, 0, -700], 36)).toBe('balanced');
    expect(under([40, 0, -700], 0)).toBe('sliding');
    expect(under([0, 0, -700], 0)).toBe('balanced');
  });

  test('refuses a back smaller than the outline', () => {
    expect(() => sphericalBed(outline, 15, { layer, level: 0 })).toThrow('backRadius');
  });
});

describe('a peg and a keel', () => {
  const kinds: readonly HoldKind[] = [
    'smooth cemented',
    'textured cemented',
    'fluted press-fit',
    'in-grown',
    'keel cemented',
    'metal-backed screw-fixed',
  ];
  const size = { x: 2, y: 3, diameter: 5, length: 10, bone } as const;

  test.each(kinds)('%s: one strength for a peg, its side area times the kind’s', (kind) => {
    const [axial, ...sides] = peg({ ...size, kind, level: -4 });
    expect(axial).toMatchObject({ position: [2, 3, -9], tension: 'limited' });
    expect(axial?.strength).toBeGreaterThan(0);
    expect(sides.every(({ strength }) => strength === undefined)).toBe(true);
    const twice = peg({ ...size, kind, length: 20 })[0];
    expectClose(twice?.strength ?? NaN, 2 * (axial?.strength ?? NaN), { relative: 1e-12 });
  });

  test('a longer, thicker peg in stiffer bone grips more stiffly', () => {
    const stiffness = (change: object): number =>
      peg({ ...size, kind: 'smooth cemented', ...change })[0]?.normalStiffness ?? NaN;
    const plain = stiffness({});
    expect(stiffness({ length: 12 })).toBeGreaterThan(plain);
    expect(stiffness({ diameter: 6 })).toBeGreaterThan(plain);
    expectClose(stiffness({ bone: { ...bone, modulus: 400 } }), 2 * plain, { relative: 1e-12 });
  });

  test('a keel resists being pushed over its broad face more than a peg of the same depth', () => {
    const plate = keel({
      x: 0,
      y: 0,
      length: 20,
      height: 10,
      thickness: 4,
      kind: 'keel cemented',
      bone,
    });
    const load = { force: [60, 0, 0], point: [0, 0, -5] } as const;
    const through = (elements: readonly SeatElement[]): number =>
      Math.abs(solveSeat({ elements, load }).displacement[0]);
    const round = peg({ ...size, x: 0, y: 0, kind: 'smooth cemented' });
    expectClose(through(plate), through(round), { relative: 0.01 });
    const grips = plate.filter(({ strength }) => strength !== undefined);
    expectClose(
      sum(grips, ({ strength }) => strength ?? NaN),
      2 * 2 * 24 * 10,
      { relative: 1e-12 },
    );
    expect(new Set(plate.map(({ normal }) => normal.join()))).toEqual(
      new Set(
        ['0,0,1', '-1,0,0', '1,0,0', '0,-1,0', '0,1,0'].map((text) => text.replace('-0', '0')),
      ),
    );
  });

  test.each([
    ['diameter', () => peg({ ...size, diameter: 0, kind: 'in-grown' })],
    ['length', () => peg({ ...size, length: NaN, kind: 'in-grown' })],
    ['kind', () => peg({ ...size, kind: 'nailed' as HoldKind })],
    ['bone.modulus', () => peg({ ...size, kind: 'in-grown', bone: { ...bone, modulus: -1 } })],
    [
      'thickness',
      () =>
        keel({ x: 0, y: 0, length: 20, height: 10, thickness: -1, kind: 'keel cemented', bone }),
    ],
  ] as const)('refuses a bad %s by name', (name, build) => {
    expect(build).toThrow(RangeError);
    expect(build).toThrow(name);
  });
});
