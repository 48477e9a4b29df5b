import { afterAll, describe, expect, test, vi } from 'vitest';
import {
  climbAt,
  peakStabilityRatio,
  radialMismatch,
  rimContactTranslation,
  socketFromDepth,
  sphericalSocket,
  stabilityRatioAt,
  type SphericalSocket,
} from '../../../sims/geometry/index.ts';
import { restPosition } from '../../../sims/mechanics/index.ts';
import { LARGEST_RATIO } from '../../../sims/physics/constants.ts';
import type { PushReading } from '../../../sims/physics/push-reading.ts';
import { createPushScene, type PushScene } from '../../../sims/physics/push-scene.ts';
import { socketProfile } from '../../../sims/physics/socket-profile.ts';
import { pushToTheEnd, runFor } from './cups.ts';

// Some tests simulate half a minute.
vi.setConfig({ testTimeout: 120_000 });

const LOAD = 100;

function sceneOf(socket: SphericalSocket, ballRadius: number, friction = 0): PushScene {
  return createPushScene({ socket, ballRadius, compressiveLoad: LOAD, friction });
}

/** Sockets and balls from conforming to very loose. */
const pairs: readonly (readonly [SphericalSocket, number])[] = [
  [sphericalSocket({ curvatureRadius: 24, width: 28 }), 24],
  [sphericalSocket({ curvatureRadius: 24.3, width: 28 }), 24],
  [sphericalSocket({ curvatureRadius: 26, width: 28 }), 24],
  [sphericalSocket({ curvatureRadius: 32, width: 34 }), 24],
  [sphericalSocket({ curvatureRadius: 40, width: 44 }), 15],
  [sphericalSocket({ curvatureRadius: 55, width: 44 }), 30],
];

const cup = sphericalSocket({ curvatureRadius: 26, width: 28 });

/** Half of what the ball's centre travels along one facet, mm: so far from the true arc's place of rest it may stand. */
function halfFacet(socket: SphericalSocket, ballRadius: number): number {
  const { facetSpacing } = socketProfile(socket, ballRadius);
  return (radialMismatch(socket, ballRadius) * facetSpacing) / 2 + 2e-3;
}

/** Sum of all that acts on the ball, N: nothing in equilibrium. */
function imbalance({ contactForce, sideForce, compressiveLoad }: PushReading): number {
  return Math.hypot(contactForce.x + sideForce, contactForce.z - compressiveLoad);
}

describe('at the start', () => {
  test.each(pairs)('the ball sits in the middle, pressed by the load: %#', (socket, ballRadius) => {
    const scene = sceneOf(socket, ballRadius);
    const first = scene.read();
    expect(first.state).toBe('seated');
    expect(first.push).toBe('idle');
    expect(first.contactForce.z).toBeCloseTo(LOAD, 6);
    const later = runFor(scene, 1);
    expect(Math.abs(later.translation)).toBeLessThan(1e-3);
    expect(Math.abs(later.climb)).toBeLessThan(1e-3);
    expect(later.speed).toBeLessThan(1e-6);
    expect(imbalance(later)).toBeLessThan(1e-6 * LOAD);
  });
});

describe('a side force the socket can hold', () => {
  /** How far from the theory the ball rested, and stood in height, mm. */
  const misses: { readonly translation: number; readonly climb: number }[] = [];
  afterAll(() => {
    const ofTranslation = misses.map(({ translation }) => translation);
    const mean = ofTranslation.reduce((sum, miss) => sum + miss, 0) / misses.length;
    const climb = Math.max(...misses.map((miss) => miss.climb));
    process.stdout.write(
      `place of rest: ${misses.length} cases, mean miss ${mean.toFixed(3)} mm, worst ${Math.max(...ofTranslation).toFixed(3)} mm; climb, worst ${climb.toFixed(4)} mm\n`,
    );
  });

  test.each(pairs)(
    'without friction the ball rests where the theory says: %#',
    (socket, ballRadius) => {
      for (const share of [0.3, 0.6, 0.9, 0.97]) {
        const ratio = share * peakStabilityRatio(socket);
        const scene = sceneOf(socket, ballRadius);
        scene.setSideForce(ratio * LOAD);
        const reading = runFor(scene, 4);
        const rest = restPosition({ socket, ballRadius, forceAngle: Math.atan(ratio) });
        expect(reading.state).toBe('seated');
        const translation = Math.abs(reading.translation - (rest.translation ?? NaN));
        const climb = Math.abs(
          reading.climb - climbAt(socket, ballRadius, Math.max(0, reading.translation)),
        );
        misses.push({ translation, climb });
        expect(translation).toBeLessThan(halfFacet(socket, ballRadius));
        expect(climb).toBeLessThan(2e-3);
        expect(reading.contactAngle).toBeCloseTo(Math.atan(ratio), 3);
        expect(reading.ratio).toBeCloseTo(ratio, 12);
        expect(imbalance(reading)).toBeLessThan(1e-3 * LOAD);
      }
    },
  );

  test.each(pairs)(
    'with friction it rests inside the range the theory allows: %#',
    (socket, ballRadius) => {
      for (const share of [0.3, 0.9, 1.05]) {
        const friction = 0.1;
        const ratio = share * peakStabilityRatio(socket);
        const scene = sceneOf(socket, ballRadius, friction);
        scene.setSideForce(ratio * LOAD);
        const reading = runFor(scene, 4);
        const rest = restPosition({ socket, ballRadius, friction, forceAngle: Math.atan(ratio) });
        const [inner, outer] = rest.range ?? [NaN, NaN];
        expect(reading.state).toBe('seated');
        expect(reading.speed).toBeLessThan(1e-6);
        expect(reading.translation).toBeGreaterThan(inner - halfFacet(socket, ballRadius));
        expect(reading.translation).toBeLessThan(outer + halfFacet(socket, ballRadius));
      }
    },
  );

  test('both sides are alike', () => {
    const [right, left] = [1, -1].map((side) => {
      const scene = sceneOf(cup, 24, 0.05);
      scene.setSideForce(side * 40);
      return runFor(scene, 2);
    });
    expect(left?.translation).toBeCloseTo(-(right?.translation ?? NaN), 9);
    expect(left?.climb).toBeCloseTo(right?.climb ?? NaN, 9);
    expect(left?.contactAngle).toBeCloseTo(-(right?.contactAngle ?? NaN), 9);
  });

  test('a force a little too large puts the ball over the rim, a little less does not', () => {
    for (const [share, state] of [
      [0.98, 'seated'],
      [1.02, 'slipped out'],
    ] as const) {
      const scene = sceneOf(cup, 24);
      scene.setSideForce(share * peakStabilityRatio(cup) * LOAD);
      expect(runFor(scene, 5).state).toBe(state);
    }
  });
});

describe('the slow push', () => {
  test.each(pairs)('meets its peak at the rim: %#', (socket, ballRadius) => {
    const { reading } = pushToTheEnd(sceneOf(socket, ballRadius, 0.1));
    const rim = rimContactTranslation(socket, ballRadius);
    expect(reading.push).toBe('slipped');
    expect(Math.abs((reading.slipTranslation ?? NaN) - rim)).toBeLessThan(0.2);
  });

  test('then lets the ball go under its largest force, and it ends on the shoulder', () => {
    const scene = sceneOf(cup, 24);
    const { reading: atSlip } = pushToTheEnd(scene);
    const later = runFor(scene, 3);
    expect(later.ratio).toBe(atSlip.slipRatio);
    expect(later.state).toBe('slipped out');
    expect(later.climb).toBeCloseTo(cup.depth, 3);
    expect(later.slipRatio).toBe(atSlip.slipRatio);
  });

  test('seats the ball first, wherever it was', () => {
    const fresh = pushToTheEnd(sceneOf(cup, 24, 0.1)).reading.slipRatio;
    const scene = sceneOf(cup, 24, 0.1);
    scene.setSideForce(-500);
    expect(runFor(scene, 3).state).toBe('slipped out');
    expect(pushToTheEnd(scene).reading.slipRatio).toBe(fresh);
    expect(pushToTheEnd(scene).reading.slipRatio).toBe(fresh);
  });

  test('ends as "held" where no side force moves the ball', () => {
    const hemisphere = sphericalSocket({ curvatureRadius: 20, width: 40 });
    const deep = socketFromDepth({ depth: 13, width: 31 });
    for (const [socket, ballRadius, friction] of [
      [hemisphere, 20, 0],
      [hemisphere, 17, 0.2],
      [deep, 15, 0.35],
    ] as const) {
      expect(peakStabilityRatio(socket, friction)).toBeGreaterThan(LARGEST_RATIO);
      const scene = sceneOf(socket, ballRadius, friction);
      const { reading, seconds } = pushToTheEnd(scene);
      expect(reading.push).toBe('held');
      expect(reading.slipRatio).toBeNull();
      expect(seconds).toBeLessThan(12);
      expect(runFor(scene, 2)).toMatchObject({ sideForce: 0, state: 'seated', push: 'held' });
    }
  });

  test('is broken off by any other control', () => {
    const scene = sceneOf(cup, 24);
    for (const control of [
      () => scene.setSideForce(5),
      () => scene.setDrag(2),
      () => scene.reset(),
    ]) {
      scene.startPush();
      expect(scene.read().push).toBe('pushing');
      control();
      expect(scene.read()).toMatchObject({ push: 'idle', slipRatio: null });
    }
  });
});

describe('a flat socket', () => {
  const flat = socketFromDepth({ depth: 0, width: 30 });

  test('without friction holds nothing', () => {
    const { reading } = pushToTheEnd(sceneOf(flat, 24));
    expect(reading.push).toBe('slipped');
    expect(reading.slipRatio).toBeLessThan(0.002);
    const scene = sceneOf(flat, 24);
    scene.setSideForce(0.01 * LOAD);
    expect(runFor(scene, 6).state).toBe('slipped out');
  });

  test('with friction holds by it alone', () => {
    for (const friction of [0.05, 0.3]) {
      const { reading } = pushToTheEnd(sceneOf(flat, 24, friction));
      expect((reading.slipRatio ?? NaN) / friction).toBeCloseTo(1, 2);
    }
  });
});

describe('dragging', () => {
  /** Draws the ball along at 2 mm/s and gives the readings met on the way. */
  function traceOf(scene: PushScene, end: number): readonly PushReading[] {
    const readings: PushReading[] = [];
    for (let i = 1; i <= 60 * end; i += 1) {
      scene.setDrag(i / 60);
      scene.step();
      readings.push(scene.read());
    }
    return readings;
  }

  test.each([0, 0.1])('traces the falling branch of the ratio, friction %d', (friction) => {
    const ballRadius = 24;
    const trace = traceOf(sceneOf(cup, ballRadius, friction), 13);
    const beyond = trace.filter(({ translation }) => translation > 3 && translation < 12);
    expect(beyond.length).toBeGreaterThan(400);
    const errors = beyond.map(({ translation, ratio }) =>
      Math.abs(ratio - stabilityRatioAt(cup, ballRadius, translation, friction)),
    );
    expect(errors.reduce((sum, error) => sum + error, 0) / errors.length).toBeLessThan(0.01);
    for (const { translation, climb } of beyond) {
      expect(Math.abs(climb - climbAt(cup, ballRadius, translation))).toBeLessThan(2e-3);
    }
  });

  test('holds the ball where no side force could, and lets it fall back', () => {
    const scene = sceneOf(cup, 24);
    scene.setDrag(9);
    const held = runFor(scene, 2);
    expect(held.translation).toBeCloseTo(9, 0);
    expect(held.springEnd).toBeCloseTo(9, 9);
    expect(held.ratio).toBeCloseTo(stabilityRatioAt(cup, 24, held.translation), 2);
    scene.setDrag(null);
    const back = runFor(scene, 3);
    expect(Math.abs(back.translation)).toBeLessThan(halfFacet(cup, 24));
    expect(back.springEnd).toBeNull();
  });

  test('goes no further than the stops', () => {
    const scene = sceneOf(cup, 24);
    scene.setDrag(1e9);
    const { translation } = runFor(scene, 4);
    expect(translation).toBeLessThanOrEqual(14 + 0.75 * 24 + 0.01);
    expect(translation).toBeGreaterThan(14);
  });
});

describe('load and friction while it runs', () => {
  test('a heavier load keeps the side force and lowers the ratio', () => {
    const scene = sceneOf(cup, 24);
    scene.setSideForce(40);
    const before = runFor(scene, 2);
    scene.setCompressiveLoad(200);
    const after = runFor(scene, 2);
    expect(after.sideForce).toBeCloseTo(40, 9);
    expect(after.ratio).toBeCloseTo(before.ratio / 2, 9);
    expect(after.translation).toBeLessThan(before.translation);
  });

  test('without its friction a ball lets go', () => {
    const scene = sceneOf(cup, 24, 0.3);
    scene.setSideForce(1.2 * peakStabilityRatio(cup) * LOAD);
    expect(runFor(scene, 3).state).toBe('seated');
    scene.setFriction(0);
    expect(runFor(scene, 3).state).toBe('slipped out');
  });
});

describe('bad input', () => {
  test('names the argument, its value and the range', () => {
    const options = { socket: cup, ballRadius: 24, compressiveLoad: 50 };
    const scene = createPushScene(options);
    for (const [call, words] of [
      [() => createPushScene({ ...options, compressiveLoad: 0 }), /compressiveLoad is 0; allowed/],
      [() => createPushScene({ ...options, friction: -0.1 }), /friction is -0.1; allowed/],
      [() => createPushScene({ ...options, ballRadius: 27 }), /ballRadius is 27; allowed/],
      [() => scene.setCompressiveLoad(NaN), /compressiveLoad is NaN; allowed/],
      [() => scene.setFriction(Infinity), /friction is Infinity; allowed/],
      [() => scene.setSideForce(NaN), /force is NaN; allowed/],
      [() => scene.setDrag(Infinity), /translation is Infinity; allowed/],
      [() => scene.advance(-1), /seconds is -1; allowed/],
      [() => scene.advance(NaN), /seconds is NaN; allowed/],
    ] as const) {
      expect(call).toThrow(RangeError);
      expect(call).toThrow(words);
    }
  });
});
