import { pairFrom } from '../../../../sims/benches/two-curves/pair.ts';
import { defaultPair } from '../../../../sims/benches/two-curves/pair-ranges.ts';
import { defaultLayer } from '../../../../sims/benches/two-curves/layer.ts';
import { pressureRow } from '../../../../sims/benches/two-curves/sweep.ts';
import { hertzContact } from '../../../../sims/mechanics/index.ts';

const MISMATCHES = [1, 2, 3, 4, 6, 8, 10];
const BALLS = [40, 48, 56];

const differences = BALLS.flatMap((ballDiameter) =>
  MISMATCHES.map((mismatch) => {
    const pair = pairFrom({ ...defaultPair, ballDiameter, mismatch });
    const { layer } = pressureRow(pair, defaultLayer);
    const { thinLayer } = hertzContact({
      ballRadius: pair.ballRadius,
      socketRadius: pair.socket.curvatureRadius,
      ...defaultLayer,
    });
    if (layer === null || thinLayer === null) throw new Error(`no pressure at ${mismatch} mm`);
    return Math.abs(layer / thinLayer.peakPressure - 1);
  }),
);

/** How many pairs the computed layer was compared at with its closed form when the page was built, and how far apart at most. */
export const compared = differences.length;
export const largestDifference = Math.max(...differences);
