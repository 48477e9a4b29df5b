import fc from 'fast-check';
import { flatBed, peg, sphericalBed, type SeatLoad } from '../../../sims/mechanics/index.ts';

const bone = { modulus: 200, poisson: 0.3 };
const layer = { thickness: 10, ...bone };

/** Any number in a range. */
export const within = (least: number, most: number) =>
  fc.double({ min: least, max: most, noNaN: true });
export const point = (reach: number) => fc.tuple(within(-reach, reach), within(-reach, reach));
/** A socket with pegs on its bone, and a load. */
export const design = fc.record({
  width: within(18, 30),
  height: within(25, 42),
  isRound: fc.boolean(),
  bond: fc.constantFrom(undefined, 0.2, Infinity),
  pegs: fc.array(fc.record({ at: point(9), diameter: within(3, 8), length: within(5, 14) }), {
    maxLength: 4,
  }),
  load: fc.record({
    force: fc.tuple(within(-300, 300), within(-300, 300), within(-900, -50)),
    at: point(14),
  }),
});
/** Pegs in the same place or a tenth of a millimetre apart: what holds by a hair is told elsewhere. */
const onGrid = (at: number): number => Math.round(10 * at) / 10;
export const seatOnGrid = design.map(({ pegs, ...rest }) => ({
  ...rest,
  pegs: pegs.map(({ at: [x, y], ...peg }) => ({
    ...peg,
    at: [onGrid(x), onGrid(y)] as [number, number],
  })),
}));

type Design = typeof design extends fc.Arbitrary<infer T> ? T : never;

export function built({ width, height, isRound, bond, pegs, load }: Design, elements: number) {
  const outline = { kind: 'pear', width, height } as const;
  const bed = { layer, level: -4, bond, elements, isRough: bond !== undefined };
  return {
    elements: [
      ...(isRound ? sphericalBed(outline, 40, bed) : flatBed(outline, bed)),
      ...pegs.flatMap(({ at: [x, y], ...size }) =>
        peg({ x, y, ...size, kind: 'smooth cemented', bone, level: -4 }),
      ),
    ],
    load: { force: load.force, point: [...load.at, 0] } as SeatLoad,
  };
}
