import { planes, type PlaneName } from './planes.ts';
import { balancedPulls, type ForceSetting } from './settings.ts';

/** A ready-made setting of the pulls and the tilt in one plane. Invented to teach with; the cup stays as it is. */
export interface Situation {
  readonly name: string;
  readonly change: Partial<ForceSetting>;
}

/** What is left of a weak cuff's pull, N: a tenth. */
const WEAK = 20;
const TURNED = 15;

/** The situations of a plane; each sets all of the plane's pulls and its tilt. */
export function situationsOf(plane: PlaneName): readonly Situation[] {
  return plane === 'above'
    ? [
        situation('above', 'Balanced pull', {}),
        situation('above', 'Front cuff weak', { frontCuffSize: WEAK }),
        situation('above', 'Socket turned back 15°', { version: TURNED }),
        situation('above', 'Both', { frontCuffSize: WEAK, version: TURNED }),
        situation('above', 'Back cuff weak, turned back 15°', {
          backCuffSize: WEAK,
          version: TURNED,
        }),
      ]
    : [
        situation('front', 'Balanced pull', {}),
        situation('front', 'Lower cuff weak', { lowerCuffSize: WEAK }),
        situation('front', 'Socket turned up 15°', { inclination: TURNED }),
        situation('front', 'Both', { lowerCuffSize: WEAK, inclination: TURNED }),
      ];
}

/** Whether a setting stands as a situation has it. */
export function isSituation(setting: ForceSetting, { change }: Situation): boolean {
  return (Object.keys(change) as (keyof ForceSetting)[]).every(
    (name) => setting[name] === change[name],
  );
}

function situation(plane: PlaneName, name: string, own: Partial<ForceSetting>): Situation {
  const { pulls, tilt } = planes[plane];
  const balanced = pulls.reduce<Partial<ForceSetting>>(
    (change, id) => ({
      ...change,
      [`${id}Size`]: balancedPulls[`${id}Size`],
      [`${id}Turn`]: balancedPulls[`${id}Turn`],
    }),
    {},
  );
  return { name, change: { ...balanced, [tilt]: 0, ...own } };
}
