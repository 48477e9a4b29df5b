import { fixedText, newtons, percent, ratio } from '../../shared/format.ts';
import { megapascals, tenths } from '../two-curves/lettering.ts';
import type { Reading } from '../two-curves/readings.ts';
import { realPeak } from './belief.ts';
import type { Print } from './print.ts';

/** The strip of numbers under the drawing. */
export function readingsOf(print: Print): readonly Reading[] {
  const { contact, elasticRatio, rigidRatio } = print;
  const { peakPressure, contactArea, rimShare, sideForce, state } = contact;
  const [centre] = contact.centreOfPressure;
  return [
    {
      name: 'Peak pressure',
      value: megapascals(peakPressure),
      note: peakNote(print),
      tone: 'force',
    },
    {
      name: 'Print',
      value: `${fixedText(contactArea, contactArea < 10 ? 1 : 0)}\u00a0mm²`,
      note: state,
    },
    {
      name: 'Near the rim',
      value: percent(rimShare),
      note: 'of the load, within 1 mm',
      tone: 'force',
    },
    {
      name: 'Side force',
      value: newtons(sideForce),
      note: `ratio ${ratio(elasticRatio)}; rigid ${ratio(rigidRatio)}`,
      tone: 'force',
    },
    { name: 'Centre of pressure', value: tenths(centre), note: 'from the middle of the face' },
  ];
}

/** What the peak is worth. */
function peakNote({ contact, closed }: Print): string {
  if (contact.state === 'on the rim edge') return 'at the rim: a trend, no stress';
  const between = realPeak(contact, closed);
  return between === null
    ? `mean ${megapascals(contact.meanPressure)}`
    : `real layer: ${fixedText(between[0], 0)} to ${megapascals(between[1])}`;
}
