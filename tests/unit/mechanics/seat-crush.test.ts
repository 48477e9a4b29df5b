import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  boneNames,
  boneOf,
  flatBed,
  keel,
  peg,
  rockingTest,
  seatMemory,
  solveSeat,
  type HoldKind,
  type SeatElement,
  type SeatLoad,
  type SeatOutcome,
} from '../../../sims/mechanics/index.ts';
import { expectClose } from '../geometry/close.ts';
import { imbalance } from './seat-balance.ts';
import { built, seatOnGrid, within } from './seat-designs.ts';
import { leastPotential, potential } from './seat-oracle.ts';

/** Greatest loads are found to a ten-thousandth of themselves. */
const FOUND = 3e-4;
const column: SeatElement = {
  position: [0, 0, 0],
  normal: [0, 0, 1],
  normalStiffness: 1000,
  tangentialStiffness: 0,
  tension: 'none',
  crush: 50,
};
const straight = (force: number): SeatLoad => ({ force: [0, 0, -force], point: [0, 0, 0] });
const greatest = (elements: readonly SeatElement[], load: SeatLoad): number =>
  rockingTest({ seat: { elements }, load, cycles: 0 }).greatestLoad;

describe('an element that yields', () => {
  const beside: SeatElement = { ...column, crush: undefined };

  test('presses with its force and no more, and keeps how deep it was crushed', () => {
    const memory = seatMemory([column, beside]);
    const first = memory.bear(straight(80));
    expectClose(first.pressIn, 0.04, { relative: 1e-12 });
    expect(first.elements[0]).toMatchObject({ state: 'pressed', crushed: 0 });
    const deep = memory.bear(straight(150));
    expectClose(deep.pressIn, 0.1, { relative: 1e-12 });
    expect(deep.elements[0]).toMatchObject({ state: 'yielding', normalForce: 50 });
    expectClose(deep.elements[0]?.crushed ?? NaN, 0.05, { relative: 1e-9 });
    const light = memory.bear(straight(30));
    // Until the crushed one touches again at 0.05 mm, the other bears alone.
    expectClose(light.pressIn, 0.03, { relative: 1e-9 });
    expect(light.elements[0]).toMatchObject({ normalForce: 0, state: 'open' });
    expectClose(light.contactShare, 0.5, { relative: 1e-12 });
    const again = memory.bear(straight(150));
    expectClose(again.pressIn, 0.1, { relative: 1e-9 });
    expect(again.elements[0]).toMatchObject({ state: 'pressed' });
  });

  test('alone it lets the socket sink under more than its force', () => {
    expectClose(greatest([column], straight(10)), 50, { relative: FOUND });
    expect(solveSeat({ elements: [column], load: straight(50.1) }).overturned).toBe(true);
    const bonded: SeatElement = { ...column, tension: 'elastic' };
    expectClose(greatest([bonded], straight(10)), 50, { relative: FOUND });
  });

  test('that can slip as well bears its slip and its press', () => {
    const both: SeatElement = { ...column, tension: 'limited', strength: 20 };
    const memory = seatMemory([both]);
    expect(memory.bear(straight(45)).outcome).toBe('balanced');
    expect(memory.bear(straight(51)).outcome).toBe('overturned');
    expect(memory.bear(straight(-19)).elements[0]).toMatchObject({ state: 'pulled' });
  });

  test('refuses a force below 0 by name', () => {
    const bad = { ...column, crush: -1 };
    expect(() => solveSeat({ elements: [bad], load: straight(1) })).toThrow(/elements\[0\]\.crush/);
  });
});

describe('limit loads (handbook)', () => {
  test.each([0, 9])(
    'a footing %d mm off its middle carries its strength on the area left evenly about the load, B(L − 2e)',
    (e) => {
      const [width, height, strength] = [24, 34, 8];
      const elements = flatBed(
        { kind: 'rectangle', width, height },
        { layer: { thickness: 6, modulus: 210, poisson: 0.3 }, level: 0, strength, elements: 2500 },
      );
      const load: SeatLoad = { force: [0, 0, -100], point: [0, -e, 0] };
      expectClose(greatest(elements, load), strength * width * (height - 2 * e), {
        relative: 0.015,
      });
    },
  );

  test('four posts that yield at 50 N and hold 30 N, pushed over: 2 × 30 N × 20 mm, then they sink on one side', () => {
    const posts = [
      [10, 10],
      [-10, 10],
      [10, -10],
      [-10, -10],
    ].map(([x = 0, y = 0]): SeatElement => ({
      ...column,
      position: [x, y, 0],
      tension: 'limited',
      strength: 30,
    }));
    // A pure moment: a couple of forces has no resultant, so that a far, small press stands for it.
    const far = 1e6;
    const load: SeatLoad = { force: [0, 0, -1], point: [0, -far, 0] };
    expectClose(greatest(posts, load) * far, 2 * 30 * 20, { relative: 1e-3 });
  });

  test.each([0, 3, 8])(
    'a stiff post in ground of one strength, pushed %d mm above it: H e = p(L²/2 − f²), H = p(2f − L)',
    (above) => {
      const [length, per, count] = [12, 40, 240];
      const sides = Array.from({ length: count }, (_, i) =>
        [1, -1].map((way): SeatElement => ({
          ...column,
          position: [0, 0, -((i + 0.5) / count) * length],
          normal: [way, 0, 0],
          crush: (per * length) / count,
        })),
      ).flat();
      const held: SeatElement[] = [
        { ...column, normal: [0, 0, 1], crush: undefined, tension: 'elastic' },
        { ...column, normal: [0, 1, 0], crush: undefined, tension: 'elastic' },
        {
          ...column,
          position: [0, 0, -9],
          normal: [0, 1, 0],
          crush: undefined,
          tension: 'elastic',
        },
      ];
      const load: SeatLoad = { force: [1, 0, 0], point: [0, 0, above] };
      const turn = Math.sqrt(above ** 2 + length ** 2 / 2 + length * above) - above;
      expectClose(greatest([...sides, ...held], load), per * (2 * turn - length), {
        relative: 0.005,
      });
    },
  );
});

/** Any design, each of its elements yielding after a way of its own, mm. */
const yielding = fc.record({ wish: seatOnGrid, give: within(0.01, 0.3) });

function soft({ wish, give }: { wish: Parameters<typeof built>[0]; give: number }, count: number) {
  const { elements, load } = built(wish, count);
  return {
    load,
    elements: elements.map((element, i) => ({
      ...element,
      crush: (element.strength ?? 0) + element.normalStiffness * give * (1 + (i % 3) / 3),
    })),
  };
}

describe('any design that yields', () => {
  test('balances to 1e-9, load after load, or says that it does not', () => {
    const ends: Partial<Record<SeatOutcome, number>> = {};
    let crushed = 0;
    fc.assert(
      fc.property(
        yielding,
        fc.array(within(-1, 1), { minLength: 1, maxLength: 5 }),
        (one, turns) => {
          const { elements, load } = soft(one, 100);
          const memory = seatMemory(elements);
          for (const turn of [1, ...turns]) {
            const { force, point } = load;
            const turned: SeatLoad = {
              force: [force[0] * turn, force[1] * turn, force[2]],
              point: [point[0] * turn, point[1] * turn, point[2]],
            };
            const solution = memory.bear(turned);
            ends[solution.outcome] = (ends[solution.outcome] ?? 0) + 1;
            expect(solution.outcome).not.toBe('unsettled');
            if (!solution.converged) continue;
            expect(imbalance(elements, turned, solution)).toBeLessThan(1e-9);
            solution.elements.forEach(({ normalForce, state }, i) => {
              const { crush = NaN, tension, strength = 0 } = elements[i] ?? {};
              const most = tension === 'limited' ? Math.max(crush, strength) : crush;
              expect(normalForce).toBeLessThanOrEqual(most * (1 + 1e-9));
              if (state === 'yielding') crushed += 1;
            });
          }
        },
      ),
      { numRuns: 150 },
    );
    expect(ends.balanced).toBeGreaterThan(100);
    expect(crushed).toBeGreaterThan(100);
  });

  test('stands where a general minimiser of its energy puts it', () => {
    let [compared, crushed] = [0, 0];
    fc.assert(
      fc.property(yielding, (one) => {
        const { elements, load } = soft(one, 50);
        // Grip that comes and goes is no matter of energy.
        const plain = elements.map((element) =>
          element.tension === 'none' ? { ...element, tangentialStiffness: 0 } : element,
        );
        const solution = solveSeat({ elements: plain, load });
        if (!solution.converged) return;
        compared += 1;
        if (solution.elements.some(({ state }) => state === 'yielding')) crushed += 1;
        const ours = potential(plain, load, [...solution.displacement, ...solution.rotation]);
        const theirs = potential(plain, load, leastPotential(plain, load));
        expect(ours).toBeLessThanOrEqual(theirs + 1e-9 * Math.abs(theirs));
        expect(Math.abs(ours - theirs)).toBeLessThan(1e-3 * Math.abs(ours));
      }),
      { numRuns: 40 },
    );
    expect(compared).toBeGreaterThan(10);
    expect(crushed).toBeGreaterThan(0);
  });

  test('where no rest is claimed, the energy falls without end some way, and falls on', () => {
    let proven = 0;
    fc.assert(
      fc.property(yielding, within(2, 8), (one, times) => {
        const { elements, load } = soft(one, 50);
        const plain = elements.map((element) => ({ ...element, tangentialStiffness: 0 }));
        const [x, y, z] = load.force;
        const hard: SeatLoad = { ...load, force: [x * times, y * times, z * times] };
        const solution = solveSeat({ elements: plain, load: hard });
        if (solution.converged) return;
        // Far out the energy is straight along any way, and convex: what falls there falls for ever.
        const fallsAlong = (way: readonly number[]): boolean => {
          const far = 1e5 / Math.hypot(...way);
          const at = (share: number) =>
            potential(
              plain,
              hard,
              way.map((part) => part * far * share),
            );
          return at(2) < at(1);
        };
        const way = [...solution.displacement, ...solution.rotation];
        expect(fallsAlong(way) || fallsAlong(leastPotential(plain, hard))).toBe(true);
        proven += 1;
      }),
      { numRuns: 60, seed: 5 },
    );
    expect(proven).toBeGreaterThan(20);
  });

  test('the greatest load parts what is borne from what is not, whatever was crushed before', () => {
    let found = 0;
    fc.assert(
      fc.property(yielding, (one) => {
        const { elements, load } = soft(one, 50);
        const plain = elements.map((element) => ({ ...element, tangentialStiffness: 0 }));
        const most = greatest(plain, load) / Math.hypot(...load.force);
        expect(Number.isFinite(most)).toBe(true);
        if (most === 0) return;
        found += 1;
        const at = (by: number): SeatLoad => ({
          ...load,
          force: [load.force[0] * by, load.force[1] * by, load.force[2] * by],
        });
        const memory = seatMemory(plain);
        for (const by of [0.5, 0.9, 0.2, 0.999]) {
          expect(memory.bear(at(most * by)).outcome).toBe('balanced');
        }
        expect(memory.bear(at(most * 1.001)).converged).toBe(false);
      }),
      { numRuns: 20 },
    );
    expect(found).toBeGreaterThan(3);
  });
});

describe('bone with a strength', () => {
  const level = -4;
  const outline = { kind: 'pear', width: 27, height: 36 } as const;
  const kinds: readonly HoldKind[] = ['smooth cemented', 'fluted press-fit', 'in-grown'];
  const rims = [
    [0, 4],
    [0.4, 12],
    [0.4, 20],
  ].map(([shear = 0, y = 0]): SeatLoad => ({
    force: [0, -750 * shear, -750],
    point: [0, -y, 2],
  }));

  test.each(boneNames)('%s: whatever the design, the greatest load is finite', (name) => {
    const bone = boneOf(name);
    const bed = (bond?: number): readonly SeatElement[] =>
      flatBed(outline, {
        layer: { ...bone, thickness: 6 },
        level,
        strength: bone.strength,
        bond,
        elements: 60,
      });
    const size = { x: 0, y: 0, bone, level };
    const designs = [
      bed(Infinity),
      [...bed(), ...keel({ ...size, length: 20, height: 10, thickness: 4, kind: 'keel cemented' })],
      ...kinds.map((kind) => [
        ...bed(),
        ...[9, -9].flatMap((y) => peg({ ...size, y, diameter: 5, length: 10, kind })),
      ]),
    ];
    for (const elements of designs) {
      for (const load of rims) {
        const most = greatest(elements, load);
        expect(most).toBeGreaterThan(50);
        expect(most).toBeLessThan(1e5);
      }
    }
  });

  test('yields beside a peg and a keel by its strength on what it bears on, and changes nothing before that', () => {
    const bone = boneOf('foam grade 15');
    const size = { x: 1, y: 2, kind: 'smooth cemented', level } as const;
    const sides = peg({ ...size, diameter: 5, length: 10, bone }).slice(1);
    const total = (list: readonly SeatElement[], way: 0 | 1): number =>
      list.reduce((sum, { crush = NaN, normal }) => sum + (normal[way] === 1 ? crush : 0), 0);
    expectClose(total(sides, 0), bone.strength * 5 * 10, { relative: 1e-12 });
    const plate = keel({ ...size, length: 20, height: 11, thickness: 4, bone });
    expectClose(total(plate, 0), bone.strength * 20 * 11, { relative: 1e-12 });
    expectClose(total(plate, 1), bone.strength * 4 * 11, { relative: 1e-12 });
    const { modulus, poisson } = bone;
    const load: SeatLoad = { force: [60, -40, -300], point: [2, -6, 1] };
    const bed = flatBed(outline, { layer: { ...bone, thickness: 6 }, level, elements: 300 });
    const lift = (stuff: Parameters<typeof peg>[0]['bone']): number =>
      solveSeat({
        elements: [...bed, ...peg({ ...size, diameter: 5, length: 10, bone: stuff })],
        load,
      }).liftOff;
    expectClose(lift(bone), lift({ modulus, poisson }), { relative: 1e-9 });
  });
});
