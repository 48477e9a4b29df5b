import { CONTACT_ROUNDS, CONTACT_SWEEPS } from './constants.ts';
import { clamp, cross, dot, plus, tangentOf, type Vector } from './vector.ts';

/** What one contact does to the ball. */
export interface ContactForce {
  /** Along the contact's normal, ≥ 0. */
  readonly normalForce: number;
  /** Along its tangent. */
  readonly frictionForce: number;
}

/**
 * Forces of contacts with Coulomb friction on a body that must not rotate.
 *
 * Normal forces: none pulls, and together they keep the body from moving into any contact. Friction: whatever would
 * bring the sliding at the contact to rest within the step, but never more than μ times the normal force. Below that
 * limit the body sticks, at it the body slides against it: Coulomb's law in both its states by one rule.
 *
 * @param normals unit normals pointing into the body
 * @param drive the force to be met: mass × velocity / step + applied forces
 * @param friction coefficient μ ≥ 0
 * @returns one force a contact, in the units of `drive`
 */
export function contactForces(
  normals: readonly Vector[],
  drive: Vector,
  friction: number,
): readonly ContactForce[] {
  const [only] = normals;
  if (only !== undefined && normals.length === 1) return [singleContact(only, drive, friction)];
  let normalForces = bearing(normals, drive);
  if (friction === 0) return normalForces.map((normalForce) => ({ normalForce, frictionForce: 0 }));
  const tangents = normals.map(tangentOf);
  let frictionForces: readonly number[] = [];
  for (let round = 0; round < CONTACT_ROUNDS; round += 1) {
    const left = total(drive, normals, normalForces);
    frictionForces = sticking(tangents, left, normalForces, friction);
    normalForces = bearing(normals, total(drive, tangents, frictionForces));
  }
  return normals.map((_, i) => ({
    normalForce: normalForces[i] ?? 0,
    frictionForce: frictionForces[i] ?? 0,
  }));
}

/**
 * Normal forces that meet the drive without friction.
 *
 * In the plane two contacts are enough: those whose normals lie nearest to the direction opposite to the drive, one on
 * either side of it; or the nearest alone where all lie to one side.
 */
export function bearing(normals: readonly Vector[], drive: Vector): readonly number[] {
  const opposite = { x: -drive.x, z: -drive.z };
  let left = -1;
  let right = -1;
  normals.forEach((normal, i) => {
    const side = cross(opposite, normal);
    const nearestLeft = normals[left];
    const nearestRight = normals[right];
    if (side >= 0 && (!nearestLeft || cross(normal, nearestLeft) > 0)) left = i;
    if (side <= 0 && (!nearestRight || cross(nearestRight, normal) > 0)) right = i;
  });
  const [a, b] = [normals[right], normals[left]];
  const area = a && b ? cross(a, b) : 0;
  if (a && b && area > 0) {
    const [onRight, onLeft] = [cross(opposite, b) / area, cross(a, opposite) / area];
    return normals.map((_, i) => (i === right ? onRight : i === left ? onLeft : 0));
  }
  const nearest = a && (!b || dot(a, opposite) > dot(b, opposite)) ? right : left;
  return normals.map((normal, i) => (i === nearest ? Math.max(0, dot(normal, opposite)) : 0));
}

function singleContact(normal: Vector, drive: Vector, friction: number): ContactForce {
  const normalForce = Math.max(0, -dot(normal, drive));
  const limit = friction * normalForce;
  return { normalForce, frictionForce: clamp(-dot(tangentOf(normal), drive), -limit, limit) };
}

/** Friction that stops what is left of the drive along each tangent, within its limit. */
function sticking(
  tangents: readonly Vector[],
  drive: Vector,
  normalForces: readonly number[],
  friction: number,
): readonly number[] {
  const forces = tangents.map(() => 0);
  let left = drive;
  for (let sweep = 0; sweep < CONTACT_SWEEPS; sweep += 1) {
    for (const [i, tangent] of tangents.entries()) {
      const limit = friction * (normalForces[i] ?? 0);
      const before = forces[i] ?? 0;
      const after = clamp(before - dot(tangent, left), -limit, limit);
      forces[i] = after;
      left = plus(left, tangent, after - before);
    }
  }
  return forces;
}

/** A force and those along the given directions together. */
function total(force: Vector, directions: readonly Vector[], sizes: readonly number[]): Vector {
  return directions.reduce((sum, direction, i) => plus(sum, direction, sizes[i] ?? 0), force);
}
