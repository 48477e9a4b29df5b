import { areaUnderRatio } from '../../../../sims/benches/path-tracer/area.ts';
import { cupFrom, defaultCup } from '../../../../sims/benches/shared/cup-setting.ts';
import { climbAt } from '../../../../sims/geometry/index.ts';

const DEPTHS = [0, 0.5, 1, 2, 3, 4, 6, 9, 14];
const WIDTHS = [12, 20, 28, 36, 46];
const SHARES = [0.05, 0.2, 0.4, 0.6, 0.8, 1];

const differences = WIDTHS.flatMap((width) =>
  DEPTHS.flatMap((depth) => {
    const cup = cupFrom({ ...defaultCup, width, depth });
    return SHARES.map((share) => {
      const translation = (share * width) / 2;
      const climb = climbAt(cup.socket, cup.ballRadius, translation);
      return Math.abs(areaUnderRatio(cup, translation) - climb);
    });
  }),
);

/** How many places of how many cups were compared when the page was built. */
export const compared = differences.length;
/** Largest difference between the area summed from the ratio and the climb, mm. */
export const largestDifference = Math.max(...differences);
