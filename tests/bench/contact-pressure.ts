import { face, sphericalSocket } from '../../sims/geometry/index.ts';
import {
  contactPressure,
  elasticStabilityCurve,
  type ContactSurface,
} from '../../sims/mechanics/index.ts';
import { median, rounded, table } from './table.ts';
import { times } from './times.ts';

/** Milliseconds a map may take, so that a drag stays live. */
const GOAL = 4;
const RUNS = 120;
const WARM_UP = 40;

const layer = { thickness: 4, modulus: 690, poisson: 0.46 };
const pear = {
  outline: { kind: 'pear', width: 28, height: 36, upperWidth: 20 },
  curvatureRadiusAP: 32,
  curvatureRadiusSI: 28,
} as const;

const surfaces: readonly (readonly [name: string, surface: ContactSurface, reach: number])[] = [
  ['spherical socket', { socket: sphericalSocket({ curvatureRadius: 27, width: 30 }) }, 14],
  ['pear face', { face: face(pear) }, 8],
  [
    'pear face, lip and cut rim',
    {
      face: face({
        ...pear,
        labrum: { height: 1.5, width: 4 },
        defect: { kind: 'cut', direction: 0, depth: 4 },
      }),
    },
    8,
  ],
];

/**
 * How long one map of contact pressure takes at the resolution it is drawn in, over translations from the middle outward,
 * and one elastic curve of 60 rows.
 */
export function contactPressureBench(): string {
  const rows = surfaces.map(([name, surface, reach]) => {
    const question = { ...surface, ballRadius: 24, ...layer, compressiveLoad: 500, direction: 0.4 };
    let patches = 0;
    const map = times(RUNS, WARM_UP, (part) => {
      patches = contactPressure({ ...question, translation: part * reach }).patches.length;
    });
    const translations = Array.from({ length: 60 }, (_, i) => (i * reach) / 59);
    const curve = times(12, 12, () => void elasticStabilityCurve({ ...question, translations }));
    const middle = median(map);
    return [
      name,
      patches,
      rounded(middle, 2),
      rounded(Math.min(...map), 2),
      rounded(middle / GOAL, 2),
      rounded(median(curve), 1),
    ] as const;
  });
  return table(
    `Contact pressure: one map, goal ${GOAL} ms`,
    ['surface', 'patches', 'median ms', 'least ms', 'of goal', 'curve of 60 ms'],
    rows,
  );
}
