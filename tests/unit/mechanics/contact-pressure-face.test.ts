import { describe, expect, test } from 'vitest';
import { directionMap, face, pathOverFace, surfaceHeight } from '../../../sims/geometry/index.ts';
import { elasticStabilityCurve, type CarriedContact } from '../../../sims/mechanics/index.ts';
import { expectClose } from '../geometry/close.ts';
import type { OracleInput } from '../geometry/face-oracle.ts';
import { denseFaceSums } from './face-pressure-oracle.ts';
import { bed, carriedBy, layer, usual } from './polyethylene.ts';
import { cut, lipped, pear, worn } from './pressed-faces.ts';

const degree = Math.PI / 180;
const load = { ballRadius: 24, ...layer, compressiveLoad: 500 };

/** Forces of the map: patches along the normals of the face, by differences of its height, and the edge. */
function mapForces(
  input: OracleInput,
  contact: CarriedContact,
  direction: number,
): readonly [side: number, cross: number, compressive: number] {
  const surface = face(input);
  const [cosine, sine] = [Math.cos(direction), Math.sin(direction)];
  let { side, cross, compressive } = contact.edgeForce;
  const step = 1e-4;
  for (const { x, y, area, pressure } of contact.patches) {
    const inward = 1 - step / Math.hypot(x, y);
    const slope = (dx: number, dy: number): number =>
      (surfaceHeight(surface, x * inward + dx, y * inward + dy) -
        surfaceHeight(surface, x * inward - dx, y * inward - dy)) /
      (2 * Math.hypot(dx, dy));
    const [zx, zy] = [slope(step / 2, 0), slope(0, step / 2)];
    const force = (area * pressure) / Math.hypot(1, zx, zy);
    compressive += force;
    side += force * (zx * cosine + zy * sine);
    cross += force * (zy * cosine - zx * sine);
  }
  return [side, cross, compressive];
}

describe('contactPressure over a face: a circle is the spherical socket', () => {
  const circle = face({
    outline: { kind: 'circle', width: 30, height: 30 },
    curvatureRadiusAP: 27,
    curvatureRadiusSI: 27,
  });
  const cases = [24, 26.9, 27].flatMap((ballRadius) =>
    [1, 1e4].flatMap((stiffer) =>
      [0, 0.05, 0.4, 1.2, 1.5, 2.5, 7, 14].map(
        (translation) => [ballRadius, stiffer, translation] as const,
      ),
    ),
  );

  test.each(cases)('face: ball %d mm, layer × %d, at %d mm', (ballRadius, stiffer, translation) => {
    const question = {
      ...load,
      ballRadius,
      modulus: layer.modulus * stiffer,
      translation,
      direction: 0.7,
    };
    const sphere = carriedBy({ ...question, socket: usual.socket });
    const onFace = carriedBy({ ...question, face: circle });
    // Two quadratures that share no formula, one along rays from the middle and one round the line of centres.
    const alike = { relative: 2e-4, absolute: 1e-6 };
    expect(onFace.state).toBe(sphere.state);
    expectClose(onFace.peakPressure, sphere.peakPressure, alike);
    expectClose(onFace.meanPressure, sphere.meanPressure, alike);
    expectClose(onFace.contactArea, sphere.contactArea, alike);
    expectClose(onFace.sideForce, sphere.sideForce, alike);
    expectClose(onFace.crossForce, 0, { absolute: 1e-5 });
    expectClose(onFace.edgeForce.compressive, sphere.edgeForce.compressive, alike);
    expectClose(onFace.edgeForce.side, sphere.edgeForce.side, alike);
    // The rim's margin is measured to a line through a place every degree.
    expectClose(onFace.rimShare, sphere.rimShare, { absolute: 3e-4 });
    for (const i of [0, 1] as const) {
      expectClose(onFace.centreOfPressure[i], sphere.centreOfPressure[i], { absolute: 1e-4 });
      expectClose(onFace.ballCentre[i], sphere.ballCentre[i], { absolute: 1e-12 });
    }
    expectClose(onFace.ballCentre[2], sphere.ballCentre[2], { absolute: 1e-6 });
  });
});

const places = [
  ['pear, on the hollow', pear, 1.5, 90 * degree, 'on the face'],
  ['pear, cut by the rim', pear, 2.9, 10 * degree, 'cut by the rim'],
  ['pear, on the rim', pear, 6, 200 * degree, 'on the rim edge'],
  ['lip, bridged in the middle', lipped, 0, 0, 'on the rim edge'],
  ['lip, on one side', lipped, 2, -60 * degree, 'on the rim edge'],
  ['cut rim', cut, 2.5, 0, 'on the rim edge'],
  ['worn segment', worn, 3, -0.8, 'on the rim edge'],
  ['worn segment, by its step', worn, 2.6, -0.25, 'cut by the rim'],
] as const;

describe('contactPressure over a face: against cell by cell', () => {
  test.each(places)('face: %s', (_, input, translation, direction, state) => {
    const contact = carriedBy({ ...load, face: face(input), translation, direction });
    expect(contact.state).toBe(state);
    const dense = denseFaceSums(input, 24, contact.ballCentre, bed);
    const [cosine, sine] = [Math.cos(direction), Math.sin(direction)];
    const [x, y, z] = dense.force;
    const { edgeForce } = contact;
    const near = { absolute: 6 };
    expectClose(z + edgeForce.compressive, 500, near);
    expectClose(-(x * cosine + y * sine) + edgeForce.side, contact.sideForce, near);
    expectClose(x * sine - y * cosine + edgeForce.cross, contact.crossForce, near);
    expectClose(contact.contactArea, dense.area, { relative: 0.03 });
    // The middle of the deepest cell lies a little off the deepest place.
    expect(dense.deepest).toBeLessThanOrEqual(contact.penetration * (1 + 1e-4));
    expect(dense.deepest).toBeGreaterThan(0.9 * contact.penetration);
    const share = (dense.upNearRim + edgeForce.compressive) / 500;
    expectClose(contact.rimShare, share, { absolute: 0.03 });
  });

  test.each(places)(
    'face: the forces are the slope of the stored energy: %s',
    (_, input, translation, direction) => {
      const contact = carriedBy({ ...load, face: face(input), translation, direction });
      const [x, y, z] = contact.ballCentre;
      const [cosine, sine] = [Math.cos(direction), Math.sin(direction)];
      const step = contact.penetration / 20;
      const energy = (out: number, across: number, up: number): number =>
        denseFaceSums(
          input,
          24,
          [x + out * cosine - across * sine, y + out * sine + across * cosine, z + up],
          bed,
        ).energy;
      const slope = (a: number, b: number): number => (a - b) / (2 * step);
      expectClose(slope(energy(0, 0, -step), energy(0, 0, step)), 500, { absolute: 10 });
      expectClose(slope(energy(step, 0, 0), energy(-step, 0, 0)), contact.sideForce, {
        absolute: 10,
      });
      expectClose(slope(energy(0, step, 0), energy(0, -step, 0)), contact.crossForce, {
        absolute: 10,
      });
    },
  );

  test.each(places)(
    'face: patches and edge are in equilibrium: %s',
    (_, input, translation, direction) => {
      const contact = carriedBy({ ...load, face: face(input), translation, direction });
      const [side, cross, compressive] = mapForces(input, contact, direction);
      expectClose(compressive, 500, { relative: 1e-3 });
      expectClose(side, contact.sideForce, { absolute: 0.5 });
      expectClose(cross, contact.crossForce, { absolute: 0.5 });
    },
  );
});

describe('contactPressure over a face: symmetry', () => {
  const ellipse = face({
    outline: { kind: 'ellipse', width: 26, height: 36 },
    curvatureRadiusAP: 34,
    curvatureRadiusSI: 28,
  });
  const at = (direction: number, translation = 2.5): CarriedContact =>
    carriedBy({ ...load, face: ellipse, translation, direction });

  test('face: along an axis of symmetry nothing pushes across', () => {
    for (const direction of [0, 90 * degree, Math.PI]) {
      expectClose(at(direction).crossForce, 0, { absolute: 1e-4 });
    }
    expect(Math.abs(at(45 * degree).crossForce)).toBeGreaterThan(1);
  });

  test('face: mirrored directions have mirrored answers', () => {
    for (const direction of [0.3, 1, 1.4]) {
      const one = at(direction);
      for (const mirrored of [-direction, Math.PI - direction, Math.PI + direction]) {
        const other = at(mirrored);
        expectClose(other.sideForce, one.sideForce, { relative: 1e-5 });
        expectClose(other.peakPressure, one.peakPressure, { relative: 1e-5 });
        expectClose(Math.abs(other.crossForce), Math.abs(one.crossForce), { relative: 1e-4 });
        expectClose(Math.abs(other.centreOfPressure[0]), Math.abs(one.centreOfPressure[0]), {
          absolute: 1e-4,
        });
      }
    }
  });

  test('face: a lip all round presses on both sides alike', () => {
    const contact = carriedBy({ ...load, face: face(lipped), translation: 0 });
    expectClose(contact.centreOfPressure[0], 0, { absolute: 1e-4 });
    expectClose(contact.sideForce, 0, { absolute: 1e-3 });
    // Only the rim is touched: nothing bears in the middle.
    expect(Math.min(...contact.patches.map(({ x, y }) => Math.hypot(x, y)))).toBeGreaterThan(8);
    const left = contact.patches.filter(({ x }) => x < 0).length;
    expect(left).toBe(contact.patches.length / 2);
  });
});

describe('elasticStabilityCurve over a face: a stiffening layer comes to the rigid path', () => {
  const inputs = [
    ['pear', pear],
    ['lip', lipped],
    ['cut rim', cut],
    ['worn segment', worn],
  ] as const;
  const directions = [0, 75, 200, 310].map((angle) => angle * degree);

  test.each(inputs)('face: %s', (_, input) => {
    const surface = face(input);
    const crests = directionMap(surface, 24, { directions, translations: 60 });
    directions.forEach((direction, i) => {
      const crest = crests[i]?.dislocationTranslation ?? NaN;
      const rim = crests[i]?.rimContactTranslation ?? NaN;
      // Away from the corner of the curve at first rim contact.
      const translations = [0.15, 0.4, 0.75, 0.95]
        .map((part) => part * crest)
        .filter((x) => Math.abs(x - rim) > 0.15);
      const rigid = pathOverFace(surface, 24, direction, translations);
      const misses = [1, 1e3, 1e6].map((stiffer) => {
        const rows = elasticStabilityCurve({
          ...load,
          modulus: layer.modulus * stiffer,
          face: surface,
          direction,
          translations,
        });
        return Math.max(
          ...rows.map(({ stabilityRatio }, n) =>
            Math.abs((stabilityRatio ?? NaN) - (rigid[n]?.stabilityRatio ?? NaN)),
          ),
        );
      });
      expect(misses[2]).toBeLessThan(1e-3);
      expect(misses[2]).toBeLessThan(misses[0] ?? NaN);
    });
  });
});
