import { boardAct } from '../../sims/benches/peg-board/acts.ts';
import { fluted, keel, line, one, triangle, turned } from './stage-seats.ts';

/** The layouts of the lecture, one a press. */
export const acts = [
  boardAct('one peg', one),
  boardAct('pair, upright', line),
  boardAct('pair, turned', turned),
  boardAct('triangle', triangle),
  boardAct('keel', keel),
  boardAct('fluted + three', fluted),
] as const;
