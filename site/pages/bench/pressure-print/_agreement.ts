import { printRows } from '../../../../sims/benches/pressure-print/curve.ts';
import { printOf } from '../../../../sims/benches/pressure-print/print.ts';
import { defaultPrint } from '../../../../sims/benches/pressure-print/setting.ts';
import { peakStabilityRatio } from '../../../../sims/geometry/index.ts';

const MISMATCHES = [0, 1, 3, 6];
const PLACES = [0, 0.5, 1, 2, 5, 10];

const prints = MISMATCHES.flatMap((mismatch) =>
  PLACES.map((translation) => printOf({ ...defaultPrint, mismatch, translation })),
);

/** Prints whose patches were added up when the page was built, and how far from the load they came at most, as a share. */
export const balanced = prints.length;
export const largestImbalance = Math.max(
  ...prints.map(({ contact, field, layer }) => {
    const { curvatureRadius } = field;
    const carried = contact.patches.reduce(
      (sum, { x, y, area, pressure }) =>
        sum +
        (area * pressure * Math.sqrt(curvatureRadius ** 2 - x ** 2 - y ** 2)) / curvatureRadius,
      contact.edgeForce.compressive,
    );
    return Math.abs(carried / layer.load - 1);
  }),
);

/** The peak stability ratio of the default pair: rigid, on the layer as it is, and on one a thousand times as stiff. */
const { pair, layer } = printOf(defaultPrint);
const peakOf = (modulus: number): number =>
  Math.max(...printRows(pair, { ...layer, modulus }).map((row) => row.stabilityRatio ?? 0));
export const rigidPeak = peakStabilityRatio(pair.socket);
export const elasticPeak = peakOf(layer.modulus);
export const stiffPeak = peakOf(1000 * layer.modulus);
