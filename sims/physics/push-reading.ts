import type { BallWorld, BearingContact } from './ball-world.ts';
import { LEAST_CONTACT_SHARE, REST_SPEED } from './constants.ts';
import { dot, lengthOf, plus, tangentOf, type Vector } from './vector.ts';

/** What the ball is doing: at rest in or on the socket, on its way, or beyond the rim. */
export type BallState = 'seated' | 'moving' | 'slipped out';

/**
 * How the push for the slip ratio stands: not asked for (or broken off), under way, ended because the ball yielded, or
 * ended because no side force up to the largest there is moved it out.
 */
export type PushState = 'idle' | 'pushing' | 'slipped' | 'held';

/** One place where the socket presses on the ball. */
export interface ContactReading {
  /** Tilt φ of the normal from the centre line, rad; positive where it leans against a push along +x. */
  readonly angle: number;
  /** Where on the ball, mm. */
  readonly x: number;
  readonly z: number;
  /** N */
  readonly normalForce: number;
  /** Along the surface, N; positive toward +x. */
  readonly frictionForce: number;
}

/**
 * All that the scene can tell at one moment. Lengths mm, forces N, angles rad, time s. Frame: x along the push, z out of
 * the socket, origin at the socket's deepest point.
 */
export interface PushReading {
  /** Simulated time since the start or the last reset. */
  readonly time: number;
  /** Sideways translation of the ball's centre from the centre line. */
  readonly translation: number;
  /** Climb of the ball's centre over its height when centred. */
  readonly climb: number;
  /** Speed of the ball's centre, mm/s. */
  readonly speed: number;
  /** Side force now on the ball: one set by hand comes on within a third of a second, a spring's is measured. */
  readonly sideForce: number;
  readonly compressiveLoad: number;
  /** Side force ÷ compressive load. */
  readonly ratio: number;
  /** Where the socket presses, the hardest first. */
  readonly contacts: readonly ContactReading[];
  /** Tilt of all normal forces together; null while the ball touches nothing. */
  readonly contactAngle: number | null;
  /** Force of the socket on the ball, friction included. */
  readonly contactForce: Vector;
  /** Translation of the far end of the spring that drags or pushes; null while the side force is set by hand. */
  readonly springEnd: number | null;
  readonly state: BallState;
  readonly push: PushState;
  /** Largest ratio of the last push, once the ball has yielded to it; null before that, and where it was held. */
  readonly slipRatio: number | null;
  /** Translation at which that largest ratio was met; null as above. */
  readonly slipTranslation: number | null;
}

/** The part of a reading that the engine's world answers. */
export type WorldReading = Pick<
  PushReading,
  'translation' | 'climb' | 'speed' | 'contacts' | 'contactAngle' | 'contactForce' | 'state'
>;

/** @param rimTranslation half the socket's width, mm */
export function readWorld(
  world: BallWorld,
  ballRadius: number,
  rimTranslation: number,
): WorldReading {
  const { position, velocity } = world.motion();
  const touching = world.contacts();
  const least =
    LEAST_CONTACT_SHARE * Math.max(0, ...touching.map((contact) => contact.normalForce));
  const bearing = touching.filter(({ normalForce }) => normalForce > least);
  const normalSum = bearing.reduce<Vector>(
    (sum, { normal, normalForce }) => plus(sum, normal, normalForce),
    { x: 0, z: 0 },
  );
  const contactForce = bearing.reduce(
    (sum, { normal, frictionForce }) => plus(sum, tangentOf(normal), frictionForce),
    normalSum,
  );
  const speed = lengthOf(velocity);
  const isOut = Math.abs(position.x) >= rimTranslation;
  return {
    translation: position.x,
    climb: position.z - ballRadius,
    speed,
    contacts: bearing
      .map((contact) => contactReading(contact, position, ballRadius))
      .sort((a, b) => b.normalForce - a.normalForce),
    contactAngle: dot(normalSum, normalSum) === 0 ? null : tilt(normalSum),
    contactForce,
    state: isOut ? 'slipped out' : speed > REST_SPEED ? 'moving' : 'seated',
  };
}

function contactReading(
  { normal, normalForce, frictionForce }: BearingContact,
  centre: Vector,
  ballRadius: number,
): ContactReading {
  const { x, z } = plus(centre, normal, -ballRadius);
  return { angle: tilt(normal), x, z, normalForce, frictionForce };
}

function tilt(normal: Vector): number {
  return Math.atan2(0 - normal.x, normal.z);
}
