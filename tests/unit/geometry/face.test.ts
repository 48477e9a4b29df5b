import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  face,
  faceArea,
  isOnFace,
  rimLine,
  rimPoint,
  surfaceHeight,
  surfaceSlope,
  type FaceInput,
  type Outline,
} from '../../../sims/geometry/index.ts';
import { real } from './arbitraries.ts';
import { expectClose } from './close.ts';
import { chordOf, oracleFace } from './face-oracle.ts';
import { anyFace, anyOutline, direction, wornPear } from './faces.ts';
import { integrate } from './oracles.ts';

const degree = Math.PI / 180;

const round = face({
  outline: { kind: 'circle', width: 30, height: 30 },
  curvatureRadiusAP: 27,
  curvatureRadiusSI: 27,
});

const withOutline = (outline: Outline, rest: Partial<FaceInput> = {}) =>
  face({ outline, curvatureRadiusAP: 60, curvatureRadiusSI: 60, ...rest });

/** Chord of a face at a height, found by asking what is on it. */
function chordAt(onFace: ReturnType<typeof face>, y: number): number {
  let low = 0;
  let high = 100;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (isOnFace(onFace, middle, y)) low = middle;
    else high = middle;
  }
  return 2 * low;
}

describe('outline', () => {
  test('outline: a pear has its three measures', () => {
    fc.assert(
      fc.property(real(15, 40), real(1, 1.8), real(0.48, 0.97), (width, tallness, share) => {
        const height = width * tallness;
        const upperWidth = width * share;
        const pear = withOutline({ kind: 'pear', width, height, upperWidth });
        expectClose(chordAt(pear, height / 4), upperWidth, { absolute: 1e-6 });
        const chords = Array.from({ length: 401 }, (_, i) => {
          const y = height * (i / 400 - 0.5);
          return { y, chord: chordAt(pear, y) };
        });
        const widest = chords.reduce((a, b) => (b.chord > a.chord ? b : a));
        expectClose(widest.chord, width, { relative: 1e-4 });
        expect(Math.max(...chords.map((at) => at.chord))).toBeLessThan(width + 1e-6);
        expect(widest.y).toBeLessThan(1e-9);
        expectClose(rimPoint(pear, 90 * degree).y, height / 2, { relative: 1e-12 });
        expectClose(rimPoint(pear, -90 * degree).y, -height / 2, { relative: 1e-12 });
      }),
      { numRuns: 30 },
    );
  });

  test('outline: a pear is convex and symmetrical', () => {
    fc.assert(
      fc.property(real(0.476, 0.974), (share) => {
        const pear = withOutline({ kind: 'pear', width: 29, height: 39, upperWidth: 29 * share });
        const line = rimLine(pear);
        line.forEach((point, i) => {
          const next = line[(i + 1) % line.length] ?? point;
          const after = line[(i + 2) % line.length] ?? point;
          const turn =
            (next.x - point.x) * (after.y - next.y) - (next.y - point.y) * (after.x - next.x);
          expect(turn).toBeGreaterThan(-1e-12);
        });
        for (const angle of [-80, -30, 10, 45, 70]) {
          const right = rimPoint(pear, angle * degree);
          const left = rimPoint(pear, (180 - angle) * degree);
          expectClose(left.x, -right.x, { absolute: 1e-12 });
          expectClose(left.y, right.y, { absolute: 1e-12 });
        }
      }),
    );
  });

  test('outline: a pear whose upper width is an ellipse’s is the ellipse', () => {
    const pear = withOutline({
      kind: 'pear',
      width: 28,
      height: 36,
      upperWidth: 28 * Math.sqrt(0.75),
    });
    const ellipse = withOutline({ kind: 'ellipse', width: 28, height: 36 });
    expectClose(faceArea(pear), faceArea(ellipse), { relative: 1e-12 });
    for (const angle of [0, 0.4, 1, 2, 4]) {
      expectClose(rimPoint(pear, angle).x, rimPoint(ellipse, angle).x, { absolute: 1e-9 });
    }
  });

  test('outline: 0.8 of the width is the upper width where none is given', () => {
    expect(withOutline({ kind: 'pear', width: 30, height: 40 }).outline.upperWidth).toBe(24);
  });

  test('outline: a circle is as high as it is wide without being told', () => {
    expect(withOutline({ kind: 'circle', width: 30 }).outline.height).toBe(30);
  });

  test('outline: areas of circle and ellipse', () => {
    expectClose(faceArea(round), 225 * Math.PI, { relative: 1e-14 });
    const ellipse = withOutline({ kind: 'ellipse', width: 28, height: 36 });
    expectClose(faceArea(ellipse), 14 * 18 * Math.PI, { relative: 1e-14 });
  });

  test('outline: the area is that under the chords', () => {
    fc.assert(
      fc.property(anyOutline, (outline) => {
        // In y = (height/2) sin t the ends are smooth.
        const half = outline.height / 2;
        const chord = chordOf(outline);
        const area = integrate(
          (t) => chord(half * Math.sin(t)) * half * Math.cos(t),
          -Math.PI / 2,
          Math.PI / 2,
        );
        expectClose(faceArea(withOutline(outline)), area, { relative: 1e-6 });
      }),
      { numRuns: 40 },
    );
  });
});

describe('surface', () => {
  test('surface: two equal radii are the sphere', () => {
    fc.assert(
      fc.property(direction, real(0, 1), (angle, share) => {
        const x = 15 * share * Math.cos(angle);
        const y = 15 * share * Math.sin(angle);
        const sphere = 27 - Math.sqrt(27 ** 2 - x * x - y * y);
        expectClose(surfaceHeight(round, x, y), sphere, { absolute: 1e-14 });
      }),
    );
  });

  test('surface: the principal sections are circles of their radii', () => {
    const saddle = withOutline(
      { kind: 'ellipse', width: 28, height: 38 },
      { curvatureRadiusAP: 41, curvatureRadiusSI: 26 },
    );
    for (const share of [0.1, 0.5, 0.9, 1]) {
      const x = 14 * share;
      const y = 19 * share;
      expectClose(surfaceHeight(saddle, x, 0), 41 - Math.sqrt(41 ** 2 - x ** 2), {
        absolute: 1e-13,
      });
      expectClose(surfaceHeight(saddle, 0, -y), 26 - Math.sqrt(26 ** 2 - y ** 2), {
        absolute: 1e-13,
      });
    }
  });

  test('surface: the lip rises from nothing to its height on every ray', () => {
    fc.assert(
      fc.property(anyOutline, direction, (outline, angle) => {
        const bare = withOutline(outline);
        const labrum = { height: 3, width: 2.5 };
        const lipped = withOutline(outline, { labrum });
        const edge = rimPoint(bare, angle);
        const radius = Math.hypot(edge.x, edge.y);
        for (const [inward, rise] of [
          [0, 3],
          [1.25, 1.5],
          [2.5, 0],
          [4, 0],
        ] as const) {
          const share = Math.max(0, 1 - inward / radius);
          const [x, y] = [edge.x * share, edge.y * share];
          const added = surfaceHeight(lipped, x, y) - surfaceHeight(bare, x, y);
          expectClose(added, rise, { absolute: 1e-9 });
        }
      }),
    );
  });

  test('surface: the slope is that of the height', () => {
    fc.assert(
      fc.property(anyFace, direction, real(0.05, 0.95), (input, angle, share) => {
        const onFace = face(input);
        const edge = rimPoint(onFace, angle);
        const [x, y] = [edge.x * share, edge.y * share];
        const h = 1e-5;
        const outline = face({ ...input, labrum: undefined, defect: undefined });
        const toOutline = Math.hypot(rimPoint(outline, angle).x, rimPoint(outline, angle).y);
        const inward = toOutline - Math.hypot(x, y);
        // Not across the inner edge of the lip, where there are two slopes.
        fc.pre(Math.abs(inward - (input.labrum?.width ?? -1)) > 0.01);
        fc.pre([-h, h].every((d) => isOnFace(onFace, x + d, y) && isOnFace(onFace, x, y + d)));
        const slope = surfaceSlope(onFace, x, y);
        const along = (dx: number, dy: number): number =>
          (surfaceHeight(onFace, x + dx, y + dy) - surfaceHeight(onFace, x - dx, y - dy)) / (2 * h);
        expectClose(slope.x, along(h, 0), { absolute: 1e-6, relative: 1e-6 });
        expectClose(slope.y, along(0, h), { absolute: 1e-6, relative: 1e-6 });
      }),
    );
  });

  test('surface: heights are those of its definition in words', () => {
    fc.assert(
      fc.property(anyFace, direction, real(0, 0.999), (input, angle, share) => {
        const place = oracleFace(input, 1, 1).ray(angle).at(share);
        const height = surfaceHeight(face(input), place.x, place.y);
        expectClose(height, place.z, { absolute: 1e-6 });
      }),
    );
  });
});

describe('defect', () => {
  test('defect: a cut leaves a straight edge square to its direction', () => {
    const cut = withOutline(
      { kind: 'ellipse', width: 28, height: 36 },
      { defect: { direction: 0.5, depth: 6, kind: 'cut' } },
    );
    const whole = rimPoint(withOutline({ kind: 'ellipse', width: 28, height: 36 }), 0.5);
    const left = Math.hypot(whole.x, whole.y) - 6;
    for (const off of [-0.3, 0, 0.25]) {
      const edge = rimPoint(cut, 0.5 + off);
      expectClose(edge.x * Math.cos(0.5) + edge.y * Math.sin(0.5), left, { relative: 1e-12 });
    }
    expect(isOnFace(cut, whole.x, whole.y)).toBe(false);
  });

  test('defect: what a cut takes from a circle is its segment', () => {
    const cut = withOutline(
      { kind: 'circle', width: 30, height: 30 },
      { defect: { direction: 2, depth: 5, kind: 'cut' } },
    );
    const half = Math.acos(10 / 15);
    const taken = 225 * (half - Math.sin(half) * Math.cos(half));
    expectClose(faceArea(cut), 225 * Math.PI - taken, { relative: 1e-9 });
  });

  test('defect: a segment takes the outer millimetres of two hours of the clock', () => {
    const worn = withOutline(
      { kind: 'circle', width: 30, height: 30 },
      { defect: { direction: 0, depth: 4, kind: 'segment' } },
    );
    expectClose(faceArea(worn), 225 * Math.PI - ((15 ** 2 - 11 ** 2) * Math.PI) / 6, {
      relative: 1e-9,
    });
    expectClose(rimPoint(worn, 29 * degree).x, 11 * Math.cos(29 * degree), { relative: 1e-12 });
    expectClose(rimPoint(worn, 31 * degree).x, 15 * Math.cos(31 * degree), { relative: 1e-12 });
    expect(isOnFace(worn, 12, 0)).toBe(false);
    expect(isOnFace(worn, 0, 12)).toBe(true);
  });

  test('defect: one without depth is none', () => {
    const none = withOutline(
      { kind: 'ellipse', width: 28, height: 36 },
      { defect: { direction: 0.5, depth: 0, kind: 'cut' } },
    );
    expect(none.defect).toBeUndefined();
    expectClose(faceArea(none), 14 * 18 * Math.PI, { relative: 1e-14 });
  });

  test('defect: the area is what a fine grid of places on the face covers', () => {
    fc.assert(
      fc.property(anyFace, (input) => {
        const onFace = face(input);
        const { width } = input.outline;
        const { height } = input.outline;
        const cells = 200;
        let count = 0;
        for (let i = 0; i < cells; i++) {
          for (let j = 0; j < cells; j++) {
            const x = width * ((i + 0.5) / cells - 0.5);
            const y = height * ((j + 0.5) / cells - 0.5);
            if (isOnFace(onFace, x, y)) count++;
          }
        }
        expectClose((count * width * height) / cells ** 2, faceArea(onFace), { relative: 5e-3 });
      }),
      { numRuns: 20 },
    );
  });
});

describe('rim', () => {
  test('rim: every place of the rim line is on the face and next to what is not', () => {
    fc.assert(
      fc.property(anyFace, (input) => {
        const onFace = face(input);
        for (const { x, y, z } of rimLine(onFace)) {
          expect(isOnFace(onFace, x, y)).toBe(true);
          expectClose(z, surfaceHeight(onFace, x, y), { absolute: 1e-6 });
          const isEdge = Array.from({ length: 64 }, (_, i) => (i * Math.PI) / 32).some(
            (angle) => !isOnFace(onFace, x + 1e-4 * Math.cos(angle), y + 1e-4 * Math.sin(angle)),
          );
          expect(isEdge).toBe(true);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('rim: the same in a direction and a turn further', () => {
    const pear = face(wornPear);
    const once = rimPoint(pear, 0.4);
    const again = rimPoint(pear, 0.4 - 2 * Math.PI);
    expectClose(again.x, once.x, { absolute: 1e-12 });
    expectClose(again.z, once.z, { absolute: 1e-12 });
  });

  test('rim: places on it count as on the face', () => {
    fc.assert(
      fc.property(anyFace, direction, (input, angle) => {
        const onFace = face(input);
        const { x, y, z } = rimPoint(onFace, angle);
        expect(surfaceHeight(onFace, x, y)).toBe(z);
      }),
    );
  });
});

describe('face', () => {
  test('face: leaves its input alone', () => {
    const input = structuredClone(wornPear);
    Object.freeze(input);
    Object.freeze(input.outline);
    Object.freeze(input.labrum);
    Object.freeze(input.defect);
    face(input);
    expect(input).toStrictEqual(wornPear);
  });

  test('face: can be cloned, for it is plain data', () => {
    const pear = face(wornPear);
    expect(structuredClone(pear)).toStrictEqual(pear);
  });

  const refused: readonly (readonly [string, Partial<FaceInput>, string])[] = [
    ['no width', { outline: { kind: 'circle', width: 0 } }, 'outline.width is 0; allowed: '],
    [
      'a face wider than its sphere',
      { outline: { kind: 'circle', width: 51, height: 51 } },
      'outline.width is 51; allowed: above 0 to 50 mm (twice the curvatureRadiusAP)',
    ],
    [
      'a face higher than its sphere',
      { outline: { kind: 'ellipse', width: 30, height: 51 } },
      'outline.height is 51; allowed: above 0 to 50 mm (twice the curvatureRadiusSI)',
    ],
    [
      'a circle that is none',
      { outline: { kind: 'circle', width: 30, height: 31 } },
      'outline.height is 31; allowed: 30 mm',
    ],
    [
      'an ellipse without height',
      { outline: { kind: 'ellipse', width: 30 } },
      'outline.height is NaN; allowed: ',
    ],
    [
      'an upper width no convex pear has',
      { outline: { kind: 'pear', width: 30, height: 40, upperWidth: 14 } },
      'outline.upperWidth is 14; allowed: 14.2',
    ],
    [
      'an upper width as wide as the lower',
      { outline: { kind: 'pear', width: 30, height: 40, upperWidth: 30 } },
      'to 29.2',
    ],
    [
      'an outline of another kind',
      { outline: { kind: 'square' as 'circle', width: 30, height: 30 } },
      'outline.kind is square; allowed: circle, ellipse, pear',
    ],
    ['no AP radius', { curvatureRadiusAP: 0 }, 'curvatureRadiusAP is 0; allowed: '],
    ['an infinite radius', { curvatureRadiusSI: Infinity }, 'curvatureRadiusSI is Infinity'],
    [
      'a pear that sticks out of its sphere',
      {
        outline: { kind: 'pear', width: 36, height: 36, upperWidth: 18 },
        curvatureRadiusAP: 18,
        curvatureRadiusSI: 18,
      },
      'curvatureRadiusAP is 18; allowed: ',
    ],
    [
      'a lip wider than the face',
      { labrum: { height: 2, width: 14 } },
      'labrum.width is 14; allowed: above 0 to 13 mm',
    ],
    ['a lip without height', { labrum: { height: 0, width: 3 } }, 'labrum.height is 0; allowed: '],
    [
      'a cut beyond the middle',
      { defect: { direction: 0, depth: 13, kind: 'cut' } },
      'defect.depth is 13; allowed: 0 to below 13 mm (the middle of the face)',
    ],
    [
      'a cut outside the rim',
      { defect: { direction: 0, depth: -1, kind: 'cut' } },
      'defect.depth is -1; allowed: 0 to below 13 mm',
    ],
    [
      'a segment beyond the middle',
      { defect: { direction: 1.5, depth: 18, kind: 'segment', span: 3 } },
      'defect.depth is 18; allowed: 0 to below 13',
    ],
    [
      'a segment of more than half a turn',
      { defect: { direction: 0, depth: 2, kind: 'segment', span: 4 } },
      'defect.span is 4; allowed: above 0 to 3.14',
    ],
    [
      'a defect in no direction',
      { defect: { direction: NaN, depth: 2, kind: 'cut' } },
      'defect.direction is NaN; allowed: any finite angle, rad',
    ],
    [
      'a defect of another kind',
      { defect: { direction: 0, depth: 2, kind: 'hole' as 'cut' } },
      'defect.kind is hole; allowed: cut, segment',
    ],
  ];

  test.each(refused)('face: refuses %s', (_, wrong, message) => {
    const run = (): unknown =>
      face({
        outline: { kind: 'ellipse', width: 26, height: 36 },
        curvatureRadiusAP: 25,
        curvatureRadiusSI: 25,
        ...wrong,
      });
    expect(run).toThrow(RangeError);
    expect(run).toThrow(message);
  });

  test('face: helpers refuse places that are not on it', () => {
    expect(() => surfaceHeight(round, 15.1, 0)).toThrow(RangeError);
    expect(() => surfaceHeight(round, 0, NaN)).toThrow('(x, y) is (0, NaN); allowed: places on');
    expect(() => surfaceSlope(round, 0, -15.1)).toThrow(RangeError);
    expect(() => rimPoint(round, NaN)).toThrow('angle is NaN; allowed: any finite angle');
  });
});
