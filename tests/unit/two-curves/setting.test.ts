import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layoutFor } from '../../../sims/benches/two-curves/layout.ts';
import { layerRanges } from '../../../sims/benches/two-curves/layer.ts';
import { pairFrom } from '../../../sims/benches/two-curves/pair.ts';
import { pairRanges } from '../../../sims/benches/two-curves/pair-ranges.ts';
import {
  countingOnly,
  defaultTwoCurves,
  readTwoCurvesLink,
  writeTwoCurvesLink,
  type CurveSetting,
} from '../../../sims/benches/two-curves/setting.ts';
import { pairFigure } from '../../../sims/benches/two-curves/pair-figure.ts';
import { expectClose } from '../geometry/close.ts';

const onSteps = ({ min, max, step }: { min: number; max: number; step: number }) =>
  fc
    .integer({ min: 0, max: Math.round((max - min) / step) })
    .map((n) => Number((min + n * step).toFixed(4)));
const settings: fc.Arbitrary<CurveSetting> = fc.record({
  change: fc.constantFrom('socket' as const, 'ball' as const),
  held: fc.constantFrom('width' as const, 'depth' as const, 'arc' as const),
  ballDiameter: onSteps(pairRanges.ballDiameter),
  radius: onSteps(pairRanges.radius),
  mismatch: onSteps(pairRanges.mismatch),
  width: onSteps(pairRanges.width),
  depth: onSteps(pairRanges.depth),
  arc: onSteps(pairRanges.arc),
  load: onSteps(layerRanges.load),
  thickness: onSteps(layerRanges.thickness),
  modulus: onSteps(layerRanges.modulus),
  poisson: onSteps(layerRanges.poisson),
});

describe('the link', () => {
  test('of the default setting is empty, and an empty link is the default setting', () => {
    expect(writeTwoCurvesLink(defaultTwoCurves)).toBe('');
    expect(readTwoCurvesLink('')).toEqual({ state: defaultTwoCurves, problem: '' });
  });

  test('brings back everything that counts, and the kept curves', () => {
    fc.assert(
      fc.property(settings, fc.option(settings), (setting, kept) => {
        const { state, problem } = readTwoCurvesLink(writeTwoCurvesLink({ ...setting, kept }));
        expect(problem).toBe('');
        expect(countingOnly(state)).toEqual(countingOnly(setting));
        expect(state.kept).toEqual(kept === null ? null : countingOnly(kept));
      }),
    );
  });

  test('says in one line what it did not take, of the kept curves only where they are', () => {
    expect(readTwoCurvesLink('mismatch=11&kept-load=1').problem).toBe(
      'Not taken from the link: radial mismatch “11” (allowed: 0 to 10 mm). Its default stands instead.',
    );
    expect(readTwoCurvesLink('kept=1&kept-load=1').problem).toContain('kept load “1”');
    expect(readTwoCurvesLink('kept=yes').problem).toContain('kept curves “yes”');
  });
});

describe('the picture', () => {
  const widths = fc.integer({ min: 280, max: 1400 });

  test('is to scale: the centres stand the radial mismatch apart, the tops the diametral one, the bottoms nothing', () => {
    fc.assert(
      fc.property(settings, widths, (setting, width) => {
        const pair = pairFrom(setting);
        const { view } = layoutFor([pair], width);
        const { ball, socket, deepest } = pairFigure(pair, view);
        const mm = (pixels: number): number => pixels / view.scale;
        expectClose(mm(ball.centre.y - socket.centre.y), pair.mismatch, { absolute: 1e-9 });
        expectClose(mm(ball.top.y - socket.top.y), 2 * pair.mismatch, { absolute: 1e-9 });
        expectClose(mm(deepest.y - ball.centre.y), pair.ballRadius, { absolute: 1e-9 });
        expectClose(mm(deepest.y - socket.centre.y), pair.socket.curvatureRadius, {
          absolute: 1e-9,
        });
        expectClose(mm(socket.radius), pair.socket.curvatureRadius, { absolute: 1e-9 });
      }),
    );
  });

  test('holds both circles and the panels, whatever is set', () => {
    fc.assert(
      fc.property(settings, fc.option(settings), widths, (setting, kept, width) => {
        const pairs = [pairFrom(setting), ...(kept === null ? [] : [pairFrom(kept)])];
        const { view, panels, plots, axes, height, size } = layoutFor(pairs, width);
        for (const { socket } of pairs) {
          const radius = socket.curvatureRadius * view.scale;
          expect(view.x(0) - radius).toBeGreaterThanOrEqual(0);
          expect(view.x(0) + radius).toBeLessThanOrEqual(view.width);
          expect(view.y(2 * socket.curvatureRadius)).toBeGreaterThanOrEqual(2 * size);
        }
        expect(plots.right).toBeLessThanOrEqual(width);
        for (const { top, bottom } of Object.values(panels))
          expect(bottom - top).toBeGreaterThan(50);
        expect(axes.diametral + 2.5 * size).toBeLessThanOrEqual(height);
      }),
    );
  });

  test('keeps its scale while the mismatch grows to 5 mm', () => {
    const scaleAt = (mismatch: number): number =>
      layoutFor([pairFrom({ ...defaultTwoCurves, mismatch })], 800).view.scale;
    expect(scaleAt(5)).toBe(scaleAt(0));
    expect(scaleAt(10)).toBeLessThan(scaleAt(0));
  });
});
