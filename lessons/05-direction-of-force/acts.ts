import type { ForceAct } from '../../sims/benches/force-and-arc/acts.ts';
import { TURNED, WEAK } from './cups.ts';

/** What the bench shows in the lecture, one a press. */
export const acts: readonly ForceAct[] = [
  { text: 'balanced', change: {} },
  { text: 'front weak', change: { frontCuffSize: WEAK } },
  { text: 'cup turned back', change: { version: TURNED } },
  { text: 'both', change: { frontCuffSize: WEAK, version: TURNED } },
  { text: 'turned, back weak', change: { backCuffSize: WEAK, version: TURNED } },
];
