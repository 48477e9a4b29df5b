import type { Fading } from '../mechanics/index.ts';
import type { PlaneSpring } from './rocking-plane.ts';

/** How a rigid body lies or moves in the plane: displacement of its origin, mm, and small turn from x toward z, rad. */
export interface PlanePose {
  readonly x: number;
  readonly z: number;
  readonly turn: number;
}

/** Forces on the body, N, and their moment about the origin, N·mm, turning from x toward z. */
export interface PlaneForce {
  readonly x: number;
  readonly z: number;
  readonly moment: number;
}

/** What the springs answer. */
export interface SpringAnswer extends PlaneForce {
  /** How stiff those that bear are along x, N/mm */
  readonly along: number;
  /** How they stiffen against the rest of the movement, its rise and its turn, N·mm/s²: v · K v */
  readonly stiffening: number;
}

/**
 * The springs with what they remember: slip, mm, all the way slipped to and fro, mm, the strength left, N, and where each
 * is neither pressed nor open: 0, or below where what stands behind it has been crushed, mm.
 */
export interface SpringMemory {
  readonly springs: readonly PlaneSpring[];
  readonly slips: Float64Array;
  readonly ways: Float64Array;
  readonly strengths: Float64Array;
  readonly homes: Float64Array;
}

export function freshSprings(springs: readonly PlaneSpring[]): SpringMemory {
  return {
    springs,
    slips: new Float64Array(springs.length),
    ways: new Float64Array(springs.length),
    strengths: Float64Array.from(springs, ({ strength }) => strength),
    homes: new Float64Array(springs.length),
  };
}

/** Displacement of a place of the body along x and z. */
export function displacementAt(
  { x, z, turn }: PlanePose,
  at: { readonly x: number; readonly z: number },
): { readonly x: number; readonly z: number } {
  return { x: x - turn * at.z, z: z + turn * at.x };
}

/** Separation of a spring along its normal, mm. */
export function gapOf(spring: PlaneSpring, pose: PlanePose): number {
  const { x, z } = displacementAt(pose, spring.at);
  return spring.normal.x * x + spring.normal.z * z;
}

/** Pull of spring i at a gap with the slip it has, N; negative where it presses. */
export function pullOf(memory: SpringMemory, i: number, gap: number): number {
  const spring = memory.springs[i];
  if (spring === undefined) return 0;
  const { stiffness, tension, crush } = spring;
  const over = gap - (memory.homes[i] ?? 0);
  if (tension === 'elastic') return Math.max(-crush, stiffness * over);
  if (tension === 'none') return over < 0 ? Math.max(-crush, stiffness * over) : 0;
  const held = heldOf(memory, i, over);
  return over < 0 ? Math.max(-Math.max(crush, -held), held + stiffness * over) : held;
}

/** What the slider of a `limited` spring pulls at a gap over its home, N. */
function heldOf({ springs, slips, strengths }: SpringMemory, i: number, over: number): number {
  const strength = strengths[i] ?? 0;
  const held = (springs[i]?.stiffness ?? 0) * (Math.max(0, over) - (slips[i] ?? 0));
  return Math.max(-strength, Math.min(strength, held));
}

/** Moves the home of spring i as far as it is pressed beyond what it bears; tells whether it moved. */
function yieldTo(memory: SpringMemory, i: number, gap: number): boolean {
  const { stiffness = 0, crush = Infinity, tension } = memory.springs[i] ?? {};
  if (stiffness === 0 || crush === Infinity) return false;
  const home = memory.homes[i] ?? 0;
  const held = tension === 'limited' ? heldOf(memory, i, 0) : 0;
  const next = gap + (Math.max(crush, -held) + held) / stiffness;
  if (next >= home) return false;
  memory.homes[i] = next;
  return true;
}

/**
 * The forces of all springs on the body in a pose, moving at a velocity.
 *
 * A spring without tension carries a press only, and stands against movement along its face only while it is closed. A
 * `limited` one is a spring with a slider in line with it: what it pulls beyond its strength moves the slider, which
 * stays where it was moved to. It is pressed home without slipping. One that yields is crushed as far as it is pressed
 * beyond what it bears, and stays so.
 */
export function springAnswer(
  memory: SpringMemory,
  pose: PlanePose,
  velocity: PlanePose,
): SpringAnswer {
  let [x, z, moment, along, stiffening] = [0, 0, 0, 0, 0];
  memory.springs.forEach((spring, i) => {
    const { at, normal, stiffness, sideStiffness, tension } = spring;
    const [movedX, movedZ] = [pose.x - pose.turn * at.z, pose.z + pose.turn * at.x];
    const [rateX, rateZ] = [0 - velocity.turn * at.z, velocity.z + velocity.turn * at.x];
    const gap = normal.x * movedX + normal.z * movedZ;
    const rate = normal.x * rateX + normal.z * rateZ;
    const slipped = tension === 'limited' && slide(memory, i, gap - (memory.homes[i] ?? 0));
    const yielded = yieldTo(memory, i, gap);
    const pull = pullOf(memory, i, gap);
    const over = gap - (memory.homes[i] ?? 0);
    let [forceX, forceZ] = [-pull * normal.x, -pull * normal.z];
    const isBearing = !yielded && (tension === 'none' ? over < 0 : !slipped);
    if (isBearing) {
      stiffening += stiffness * rate * rate;
      along += stiffness * normal.x * normal.x;
    }
    if (sideStiffness > 0 && (tension !== 'none' || over <= 0)) {
      forceX -= sideStiffness * (movedX - normal.x * gap);
      forceZ -= sideStiffness * (movedZ - normal.z * gap);
      stiffening += sideStiffness * (rateX * rateX + rateZ * rateZ - rate * rate);
      along += sideStiffness * (1 - normal.x * normal.x);
    }
    x += forceX;
    z += forceZ;
    moment += at.x * forceZ - at.z * forceX;
  });
  return { x, z, moment, along, stiffening };
}

/** Moves the slider of spring i as far as its strength asks; tells whether it moved. */
function slide(memory: SpringMemory, i: number, over: number): boolean {
  const stiffness = memory.springs[i]?.stiffness ?? 0;
  if (stiffness === 0) return false;
  const [slip, give] = [memory.slips[i] ?? 0, (memory.strengths[i] ?? 0) / stiffness];
  const open = Math.max(0, over);
  const next = Math.max(open - give, Math.min(open + give, slip));
  if (next === slip) return false;
  memory.slips[i] = next;
  memory.ways[i] = (memory.ways[i] ?? 0) + Math.abs(next - slip);
  return true;
}

/** Takes from the strengths what the way slipped so far has worn off. */
export function fade({ springs, ways, strengths }: SpringMemory, { residual, over }: Fading): void {
  springs.forEach(({ strength }, i) => {
    const left = residual + (1 - residual) * Math.exp(-(ways[i] ?? 0) / over);
    strengths[i] = strength * left;
  });
}
