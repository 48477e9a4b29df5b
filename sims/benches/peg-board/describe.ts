import { newtons } from '../../shared/format.ts';
import { bearingName, bearingText } from '../round-the-rim/bearing.ts';
import {
  isPulled,
  marginText,
  outcomeShort,
  outcomeWords,
  placeText,
  small,
  tenths,
} from './lettering.ts';
import { roseEnds, type RoseRow } from './rose.ts';
import type { BallLoad, BedKind, Design, Ground, KeelPlace, PegPlace } from './settings.ts';
import { isRest, type HoldReading, type Stand } from './stand.ts';

export interface Described {
  readonly design: Design;
  readonly ground: Ground;
  readonly load: BallLoad;
  readonly stand: Stand;
  readonly rose: readonly RoseRow[];
  /** Left out where the rose is that of the stand. */
  readonly isRoseCurrent?: boolean;
}

export const bedWords: Readonly<Record<BedKind, string>> = {
  pressed: 'on bone that can only press',
  rough: 'on bone that presses and grips',
  bonded: 'bonded to the bone',
};

/** The board in words, for whoever hears it instead of seeing it. */
export function describe(board: Described): string {
  const { ground, load, stand, rose, isRoseCurrent = true } = board;
  return [
    `The back of a right socket, seen from its side: a pear ${tenths(ground.height)} by ${tenths(ground.width)}, ${backWords(ground)}, ${bedWords[ground.bed]}.`,
    `The bone has a modulus of ${ground.modulus}\u00a0MPa and gives ${tenths(ground.layer)} deep.`,
    designWords(board),
    `The ball presses with ${newtons(load.press)} and shoves outward with ${newtons(load.shear)}, ${loadWords(load)}.`,
    standWords(stand, ground),
    isRoseCurrent
      ? roseWords(rose)
      : 'What it does with the load carried round is being worked out.',
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

/** The shape of the back: "flat", "round with a radius of 36.0 mm". */
export function backWords({ back, backRadius }: Pick<Ground, 'back' | 'backRadius'>): string {
  return back === 'flat' ? 'flat' : `round with a radius of ${tenths(backRadius)}`;
}

/** Where the ball presses: "30°, forward, 90 % of the way to the rim". */
export function loadWords({ bearing, share }: BallLoad): string {
  return share === 0
    ? 'in the middle'
    : `${bearingText(bearing)}, ${share}\u00a0% of the way to the rim`;
}

/** What came of the last change, short enough to be said. */
export function standWords(stand: Stand, { bed }: Pick<Ground, 'bed'>): string {
  if (!isRest(stand)) return outcomeWords[stand.outcome];
  const lifted =
    stand.liftOff < 5e-4
      ? 'The back does not lift.'
      : bed === 'bonded'
        ? `The bone is stretched by up to ${small(stand.liftOff)}.`
        : `The back lifts by up to ${small(stand.liftOff)}.`;
  return `${lifted} It presses in by up to ${small(stand.pressIn)}.`;
}

export function pegWords(peg: PegPlace, index: number): string {
  return `Peg ${index + 1}, ${peg.kind}, ${tenths(peg.diameter)} thick and ${tenths(peg.length)} long, ${placeText(peg)}`;
}

export function keelWords(keel: KeelPlace): string {
  return `Keel, ${keel.kind}, ${tenths(keel.span)} long, ${tenths(keel.thickness)} thick and ${tenths(keel.depth)} deep, ${placeText(keel)}`;
}

/** What a hold bears, in words; '' unless the socket is at rest. */
export function holdWords(hold: HoldReading | undefined | null, stand: Stand): string {
  if (hold === undefined || hold === null || !isRest(stand)) return '';
  if (hold.isSlipping) return `slips out at ${newtons(hold.pull)}`;
  return isPulled(hold)
    ? `pulled with ${newtons(hold.pull)}, margin ${marginText(hold).replace('×', 'times').replace('>', 'more than')}`
    : 'not pulled';
}

function designWords({ design: { pegs, keel }, stand }: Described): string {
  const all = [
    ...(keel === null ? [] : [{ words: keelWords(keel), hold: stand.keel }]),
    ...pegs.map((peg, i) => ({ words: pegWords(peg, i), hold: stand.pegs[i] })),
  ];
  if (all.length === 0) return 'Nothing stands on it.';
  return all
    .map(({ words, hold }) => {
      const bears = holdWords(hold, stand);
      return `${words}${bears === '' ? '' : `: ${bears}`}.`;
    })
    .join(' ');
}

export function roseWords(rose: readonly RoseRow[]): string {
  const lost = rose.filter(({ outcome }) => outcome !== 'balanced');
  const ends = roseEnds(rose);
  const round =
    ends === null
      ? ''
      : `With the load carried round the rim the lift-off is least with the load ${bearingName(ends.least.bearing)}, ${small(ends.least.liftOff)}, and greatest with it ${bearingName(ends.most.bearing)}, ${small(ends.most.liftOff)}.`;
  if (lost.length === 0) return round;
  const kinds = (['overturned', 'sliding', 'unsettled'] as const).flatMap((outcome) => {
    const count = lost.filter((row) => row.outcome === outcome).length;
    return count === 0
      ? []
      : [`${outcomeShort[outcome]} with the load at ${count} of ${rose.length} places`];
  });
  return `${round} It is ${kinds.join(' and ')}.`
    .trim()
    .replace('It is slides off', 'It slides off');
}
