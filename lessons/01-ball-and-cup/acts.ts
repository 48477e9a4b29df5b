import { measuredAct } from '../../sims/benches/push-bench/acts.ts';
import { ballRadius, cup, press, width } from './cups.ts';

const usual = {
  ballDiameter: 2 * ballRadius,
  width,
  depth: cup.depth,
  compressiveLoad: press,
} as const;

/** Radius of the small ball of the vote, mm. */
export const smallRadius = 15;

/** The pushes of the lecture, one a press. */
export const acts = [
  measuredAct('large ball', usual),
  measuredAct('small ball', { ...usual, ballDiameter: 2 * smallRadius }),
  measuredAct('twice the press', { ...usual, compressiveLoad: 2 * press }),
  measuredAct('flat', { ...usual, depth: 0 }),
];
