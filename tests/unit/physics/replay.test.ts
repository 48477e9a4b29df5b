import { describe, expect, test, vi } from 'vitest';
import { sphericalSocket } from '../../../sims/geometry/index.ts';
import { STEP_SECONDS } from '../../../sims/physics/constants.ts';
import type { PushReading } from '../../../sims/physics/push-reading.ts';
import { createPushScene, type PushScene } from '../../../sims/physics/push-scene.ts';
import { gridOfCups, pushCup, runFor } from './cups.ts';

// Some tests simulate half a minute.
vi.setConfig({ testTimeout: 120_000 });

const socket = sphericalSocket({ curvatureRadius: 26.5, width: 28 });

function newScene(compressiveLoad = 50, friction = 0.08): PushScene {
  return createPushScene({ socket, ballRadius: 24, compressiveLoad, friction });
}

/** A visit with every control in it, a reading after each step. */
function visit(scene: PushScene): readonly PushReading[] {
  const readings: PushReading[] = [];
  const run = (steps: number): void => {
    for (let i = 0; i < steps; i += 1) {
      scene.step();
      readings.push(scene.read());
    }
  };
  scene.setSideForce(18);
  run(60);
  scene.setDrag(-6);
  run(60);
  scene.setDrag(9);
  scene.setFriction(0.2);
  run(60);
  scene.setDrag(null);
  scene.setCompressiveLoad(300);
  run(60);
  scene.startPush();
  run(500);
  return readings;
}

/** The same push in chunks of time: each list adds up to five seconds. */
function inChunks(chunks: readonly number[]): PushReading {
  const scene = newScene();
  scene.startPush();
  for (const chunk of chunks) scene.advance(chunk);
  return scene.read();
}

describe('replay', () => {
  test('the same controls give the same readings, bit for bit', () => {
    expect(visit(newScene())).toEqual(visit(newScene()));
  });

  test('a scene after a reset is as new', () => {
    const scene = newScene();
    const first = visit(scene);
    scene.setCompressiveLoad(50);
    scene.setFriction(0.08);
    scene.reset();
    expect(scene.read()).toEqual(newScene().read());
    expect(visit(scene)).toEqual(first);
  });

  test('two scenes side by side do not know of each other', () => {
    const [alone, here, there] = [newScene(), newScene(), newScene(700, 0)];
    for (const scene of [alone, here]) scene.startPush();
    there.setDrag(12);
    for (let i = 0; i < 450; i += 1) alone.step();
    for (let i = 0; i < 450; i += 1) {
      there.step();
      here.step();
    }
    expect(here.read()).toEqual(alone.read());
  });

  test('frames of any length: 60, 120, 144 Hz and irregular ones give the same five seconds', () => {
    const steady = (rate: number): number[] => Array.from({ length: 5 * rate }, () => 1 / rate);
    const irregular: number[] = [];
    let left = 5;
    for (let i = 0; left > 0; i += 1) {
      const chunk = Math.min(left, 0.001 + 0.04 * Math.abs(Math.sin(12.9898 * i)));
      irregular.push(chunk);
      left -= chunk;
    }
    const [at60, ...others] = [steady(60), steady(120), steady(144), irregular].map(inChunks);
    expect(at60?.time).toBeCloseTo(5, 9);
    expect(at60?.push).toBe('slipped');
    for (const other of others) expect(other).toEqual(at60);
  });

  test('a page hidden for an hour comes back where it was, a quarter second on', () => {
    const [scene, twin] = [newScene(), newScene()];
    for (const one of [scene, twin]) {
      one.startPush();
      runFor(one, 2);
    }
    scene.advance(3600);
    for (let i = 0; i < Math.round(0.25 / STEP_SECONDS); i += 1) twin.step();
    expect(scene.read()).toEqual(twin.read());
  });

  test('time that does not fill a step is kept for the next call', () => {
    const scene = newScene();
    scene.advance(0.4 * STEP_SECONDS);
    expect(scene.read().time).toBe(0);
    scene.advance(0.7 * STEP_SECONDS);
    expect(scene.read().time).toBe(STEP_SECONDS);
  });

  test('a minute of frames loses no step', () => {
    const scene = createPushScene({ socket, ballRadius: 24, compressiveLoad: 50 });
    for (let i = 0; i < 60 * 60; i += 1) scene.advance(1 / 60);
    expect(scene.read().time).toBeCloseTo(60, 9);
  });
});

describe('load', () => {
  test('the slip ratio does not depend on it', () => {
    const cups = gridOfCups().filter((_, i) => i % 16 === 3);
    for (const cup of cups) {
      const ratios = [20, 137, 800].map((load) => pushCup({ ...cup, load }, 0.1).reading.slipRatio);
      const [at20 = null, ...others] = ratios;
      expect(at20).not.toBeNull();
      for (const other of others) expect(other).toBeCloseTo(at20 ?? NaN, 4);
    }
  });
});
