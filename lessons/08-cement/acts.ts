import { gapAct } from '../../sims/benches/gap-and-heat/acts.ts';
import { PLANNED, THICK, WIDENED } from './cements.ts';

/** The mantles of the lecture, one a press: what the keel and the pegs take, and what comes to their bone. */
export const acts = [
  gapAct('pegs, 1 mm', { measured: 'pegs', gap: PLANNED, fitError: 0 }),
  gapAct('pegs, 2 mm', { measured: 'pegs', gap: PLANNED, fitError: WIDENED - PLANNED }),
  gapAct('pegs, 4 mm', { measured: 'pegs', gap: PLANNED, fitError: THICK - PLANNED }),
  gapAct('keel, 1 mm', { measured: 'keel', gap: PLANNED, fitError: 0 }),
  gapAct('keel, 4 mm', { measured: 'keel', gap: PLANNED, fitError: THICK - PLANNED }),
] as const;
