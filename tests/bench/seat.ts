import {
  flatBed,
  keel,
  peg,
  solveSeat,
  sphericalBed,
  type SeatElement,
  type SeatLoad,
  type SurroundingBone,
} from '../../sims/mechanics/index.ts';
import { leastPotential } from '../unit/mechanics/seat-oracle.ts';
import { median, rounded, table } from './table.ts';

/** Milliseconds: one solution, so that a drag stays live, and a rose of directions. */
const GOAL = 5;
const ROSE_GOAL = 100;
const ROSE = 24;
const WARM_UP = 24;

const bone = { modulus: 200, poisson: 0.3 };
const bed = { layer: { thickness: 10, ...bone }, level: -4, elements: 2500 };
const outline = { kind: 'pear', width: 26, height: 35 } as const;
const pegsIn = (stuff: SurroundingBone): readonly SeatElement[] =>
  (
    [
      [0, 9],
      [-5, -6],
      [5, -6],
    ] as const
  ).flatMap(([x, y]) =>
    peg({ x, y, diameter: 5, length: 10, kind: 'smooth cemented', bone: stuff, level: -4 }),
  );
const pegs = pegsIn(bone);
/** Weak enough that the rim load crushes a part of it. */
const SOFT = 3;
const plate = keel({
  x: 0,
  y: 0,
  length: 20,
  height: 11,
  thickness: 4,
  kind: 'keel cemented',
  bone,
  level: -4,
});

const designs: readonly (readonly [name: string, elements: readonly SeatElement[]])[] = [
  ['flat bed, three pegs', [...flatBed(outline, bed), ...pegs]],
  ['round bed, three pegs', [...sphericalBed(outline, 40, bed), ...pegs]],
  ['flat bed, keel', [...flatBed(outline, bed), ...plate]],
  ['bed bonded up to a strength', [...flatBed(outline, { ...bed, bond: 0.5 }), ...pegs]],
  [
    'bone that yields, three pegs',
    [...flatBed(outline, { ...bed, strength: SOFT }), ...pegsIn({ ...bone, strength: SOFT })],
  ],
  ['rough bed, three pegs', [...flatBed(outline, { ...bed, isRough: true }), ...pegs]],
];

/**
 * How long one rest of a socket on its interface takes, over loads all round the rim, and a rose of 24 of them; and how
 * many times longer a general minimiser of the same energy needs.
 */
export function seatBench(): string {
  const rows = designs.map(([name, elements]) => {
    const ways = Array.from({ length: ROSE }, (_, i) => (i * 2 * Math.PI) / ROSE);
    for (let i = 0; i < WARM_UP; i++) solveSeat({ elements, load: rimLoad(ways[i] ?? 0) });
    const times = ways.map((way) => taken(() => solveSeat({ elements, load: rimLoad(way) })));
    const middle = median(times);
    const rose = times.reduce((sum, time) => sum + time, 0);
    // A general minimiser has no energy to go by where grip comes and goes.
    const isConvex = !name.startsWith('rough');
    const slow = isConvex ? taken(() => leastPotential(elements, rimLoad(1))) : NaN;
    return [
      name,
      elements.length,
      rounded(middle, 2),
      rounded(middle / GOAL, 2),
      rounded(rose, 0),
      rounded(rose / ROSE_GOAL, 2),
      isConvex ? `${rounded(slow / middle)} ×` : '–',
    ] as const;
  });
  return table(
    `Seat: one rest, goal ${GOAL} ms; a rose of ${ROSE}, goal ${ROSE_GOAL} ms`,
    ['design', 'elements', 'median ms', 'of goal', 'rose ms', 'of goal', 'general minimiser'],
    rows,
  );
}

/** A press and a shear toward the rim in a direction, as a ball near the rim gives. */
function rimLoad(way: number): SeatLoad {
  const [x, y] = [Math.cos(way), Math.sin(way)];
  return { force: [300 * x, 300 * y, -750], point: [9 * x, 13 * y, 0] };
}

function taken(run: () => unknown): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}
