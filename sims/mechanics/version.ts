/** A plain vector in the frame of a right scapula (ISB): x anterior, y superior, z lateral. */
export type Vector3 = readonly [anterior: number, superior: number, lateral: number];

/** How a socket's face is turned on its scapula. */
export interface SocketTilt {
  /** Retroversion, rad: the face looks backward; negative for anteversion. 0 where it is left out. */
  readonly version?: number | undefined;
  /** Superior inclination, rad: the face looks upward; negative for downward. 0 where it is left out. */
  readonly inclination?: number | undefined;
}

/** The three axes of a socket's face, each as a unit vector in the frame of the scapula. */
export interface SocketAxes {
  readonly anterior: Vector3;
  readonly superior: Vector3;
  /** The centre line, out of the socket. */
  readonly lateral: Vector3;
}

/**
 * The axes of a face with a version and an inclination.
 *
 * Order: version first, about the scapula's superior axis; inclination second, about the anterior axis that version has
 * carried along. So version is what a horizontal slice shows, and inclination the angle by which the centre line rises
 * out of that slice. The other order gives another face once both are large: by about version × inclination of
 * rotation about the centre line.
 *
 * @param tilt.version rad, below a right angle either way
 * @param tilt.inclination rad, below a right angle either way
 * @throws RangeError for an angle that is not finite or a right angle and more
 */
export function socketAxes({ version = 0, inclination = 0 }: SocketTilt): SocketAxes {
  const v = belowRightAngle('version', version);
  const i = belowRightAngle('inclination', inclination);
  const [sinV, cosV, sinI, cosI] = [Math.sin(v), Math.cos(v), Math.sin(i), Math.cos(i)];
  return {
    anterior: [cosV, 0, sinV],
    superior: [sinV * sinI, cosI, -cosV * sinI],
    lateral: [-sinV * cosI, sinI, cosV * cosI],
  };
}

/** A pull on the head of the humerus by its size and where it points. */
export interface Pull {
  /** N, 0 and up */
  readonly size: number;
  /** How far it is turned forward from straight medial, rad; negative for backward. 0 where it is left out. */
  readonly forward?: number | undefined;
  /** How far it rises out of the horizontal, rad; negative for downward. 0 where it is left out. */
  readonly upward?: number | undefined;
}

/**
 * A pull as a vector: straight medial, −z, turned forward about the superior axis and then raised.
 *
 * @throws RangeError for a size that is negative, or an angle that is not finite
 */
export function pullVector({ size, forward = 0, upward = 0 }: Pull): Vector3 {
  if (!Number.isFinite(size) || size < 0) {
    throw new RangeError(`size is ${String(size)}; allowed: 0 to any larger finite value N`);
  }
  finite('forward', forward);
  finite('upward', upward);
  const level = size * Math.cos(upward);
  return [level * Math.sin(forward), size * Math.sin(upward), -level * Math.cos(forward)];
}

/**
 * The sum of forces, part by part: the net force of muscles that pull on one head.
 *
 * @returns N; [0, 0, 0] for none
 * @throws RangeError for a part that is not a finite number
 */
export function sumOfForces(forces: readonly Vector3[]): Vector3 {
  let [anterior, superior, lateral] = [0, 0, 0];
  for (const force of forces) {
    checkedForce(force);
    anterior += force[0];
    superior += force[1];
    lateral += force[2];
  }
  return [anterior, superior, lateral];
}

/** A side part below this share of the force is rounding, and counts as none. */
const NO_SIDE = 1e-14;

/** A force on the ball as its socket feels it. */
export interface ForceOnSocket {
  /** Angle α to the centre line, rad, 0 (straight in) … π (straight out). */
  readonly angle: number;
  /** Where its side part points on the face, rad from anterior toward superior, 0 … 2π; 0 for a force without one. */
  readonly direction: number;
  /** Along the centre line into the socket, N; negative for a force that pulls the ball off. */
  readonly compressive: number;
  /** Along the face, N, 0 and up. */
  readonly side: number;
  /** The whole force, N. */
  readonly size: number;
}

/**
 * Turns a force on the ball from the frame of the scapula into that of its socket.
 *
 * A straight force, [0, 0, −F], comes to lie off the centre line by just the version, pointing posterior (π) on the face
 * of a retroverted socket, or by just the inclination, pointing superior on one that looks upward. In one plane all
 * these angles add exactly: of the force, of the version, of the inclination.
 *
 * @param question.force N on the ball, any vector but zero; its size may be 1 where only the direction matters
 * @throws RangeError for a force that is zero or not finite, and as {@link socketAxes}
 */
export function forceOnSocket({
  force,
  ...tilt
}: SocketTilt & { readonly force: Vector3 }): ForceOnSocket {
  checkedForce(force);
  const axes = socketAxes(tilt);
  const forward = dot(force, axes.anterior);
  const upward = dot(force, axes.superior);
  const compressive = -dot(force, axes.lateral);
  const size = Math.hypot(forward, upward, compressive);
  if (size === 0) {
    throw new RangeError('force is (0, 0, 0); allowed: any other force, N');
  }
  const across = Math.hypot(forward, upward);
  const side = across > NO_SIDE * size ? across : 0;
  return {
    angle: Math.atan2(side, compressive),
    direction: side === 0 ? 0 : wholeTurn(Math.atan2(upward, forward)),
    compressive,
    side,
    size,
  };
}

function dot(a: Vector3, b: Vector3): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** From −π … π to 0 … 2π. */
function wholeTurn(angle: number): number {
  return angle < 0 ? Math.min(2 * Math.PI + angle, 2 * Math.PI) : angle;
}

function checkedForce(force: readonly number[]): void {
  if (force.length !== 3 || !force.every((part) => Number.isFinite(part))) {
    throw new RangeError(`force is (${force.join(', ')}); allowed: three finite numbers, N`);
  }
}

function finite(name: string, angle: number): void {
  if (!Number.isFinite(angle)) {
    throw new RangeError(`${name} is ${String(angle)}; allowed: any finite angle, rad`);
  }
}

function belowRightAngle(name: string, angle: number): number {
  if (!Number.isFinite(angle) || Math.abs(angle) >= Math.PI / 2) {
    throw new RangeError(`${name} is ${String(angle)}; allowed: above −π/2 to below π/2 rad`);
  }
  return angle;
}
