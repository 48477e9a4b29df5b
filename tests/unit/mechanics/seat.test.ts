import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  flatBed,
  keel,
  peg,
  solveSeat,
  type SeatElement,
  type SeatLoad,
  type SeatSolution,
  type Vector3,
} from '../../../sims/mechanics/index.ts';
import { expectClose } from '../geometry/close.ts';
import { imbalance } from './seat-balance.ts';
import { built, design } from './seat-designs.ts';
import { leastPotential, potential } from './seat-oracle.ts';

const bone = { modulus: 200, poisson: 0.3 };
const layer = { thickness: 10, ...bone };

/** Relative tolerances: of a handbook's formula, of a share counted in elements, of a value printed to four figures. */
const HARD = 0.001;
const MESH = 0.01;
const PRINTED = 0.005;

function near(found: number, expected: number, share: number): void {
  expectClose(found, expected, { relative: share });
}

/** A bed of one stiffness, N/mm³, whatever its layer: with ν = 0 the confined modulus is Young's. */
const plainBed = (
  outline: Parameters<typeof flatBed>[0],
  stiffness: number,
  elements: number,
): readonly SeatElement[] =>
  flatBed(outline, {
    layer: { thickness: 1, modulus: stiffness, poisson: 0 },
    level: 0,
    elements,
  });

const press = (force: number, x: number, y: number): SeatLoad => ({
  force: [0, 0, -force],
  point: [x, y, 0],
});

/** Height of the socket's point above (x, y), mm. */
const riseAt = ({ displacement, rotation }: SeatSolution, x: number, y: number): number =>
  displacement[2] + rotation[0] * y - rotation[1] * x;

describe('a rectangle that can only be pressed (handbook: kern B/6, then p = 2P / 3L(B/2 − e))', () => {
  const stiffness = 10;
  const [width, height] = [25, 35];
  const bed = plainBed({ kind: 'rectangle', width, height }, stiffness, 20_000);
  const force = 750;

  test('inside the kern everything touches; just outside it the far edge lifts', () => {
    const at = (e: number) => solveSeat({ elements: bed, load: press(force, 0, -e) });
    // The last row of elements stands half a row inside the edge.
    const kern = height / 6;
    expect(at(kern * 0.999).contactShare).toBe(1);
    expect(at(kern * 1.02).contactShare).toBeLessThan(1);
    expect(Math.abs(riseAt(at(kern), 0, height / 2))).toBeLessThan(1e-3 * -riseAt(at(kern), 0, 0));
  });

  test.each([6, 8, 10, 12, 14])('eccentricity %d mm', (e) => {
    const solution = solveSeat({ elements: bed, load: press(force, 0, -e) });
    const contact = 3 * (height / 2 - e);
    const peak = (2 * force) / (contact * width);
    const found = -stiffness * riseAt(solution, 0, -height / 2);
    near(found, peak, HARD);
    near(solution.contactShare * height, contact, MESH);
    near(riseAt(solution, 0, height / 2), (peak / stiffness) * (height / contact - 1), HARD);
  });

  test('the footing of 7 × 7 m under 2,687.5 kN and 4,200 kN m: 5.81 m in contact, 132.1 kPa', () => {
    const footing = plainBed({ kind: 'rectangle', width: 7, height: 7 }, 1, 20_000);
    const solution = solveSeat({ elements: footing, load: press(2687.5, 0, -4200 / 2687.5) });
    near(-riseAt(solution, 0, -3.5), 132.1, HARD);
    near(7 * solution.contactShare, 5.81, MESH);
  });

  test('biaxial: eccentric both ways inside the kern, the plane P/A ± M/W at every corner', () => {
    const [ex, ey] = [1.5, -2];
    const solution = solveSeat({ elements: bed, load: press(force, ex, ey) });
    for (const x of [-width / 2, width / 2]) {
      for (const y of [-height / 2, height / 2]) {
        const mean = force / (width * height);
        const pressure = mean * (1 + (12 * ex * x) / width ** 2 + (12 * ey * y) / height ** 2);
        near(-stiffness * riseAt(solution, x, y), pressure, HARD);
      }
    }
  });

  test('biaxial far outside: a corner bears, by the tetrahedron p = 6P / ab', () => {
    // The contact is a triangle with legs a, b along the two edges; the load stands at a quarter of each.
    const [ex, ey] = [width / 2 - 5, -(height / 2 - 6)];
    const [a, b] = [4 * 5, 4 * 6];
    const fine = plainBed({ kind: 'rectangle', width, height }, stiffness, 80_000);
    const solution = solveSeat({ elements: fine, load: press(force, ex, ey) });
    const corner = -stiffness * riseAt(solution, width / 2, -height / 2);
    near(corner, (6 * force) / (a * b), MESH);
  });

  test.each([
    { k: 0, contact: 16.5, peak: 3.636, lift: 0.4077, pull: 0 },
    { k: 5000, contact: 27.274, peak: 2.578, lift: 0.073, pull: 128.8 },
  ])('with one peg of $k N/mm, 30 mm from the loaded edge', ({ k, contact, peak, lift, pull }) => {
    const peg: SeatElement = {
      position: [0, 30 - height / 2, 0],
      normal: [0, 0, 1],
      normalStiffness: k,
      tangentialStiffness: 0,
      tension: 'elastic',
    };
    const solution = solveSeat({ elements: [...bed, peg], load: press(force, 0, -12) });
    near(-stiffness * riseAt(solution, 0, -height / 2), peak, PRINTED);
    near(riseAt(solution, 0, height / 2), lift, PRINTED);
    const away = -riseAt(solution, 0, -height / 2) / solution.rotation[0];
    near(away, contact, PRINTED);
    const pulled = -(solution.elements.at(-1)?.normalForce ?? NaN);
    expect(Math.abs(pulled - pull)).toBeLessThanOrEqual(PRINTED * pull);
  });
});

describe('a circle that can only be pressed (handbook: contact segment of half-angle θ)', () => {
  const radius = 14;
  const circle = { kind: 'circle', width: 2 * radius } as const;
  const bed = plainBed(circle, 10, 20_000);
  const force = 750;
  const mean = force / (Math.PI * radius ** 2);

  test('kern R/4', () => {
    const at = (e: number) => solveSeat({ elements: bed, load: press(force, e, 0) });
    expect(at((radius / 4) * 0.999).contactShare).toBe(1);
    expect(at((radius / 4) * 1.03).contactShare).toBeLessThan(1);
    expect(riseAt(at(radius / 4), -radius, 0) / riseAt(at(radius / 4), 0, 0)).toBeCloseTo(0, 2);
  });

  const theta = (eccentricity: number): number => {
    let [low, high] = [1e-6, Math.PI];
    for (let i = 0; i < 80; i++) {
      const t = (low + high) / 2;
      const volume = (2 / 3) * Math.sin(t) ** 3 - Math.cos(t) * (t - Math.sin(t) * Math.cos(t));
      const moment = t / 4 - Math.sin(4 * t) / 16 - (2 / 3) * Math.cos(t) * Math.sin(t) ** 3;
      if (moment / volume > eccentricity) low = t;
      else high = t;
    }
    return (low + high) / 2;
  };

  test.each([
    [0.25, 2.0],
    [0.35, 2.456],
    [0.45, 3.109],
    [0.5, 3.56],
    [(3 * Math.PI) / 16, (3 * Math.PI) / 2],
    [0.7, 7.428],
    [0.8, 13.44],
  ])('e/R = %d: peak over mean %d', (share, peak) => {
    const solution = solveSeat({ elements: bed, load: press(force, share * radius, 0) });
    const found = (-10 * riseAt(solution, radius, 0)) / mean;
    near(found, peak, HARD);
    const contact = radius * (1 - Math.cos(theta(share)));
    const deep = -riseAt(solution, radius, 0) / solution.rotation[1];
    near(Math.abs(deep), contact, HARD);
  });

  test('an ellipse on an axis is the same circle, stretched', () => {
    const ellipse = plainBed({ kind: 'ellipse', width: 26, height: 36 }, 10, 20_000);
    const solution = solveSeat({ elements: ellipse, load: press(force, 0, 0.5 * 18) });
    const found = (-10 * riseAt(solution, 0, 18)) / (force / (Math.PI * 13 * 18));
    near(found, 3.56, HARD);
  });

  test('the mesh converges: four times the elements, no more than half the error', () => {
    const errors = [300, 1200, 4800].map((count) => {
      const solution = solveSeat({
        elements: plainBed(circle, 10, count),
        load: press(force, 0.45 * radius, 0),
      });
      return Math.abs((-10 * riseAt(solution, radius, 0)) / mean / 3.1092 - 1);
    });
    expect(errors[0]).toBeLessThan(0.01);
    expect(errors[2]).toBeLessThan(0.001);
  });
});

describe('springs without a bed', () => {
  const anchor = (x: number, y: number): SeatElement => ({
    position: [x, y, 0],
    normal: [0, 0, -1],
    normalStiffness: 1000,
    tangentialStiffness: 0,
    tension: 'elastic',
  });

  test('an elastic group of four anchors: N/n + N e y / Σy², 37.5 and 12.5 N', () => {
    const group = [anchor(10, 10), anchor(-10, 10), anchor(10, -10), anchor(-10, -10)];
    const { elements } = solveSeat({
      elements: group,
      load: { force: [0, 0, 100], point: [0, 5, 0] },
    });
    const forces = elements.map(({ normalForce }) => normalForce);
    [37.5, 37.5, 12.5, 12.5].forEach((force, i) => expect(forces[i]).toBeCloseTo(force, 9));
  });

  test('a stiff keel in bone that gives evenly: 4P/kH at its head, and a turn of 6P/kH²', () => {
    const height = 12;
    const plate = keel({
      x: 0,
      y: 0,
      length: 20,
      height,
      thickness: 4,
      kind: 'keel cemented',
      bone,
    })
      .filter(({ normal }) => normal[0] !== 0)
      .map((face): SeatElement => ({
        ...face,
        normalStiffness: face.normalStiffness / 2,
        tension: 'elastic',
      }));
    // Two faces at half the stiffness, held both ways, are one bed of the bone's modulus.
    const { displacement, rotation } = solveSeat({
      elements: plate,
      load: { force: [100, 0, 0], point: [0, 0, 0] },
    });
    // The six rows stand for the depth by their middles: Σ of squares is 35/36 of the integral's.
    expect(displacement[0] / ((4 * 100) / (bone.modulus * height))).toBeCloseTo(1, 1);
    expect(rotation[1] / ((6 * 100) / (bone.modulus * height ** 2))).toBeCloseTo(36 / 35, 6);
  });

  test('a peg slips at its strength, and the margin is strength over pull', () => {
    const pegs = peg({ x: 0, y: 0, diameter: 5, length: 10, kind: 'smooth cemented', bone });
    const strength = pegs[0]?.strength ?? NaN;
    expect(strength).toBeCloseTo(1.9 * Math.PI * 50, 9);
    const pulled = (force: number) =>
      solveSeat({ elements: pegs, load: { force: [0, 0, force], point: [0, 0, 0] } });
    expect(pulled(strength / 4).pegMargins).toEqual([expect.closeTo(4, 9)]);
    expect(pulled(strength * 1.001)).toMatchObject({ converged: false, outcome: 'overturned' });
  });

  test('a peg that has slipped goes on pulling at its strength while the bed carries the rest', () => {
    const bed = plainBed({ kind: 'rectangle', width: 24, height: 30 }, 10, 800);
    const weak: SeatElement = {
      position: [0, 12, 0],
      normal: [0, 0, 1],
      normalStiffness: 5000,
      tangentialStiffness: 0,
      tension: 'limited',
      strength: 20,
    };
    const { elements, pegMargins } = solveSeat({
      elements: [...bed, weak],
      load: press(750, 0, -11),
    });
    const last = elements.at(-1);
    expect(last).toMatchObject({ state: 'slipping', normalForce: -20 });
    expect(last?.slip).toBeCloseTo((last?.gap ?? NaN) - 20 / 5000, 12);
    expect(pegMargins).toEqual([1]);
  });
});

describe('where there is no rest', () => {
  const bed = plainBed({ kind: 'rectangle', width: 24, height: 30 }, 10, 200);

  test.each([
    ['a load beyond the edge', press(750, 0, -16), 'overturned'],
    ['a pull', { force: [0, 0, 10], point: [0, 0, 0] }, 'overturned'],
    ['a side force on a slippery bed', { force: [5, 0, -750], point: [0, 0, 0] }, 'sliding'],
    ['a turn about its own axis', { force: [5, 0, 0], point: [0, 3, 0] }, 'sliding'],
  ] as const)('%s', (_, load, outcome) => {
    const solution = solveSeat({ elements: bed, load });
    expect(solution).toMatchObject({
      converged: false,
      outcome,
      overturned: outcome === 'overturned',
    });
    for (const number of [...solution.displacement, ...solution.rotation, solution.liftOff]) {
      expect(Number.isFinite(number)).toBe(true);
    }
  });

  test('what holds by a hair does not hold: pegs in line to a billionth of a millimetre, and a turn', () => {
    const pegs = [
      [-1.7e-9, 5],
      [0, 8.5],
      [0, 5],
    ].flatMap(([x = 0, length = 0]) =>
      peg({ x, y: 0, diameter: 3, length, kind: 'smooth cemented', bone }),
    );
    const load: SeatLoad = { force: [-0.0186, 0, -50], point: [0, -13, 0] };
    expect(solveSeat({ elements: [...bed, ...pegs], load }).outcome).toBe('sliding');
  });

  test('no elements, and no load', () => {
    expect(solveSeat({ elements: [], load: press(750, 0, 0) }).converged).toBe(false);
    const still = solveSeat({ elements: bed, load: press(0, 0, 0) });
    expect(still).toMatchObject({ converged: true, liftOff: 0, pressIn: 0, contactShare: 1 });
  });

  test('a load at the very edge is carried by the last row, and one a hair beyond by none', () => {
    const edge = 15 - 15 / Math.round(Math.sqrt((200 * 30) / 24));
    expect(solveSeat({ elements: bed, load: press(750, 0, -edge * 0.999) }).converged).toBe(true);
    expect(solveSeat({ elements: bed, load: press(750, 0, -edge * 1.001) }).overturned).toBe(true);
  });
});

describe('any design', () => {
  test('balances to 1e-9, or says that it does not', () => {
    let balanced = 0;
    fc.assert(
      fc.property(design, (wish) => {
        const { elements, load } = built(wish, 120);
        const solution = solveSeat({ elements, load });
        expect(solution.outcome).not.toBe('unsettled');
        expect(solution.converged).toBe(solution.outcome === 'balanced');
        if (!solution.converged) return;
        balanced += 1;
        expect(imbalance(elements, load, solution)).toBeLessThan(1e-9);
      }),
      { numRuns: 300 },
    );
    expect(balanced).toBeGreaterThan(100);
  });

  test('stands where a general minimiser of its energy puts it', () => {
    let compared = 0;
    fc.assert(
      fc.property(design, (wish) => {
        const { elements, load } = built(wish, 60);
        const solution = solveSeat({ elements, load });
        if (!solution.converged) return;
        compared += 1;
        const least = leastPotential(elements, load);
        const ours = potential(elements, load, [...solution.displacement, ...solution.rotation]);
        const theirs = potential(elements, load, least);
        // The minimiser stops short of the minimum, never beyond it.
        expect(ours).toBeLessThanOrEqual(theirs + 1e-9 * Math.abs(theirs));
        expect(Math.abs(ours - theirs)).toBeLessThan(1e-4 * Math.abs(ours));
      }),
      { numRuns: 40 },
    );
    expect(compared).toBeGreaterThan(10);
  });

  test('mirrored in a plane, answers mirrored', () => {
    fc.assert(
      fc.property(design, (wish) => {
        const { elements, load } = built(wish, 120);
        const flip = ([x, y, z]: Vector3): Vector3 => [-x, y, z];
        const mirrored = elements.map((element) => ({
          ...element,
          position: flip(element.position),
          normal: flip(element.normal),
        }));
        const solution = solveSeat({ elements, load });
        const other = solveSeat({
          elements: mirrored,
          load: { force: flip(load.force), point: flip(load.point) },
        });
        expect(other.outcome).toBe(solution.outcome);
        if (!solution.converged) return;
        const size = Math.max(solution.liftOff, solution.pressIn);
        expect(Math.abs(other.liftOff - solution.liftOff)).toBeLessThan(1e-7 * size);
        expect(Math.abs(other.displacement[0] + solution.displacement[0])).toBeLessThan(
          1e-6 * size,
        );
      }),
      { numRuns: 100 },
    );
  });
});

describe('a rough bed grips where it is closed', () => {
  test('and the tangential forces of what has opened are nothing', () => {
    const elements = flatBed(
      { kind: 'rectangle', width: 24, height: 30 },
      { layer, level: -4, isRough: true, elements: 400 },
    );
    const load: SeatLoad = { force: [120, -40, -750], point: [2, -10, 0] };
    const solution = solveSeat({ elements, load });
    expect(solution.converged).toBe(true);
    expect(imbalance(elements, load, solution)).toBeLessThan(1e-9);
    const open = solution.elements.filter(({ gap }) => gap > 0);
    expect(open.length).toBeGreaterThan(20);
    for (const { tangentialForce } of open) expect(tangentialForce).toBe(0);
  });
});

test.each([
  ['normalStiffness', { normalStiffness: -1 }],
  ['tangentialStiffness', { tangentialStiffness: NaN }],
  ['position', { position: [0, Infinity, 0] as Vector3 }],
  ['normal', { normal: [0, 0, 0] as Vector3 }],
  ['strength', { tension: 'limited' as const }],
  ['tension', { tension: 'glue' as 'none' }],
])('refuses a bad %s by name', (name, change) => {
  const element: SeatElement = {
    position: [0, 0, 0],
    normal: [0, 0, 1],
    normalStiffness: 1,
    tangentialStiffness: 0,
    tension: 'none',
    ...change,
  };
  expect(() => solveSeat({ elements: [element], load: press(1, 0, 0) })).toThrow(RangeError);
  expect(() => solveSeat({ elements: [element], load: press(1, 0, 0) })).toThrow(name);
});
