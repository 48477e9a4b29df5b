import { rimAct } from '../../sims/benches/round-the-rim/acts.ts';

/** The faces of the lecture, one a press. */
export const acts = [
  rimAct('whole bone', 'bone'),
  rimAct('front worn', 'worn'),
  rimAct('one radius', 'bone', { sameRadius: true }),
  rimAct('rigid lip', 'lip'),
] as const;
