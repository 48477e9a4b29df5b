import fc from 'fast-check';
import { expect, test } from 'vitest';
import { climbAt } from '../../../sims/geometry/index.ts';
import { areaUnderRatio, integral } from '../../../sims/benches/path-tracer/area.ts';
import { cupFrom, cupRanges, defaultCup } from '../../../sims/benches/shared/cup-setting.ts';

test('the quadrature meets integrals known in closed form', () => {
  expect(integral((x) => x ** 3, 0, 2)).toBeCloseTo(4, 9);
  expect(integral(Math.sin, 0, Math.PI)).toBeCloseTo(2, 9);
  // Unbounded at its end: ∫ x/√(1 − x²) from 0 to 1 is 1.
  expect(integral((x) => x / Math.sqrt(1 - x * x), 0, 1)).toBeCloseTo(1, 6);
  expect(integral((x) => x, 3, 3)).toBe(0);
});

test('the area summed from the ratio is the climb of the closed form, at every place of every cup', () => {
  const setting = fc.record({
    ballDiameter: fc.double({ ...cupRanges.ballDiameter, noNaN: true }),
    width: fc.double({ ...cupRanges.width, noNaN: true }),
    shapeBy: fc.constant('depth' as const),
    depth: fc.double({ ...cupRanges.depth, noNaN: true }),
    radius: fc.constant(defaultCup.radius),
    mismatch: fc.constant(defaultCup.mismatch),
  });
  fc.assert(
    fc.property(setting, fc.double({ min: 0, max: 1, noNaN: true }), (raw, share) => {
      const cup = cupFrom(raw);
      const translation = (share * cup.socket.width) / 2;
      const climb = climbAt(cup.socket, cup.ballRadius, translation);
      expect(Math.abs(areaUnderRatio(cup, translation) - climb)).toBeLessThan(1e-4);
    }),
    { numRuns: 500 },
  );
});

test('the whole area is the depth, for a flat, a conforming and a loose pair', () => {
  const { socket: flat } = cupFrom({ ...defaultCup, depth: 0 });
  expect(areaUnderRatio(cupFrom({ ...defaultCup, depth: 0 }), flat.width / 2)).toBe(0);
  for (const mismatch of [0, 5, 40]) {
    const cup = cupFrom({ ...defaultCup, shapeBy: 'mismatch', mismatch });
    expect(areaUnderRatio(cup, cup.socket.width / 2)).toBeCloseTo(cup.socket.depth, 6);
  }
});
