import { cupFrom, defaultCup } from '../../../../sims/benches/shared/cup-setting.ts';
import { peakStabilityRatio } from '../../../../sims/geometry/index.ts';
import { measureSlip } from '../../../../sims/physics/measure-slip.ts';

const CUPS = [
  { width: 20, depth: 1 },
  { width: 20, depth: 2 },
  { width: 28, depth: 1 },
  { width: 28, depth: 3 },
  { width: 28, depth: 4.5 },
  { width: 40, depth: 4 },
  { width: 40, depth: 8 },
];
const FRICTIONS = [0, 0.1];

const differences = FRICTIONS.flatMap((friction) =>
  CUPS.map(({ width, depth }) => {
    const { socket, ballRadius } = cupFrom({ ...defaultCup, width, depth });
    const measured = measureSlip({ socket, ballRadius, compressiveLoad: 50, friction });
    if (measured === null) throw new Error(`held: ${width} mm wide, ${depth} mm deep`);
    return Math.abs(measured / peakStabilityRatio(socket, friction) - 1);
  }),
);

/** How many pushes were made when the page was built, and how far from theory they came, as a share of it. */
export const pushes = differences.length;
export const largestDifference = Math.max(...differences);
export const meanDifference = differences.reduce((sum, value) => sum + value, 0) / pushes;
