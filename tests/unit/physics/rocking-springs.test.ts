import { describe, expect, test } from 'vitest';
import { seatMemory, solveSeat, type SeatElement } from '../../../sims/mechanics/index.ts';
import { planeSprings, type PlaneSpring } from '../../../sims/physics/rocking-plane.ts';
import {
  fade,
  freshSprings,
  gapOf,
  pullOf,
  springAnswer,
} from '../../../sims/physics/rocking-springs.ts';
import { expectClose } from '../geometry/close.ts';
import { bedOf, idealLoad, pegAt, seats } from './rocking-seats.ts';

const still = { x: 0, z: 0, turn: 0 };
const spring: PlaneSpring = {
  at: { x: 10, z: -5 },
  normal: { x: 0, z: 1 },
  stiffness: 1000,
  sideStiffness: 0,
  tension: 'limited',
  strength: 50,
  crush: Infinity,
};

describe('the springs of a plane', () => {
  test.each(Object.entries(seats))('%s: strips answer as the elements do', (name, elements) => {
    const load = idealLoad('top–bottom', 200, 0.5);
    const whole = solveSeat({ elements, load });
    const strips = planeSprings(elements, 'top–bottom').springs.map(
      ({ at, normal, stiffness, sideStiffness, tension, strength }): SeatElement => ({
        position: [0, at.x, at.z],
        // A strip of a round back: its normal leans out of the plane to both sides.
        normal: [Math.sqrt(Math.max(0, 1 - normal.x ** 2 - normal.z ** 2)), normal.x, normal.z],
        normalStiffness: stiffness,
        tangentialStiffness: sideStiffness,
        tension,
        strength,
      }),
    );
    const isFlat = strips.every(({ normal }) => normal[0] < 1e-9);
    expect(strips.length).toBeLessThan(elements.length);
    expect(whole.outcome).toBe(name.startsWith('slippery') ? 'sliding' : 'balanced');
    if (!isFlat || !whole.converged) return;
    const plane = solveSeat({ elements: strips, load });
    expectClose(plane.liftOff, whole.liftOff, { relative: 1e-6 });
    expectClose(plane.rotation[0], whole.rotation[0], { relative: 1e-6 });
  });

  test('keep all stiffness that the plane can feel, and share it out again', () => {
    const elements = seats['four pegs'] ?? [];
    const { springs, springOf, shareOf } = planeSprings(elements, 'front–back');
    const felt = elements.filter(({ normal }) => Math.hypot(normal[0], normal[2]) > 0);
    expectClose(
      springs.reduce((sum, { stiffness }) => sum + stiffness, 0),
      felt.reduce((sum, { normalStiffness }) => sum + normalStiffness, 0),
      { relative: 1e-12 },
    );
    const shares = springs.map((_, i) =>
      shareOf.reduce((sum, share, k) => (springOf[k] === i ? sum + share : sum), 0),
    );
    for (const sum of shares) expectClose(sum, 1, { relative: 1e-12 });
    expect(springOf.filter((i) => i === -1).length).toBe(elements.length - felt.length);
  });

  test('refuse a seat that would turn out of the plane', () => {
    const elements = [...bedOf(), ...pegAt([5, 0])];
    expect(() => planeSprings(elements, 'top–bottom')).toThrow(/mm out of the top–bottom plane/);
    expect(() => planeSprings(elements, 'front–back')).not.toThrow();
  });
});

describe('a spring that yields', () => {
  test('presses with its force, stays crushed, and pulls as before from where it came to rest', () => {
    const memory = freshSprings([{ ...spring, crush: 80 }]);
    const at = (z: number): number =>
      0 - springAnswer(memory, { ...still, z }, { x: 0, z: 2, turn: 0 }).z;
    expectClose(at(-0.06), -60, { relative: 1e-12 });
    expect(memory.homes[0]).toBe(0);
    expectClose(at(-0.2), -80, { relative: 1e-12 });
    expectClose(memory.homes[0] ?? NaN, -0.12, { relative: 1e-12 });
    expectClose(at(-0.15), -30, { relative: 1e-9 });
    expectClose(at(-0.1), 20, { relative: 1e-9 });
    expectClose(at(0.1), 50, { relative: 1e-12 });
    const { stiffening } = springAnswer(
      freshSprings([{ ...spring, crush: 80 }]),
      { ...still, z: -0.2 },
      { x: 0, z: 2, turn: 0 },
    );
    expect(stiffening).toBe(0);
  });

  test('answers as the solver’s element, load after load', () => {
    const element: SeatElement = {
      position: [0, 0, 0],
      normal: [0, 0, 1],
      normalStiffness: 1000,
      tangentialStiffness: 0,
      tension: 'none',
      crush: 80,
    };
    const elements = [element, { ...element, crush: undefined }];
    const solved = seatMemory(elements);
    const memory = freshSprings(planeSprings(elements, 'top–bottom').springs);
    expect(memory.springs).toHaveLength(2);
    for (const force of [100, 240, 30, 200, 300]) {
      const { displacement } = solved.bear({ force: [0, 0, -force], point: [0, 0, 0] });
      const { z } = springAnswer(memory, { ...still, z: displacement[2] }, still);
      expectClose(z, force, { relative: 1e-9 });
    }
  });
});

describe('a spring that can slip', () => {
  const at = (memory: ReturnType<typeof freshSprings>, z: number) => {
    const { z: force } = springAnswer(memory, { ...still, z }, still);
    return 0 - force;
  };

  test('pulls up to its strength, keeps its slip, resists on the way back, and is pressed home', () => {
    const memory = freshSprings([spring]);
    expectClose(at(memory, 0.03), 30, { relative: 1e-12 });
    expectClose(at(memory, 0.25), 50, { relative: 1e-12 });
    expectClose(memory.slips[0] ?? NaN, 0.2, { relative: 1e-12 });
    expectClose(at(memory, 0.22), 20, { relative: 1e-9 });
    expectClose(at(memory, 0.1), -50, { relative: 1e-12 });
    expectClose(memory.slips[0] ?? NaN, 0.15, { relative: 1e-12 });
    expectClose(at(memory, 0), -50, { relative: 1e-12 });
    expectClose(at(memory, -0.01), -60, { relative: 1e-12 });
    expectClose(memory.ways[0] ?? NaN, 0.2 + 0.05 + 0.1, { relative: 1e-12 });
  });

  test('loses strength with the way it has slipped', () => {
    const memory = freshSprings([spring]);
    at(memory, 0.25);
    fade(memory, { residual: 0.4, over: 0.2 });
    expectClose(memory.strengths[0] ?? NaN, 50 * (0.4 + 0.6 / Math.E), { relative: 1e-12 });
    expect(pullOf(memory, 0, 9)).toBe(memory.strengths[0]);
  });
});

test('a turn lifts the far side, and its force has its moment', () => {
  const memory = freshSprings([{ ...spring, tension: 'elastic', strength: 0 }]);
  const pose = { x: 0, z: 0, turn: 0.001 };
  expectClose(gapOf(memory.springs[0] ?? spring, pose), 0.01, { relative: 1e-12 });
  const { z, moment, stiffening } = springAnswer(memory, pose, { x: 0, z: 2, turn: 0 });
  expectClose(z, -10, { relative: 1e-12 });
  expectClose(moment, -100, { relative: 1e-12 });
  expectClose(stiffening, 4000, { relative: 1e-12 });
});

test('what bears only while pressed also grips only then', () => {
  const rough = freshSprings([{ ...spring, tension: 'none', strength: 0, sideStiffness: 300 }]);
  expectClose(springAnswer(rough, { x: 0.1, z: -0.01, turn: 0 }, still).x, -30, {
    relative: 1e-12,
  });
  expect(springAnswer(rough, { x: 0.1, z: 0.01, turn: 0 }, still).x).toBeCloseTo(0, 12);
});
