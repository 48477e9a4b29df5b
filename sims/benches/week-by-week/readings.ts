import type { Ingrowth } from '../../mechanics/index.ts';
import { percent } from '../../shared/format.ts';
import type { Reading } from '../two-curves/readings.ts';
import { motionText } from './describe.ts';
import { mostly, type Moment } from './run.ts';
import { WEEKS, type WeekSetting } from './settings.ts';

/** The strip of numbers under the drawing. */
export function readingsOf(
  { lower, upper }: WeekSetting,
  run: Ingrowth,
  { share, shares, under }: Moment,
): readonly Reading[] {
  const filled = shares.filter((part) => part > 0.5).length;
  const last = run.weeks.at(-1);
  return [
    {
      name: 'Motion in this week',
      value: motionText(under?.motion ?? 0),
      note: 'at the space that moves most',
      tone: 'motion',
    },
    {
      name: 'Bone',
      value: under === undefined ? 'none yet' : mostly(under.places),
      note: `grows to ${lower}, is lost from ${upper}\u00a0µm`,
    },
    { name: 'Filled with bone', value: percent(share), note: 'of the spaces, in the mean' },
    {
      name: 'Spaces more than half bone',
      value: `${filled} of ${shares.length}`,
      note: 'six on either side of the cut',
    },
    {
      name: 'Far rim lifts',
      value: motionText(under?.liftOff ?? 0),
      note: 'under the load of this week',
      tone: 'motion',
    },
    {
      name: `After ${WEEKS} weeks`,
      value: percent(last?.share ?? 0),
      note: last?.outcome === 'balanced' ? 'filled with bone' : 'the socket does not bear the load',
    },
  ];
}
