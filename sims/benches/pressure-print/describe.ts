import { fixedText, newtons, percent, ratio } from '../../shared/format.ts';
import {
  hundredths,
  layerLine,
  megapascals,
  mismatchText,
  tenths,
} from '../two-curves/lettering.ts';
import { beliefWords, closedFormWords } from './belief.ts';
import type { Print } from './print.ts';

/** The figure in words, for whoever hears it instead of seeing it. */
export function describe(print: Print): string {
  const { pair, layer, contact, translation, closed } = print;
  const { socket, ballRadius } = pair;
  const { peakPressure, contactArea, rimShare, state, centreOfPressure } = contact;
  return [
    `A ball of ${tenths(2 * ballRadius)} in a socket ${tenths(socket.width)} wide and ${tenths(socket.depth)} deep, ` +
      `${mismatchText(pair.mismatch)}, under ${layerLine(layer)}.`,
    `Its centre stands ${hundredths(translation)} from the centre line. The print, ${stateWords(state)}, covers ` +
      `${fixedText(contactArea, 1)}\u00a0mm²; its peak is ${megapascals(peakPressure)}, its centre of pressure ` +
      `${tenths(centreOfPressure[0])} from the middle, and ${percent(rimShare)} of the load lies within 1 mm of the rim.`,
    sideWords(print),
    closedFormWords(contact, closed),
    beliefWords(contact, closed, layer),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

/** Where the ball stands and what follows, short enough to be said at every step of a slider. */
export function placeWords({ translation, contact, elasticRatio }: Print): string {
  return (
    `${hundredths(translation)}, peak ${megapascals(contact.peakPressure)}, ${percent(contact.rimShare)} near the rim, ` +
    `ratio ${ratio(elasticRatio)}`
  );
}

/** A print's state as part of a sentence: "on the face", "cut by the rim", "on the edge of the rim". */
function stateWords(state: Print['contact']['state']): string {
  return state === 'on the rim edge' ? 'on the edge of the rim' : state;
}

function sideWords({ contact, elasticRatio, rigidRatio }: Print): string {
  const { sideForce } = contact;
  const size = newtons(Math.abs(sideForce));
  const holds =
    sideForce < 0
      ? `It must be held back with ${size}: the ball is on its way out`
      : `A side force of ${size} holds it there`;
  return `${holds}, a stability ratio of ${ratio(elasticRatio)}; on a rigid socket it is ${ratio(rigidRatio)}.`;
}
