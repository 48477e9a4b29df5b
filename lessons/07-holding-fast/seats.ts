import { presets, triangleApart } from '../../sims/benches/peg-board/presets.ts';
import { liftRose, roseEnds, type RoseRow } from '../../sims/benches/peg-board/rose.ts';
import { POISSON, seatOf } from '../../sims/benches/peg-board/seat.ts';
import {
  defaultBoard,
  newKeel,
  newPeg,
  pegKinds,
  type Design,
  type KeelPlace,
  type PegPlace,
} from '../../sims/benches/peg-board/settings.ts';
import { standOf, type Stand } from '../../sims/benches/peg-board/stand.ts';
import { holds, peg, rockingTest, type HoldKind } from '../../sims/mechanics/index.ts';
import { fixedText } from '../../sims/shared/format.ts';
import { elasticGroup } from './elastic-group.ts';

/*
 * Everything the lesson shows, computed: layouts of Peg Board on its own back, under its own load. What is not told as a
 * fact elsewhere is a teaching value of that bench.
 */

export const { ground, load } = defaultBoard;
export const bone = { modulus: ground.modulus, poisson: POISSON };

/** Bearings of a right socket seen from its side, degrees. */
export const FRONT = 0;
export const UP = 90;
export const BACK = 180;
export const DOWN = 270;

/** Distances from front to back that the lesson sets side by side, mm. */
export const NEAR = 8;
export const FAR = 16;

/** A layout with all that the lesson says of it. */
export interface Layout {
  readonly name: string;
  readonly design: Design;
  /** With the load at a bearing */
  readonly at: (bearing: number) => Stand;
  readonly rose: readonly RoseRow[];
  /** Greatest and least lift-off round the rim, mm, and where the load is then */
  readonly most: RoseRow;
  readonly least: RoseRow;
  /** Least margin round the rim */
  readonly margin: number;
  /** N, straight out, with nothing under the back that pulls */
  readonly pullOut: number;
  /** Area of the sides in the bone, mm² */
  readonly sides: number;
  /** Bone that makes way for it, without the cement, mm³ */
  readonly hole: number;
}

export const sidesOfPeg = ({ diameter, length }: Pick<PegPlace, 'diameter' | 'length'>): number =>
  Math.PI * diameter * length;
const sidesOfKeel = ({ span, thickness, depth }: KeelPlace): number =>
  2 * (span + thickness) * depth;

function layoutOf(name: string, design: Design): Layout {
  const seat = seatOf(design, ground);
  const rose = liftRose(seat, load);
  const ends = roseEnds(rose);
  if (ends === null) throw new Error(`${name}: it has no rest anywhere`);
  const { pegs, keel } = design;
  return {
    name,
    design,
    at: (bearing) => standOf(seat, { ...load, bearing }),
    rose,
    ...ends,
    margin: Math.min(...rose.map(({ margin }) => margin)),
    pullOut: straightOut(seat.elements),
    sides:
      pegs.reduce((sum, each) => sum + sidesOfPeg(each), 0) +
      (keel === null ? 0 : sidesOfKeel(keel)),
    hole:
      pegs.reduce((sum, each) => sum + (Math.PI / 4) * each.diameter ** 2 * each.length, 0) +
      (keel === null ? 0 : keel.span * keel.thickness * keel.depth),
  };
}

/** Greatest pull that a layout bears, N, drawn straight out through its middle. */
function straightOut(elements: ReturnType<typeof seatOf>['elements']): number {
  const limited = elements.filter(({ tension }) => tension === 'limited');
  const whole = limited.reduce((sum, { strength = 0 }) => sum + strength, 0);
  const at = (axis: 0 | 1): number =>
    limited.reduce((sum, { position, strength = 0 }) => sum + position[axis] * strength, 0) / whole;
  return rockingTest({
    seat: { elements },
    load: { force: [0, 0, 100], point: [at(0), at(1), 0] },
    cycles: 0,
  }).greatestLoad;
}

/** A design that Peg Board starts from. */
export const preset = (id: string): Design => {
  const found = presets.find((each) => each.id === id);
  if (found === undefined) throw new RangeError(`id is ${id}; allowed: a preset of Peg Board`);
  return found.design;
};
export const pegAt = (x: number, y: number): PegPlace => ({ ...newPeg, x, y });

/** Three of the lesson’s pegs on one upright line. */
const upright: Design = { pegs: [pegAt(0, 9), pegAt(0, 0), pegAt(0, -9)], keel: null };

export const one = layoutOf('one thick peg', preset('one'));
export const two = layoutOf('two in line', preset('line'));
export const inLine = layoutOf('three in line', upright);
export const near = layoutOf('three, near', triangleApart(NEAR));
export const far = layoutOf('three, far', triangleApart(FAR));
export const plate = layoutOf('a keel', preset('keel'));
export const fluted = layoutOf('fluted and three', preset('fluted'));

/** The same after bone has grown to the fluted peg. */
export const grown = layoutOf('grown in and three', {
  ...preset('fluted'),
  pegs: preset('fluted').pegs.map((each) =>
    each.kind === 'fluted press-fit' ? { ...each, kind: 'in-grown' } : each,
  ),
});
/** Pull-out of the peg in the middle, N. */
export const middleOf = ({ at }: Layout): number => at(FRONT).pegs[0]?.strength ?? NaN;

/** Row by row as the table has them. */
export const layouts: readonly Layout[] = [one, two, inLine, near, far, plate, fluted];

export const MICROMETRES = 1000;
/** Lift-off with the load at a bearing, mm. */
export const liftAt = (layout: Layout, bearing: number): number => layout.at(bearing).liftOff;

/** The pull of the peg that is pulled most, N. */
export const hardestPull = ({ pegs }: Stand): number =>
  pegs.reduce((most, { pull }) => Math.max(most, pull), 0);

/** How a kind of hold does in the peg of the lesson. */
export interface KindRow {
  readonly kind: HoldKind;
  /** N/mm² */
  readonly strength: number;
  /** Share of a perfect bond */
  readonly grip: number;
  /** N, and N/mm, of a peg of the lesson’s size */
  readonly pullOut: number;
  readonly stiffness: number;
  readonly provenance: string;
}

export const kindRows: readonly KindRow[] = pegKinds.map((kind) => {
  const [axial] = peg({ ...newPeg, x: 0, y: 0, kind, bone });
  return {
    kind,
    ...holds[kind],
    pullOut: axial?.strength ?? NaN,
    stiffness: axial?.normalStiffness ?? NaN,
  };
});

/** The lesson’s own peg: a smooth cemented one. */
export const usual = kindRows.find(({ kind }) => kind === newPeg.kind) ?? missing('the peg');
function missing(what: string): never {
  throw new Error(`${what} is missing`);
}
export { newKeel, newPeg };

/** Pull on one of the lesson’s pegs that goes with a margin. */
export const pullAtMargin = (margin: number): number => usual.pullOut / margin;

/*
 * The group of holds by itself. Two pegs and a moment, with nothing under the plate.
 */

/** N·mm */
export const MOMENT = 1000;
const pair = (apart: number) =>
  elasticGroup([-apart / 2, apart / 2], usual.stiffness, { pull: 0, moment: MOMENT });
export const nearPair = { apart: NEAR, ...pair(NEAR) };
export const farPair = { apart: FAR, ...pair(FAR) };

/** Two pegs brought apart from front to back, under the load at the front. */
export interface SpacingRow {
  /** mm */
  readonly apart: number;
  /** Lift-off on the bench, mm */
  readonly lift: number;
  /** The hardest pulled peg, N */
  readonly pull: number;
  /** Turn about the upright axis, rad */
  readonly turn: number;
}

export const spacingRows: readonly SpacingRow[] = Array.from({ length: 13 }, (_, i) => {
  const apart = 6 + i;
  const stand = standOf(seatOf(triangleApart(apart), ground), { ...load, bearing: FRONT });
  return {
    apart,
    lift: stand.liftOff,
    pull: hardestPull(stand),
    turn: Math.abs(stand.rotation[1]),
  };
});

/** What is left of a lift-off, as a share, when two pegs go from near to far: on the bench, and by the group alone. */
export const leftOnBench = liftAt(far, FRONT) / liftAt(near, FRONT);
export const leftByGroup = farPair.turn / nearPair.turn;

/** How much more the upright line lifts with the load in front than with it above. */
export const lineTurned = liftAt(inLine, FRONT) / liftAt(inLine, UP);

/*
 * A shove along the face against the sides of what holds: the mean pressure on the bone in its way, MPa.
 */
const shoved = (area: number): number => load.shear / area;
export const keelBroadside = {
  area: newKeel.span * newKeel.depth,
  pressure: shoved(newKeel.span * newKeel.depth),
};
export const keelEndOn = {
  area: newKeel.thickness * newKeel.depth,
  pressure: shoved(newKeel.thickness * newKeel.depth),
};
export const pegsSideways = {
  area: 3 * newPeg.diameter * newPeg.length,
  pressure: shoved(3 * newPeg.diameter * newPeg.length),
};

/** What the group alone would say, started from the bench’s own values at the near spacing. */
export const byGroup = spacingRows
  .filter(({ apart }) => apart >= NEAR)
  .map(({ apart }) => ({
    apart,
    lift: liftAt(near, FRONT) * (NEAR / apart) ** 2,
    pull: (hardestPull(near.at(FRONT)) * NEAR) / apart,
  }));

const NO_BREAK_SPACE = '\u00a0';
const inUnit =
  (unit: string, digits: number) =>
  (value: number): string =>
    `${fixedText(value, digits)}${NO_BREAK_SPACE}${unit}`;
/** An area, a volume, and a stress on the side of a hold, in words. */
export const squareMm = inUnit('mm²', 0);
export const cubicMm = inUnit('mm³', 0);
export const onSide = inUnit('N/mm²', 1);
export const megapascals = inUnit('MPa', 1);

/** A lift-off, mm, in words. */
export { small as micrometres } from '../../sims/benches/peg-board/lettering.ts';

/** How the upright line does with its load carried from above to the front, as an option of the prediction. */
export const lineOutcome = lineTurned > 1.2 ? 'more' : lineTurned < 0.8 ? 'less' : 'same';

/** What is left of the lift-off when two pegs go from near to far, likewise. */
export const spacingOutcome =
  leftOnBench > 0.9 ? 'stays' : leftOnBench > 0.5 ? 'more-than-half' : 'quarter';
