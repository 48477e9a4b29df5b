import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  measuredLoad,
  posedBySim,
  posedByTheory,
} from '../../../sims/benches/rocking-bench/posed.ts';
import { runToEnd, startScene } from '../../../sims/benches/rocking-bench/run.ts';
import { seatOf } from '../../../sims/benches/rocking-bench/seat.ts';
import type { RockingReading } from '../../../sims/physics/rocking-reading.ts';
import { settings } from './settings.ts';

/** Gaps below this are not compared, mm. */
const LEAST = 1e-3;
const RUNS = 60;

function isFinite({
  pose,
  ball,
  sideForce,
  liftOff,
  forces,
  gaps,
  slips,
}: RockingReading): boolean {
  const numbers = [pose.x, pose.z, pose.turn, ball.x, ball.z, sideForce, liftOff];
  return [...numbers, ...forces, ...gaps, ...slips].every(Number.isFinite);
}

test('any setting of the bench comes to an end, in numbers, and at rest agrees with the solver', () => {
  const ends: Record<string, number> = {};
  const errors: number[] = [];
  fc.assert(
    fc.property(settings, (setting) => {
      const seat = seatOf(setting, setting.a);
      const reading = runToEnd(startScene(setting, seat));
      ends[reading.state] = (ends[reading.state] ?? 0) + 1;
      expect(reading.state).not.toBe('moving');
      expect(isFinite(reading)).toBe(true);
      if (reading.state !== 'at rest') return;
      const measured = posedBySim(reading, seat);
      const theory = posedByTheory(setting, seat, measuredLoad(setting, reading));
      expect(theory.state).toBe('at rest');
      if (theory.liftOff < LEAST) return;
      const error = Math.abs(measured.liftOff / theory.liftOff - 1);
      errors.push(error);
      expect(error).toBeLessThan(0.05);
    }),
    { seed: 6, numRuns: RUNS },
  );
  const mean = errors.reduce((sum, error) => sum + error, 0) / errors.length;
  console.log(
    ends,
    `${errors.length} gaps: mean ${(100 * mean).toFixed(3)} %, worst ${(100 * Math.max(...errors)).toFixed(2)} %`,
  );
  expect(errors.length).toBeGreaterThan(RUNS / 3);
});

test('whatever a visitor does to it, a scene stays in numbers', () => {
  const acts = fc.array(
    fc.oneof(
      fc.record({
        act: fc.constant('place' as const),
        value: fc.double({ min: -1, max: 1, noNaN: true }),
      }),
      fc.record({
        act: fc.constant('press' as const),
        value: fc.double({ min: 50, max: 1000, noNaN: true }),
      }),
      fc.record({
        act: fc.constant('rock' as const),
        value: fc.double({ min: 0.2, max: 1, noNaN: true }),
      }),
      fc.record({
        act: fc.constant('wait' as const),
        value: fc.double({ min: 0, max: 0.25, noNaN: true }),
      }),
    ),
    { minLength: 4, maxLength: 12 },
  );
  fc.assert(
    fc.property(settings, acts, (setting, done) => {
      const scene = startScene(setting, seatOf(setting, setting.b));
      for (const { act, value } of done) {
        if (act === 'place') scene.setPlace(value);
        if (act === 'press') scene.setCompressiveLoad(value);
        if (act === 'rock') scene.rock(2, value);
        scene.advance(act === 'wait' ? value : 0.1);
        expect(isFinite(scene.read())).toBe(true);
      }
    }),
    { seed: 6, numRuns: RUNS },
  );
});
