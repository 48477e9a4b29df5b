import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pathOverFace } from '../../../sims/geometry/index.ts';
import {
  climbField,
  climbIn,
  isoline,
} from '../../../sims/benches/round-the-rim/solid/climb-field.ts';
import { between, rgbOf } from '../../../sims/benches/round-the-rim/solid/colours.ts';
import {
  aslant,
  enFace,
  fromTheFront,
  toEye,
  turned,
  viewWords,
  zoomed,
} from '../../../sims/benches/round-the-rim/solid/orbit.ts';
import {
  hollowMesh,
  isolineSpots,
  lipMesh,
  lostMesh,
  rimSpots,
  wallMesh,
} from '../../../sims/benches/round-the-rim/solid/solid-mesh.ts';
import { tubeMesh } from '../../../sims/benches/round-the-rim/solid/tube-mesh.ts';
import { soundShape } from '../../../sims/benches/round-the-rim/sound-shape.ts';
import { anyShape, shapeWith } from './shapes.ts';

const bone = soundShape(shapeWith({}));

describe('the climb over the face', () => {
  const field = climbField(bone);

  test('is the path’s climb', () => {
    for (const [bearing, distance] of [
      [0, 3],
      [90, 9],
      [222, 7],
    ] as const) {
      const direction = (bearing * Math.PI) / 180;
      const [row] = pathOverFace(bone.face, bone.ballRadius, direction, [distance]);
      expect(Math.abs(climbIn(field, direction, distance) - (row?.climb ?? NaN))).toBeLessThan(
        0.03,
      );
    }
  });

  test('is met by its isolines', () => {
    isoline(field, 1).forEach((radius, i) => {
      const direction = field.rays[i]?.direction ?? NaN;
      expect(radius).not.toBeNull();
      expect(climbIn(field, direction, radius ?? NaN)).toBeCloseTo(1, 9);
    });
    expect(isoline(field, 99).every((radius) => radius === null)).toBe(true);
  });
});

describe('the meshes', () => {
  test('are of sound numbers, every corner of every triangle there', () => {
    fc.assert(
      fc.property(anyShape, (asked) => {
        const sound = soundShape(asked);
        const field = climbField(sound);
        const meshes = {
          hollow: hollowMesh(sound, field),
          lip: lipMesh(sound),
          wall: wallMesh(sound),
          lost: lostMesh(sound),
          rim: tubeMesh(rimSpots(sound), 0.2),
        };
        for (const { positions, indices } of Object.values(meshes)) {
          expect(positions.every(Number.isFinite)).toBe(true);
          expect(indices.length % 3).toBe(0);
          expect(Math.max(-1, ...indices)).toBeLessThan(positions.length / 3);
        }
        const { shares, positions } = meshes.hollow;
        expect(shares).toHaveLength(positions.length / 3);
        expect(Math.max(...shares)).toBeLessThanOrEqual(1);
        expect(meshes.lip.indices.length > 0).toBe(sound.shape.lip);
        expect(meshes.lost.indices.length > 0).toBe(sound.shape.defect !== 'none');
        for (const line of isolineSpots(sound, field, 1)) expect(line.length).toBeGreaterThan(1);
      }),
      { numRuns: 12 },
    );
  });
});

describe('the view', () => {
  test('en face the eye is at the side, anterior to the right; from the front it is in front', () => {
    expect(toEye(enFace)).toEqual([0, 0, 1]);
    expect(toEye(fromTheFront)[0]).toBeCloseTo(1, 12);
    expect(viewWords(enFace)).toBe('Seen from the side.');
    expect(viewWords(fromTheFront)).toBe('Seen from the front.');
    expect(viewWords(aslant)).toBe('Seen from the side, the front and above.');
  });

  test('turns without end sideways, not over the top, and comes no nearer than it may', () => {
    const once = Array.from({ length: 24 }).reduce<typeof enFace>(
      (view) => turned(view, Math.PI / 12, 0),
      enFace,
    );
    expect(Math.sin(once.yaw)).toBeCloseTo(0, 9);
    expect(turned(enFace, 0, 9).pitch).toBeLessThan(Math.PI / 2);
    expect(zoomed(enFace, 1e9).zoom).toBe(4);
    expect(zoomed(enFace, 1e-9).zoom).toBe(0.5);
  });
});

test('colours are read as the browser computes them', () => {
  expect(rgbOf('rgb(255, 0, 51)')).toEqual([1, 0, 0.2]);
  expect(between([0, 0, 0], [1, 0.5, 0], 0.5)).toEqual([0.5, 0.25, 0]);
});
