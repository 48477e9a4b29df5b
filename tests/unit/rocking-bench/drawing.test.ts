import { describe, expect, test } from 'vitest';
import { layoutFor } from '../../../sims/benches/rocking-bench/layout.ts';
import { small } from '../../../sims/benches/rocking-bench/lettering.ts';
import {
  carried,
  carriedTransform,
  magnification,
} from '../../../sims/benches/rocking-bench/magnify.ts';
import type { Posed } from '../../../sims/benches/rocking-bench/posed.ts';
import { expectClose } from '../geometry/close.ts';

const posed = (liftOff: number, pressIn = 0, state: Posed['state'] = 'at rest'): Posed => ({
  state,
  pose: { x: 0, z: 0, turn: 0 },
  contactAngle: 0,
  sideForce: 0,
  liftOff,
  pressIn,
  holds: [],
});

describe('the magnification', () => {
  test.each([
    [0.38, 10],
    [0.09, 50],
    [0.9, 5],
    [3, 1],
    [9, 1],
    [0.02, 200],
  ])('of %d mm is %d, a round number', (largest, times) => {
    expect(magnification([posed(largest), posed(0.01)])).toBe(times);
    expect(magnification([posed(0, largest)])).toBe(times);
  });

  test('takes no notice of a socket that is lost', () => {
    expect(magnification([posed(0.38), posed(9, 9, 'overturned')])).toBe(10);
  });
});

test('the drawing carries every place as the movement does, magnified', () => {
  const { view } = layoutFor(800, 18, 20, 0).panels.a;
  const pose = { x: 0.03, z: -0.05, turn: -0.011 };
  const parts = /matrix\(([^)]*)\)/.exec(carriedTransform(pose, 10, view))?.[1];
  const [a = NaN, b = NaN, c = NaN, d = NaN, e = NaN, f = NaN] = (parts ?? '')
    .split(' ')
    .map(Number);
  for (const at of [
    { x: 0, z: 0 },
    { x: -18, z: -5 },
    { x: 12, z: 4 },
  ]) {
    const moved = carried(pose, 10, at);
    const [x, y] = [view.x(at.x), view.y(at.z)];
    expectClose(a * x + c * y + e, view.x(moved.x), { absolute: 0.02 });
    expectClose(b * x + d * y + f, view.y(moved.z), { absolute: 0.02 });
  }
  const far = carried(pose, 10, { x: -18, z: -5 });
  expectClose(far.z + 5, 10 * (-0.05 + 0.011 * 18), { relative: 1e-12 });
});

describe('the layout', () => {
  test.each([300, 344, 500, 620, 800, 1100])('%i wide: nothing overlaps or leaves', (width) => {
    for (const half of [11, 15, 22]) {
      const { panels, plot, height } = layoutFor(width, half, 20, 0.5);
      for (const { left, top, width: across, height: down, view } of [panels.a, panels.b]) {
        expect(left + across).toBeLessThanOrEqual(width + 1e-9);
        expect(top + down).toBeLessThanOrEqual(plot.top);
        expect(view.x(half)).toBeLessThan(across);
      }
      const isBeside = panels.b.left > 0;
      expect(isBeside ? panels.b.left : panels.b.top).toBeGreaterThanOrEqual(
        isBeside ? panels.a.left + panels.a.width : panels.a.top + panels.a.height,
      );
      expect(height).toBeGreaterThan(plot.top);
    }
  });
});

test('small lengths are lettered in µm, larger in mm', () => {
  expect(small(0.1234)).toBe('123\u00a0µm');
  expect(small(1.234)).toBe('1.23\u00a0mm');
});
