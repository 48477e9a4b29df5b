import { equilibrium } from './seat-equilibrium.ts';
import {
  FREEDOMS,
  giveAt,
  isLimited,
  loadParts,
  pullAt,
  springsOf,
  type Springs,
} from './seat-springs.ts';
import type {
  SeatElement,
  SeatElementAnswer,
  SeatElementState,
  SeatQuestion,
  SeatSolution,
} from './seat-types.ts';

/**
 * Where a rigid socket comes to rest on the springs between it and the bone, under one force.
 *
 * A body of six degrees of freedom, small displacements and turns, linear springs: a bed that can only be pressed, or is
 * bonded, pegs, the faces of a keel are all lists of elements. Element i sits at p, with its unit normal n in the
 * direction in which it pushes the socket; its gap is n · (u + θ × p). It carries a press in proportion, up to where it
 * yields; a pull not at all, in proportion, or up to its strength. What stands in the way of a movement across the normal
 * answers in proportion.
 *
 * @param question.elements N/mm and mm; area and length already in the stiffnesses
 * @param question.load N at a point in mm; pressing in is −z
 * @returns forces that balance the load to 1e-9 of it where `converged`; otherwise `outcome` says what happened
 * @throws RangeError for numbers that are not finite, stiffnesses below 0, a normal without length, a missing strength
 *
 * Derivation: minimum of the potential energy, which is convex for these springs (Newton with an active set).
 */
export function solveSeat({ elements, load }: SeatQuestion): SeatSolution {
  const springs = springsOf(elements);
  const slips = new Float64Array(springs.count);
  const found = equilibrium(springs, loadParts(load, springs.arm), slips);
  return seatSolution(elements, springs, slips, found);
}

/** A rest as it is reported. `slips` are those that were there before. */
export function seatSolution(
  elements: readonly SeatElement[],
  springs: Springs,
  slips: Float64Array,
  found: ReturnType<typeof equilibrium>,
): SeatSolution {
  const { outcome, coordinates, gaps, grips } = found;
  const answers = elements.map((_, i) => {
    const gap = gaps[i] ?? 0;
    return elementAnswer(springs, i, gap, slips[i] ?? 0, sideForce(springs, i, coordinates, grips));
  });
  const [ux = 0, uy = 0, uz = 0, rx = 0, ry = 0, rz = 0] = coordinates;
  return {
    converged: outcome === 'balanced',
    overturned: outcome === 'overturned',
    outcome,
    displacement: [ux, uy, uz],
    rotation: [rx / springs.arm, ry / springs.arm, rz / springs.arm],
    elements: answers,
    ...bedReadings(elements, answers),
    pegMargins: answers.flatMap(({ normalForce }, i) => {
      if (!isLimited(springs, i)) return [];
      return [normalForce < 0 ? (springs.strength[i] ?? 0) / -normalForce : Infinity];
    }),
  };
}

/** How far an element has come out beyond what it carries elastically. */
export function slipAt(springs: Springs, i: number, gap: number, slip: number): number {
  if (!isLimited(springs, i)) return 0;
  const k = springs.stiffness[i] ?? 0;
  const pull = pullAt(springs, i, Math.max(0, gap), slip);
  if (gap <= 0) return Math.min(slip, k > 0 ? (springs.strength[i] ?? 0) / k : slip);
  return Math.max(0, k > 0 ? gap - pull / k : gap);
}

/** Where element i is at home once its gap over the home it had has been `gap`. */
export function homeAt(springs: Springs, i: number, gap: number, slip: number): number {
  const [home, give] = [springs.homes[i] ?? 0, giveAt(springs, i, slip)];
  return gap < -give ? home + gap + give : home;
}

function elementAnswer(
  springs: Springs,
  i: number,
  gap: number,
  before: number,
  tangentialForce: number,
): SeatElementAnswer {
  const pull = pullAt(springs, i, gap, before);
  const slip = slipAt(springs, i, gap, before);
  // Not −0 where nothing pulls.
  const normalForce = pull === 0 ? 0 : -pull;
  const [was, home] = [springs.homes[i] ?? 0, homeAt(springs, i, gap, before)];
  const isYielding = was - home > Math.abs(gap) * 1e-12;
  return {
    normalForce,
    tangentialForce,
    gap: gap + was,
    slip,
    crushed: home === 0 ? 0 : -home,
    state: isYielding ? 'yielding' : stateOf(normalForce, slip - before, gap),
  };
}

function stateOf(normalForce: number, slipped: number, gap: number): SeatElementState {
  if (slipped > Math.abs(gap) * 1e-12) return 'slipping';
  if (normalForce < 0) return 'pulled';
  return gap > 0 && normalForce === 0 ? 'open' : 'pressed';
}

function sideForce(
  springs: Springs,
  i: number,
  coordinates: Float64Array,
  grips: Uint8Array,
): number {
  const stiffness = springs.sideStiffness[i] ?? 0;
  if (stiffness === 0 || grips[i] === 0) return 0;
  const along = (row: number): number => {
    let sum = 0;
    for (let k = 0; k < FREEDOMS; k++)
      sum += (springs.sideRows[row + k] ?? 0) * (coordinates[k] ?? 0);
    return sum;
  };
  const row = 2 * FREEDOMS * i;
  return stiffness * Math.hypot(along(row), along(row + FREEDOMS));
}

/** Lift-off, press-in and contact of the elements that bear the socket from below. */
function bedReadings(
  elements: readonly SeatElement[],
  answers: readonly SeatElementAnswer[],
): Pick<SeatSolution, 'liftOff' | 'pressIn' | 'contactShare'> {
  let [liftOff, pressIn] = [0, 0];
  const all = { whole: 0, touching: 0 };
  const loose = { whole: 0, touching: 0 };
  elements.forEach(({ normal, normalStiffness, tension }, i) => {
    const answer = answers[i];
    if (answer === undefined || !(normal[2] > 0)) return;
    liftOff = Math.max(liftOff, answer.gap);
    pressIn = Math.max(pressIn, -answer.gap);
    for (const sum of tension === 'none' ? [all, loose] : [all]) {
      sum.whole += normalStiffness;
      if (answer.gap <= -answer.crushed) sum.touching += normalStiffness;
    }
  });
  const { whole, touching } = loose.whole > 0 ? loose : all;
  return { liftOff, pressIn, contactShare: whole > 0 ? touching / whole : 0 };
}
