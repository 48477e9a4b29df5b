import { boardAct } from '../../sims/benches/peg-board/acts.ts';
import { fluted, keel, line, one, triangle, turned } from './stage-seats.ts';

/** The layouts of the lecture, one a press. */
export const acts = [
  boardAct('one in the middle', one),
  boardAct('two, up and down', line),
  boardAct('two, front and back', turned),
  boardAct('three, triangle', triangle),
  boardAct('keel', keel),
  boardAct('fluted, three outer', fluted),
] as const;
