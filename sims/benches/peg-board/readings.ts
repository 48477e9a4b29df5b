import { newtons, percent } from '../../shared/format.ts';
import { bearingName } from '../round-the-rim/bearing.ts';
import type { Reading } from '../two-curves/readings.ts';
import { isPulled, marginText, megapascals, outcomeShort, small } from './lettering.ts';
import { roseEnds, type RoseRow } from './rose.ts';
import { isRest, type HoldReading, type Stand } from './stand.ts';

/** Said of a rose while it is not yet that of what stands. */
export const LATE_ROSE = 'following, a moment behind';

/** The strip of numbers under the drawing. A socket without rest has none but those of the rose. */
export function readingsOf(
  stand: Stand,
  rose: readonly RoseRow[],
  isBonded: boolean,
  isRoseCurrent = true,
): readonly Reading[] {
  const shown = (text: string): string => (isRest(stand) ? text : '–');
  const hardest = hardestOf(stand);
  return [
    {
      name: isBonded ? 'Stretch of the bone' : 'Lift-off',
      value: shown(small(stand.liftOff)),
      note: isRest(stand) ? 'where it goes furthest' : outcomeShort[stand.outcome],
      tone: 'motion',
    },
    {
      name: 'Press-in',
      value: shown(small(stand.pressIn)),
      note: `${shown(megapascals(stand.peakPressure))} on the bone there`,
      tone: 'force',
    },
    {
      name: 'Back on the bone',
      value: shown(percent(stand.contactShare)),
      note: 'of its area',
    },
    {
      name: 'Hardest pulled',
      value: hardest === null ? shown('none') : shown(newtons(hardest.hold.pull)),
      note:
        hardest === null
          ? 'nothing is pulled'
          : `${hardest.name}, ${hardest.hold.isSlipping ? 'slips' : `margin ${marginText(hardest.hold)}`}`,
      tone: 'force',
    },
    ...roseReadings(rose, isRoseCurrent),
  ];
}

/** The hold with the least margin among those pulled; null where nothing is, or nothing is at rest. */
export function hardestOf(
  stand: Stand,
): { readonly name: string; readonly hold: HoldReading } | null {
  if (!isRest(stand)) return null;
  const all = [
    ...stand.pegs.map((hold, i) => ({ name: `peg ${i + 1}`, hold })),
    ...(stand.keel === null ? [] : [{ name: 'the keel', hold: stand.keel }]),
  ].filter(({ hold }) => isPulled(hold));
  return all.reduce<(typeof all)[number] | null>(
    (most, each) => (most === null || each.hold.margin < most.hold.margin ? each : most),
    null,
  );
}

function roseReadings(rose: readonly RoseRow[], isCurrent: boolean): readonly Reading[] {
  const ends = roseEnds(rose);
  const lost = rose.length - rose.filter(({ outcome }) => outcome === 'balanced').length;
  return [
    {
      name: 'Most, round the rim',
      value: ends === null ? 'none' : small(ends.most.liftOff),
      note: !isCurrent
        ? LATE_ROSE
        : lost > 0
          ? `no rest at ${lost} of ${rose.length} places`
          : ends === null
            ? ''
            : `load ${bearingName(ends.most.bearing)}; least ${small(ends.least.liftOff)}`,
      tone: 'motion',
    },
  ];
}
