import { degrees, ratio } from '../../shared/format.ts';
import { bearingName, bearingOf, bearingText } from './bearing.ts';
import { whereText } from './describe.ts';
import { tenths } from './lettering.ts';
import { playOf, type RimMap, type Way } from './way.ts';

interface Shown {
  readonly name: string;
  readonly value: string;
  readonly note?: string;
  readonly tone?: 'force' | 'motion' | 'ink';
}

const everywhere = 'the same in every direction';

/** The strip of numbers under the drawing. */
export function readingsOf({ rows, weakest, strongest }: RimMap, way: Way): readonly Shown[] {
  const { here, bearing } = way;
  const all = weakest.length === rows.length;
  const play = playOf(here);
  return [
    {
      name: 'Peak ratio here',
      value: ratio(here.peakStabilityRatio),
      note: bearingText(bearing),
      tone: 'force',
    },
    {
      name: 'Balance stability angle',
      value: degrees(here.balanceStabilityAngle),
      note: 'the arc tangent of the peak ratio',
      tone: 'force',
    },
    {
      name: 'Play before the rim',
      value: tenths(play),
      note: play === 0 ? 'on the rim from the start' : 'freely in the hollow so far',
      tone: 'motion',
    },
    {
      name: 'Depth this way',
      value: tenths(here.depth),
      note: 'the climb from rest to out',
      tone: 'motion',
    },
    {
      name: 'Travel to dislocation',
      value: tenths(here.dislocationTranslation),
      note: `of the ball’s centre, ${bearingName(bearing)}`,
      tone: 'motion',
    },
    {
      name: 'Weakest',
      value: ratio(weakest[0]?.peakStabilityRatio ?? 0),
      note: all ? everywhere : exactly(weakest),
      tone: 'force',
    },
    {
      name: 'Strongest',
      value: ratio(strongest[0]?.peakStabilityRatio ?? 0),
      note: all ? everywhere : exactly(strongest),
      tone: 'force',
    },
  ];
}

/** "forward 10°, backward 170°", or where it is in words. */
function exactly(rows: RimMap['weakest']): string {
  if (rows.length > 2) return whereText(rows);
  return rows
    .map(({ direction }) => `${bearingName(bearingOf(direction))} ${bearingOf(direction)}°`)
    .join(', ');
}
