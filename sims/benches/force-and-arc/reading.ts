import { frictionAngle, rimContactTranslation } from '../../geometry/index.ts';
import {
  pullVector,
  restUnderForce,
  sumOfForces,
  type TiltedRest,
  type Vector3,
} from '../../mechanics/index.ts';
import { cupFrom, type Cup } from '../shared/cup-setting.ts';
import { planes, pullNames, type Plane, type PullId } from './planes.ts';
import type { ForceSetting } from './settings.ts';

/** A force in the plane looked at, N. */
export interface PlaneForce {
  /** Towards the plane's positive side: back, or up. */
  readonly aside: number;
  /** Straight medial, into the blade. */
  readonly inward: number;
}

export interface PullReading extends PlaneForce {
  readonly id: PullId;
  readonly name: string;
  readonly size: number;
  /** rad */
  readonly turn: number;
}

export type ForceState = TiltedRest['state'] | 'no force';

/** The bench's whole answer. Lengths mm, angles rad, forces N; signed ones are positive towards the plane's positive side. */
export interface ForceReading {
  readonly cup: Cup;
  readonly plane: Plane;
  readonly tilt: number;
  readonly friction: number;
  readonly pulls: readonly PullReading[];
  readonly net: PlaneForce;
  readonly netSize: number;
  /** Turn of the net force from straight medial. */
  readonly lean: number;
  readonly halfArc: number;
  readonly frictionAngle: number;
  /** Balance stability angle, friction included. */
  readonly balanceAngle: number;
  readonly rimContact: number;
  readonly state: ForceState;
  /** Net force against the socket's centre line; null without a force. */
  readonly angle: number | null;
  /** Balance stability angle less force angle; null without a force. */
  readonly margin: number | null;
  /** As `restPosition` gives them, signed; null where there is no rest. */
  readonly translation: number | null;
  readonly range: readonly [inner: number, outer: number] | null;
  /** Left to first rim contact: how far the ball may still move, and how far the contact may still tilt. */
  readonly gap: { readonly length: number; readonly angle: number } | null;
  /** Tilt of the socket at which the present force goes over, on the side it leans to. */
  readonly tiltAtLimit: number | null;
  readonly rest: TiltedRest | null;
}

export const radians = (degrees: number): number => (degrees * Math.PI) / 180;
export const inDegrees = (angle: number): number => (angle * 180) / Math.PI;

/** What follows from a setting. */
export function readForce(setting: ForceSetting): ForceReading {
  const plane = planes[setting.plane];
  const pulls = plane.pulls.map((id) => readPull(plane, setting, id));
  const vector = sumOfForces(pulls.map((pull) => toScapula(plane, pull)));
  const net = fromScapula(plane, vector);
  return readUnder({
    cup: cupFrom(setting),
    plane,
    tilt: radians(setting[plane.tilt]),
    friction: setting.friction,
    pulls,
    net,
  });
}

type Given = Pick<ForceReading, 'cup' | 'plane' | 'tilt' | 'friction' | 'pulls' | 'net'>;

/** The same cup under the same pulls with the socket turned otherwise. */
export function withTilt(reading: ForceReading, tilt: number): ForceReading {
  const { cup, plane, friction, pulls, net } = reading;
  return readUnder({ cup, plane, tilt, friction, pulls, net });
}

function readUnder(given: Given): ForceReading {
  const { cup, plane, tilt, friction, net } = given;
  const { socket, ballRadius } = cup;
  const netSize = Math.hypot(net.aside, net.inward);
  const lean = Math.atan2(net.aside, net.inward);
  const lambda = frictionAngle(friction);
  const balanceAngle = socket.halfArc + lambda;
  const rimContact = rimContactTranslation(socket, ballRadius);
  const common = {
    ...given,
    netSize,
    lean,
    halfArc: socket.halfArc,
    frictionAngle: lambda,
    balanceAngle,
    rimContact,
  };
  if (netSize === 0) {
    return { ...common, state: 'no force', angle: null, margin: null, ...nowhere };
  }
  const rest = restUnderForce({
    socket,
    ballRadius,
    force: toScapula(plane, net),
    version: plane.tilt === 'version' ? tilt : 0,
    inclination: plane.tilt === 'inclination' ? tilt : 0,
    friction,
  });
  const side = sideOf(plane, rest.force.direction, rest.force.side);
  const { translation, contactAngle, range } = rest;
  return {
    ...common,
    state: rest.state,
    angle: side * rest.force.angle,
    margin: rest.marginAngle,
    translation: translation === null ? null : side * translation,
    range: range === null ? null : [side * range[0], side * range[1]],
    gap:
      translation === null || contactAngle === null
        ? null
        : { length: rimContact - translation, angle: socket.halfArc - contactAngle },
    tiltAtLimit: side * balanceAngle - lean,
    rest,
  };
}

const nowhere = {
  translation: null,
  range: null,
  gap: null,
  tiltAtLimit: null,
  rest: null,
} as const;

function readPull(plane: Plane, setting: ForceSetting, id: PullId): PullReading {
  const size = setting[`${id}Size`];
  const turn = radians(setting[`${id}Turn`]);
  const vector = pullVector(
    plane.tilt === 'version' ? { size, forward: -turn } : { size, upward: turn },
  );
  return { id, name: pullNames[id], size, turn, ...fromScapula(plane, vector) };
}

/** Seen from above the positive side is the back, −x; seen from the front it is up, +y. */
function toScapula({ tilt }: Plane, { aside, inward }: PlaneForce): Vector3 {
  return tilt === 'version' ? [-aside, 0, -inward] : [0, aside, -inward];
}

function fromScapula({ tilt }: Plane, [anterior, superior, lateral]: Vector3): PlaneForce {
  return { aside: 0 + (tilt === 'version' ? -anterior : superior), inward: -lateral };
}

/** On which side of the centre line a force lies, 1 or −1; 1 for one that lies on it. */
function sideOf({ tilt }: Plane, direction: number, side: number): 1 | -1 {
  if (side === 0) return 1;
  const aside = tilt === 'version' ? -Math.cos(direction) : Math.sin(direction);
  return aside < 0 ? -1 : 1;
}
