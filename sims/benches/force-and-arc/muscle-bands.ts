import type { PullReading } from './reading.ts';
import { type Place } from './layout.ts';

/** The two edges of a muscle that hugs the ball, from its inner end on the blade to its tendon. */
export interface MuscleBand {
  readonly near: readonly Place[];
  readonly far: readonly Place[];
}

/** How thick a muscle is drawn, mm: with its pull, so that a weak one looks thin. A picture; nothing is computed from it. */
const THINNEST = 2.2;
const PER_NEWTON = 0.034;
/** Along the blade from its broken end, off the bone; towards the muscle’s own side, and out of the socket. */
const alongBlade: readonly (readonly [aside: number, out: number])[] = [
  [5.6, -46],
  [6.6, -36],
  [9.4, -26],
  [14, -16],
  [20.6, -5],
];
/** Where it lies on the ball, degrees from straight aside, towards the outside. */
const onBall = [-14, 4, 22, 40, 56];
const CLEAR = 1.4;

/** The muscle of a pull on one side of the blade: 1 for behind, −1 for in front. */
export function muscleBand(
  { size }: Pick<PullReading, 'size'>,
  side: 1 | -1,
  centre: Place,
  ballRadius: number,
): MuscleBand {
  const thick = THINNEST + PER_NEWTON * size;
  const edge = (off: number): readonly Place[] => [
    ...alongBlade.map(([aside, out]) => ({ aside: side * (aside + off), out })),
    ...onBall.map((degrees, i) => {
      const angle = (degrees * Math.PI) / 180;
      const taper = i === onBall.length - 1 ? 0.25 : i === onBall.length - 2 ? 0.6 : 1;
      const reach = ballRadius + CLEAR + off * taper;
      return {
        aside: centre.aside + side * reach * Math.cos(angle),
        out: centre.out + reach * Math.sin(angle),
      };
    }),
  ];
  return { near: edge(0), far: edge(thick) };
}
