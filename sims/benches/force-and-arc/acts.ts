import { readForce, type ForceReading } from './reading.ts';
import { balancedPulls, defaultSetting, type ForceSetting } from './settings.ts';

/** One setting of a demonstration: what it is called, and what it changes at the beginning. */
export interface ForceAct {
  readonly text: string;
  readonly change: Partial<ForceSetting>;
}

/** A straight cup under balanced pulls, seen from above: where every act begins. */
export const beginning: ForceSetting = {
  ...defaultSetting,
  ...balancedPulls,
  plane: 'above',
  version: 0,
};

/** What follows from an act. */
export function readAct({ change }: Pick<ForceAct, 'change'>): ForceReading {
  return readForce({ ...beginning, ...change });
}
