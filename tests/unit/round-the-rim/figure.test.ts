import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { surfaceHeight } from '../../../sims/geometry/index.ts';
import {
  contourRadius,
  contours,
  contourStep,
  lostBone,
} from '../../../sims/benches/round-the-rim/face-figure.ts';
import { layoutFor, ratioScale } from '../../../sims/benches/round-the-rim/layout.ts';
import {
  bearingAt,
  numberedBearing,
  polar,
  radiusOf,
  ratioCurve,
  rings,
} from '../../../sims/benches/round-the-rim/rose-figure.ts';
import { sectionFigure } from '../../../sims/benches/round-the-rim/section-figure.ts';
import { soundShape } from '../../../sims/benches/round-the-rim/sound-shape.ts';
import { mapOf } from '../../../sims/benches/round-the-rim/way.ts';
import { anyShape, shapeWith } from './shapes.ts';

const bone = soundShape(shapeWith({}));
const layoutOf = (sound = bone, width = 800) => layoutFor(sound, mapOf(sound), width);

describe('contours', () => {
  test('lie at their height', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 6.3, noNaN: true }),
        fc.double({ min: 0.1, max: 4, noNaN: true }),
        (direction, height) => {
          const radius = contourRadius(bone.face, height, direction);
          const [x, y] = [radius * Math.cos(direction), radius * Math.sin(direction)];
          const flat = Math.hypot(x / 13, y / 17.5) < 0.7;
          if (flat) expect(surfaceHeight(bone.face, x, y)).toBeCloseTo(height, 9);
        },
      ),
    );
  });

  test('are at most eight, their step is round, and each is drawn', () => {
    expect([0.9, 4.98, 9, 20].map(contourStep)).toEqual([0.5, 1, 2, 5]);
    const { rose } = layoutOf();
    const drawn = contours(bone.face, bone.bare, rose.view);
    expect(drawn.map(({ height }) => height)).toEqual([1, 2, 3, 4]);
    for (const { fill, line } of drawn) {
      expect(fill).toMatch(/^M.*Z$/);
      expect(line).not.toBe('');
    }
  });
});

describe('the rose', () => {
  const { rose } = layoutOf();

  test('has the ratio 0 on its base and its top on the ring of words', () => {
    expect(radiusOf(rose, 0)).toBe(rose.base);
    expect(radiusOf(rose, rose.top)).toBeCloseTo(rose.inner, 9);
    expect(radiusOf(rose, 99)).toBeCloseTo(rose.inner, 9);
    expect(rings(rose)).toEqual([0.2, 0.4, 0.6]);
  });

  test('finds the bearing under a point', () => {
    for (const bearing of [0, 45, 100, 181, 359]) {
      expect(bearingAt(rose, polar(rose, (bearing * Math.PI) / 180, 77))).toBe(bearing);
    }
  });

  test('draws anterior to the right and superior up', () => {
    const { x, y } = rose.centre;
    expect(polar(rose, 0, 10)).toEqual({ x: x + 10, y });
    expect(polar(rose, Math.PI / 2, 10).y).toBeCloseTo(y - 10, 9);
    expect(rose.view.x(1)).toBeGreaterThan(rose.view.x(0));
    expect(rose.view.y(1)).toBeLessThan(rose.view.y(0));
  });

  test('has a point of its curve for every direction', () => {
    expect(ratioCurve(rose, mapOf(bone).rows).split('L')).toHaveLength(72);
  });

  test('numbers its rings away from the ray', () => {
    expect([0, 112, 68].map(numberedBearing)).toEqual([112.5, 67.5, 112.5]);
  });

  test.each([
    [0.1, { top: 0.8, step: 0.2 }],
    [0.62, { top: 0.8, step: 0.2 }],
    [0.92, { top: 1, step: 0.2 }],
    [1.2, { top: 1.5, step: 0.5 }],
    [99, { top: 4, step: 1 }],
  ])('a greatest ratio of %d has a round scale', (greatest, scale) => {
    expect(ratioScale(greatest)).toEqual(scale);
  });
});

describe('the layout', () => {
  test('keeps all of it inside, at any width and for any shape', () => {
    fc.assert(
      fc.property(anyShape, fc.integer({ min: 280, max: 1200 }), (asked, width) => {
        const { rose, section, ratio, height, size } = layoutOf(soundShape(asked), width);
        expect(rose.centre.x - rose.outer).toBeGreaterThanOrEqual(0);
        expect(rose.centre.x + rose.outer).toBeLessThanOrEqual(width);
        expect(rose.centre.y + rose.outer).toBeLessThanOrEqual(height);
        expect(section.right).toBeLessThanOrEqual(width);
        expect(section.bottom).toBeLessThan(ratio.top);
        expect(ratio.left).toBeGreaterThanOrEqual(section.left);
        expect(ratio.right).toBeLessThanOrEqual(width);
        expect(ratio.bottom - ratio.top).toBeGreaterThan(60);
        expect(ratio.bottom).toBeLessThan(height);
        expect(size).toBeGreaterThanOrEqual(13);
      }),
      { numRuns: 60 },
    );
  });

  test('puts the profile beside the rose where there is room', () => {
    expect(layoutOf(bone, 800).arrangement).toBe('beside');
    expect(layoutOf(bone, 380).arrangement).toBe('under');
  });
});

describe('what a defect has taken', () => {
  const { rose, section } = layoutOf();

  test('is drawn where there is one', () => {
    const { face, bare } = soundShape(shapeWith({ defect: 'cut' }));
    expect(lostBone(face, bare, rose.view)).toMatch(/^M.*Z$/);
    expect(lostBone(bone.face, bone.bare, rose.view)).toBe('');
  });

  test('lies in the section on its own side only, and takes the lip with it', () => {
    const sound = soundShape(shapeWith({ defect: 'segment', clock: 3, defectDepth: 5, lip: true }));
    const figure = sectionFigure(sound, 0, section.view);
    expect(figure.lost.map((path) => path !== '')).toEqual([false, true]);
    expect(figure.lips.map((path) => path !== '')).toEqual([true, false]);
    const behind = sectionFigure(sound, Math.PI, section.view);
    expect(behind.lost.map((path) => path !== '')).toEqual([true, false]);
  });

  test('no path holds a number that is none', () => {
    fc.assert(
      fc.property(anyShape, fc.integer({ min: 0, max: 359 }), (asked, bearing) => {
        const sound = soundShape(asked);
        const { rose: own, section: box } = layoutOf(sound);
        const figure = sectionFigure(sound, (bearing * Math.PI) / 180, box.view);
        const paths = [
          figure.surface,
          figure.layer,
          figure.bone,
          ...figure.lips,
          ...figure.lost,
          lostBone(sound.face, sound.bare, own.view),
          ...contours(sound.face, sound.bare, own.view).flatMap(({ fill, line }) => [fill, line]),
        ];
        for (const path of paths) expect(path).not.toMatch(/NaN|undefined|Infinity/);
      }),
      { numRuns: 40 },
    );
  });
});
