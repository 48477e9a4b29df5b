import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { turnTo } from '../../../sims/geometry/contact-offer.ts';
import { contactSearch } from '../../../sims/geometry/contact-search.ts';
import { heightAt } from '../../../sims/geometry/face-shape.ts';
import { settle } from '../../../sims/geometry/face-contact.ts';
import { face, isOnFace, surfaceHeight } from '../../../sims/geometry/index.ts';
import { reachOf } from '../../../sims/geometry/way-out.ts';
import { real } from './arbitraries.ts';
import { expectClose } from './close.ts';
import { denseContact, oracleFace } from './face-oracle.ts';
import { anyFace, anyFaceAndBall, direction, type TestFace } from './faces.ts';
import { hardPlaces } from './hard-places.ts';

/** Lets a ball down on a face by the module's search. */
function settled(input: TestFace, ballRadius: number, angle: number, share: number) {
  const search = contactSearch(face(input), ballRadius);
  turnTo(search, angle);
  const translation = share * reachOf(search);
  settle(search, translation);
  return { search, translation };
}

/** A face whose contacts wander over hollow, lip and rim: a low lip, and a ball much smaller than the hollow. */
const lowLip = anyFace.chain((input) =>
  fc
    .record({ height: real(0.1, 1.2), width: real(1, 2.8), conformity: real(0.2, 0.9) })
    .map(({ height, width, conformity }) => ({
      input: { ...input, labrum: { height, width } },
      ballRadius: Math.max(
        3,
        conformity * Math.min(input.curvatureRadiusAP, input.curvatureRadiusSI),
      ),
    })),
);

const pointed = fc
  .record({
    width: real(15, 30),
    tallness: real(1.8, 2.8),
    upper: real(0.5, 0.7),
    a: real(1, 1.5),
    b: real(1, 1.5),
    conformity: real(0.6, 1.6),
  })
  .map(({ width, tallness, upper, a, b, conformity }) => {
    const reach = 0.55 * width * Math.hypot(1, tallness);
    const input: TestFace = {
      outline: { kind: 'pear', width, height: width * tallness, upperWidth: width * upper },
      curvatureRadiusAP: reach * a,
      curvatureRadiusSI: reach * b,
    };
    return { input, ballRadius: reach * Math.min(a, b) * conformity };
  });

/** mm. The search tells two maxima along a rim apart from a degree on; between closer ones there is no more than this. */
const UNTOLD = 1e-5;

/** A steep narrow lip and a defect through it: where one contact hands over to another most often. */
const brokenLip = anyFace.chain((input) =>
  fc
    .record({
      labrum: fc.record({ height: real(0.5, 4), width: real(0.3, 2) }),
      defect: fc.record({
        direction,
        depth: real(0.2, 0.28 * Math.min(input.outline.width, input.outline.height)),
        kind: fc.constantFrom('cut' as const, 'segment' as const),
        span: real(0.3, 2.5),
      }),
      conformity: real(0.2, 1.6),
    })
    .map(({ labrum, defect, conformity }) => ({
      input: { ...input, labrum, defect },
      ballRadius: Math.max(
        3,
        conformity * Math.min(input.curvatureRadiusAP, input.curvatureRadiusSI),
      ),
    })),
);

describe('settle', () => {
  test.each([
    ['any face', anyFaceAndBall, 150],
    ['low lips', lowLip, 100],
    ['broken lips', brokenLip, 100],
    ['pointed pears, some of them bridged', pointed, 60],
  ] as const)('settle: no lower than the best of all points, on %s', (_, arbitrary, numRuns) => {
    fc.assert(
      fc.property(arbitrary, direction, real(0, 1.03), ({ input, ballRadius }, angle, share) => {
        const { search, translation } = settled(input, ballRadius, angle, share);
        const dense = denseContact(oracleFace(input), ballRadius, translation, angle);
        fc.pre(dense.height > -Infinity);
        expect(search.height + ballRadius).toBeGreaterThan(dense.height - UNTOLD);
      }),
      { numRuns },
    );
  });

  test.each([
    ['any face', anyFaceAndBall],
    ['low lips', lowLip],
    ['broken lips', brokenLip],
    ['pointed pears, some of them bridged', pointed],
  ] as const)('settle: as high as its contact bears it, on %s', (_, arbitrary) => {
    fc.assert(
      fc.property(arbitrary, direction, real(0, 1.03), ({ input, ballRadius }, angle, share) => {
        const { search, translation } = settled(input, ballRadius, angle, share);
        fc.pre(search.height > -Infinity);
        const { x, y } = search;
        // The rim is told by a cubic between half degrees: a place may lie a hair outside.
        const inside = 1 - 2e-7;
        const onFace = face(input);
        expect(isOnFace(onFace, x * inside, y * inside)).toBe(true);
        const dx = x - translation * Math.cos(angle);
        const dy = y - translation * Math.sin(angle);
        const drop = Math.sqrt(Math.max(0, ballRadius ** 2 - dx * dx - dy * dy));
        fc.pre(drop > 1e-3 * ballRadius);
        const z = surfaceHeight(onFace, x * inside, y * inside);
        expectClose(search.height, z + drop - ballRadius, { absolute: 2e-4 });
        const slope = (dx * Math.cos(angle) + dy * Math.sin(angle)) / drop;
        expectClose(search.ratio, slope, { absolute: 1e-5, relative: 1e-5 });
      }),
    );
  });

  test.each(hardPlaces)(
    'settle: no lower than the best of all points, at $what',
    ({ input, ballRadius, direction: angle, translation }) => {
      const search = contactSearch(face(input), ballRadius);
      turnTo(search, angle);
      settle(search, translation);
      const dense = denseContact(oracleFace(input), ballRadius, translation, angle);
      expect(search.height + ballRadius).toBeGreaterThan(dense.height - UNTOLD);
    },
  );

  test.each([
    ['any face', anyFaceAndBall],
    ['low lips', lowLip],
    ['broken lips', brokenLip],
    ['pointed pears, some of them bridged', pointed],
  ] as const)('settle: no contact found nearby would bear it higher, on %s', (_, arbitrary) => {
    fc.assert(
      fc.property(arbitrary, direction, ({ input, ballRadius }, angle) => {
        const onFace = face(input);
        const search = contactSearch(onFace, ballRadius);
        turnTo(search, angle);
        const step = reachOf(search) / 199;
        const path = Array.from({ length: 200 }, (__, i) => {
          settle(search, i * step);
          const { x, y, height } = search;
          const [cx, cy] = [i * step * Math.cos(angle), i * step * Math.sin(angle)];
          return { x, y, cx, cy, z: heightAt(onFace, x, y), height };
        }).filter(({ height }) => height > -Infinity);
        path.forEach(({ height, cx, cy }, i) => {
          const near = path.slice(Math.max(0, i - 10), i + 11);
          const borne = near.map(({ x, y, z }) => {
            const under = ballRadius ** 2 - (x - cx) ** 2 - (y - cy) ** 2;
            return under > 0 ? z + Math.sqrt(under) - ballRadius : -Infinity;
          });
          expect(height).toBeGreaterThan(Math.max(...borne) - UNTOLD);
        });
      }),
      { numRuns: 30 },
    );
  });

  test('settle: the ratio lies between the slopes of the height on either side', () => {
    fc.assert(
      fc.property(
        anyFaceAndBall,
        direction,
        real(0.02, 1),
        ({ input, ballRadius }, angle, share) => {
          const { search, translation } = settled(input, ballRadius, angle, share);
          const { height, ratio } = search;
          fc.pre(height > -Infinity && Math.abs(ratio) < 3);
          const h = 1e-4;
          const heightAt = (t: number): number => {
            settle(search, t);
            return search.height;
          };
          const slopes = [
            (height - heightAt(translation - h)) / h,
            (heightAt(translation + h) - height) / h,
          ];
          fc.pre(slopes.every(Number.isFinite));
          // The path of a ball on a corner bends with 1/r.
          const slack = 1e-5 + (h * (1 + ratio * ratio) ** 1.5) / Math.min(ballRadius, 5);
          expect(ratio).toBeGreaterThan(Math.min(...slopes) - slack);
          expect(ratio).toBeLessThan(Math.max(...slopes) + slack);
        },
      ),
      { numRuns: 200 },
    );
  });
});
