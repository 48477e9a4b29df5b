import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bearing, contactForces } from '../../../sims/physics/contact-forces.ts';
import { dot, plus, tangentOf, type Vector } from '../../../sims/physics/vector.ts';

const normalAt = (angle: number): Vector => ({ x: -Math.sin(angle), z: Math.cos(angle) });
const normals = (...angles: number[]): Vector[] => angles.map(normalAt);

/** What is left of the drive once all contacts have acted. */
function leftOver(at: readonly Vector[], drive: Vector, friction: number): Vector {
  const forces = contactForces(at, drive, friction);
  return at.reduce((sum, normal, i) => {
    const { normalForce = 0, frictionForce = 0 } = forces[i] ?? {};
    return plus(plus(sum, normal, normalForce), tangentOf(normal), frictionForce);
  }, drive);
}

describe('bearing', () => {
  test('one contact takes the part along its normal', () => {
    expect(bearing(normals(0), { x: 3, z: -10 })).toEqual([10]);
  });

  test('none pulls', () => {
    expect(bearing(normals(0.3), { x: 0, z: 5 })).toEqual([0]);
    expect(bearing([], { x: 1, z: 1 })).toEqual([]);
  });

  test('a drive between two normals is met whole, by the two next to it', () => {
    const forces = bearing(normals(-0.4, -0.1, 0.1, 0.4), { x: 0, z: -10 });
    expect(forces[0]).toBe(0);
    expect(forces[3]).toBe(0);
    expect(forces[1]).toBeCloseTo(5 / Math.cos(0.1), 12);
    expect(forces[2]).toBeCloseTo(5 / Math.cos(0.1), 12);
  });

  test('a drive outside all normals is met by the outermost alone', () => {
    const forces = bearing(normals(0.1, 0.3), { x: 10, z: -10 });
    expect(forces[0]).toBe(0);
    expect(forces[1]).toBeCloseTo(10 * Math.sin(0.3) + 10 * Math.cos(0.3), 12);
  });

  const angle = fc.double({ min: -1.5, max: 1.5, noNaN: true });
  const drive = fc.record({
    x: fc.double({ min: -10, max: 10, noNaN: true }),
    z: fc.double({ min: -10, max: 10, noNaN: true }),
  });

  test('afterwards nothing moves into a contact, and what moves out of one is not pressed', () => {
    fc.assert(
      fc.property(fc.array(angle, { minLength: 1, maxLength: 8 }), drive, (angles, force) => {
        const at = normals(...angles);
        const sizes = bearing(at, force);
        const left = at.reduce((sum, normal, i) => plus(sum, normal, sizes[i] ?? 0), force);
        at.forEach((normal, i) => {
          expect(sizes[i]).toBeGreaterThanOrEqual(0);
          expect(dot(normal, left)).toBeGreaterThan(-1e-9);
          if ((sizes[i] ?? 0) > 1e-6) expect(Math.abs(dot(normal, left))).toBeLessThan(1e-9);
        });
      }),
    );
  });
});

describe('contactForces', () => {
  const beta = 0.5;
  const friction = 0.3;
  const limit = Math.tan(beta + Math.atan(friction));

  test.each([
    ['one rim', [beta]],
    ['a whole conforming arc', [-0.5, -0.3, -0.1, 0.1, 0.3, beta]],
  ])('%s sticks below tan(β + λ) and slides above it', (_, angles) => {
    const at = normals(...angles);
    const below = leftOver(at, { x: 0.999 * limit, z: -1 }, friction);
    const above = leftOver(at, { x: 1.001 * limit, z: -1 }, friction);
    expect(Math.hypot(below.x, below.z)).toBeLessThan(1e-9);
    expect(above.x).toBeGreaterThan(1e-4);
    expect(dot(normalAt(beta), above)).toBeCloseTo(0, 9);
  });

  test('friction opposes sliding either way and never exceeds μ times the normal force', () => {
    for (const x of [-8, 8]) {
      const [force] = contactForces(normals(0), { x, z: -10 }, friction);
      expect(force?.normalForce).toBe(10);
      expect(force?.frictionForce).toBeCloseTo(-Math.sign(x) * 3, 12);
    }
  });

  test('without friction there is none', () => {
    for (const { frictionForce } of contactForces(normals(-0.2, 0.2), { x: 3, z: -10 }, 0)) {
      expect(frictionForce).toBe(0);
    }
  });
});
