import Matter from 'matter-js';
import type { Action, BallMotion, BallWorld, BearingContact } from './ball-world.ts';
import { UPDATE_SECONDS } from './constants.ts';
import { contactForces } from './contact-forces.ts';
import { discOutline } from './disc-outline.ts';
import type { Polygon, SocketProfile } from './socket-profile.ts';
import { lengthOf, plus, tangentOf, type Vector } from './vector.ts';
import type { WorldPlan } from './world-plan.ts';

/*
 * This file and rocking-world.ts alone speak to matter-js. One unit of length is one mm; the engine's y points down, so
 * z = −y. Its unit of time is the ms, so a mass of load / (A · 10⁻⁶) makes forces in N come out right.
 */

const { Body, Composite, Engine, Events, Vertices } = Matter;

const UPDATE_MS = UPDATE_SECONDS * 1000;
/** The step the engine's damping and slop are stated for, ms. */
const ENGINE_STEP_MS = 1000 / 60;
/** With 36 the engine's correction of a single contact is exact; with fewer it overshoots and loses the contact. */
const POSITION_ITERATIONS = 36;
const VELOCITY_ITERATIONS = 10;

/** What the engine's published types leave out or have out of date. */
type Pair = Omit<Matter.Pair, 'contacts'> & {
  readonly contactCount: number;
  readonly contacts: readonly { normalImpulse: number }[];
};
type Pairs = Matter.Pairs & { readonly list: readonly Pair[] };
type Ball = Matter.Body & {
  readonly positionPrev: Matter.Vector;
  readonly positionImpulse: Matter.Vector;
};

/** The ball and its socket in matter-js, the ball resting in the middle. */
export function createMatterWorld(plan: WorldPlan): BallWorld {
  const { profile, slop } = plan;
  const material = {
    friction: 0,
    frictionStatic: 0,
    frictionAir: 0,
    restitution: 0,
    slop: (slop * ENGINE_STEP_MS) / UPDATE_MS,
  };
  const pieces = [
    ...profile.pieces.map((piece, i) => bodyOf(piece, material, exposedAxes(profile, i))),
    ...profile.stops.map((stop) => bodyOf(stop, material)),
  ];
  const socket = Body.create({ ...material, parts: pieces });
  Body.setStatic(socket, true);
  const start = { x: 0, z: plan.startHeight };
  const outline = discOutline(plan.ballRadius + slop, profile.facetAngles);
  const ball = bodyOf(
    outline.map((corner) => plus(corner, start)),
    { ...material, inertia: Infinity },
  ) as Ball;
  // The engine takes an outline's centroid for its position; the circle's centre lies a fixed step from it.
  const offset = { x: start.x - ball.position.x, z: start.z + ball.position.y };
  // A circle meets a corner along the line from its centre to that corner; the polygon's own edges would only come near.
  const towardRims = profile.rims.map(() => ({ x: 0, y: 1 }));
  ball.axes = towardRims;

  const engine = Engine.create({
    gravity: { x: 0, y: 0, scale: 0 },
    positionIterations: POSITION_ITERATIONS,
    velocityIterations: VELOCITY_ITERATIONS,
  });
  Composite.add(engine.world, [socket, ball]);
  // Left to itself the engine moves a body by its forces and only then asks what it has run into, so that a pressed ball
  // sinks in a little with each update and feels facets it has not come to. Handing the forces over as a change of
  // velocity between its moving and its solving avoids that.
  const kick = { x: 0, y: 0 };
  Events.on(engine, 'beforeSolve', () => {
    ball.positionPrev.x -= kick.x;
    ball.positionPrev.y -= kick.y;
  });
  let touching: readonly Pair[] = [];
  let frictionForces: readonly number[] = [];

  function motion(): BallMotion {
    return {
      position: { x: ball.position.x + offset.x, z: offset.z - ball.position.y },
      velocity: {
        x: (ball.position.x - ball.positionPrev.x) / UPDATE_SECONDS,
        z: (ball.positionPrev.y - ball.position.y) / UPDATE_SECONDS,
      },
    };
  }

  function update({ force, compressiveLoad, friction, damping }: Action): void {
    const mass = (compressiveLoad * 1e6) / plan.loadAcceleration;
    if (ball.mass !== mass) Body.setMass(ball, mass);
    ball.frictionAir = (damping * ENGINE_STEP_MS) / 1000;
    const { position, velocity } = motion();
    profile.rims.forEach((rim, i) => pointAxis(towardRims[i], position, rim));

    const momentumPerUpdate = (mass * UPDATE_SECONDS) / UPDATE_MS ** 2;
    const drive = plus(force, velocity, momentumPerUpdate * (1 - damping * UPDATE_SECONDS));
    const normals = touching.map((pair) => normalOn(ball, pair));
    const forces = contactForces(normals, drive, friction);
    const before = touching;
    let applied = force;
    forces.forEach(({ normalForce, frictionForce }, i) => {
      const normal = normals[i];
      if (normal && frictionForce !== 0) applied = plus(applied, tangentOf(normal), frictionForce);
      startSolverAt(before[i], normalForce);
    });
    kick.x = (applied.x * UPDATE_MS ** 2) / mass;
    kick.y = (-applied.z * UPDATE_MS ** 2) / mass;
    Engine.update(engine, UPDATE_MS);
    // The engine would repeat a part of each correction of position in the next update: a drift along the socket.
    ball.positionImpulse.x = 0;
    ball.positionImpulse.y = 0;
    touching = (engine.pairs as Pairs).list.filter((pair) => pair.isActive);
    frictionForces = touching.map((pair) => forces[before.indexOf(pair)]?.frictionForce ?? 0);
  }

  function contacts(): readonly BearingContact[] {
    return touching.map((pair, i) => ({
      normal: normalOn(ball, pair),
      normalForce: normalForceOf(pair),
      frictionForce: frictionForces[i] ?? 0,
    }));
  }

  return { update, motion, contacts };
}

/** The engine's normal points out of its body B; this one points into the ball. */
function normalOn(ball: Matter.Body, { collision }: Pair): Vector {
  const side = collision.parentA === ball ? 1 : -1;
  return { x: side * collision.normal.x, z: -side * collision.normal.y };
}

/** The engine counts impulses that press as negative. */
function normalForceOf({ contacts, contactCount }: Pair): number {
  const impulse = contacts
    .slice(0, contactCount)
    .reduce((sum, { normalImpulse }) => sum + normalImpulse, 0);
  return impulse === 0 ? 0 : -impulse / UPDATE_MS ** 2;
}

/**
 * Lets the engine's iterative solver begin at a guess. Neighbouring facets are so nearly parallel that from a poor guess
 * it needs thousands of sweeps, and the ball would swing between two of them for ever.
 */
function startSolverAt(pair: Pair | undefined, normalForce: number): void {
  const [first, second] = pair?.contacts ?? [];
  if (first) first.normalImpulse = -normalForce * UPDATE_MS ** 2;
  if (second) second.normalImpulse = 0;
}

/**
 * A rigid piece. Its axes, the normals along which the engine looks for a gap, are given exactly: the engine's own round
 * slopes to three decimals.
 */
function bodyOf(
  polygon: Polygon,
  options: Matter.IBodyDefinition,
  axes = edgeNormals(polygon),
): Matter.Body {
  const corners = polygon.map(({ x, z }) => ({ x, y: -z })).reverse();
  const position = Vertices.centre(corners);
  return Body.create({ ...options, vertices: corners, position, axes });
}

function edgeNormals(polygon: Polygon): Matter.Vector[] {
  return polygon.map((from, i) => {
    const way = plus(polygon[(i + 1) % polygon.length] ?? from, from, -1);
    const length = lengthOf(way);
    return { x: way.z / length, y: way.x / length };
  });
}

/** Of a piece between two others only the facet can be touched; undefined for one with more to show. */
function exposedAxes({ facetAngles }: SocketProfile, index: number): Matter.Vector[] | undefined {
  const angle = facetAngles[index];
  const isInner = index > 0 && index < facetAngles.length - 1;
  if (!isInner || angle === undefined) return undefined;
  return [{ x: Math.sin(angle), y: Math.cos(angle) }];
}

function pointAxis(axis: Matter.Vector | undefined, from: Vector, to: Vector): void {
  if (!axis) return;
  const way = plus(to, from, -1);
  const length = lengthOf(way);
  axis.x = way.x / length;
  axis.y = -way.z / length;
}
