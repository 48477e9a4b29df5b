import Matter from 'matter-js';
import { UPDATE_SECONDS } from './constants.ts';
import { BALL_ACCELERATION, ROCKING_SLOP, SOCKET_FREQUENCY } from './rocking-constants.ts';
import { nearestOnHollow, turned, type Hollow } from './rocking-hollow.ts';
import type { PlaneSpring } from './rocking-plane.ts';
import type { PlaneForce, PlanePose } from './rocking-springs.ts';
import { cross, plus, type Vector } from './vector.ts';

/*
 * Ball and socket as two bodies of matter-js. One unit of length is one mm; the engine's y points down, so z = −y and its
 * turns are counted the other way; its unit of time is the ms, so that masses make forces in N come out right.
 */

const { Body, Bounds, Composite, Engine, Events } = Matter;

const UPDATE_MS = UPDATE_SECONDS * 1000;
const ENGINE_STEP_MS = 1000 / 60;
/** With 36 the engine's correction of a single contact is exact. */
const POSITION_ITERATIONS = 36;
const VELOCITY_ITERATIONS = 12;
const BALL_CORNERS = 24;

type Pairs = Matter.Pairs & {
  readonly list: readonly {
    readonly isActive: boolean;
    readonly contactCount: number;
    readonly contacts: readonly { normalImpulse: number }[];
  }[];
};
type Moving = Matter.Body & {
  readonly positionPrev: Matter.Vector;
  readonly positionImpulse: Matter.Vector;
  anglePrev: number;
};

/** What acts on the two bodies during one update. */
export interface RockingAction {
  /** On the ball, besides the contact, N */
  readonly ball: Vector;
  /** On the socket, besides the contact, about the origin of the frame */
  readonly socket: PlaneForce;
  /** N; the ball’s mass goes with it */
  readonly compressiveLoad: number;
  /** Rates at which the socket’s motion dies away, 1/s: along x, and its rise and turn */
  readonly damping: { readonly along: number; readonly across: number };
}

/** The place where the ball presses on the socket, and how. */
export interface RockingContact {
  readonly at: Vector;
  /** The same place as the moved socket has it from the middle of its springs, set off from where that was unmoved */
  readonly onSocket: Vector;
  /** Unit normal into the ball */
  readonly normal: Vector;
  /** N */
  readonly normalForce: number;
}

/** A ball that cannot rotate on a socket that is free to move. Lengths mm, times s, forces N. */
export interface RockingWorld {
  readonly update: (action: RockingAction) => void;
  readonly pose: () => PlanePose;
  readonly velocity: () => PlanePose;
  /** The socket’s mass, N·s²/mm */
  readonly mass: number;
  /** Twice the energy of its rise and turn, N·mm */
  readonly motion: () => number;
  readonly ball: () => { readonly position: Vector; readonly velocity: Vector };
  /** The ball’s centre in the socket’s own frame, mm */
  readonly ballInSocket: () => Vector;
  readonly contact: () => RockingContact | null;
}

/** The middle of the springs' stiffness, mm, and how stiff they all are together: N/mm and N·mm/rad. */
export interface SpringSize {
  readonly middle: Vector;
  readonly stiffness: number;
  readonly turningStiffness: number;
}

export function springSize(springs: readonly PlaneSpring[]): SpringSize {
  let [along, across, mx, mz, whole] = [0, 0, 0, 0, 0];
  for (const { at, normal, stiffness, sideStiffness } of springs) {
    const k = stiffness + sideStiffness;
    along += stiffness * normal.x ** 2 + sideStiffness * (1 - normal.x ** 2);
    across += stiffness * normal.z ** 2 + sideStiffness * (1 - normal.z ** 2);
    mx += k * at.x;
    mz += k * at.z;
    whole += k;
  }
  const middle = { x: mx / whole, z: mz / whole };
  const turningStiffness = springs.reduce((sum, { at, normal, stiffness, sideStiffness }) => {
    const arm = plus(at, middle, -1);
    const lever = cross(arm, normal);
    return sum + stiffness * lever ** 2 + sideStiffness * (arm.x ** 2 + arm.z ** 2 - lever ** 2);
  }, 0);
  return { middle, stiffness: Math.max(along, across), turningStiffness };
}

/** Ball and socket in matter-js, the ball touching in the middle, nothing loaded. */
export function createRockingWorld(
  hollow: Hollow,
  ballRadius: number,
  { middle, stiffness, turningStiffness }: SpringSize,
): RockingWorld {
  const material = {
    friction: 0,
    frictionStatic: 0,
    frictionAir: 0,
    restitution: 0,
    slop: (ROCKING_SLOP * ENGINE_STEP_MS) / UPDATE_MS,
  };
  const radius = ballRadius + ROCKING_SLOP;
  const perTime = (SOCKET_FREQUENCY / 1000) ** 2;
  const socketMass = stiffness / perTime;
  const socketInertia = turningStiffness / perTime;
  const ball = Body.create({
    ...material,
    vertices: corners(ring(radius)),
    inertia: Infinity,
  }) as Moving;
  const socket = Body.create({ ...material, vertices: corners(slab(ballRadius)) }) as Moving;
  Body.setMass(socket, socketMass);
  Body.setInertia(socket, socketInertia);
  place(ball, { x: 0, z: ballRadius });
  place(socket, middle);

  const engine = Engine.create({
    gravity: { x: 0, y: 0, scale: 0 },
    positionIterations: POSITION_ITERATIONS,
    velocityIterations: VELOCITY_ITERATIONS,
  });
  Composite.add(engine.world, [socket, ball]);

  const kick = { ball: { x: 0, z: 0 }, socket: { x: 0, z: 0 }, turn: 0 };
  // Forces are handed over between the engine's moving and its solving: a pressed ball then does not sink in. There too
  // each body gets its outline: what matters of the hollow is the one facet under the ball, tangent to the arc.
  Events.on(engine, 'beforeSolve', () => {
    speedUp(ball, kick.ball);
    speedUp(socket, kick.socket);
    socket.anglePrev += kick.turn;
    touch = reshape();
  });
  let touch = reshape();

  function turn(): number {
    return 0 - socket.angle;
  }
  function toSocket(point: Vector): Vector {
    return plus(turned(plus(point, positionOf(socket), -1), -turn()), middle);
  }
  function toWorld(point: Vector): Vector {
    return plus(turned(plus(point, middle, -1), turn()), positionOf(socket));
  }

  function reshape(): { readonly at: Vector; readonly normal: Vector } {
    const centre = positionOf(ball);
    const { at, normal: own } = nearestOnHollow(hollow, toSocket(centre));
    const normal = turned(own, turn());
    const place = toWorld(at);
    const angle = Math.atan2(-normal.x, normal.z);
    redraw(socket, slab(ballRadius), place, angle);
    redraw(ball, ring(radius), centre, angle);
    socket.axes = ball.axes = [{ x: normal.x, y: 0 - normal.z }];
    return { at: place, normal };
  }

  function update({
    ball: onBall,
    socket: onSocket,
    compressiveLoad,
    damping,
  }: RockingAction): void {
    const ballMass = (compressiveLoad * 1e6) / BALL_ACCELERATION;
    if (ball.mass !== ballMass) Body.setMass(ball, ballMass);
    const time = UPDATE_MS ** 2;
    const lostAlong = damping.along * UPDATE_SECONDS;
    const lost = damping.across * UPDATE_SECONDS;
    const { velocity: speed, turn: turning } = speedOf(socket);
    const about = onSocket.moment - cross(middle, onSocket);
    kick.ball = { x: (onBall.x * time) / ballMass, z: (onBall.z * time) / ballMass };
    kick.socket = {
      x: (onSocket.x * time) / socketMass - lostAlong * speed.x * UPDATE_SECONDS,
      z: (onSocket.z * time) / socketMass - lost * speed.z * UPDATE_SECONDS,
    };
    kick.turn = (about * time) / socketInertia - lost * turning * UPDATE_SECONDS;
    Engine.update(engine, UPDATE_MS);
    for (const body of [ball, socket]) body.positionImpulse.x = body.positionImpulse.y = 0;
  }

  /** Of the place at the middle of the stiffness, carried to the origin as small turns carry it. */
  function atOrigin(moved: Vector, angle: number): PlanePose {
    return { x: moved.x + angle * middle.z, z: moved.z - angle * middle.x, turn: angle };
  }

  return {
    update,
    pose: () => atOrigin(plus(positionOf(socket), middle, -1), turn()),
    velocity: () => {
      const { velocity: speed, turn: turning } = speedOf(socket);
      return atOrigin(speed, turning);
    },
    mass: socketMass / 1e6,
    motion: () => {
      const { velocity: speed, turn: turning } = speedOf(socket);
      return (socketMass * speed.z ** 2 + socketInertia * turning ** 2) / 1e6;
    },
    ball: () => ({ position: positionOf(ball), velocity: speedOf(ball).velocity }),
    ballInSocket: () => toSocket(positionOf(ball)),
    contact: () => {
      const pair = (engine.pairs as Pairs).list.find(({ isActive }) => isActive);
      if (pair === undefined) return null;
      const impulse = pair.contacts
        .slice(0, pair.contactCount)
        .reduce((sum, { normalImpulse }) => sum + normalImpulse, 0);
      const onSocket = plus(plus(touch.at, positionOf(socket), -1), middle);
      return { ...touch, onSocket, normalForce: -impulse / UPDATE_MS ** 2 };
    },
  };
}

function positionOf(body: Matter.Body): Vector {
  return { x: body.position.x, z: 0 - body.position.y };
}

function speedOf(body: Moving): { readonly velocity: Vector; readonly turn: number } {
  return {
    velocity: {
      x: (body.position.x - body.positionPrev.x) / UPDATE_SECONDS,
      z: (body.positionPrev.y - body.position.y) / UPDATE_SECONDS,
    },
    turn: (body.anglePrev - body.angle) / UPDATE_SECONDS,
  };
}

function speedUp(body: Moving, by: Vector): void {
  body.positionPrev.x -= by.x;
  body.positionPrev.y += by.z;
}

function place(body: Moving, { x, z }: Vector): void {
  Body.setPosition(body, { x, y: 0 - z });
}

/** A block below its top facet, whose middle stands at the origin. */
function slab(size: number): readonly Vector[] {
  return [
    { x: size, z: 0 },
    { x: -size, z: 0 },
    { x: -size, z: -size },
    { x: size, z: -size },
  ];
}

/** A ball with a corner straight down. */
function ring(radius: number): readonly Vector[] {
  return Array.from({ length: BALL_CORNERS }, (_, i) => {
    const angle = (2 * Math.PI * i) / BALL_CORNERS;
    return { x: radius * Math.sin(angle), z: -radius * Math.cos(angle) };
  });
}

/** In the engine's axes and its sense of going round. */
function corners(polygon: readonly Vector[]): Matter.Vector[] {
  return polygon.map(({ x, z }) => ({ x, y: 0 - z })).reverse();
}

/** Gives a body the corners of a polygon, turned and carried to a place; its mass and its middle stay. */
function redraw(body: Moving, polygon: readonly Vector[], at: Vector, angle: number): void {
  const drawn = corners(polygon.map((corner) => plus(turned(corner, angle), at)));
  drawn.forEach((corner, i) => Object.assign(body.vertices[i] ?? {}, corner));
  Bounds.update(body.bounds, body.vertices, body.velocity);
}
