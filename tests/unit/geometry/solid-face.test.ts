import { beforeAll, describe, expect, test } from 'vitest';
import type { ManifoldToplevel } from 'manifold-3d';
import { turnTo } from '../../../sims/geometry/contact-offer.ts';
import { contactSearch } from '../../../sims/geometry/contact-search.ts';
import { settle } from '../../../sims/geometry/face-contact.ts';
import { directionMap, face, pathOverFace } from '../../../sims/geometry/index.ts';
import { expectClose } from './close.ts';
import { wornPear, type TestFace } from './faces.ts';
import { loadKernel, restingHeight, solidFace, type SolidFace } from './solid-face.ts';

const pear = { kind: 'pear', width: 29, height: 39, upperWidth: 23 } as const;

const faces: readonly (readonly [name: string, input: TestFace, ballRadius: number])[] = [
  [
    'a round face',
    {
      outline: { kind: 'circle', width: 30, height: 30 },
      curvatureRadiusAP: 27,
      curvatureRadiusSI: 27,
    },
    24,
  ],
  [
    'an ellipse of two radii',
    {
      outline: { kind: 'ellipse', width: 28, height: 37 },
      curvatureRadiusAP: 34,
      curvatureRadiusSI: 28,
    },
    24,
  ],
  ['a pear of two radii', { outline: pear, curvatureRadiusAP: 40, curvatureRadiusSI: 27 }, 24],
  ['a pear with a lip and a cut', wornPear, 24],
];

/** A path over a face is compared with the solid's at so many places, half a millimetre and more apart. */
const PLACES = 24;
const WITHIN = { relative: 5e-3 };

let kernel: ManifoldToplevel;
beforeAll(async () => {
  kernel = await loadKernel();
});

describe.each(faces)('beside a solid of a geometry kernel: %s', (_, input, ballRadius) => {
  const onFace = face(input);
  const directions = [0, 0.4, 2.6, 4.4];

  let solid: SolidFace;
  beforeAll(() => {
    solid = solidFace(kernel, input);
  });

  test('the climb, the greatest slope over a stretch and the depth, to half a percent', () => {
    const rows = directionMap(onFace, ballRadius, { directions, translations: 60 });
    for (const { direction, dislocationTranslation, depth, peakStabilityRatio } of rows) {
      const translations = Array.from(
        { length: PLACES },
        (__, i) => (dislocationTranslation * i) / (PLACES - 1),
      );
      const heights = translations.map((t) =>
        restingHeight(solid, ballRadius, t * Math.cos(direction), t * Math.sin(direction)),
      );
      const climbs = heights.map((height) => height - (heights[0] ?? NaN));
      const path = pathOverFace(onFace, ballRadius, direction, translations);
      const allowed = { absolute: 5e-3 * depth };
      path.forEach(({ climb }, i) => expectClose(climb, climbs[i] ?? NaN, allowed));
      expectClose(depth, Math.max(...climbs), WITHIN);
      const step = translations[1] ?? NaN;
      const steepest = (climb: readonly number[]): number =>
        Math.max(...climb.slice(1).map((c, i) => (c - (climb[i] ?? NaN)) / step));
      const own = steepest(path.map(({ climb }) => climb));
      expectClose(own, steepest(climbs), WITHIN);
      expect(peakStabilityRatio).toBeGreaterThan(own * (1 - 1e-9));
    }
  });

  test('the ball a fiftieth of a millimetre lower cuts into the solid, as much higher it does not', () => {
    const { solids } = solid;
    // The kernel's sphere lies within the true one, by this much at most.
    const segments = 256;
    const ball = kernel.Manifold.sphere(ballRadius / Math.cos(Math.PI / segments), segments);
    const search = contactSearch(onFace, ballRadius);
    for (const direction of [0.4, 2.6, 4.4]) {
      for (const translation of [0, 5, 11]) {
        turnTo(search, direction);
        settle(search, translation);
        const cutAt = (higher: number): number => {
          const z = search.height + ballRadius + higher;
          const there = ball.translate(
            translation * Math.cos(direction),
            translation * Math.sin(direction),
            z,
          );
          return solids.reduce((sum, solid) => sum + there.intersect(solid).volume(), 0);
        };
        expect(cutAt(-0.02)).toBeGreaterThan(0);
        expect(cutAt(0.02)).toBe(0);
      }
    }
  });
});
