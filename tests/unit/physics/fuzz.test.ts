import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { socketFromDepth } from '../../../sims/geometry/index.ts';
import type { PushReading } from '../../../sims/physics/push-reading.ts';
import { createPushScene, type PushScene } from '../../../sims/physics/push-scene.ts';

vi.setConfig({ testTimeout: 180_000 });

const real = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true });
const load = fc.oneof(real(20, 800), real(1e-3, 1e6));
const friction = fc.oneof(fc.constant(0), real(0, 0.3), real(0, 5));

/** Sockets from flat to hemispheres, balls from a twentieth of what fits to all of it. */
const anyPair = fc
  .record({
    width: real(1, 120),
    hollow: fc.oneof(fc.constant(0), real(0, 1)),
    fill: real(0.05, 1),
  })
  .map(({ width, hollow, fill }) => {
    const socket = socketFromDepth({ width, depth: (hollow * width) / 2 });
    return { socket, ballRadius: Math.max(0.5, fill * Math.min(60, socket.curvatureRadius)) };
  })
  .filter(({ socket, ballRadius }) => ballRadius <= socket.curvatureRadius);

/** One turn of a control, or time going by. */
type Control = (scene: PushScene) => void;
const control: fc.Arbitrary<Control> = fc.oneof(
  real(-1e9, 1e9).map((force) => (scene: PushScene) => scene.setSideForce(force)),
  real(-3, 3).map((ratio) => (scene: PushScene) => {
    scene.setSideForce(ratio * scene.read().compressiveLoad);
  }),
  real(-200, 200).map((translation) => (scene: PushScene) => scene.setDrag(translation)),
  fc.constant((scene: PushScene) => scene.setDrag(null)),
  fc.constant((scene: PushScene) => scene.startPush()),
  fc.constant((scene: PushScene) => scene.reset()),
  load.map((force) => (scene: PushScene) => scene.setCompressiveLoad(force)),
  friction.map((coefficient) => (scene: PushScene) => scene.setFriction(coefficient)),
  real(0, 1e5).map((seconds) => (scene: PushScene) => scene.advance(seconds)),
);

function numbersOf(reading: PushReading): readonly number[] {
  const { contacts, contactForce, ...rest } = reading;
  return [rest, contactForce, ...contacts].flatMap((part) =>
    Object.values(part).filter((value) => typeof value === 'number'),
  );
}

test('no control, in whatever order, makes the ball leave its bench or a reading lose its number', () => {
  fc.assert(
    fc.property(
      anyPair,
      load,
      friction,
      fc.array(control, { minLength: 1, maxLength: 14 }),
      ({ socket, ballRadius }, compressiveLoad, mu, controls) => {
        const scene = createPushScene({ socket, ballRadius, compressiveLoad, friction: mu });
        for (const turn of controls) {
          turn(scene);
          scene.advance(0.2);
          const reading = scene.read();
          expect(numbersOf(reading).every(Number.isFinite)).toBe(true);
          // Past the stops, above the shoulder or below the deepest point by no more than this of its radius.
          const slack = 0.02 * ballRadius;
          const stop = socket.width / 2 + 0.75 * ballRadius;
          expect(Math.abs(reading.translation)).toBeLessThan(stop + slack);
          expect(reading.climb).toBeLessThan(socket.depth + slack);
          expect(reading.climb).toBeGreaterThan(-slack);
        }
      },
    ),
    { numRuns: 120 },
  );
});
