/** A vector or a point in the plane of the push: x along the push, z out of the socket. */
export interface Vector {
  readonly x: number;
  readonly z: number;
}

export function dot(a: Vector, b: Vector): number {
  return a.x * b.x + a.z * b.z;
}

/** Positive where `b` is turned from `a` as z is from x. */
export function cross(a: Vector, b: Vector): number {
  return a.x * b.z - a.z * b.x;
}

/** `a` with `b` added `times` over. */
export function plus(a: Vector, b: Vector, times = 1): Vector {
  return { x: a.x + times * b.x, z: a.z + times * b.z };
}

/** Square root rather than hypot: its rounding is the same in every browser. */
export function lengthOf(a: Vector): number {
  return Math.sqrt(dot(a, a));
}

/** The direction along a surface with this normal, outward along +x where the normal points out of the socket. */
export function tangentOf(normal: Vector): Vector {
  return { x: normal.z, z: -normal.x };
}

/** `value`, or the nearer end of [min, max] where it lies outside. */
export function clamp(value: number, min: number, max: number): number {
  return Math.max(min, Math.min(max, value));
}
