import { stripAct } from '../../sims/benches/layer-strip/acts.ts';
import { weekAct } from '../../sims/benches/week-by-week/acts.ts';
import {
  cementOnBone,
  early,
  late,
  light,
  onMetal,
  pegged,
  shorter,
  thinner,
  twice,
  twins,
} from './stage-layers.ts';

/** The strips of the lecture, one a press; each differs from the first in one thing, but for the last. */
export const stripActs = [
  stripAct('plastic on metal', onMetal),
  stripAct('plastic twice', twins),
  stripAct('thinner plastic', thinner),
  stripAct('half as long', shorter),
  stripAct('cement on bone', cementOnBone),
] as const;

/** The half years of the lecture, one a press. */
export const weekActs = [
  weekAct('light press', light),
  weekAct('twice', twice),
  weekAct('six times', early),
  weekAct('six times, later', late),
  weekAct('twice, 3 pegs', pegged),
] as const;
