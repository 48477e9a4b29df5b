import { degrees, ratio } from '../../shared/format.ts';
import { hundredths, settingLine, tenths } from './lettering.ts';
import type { TracerReading } from './reading.ts';
import type { Drawn } from './setting.ts';

/** The figure in words, for whoever hears it instead of seeing it. */
export function describe(
  now: Drawn,
  reading: TracerReading,
  friction: number,
  kept: Drawn | null,
): string {
  return [
    `A ball in a cup: ${settingLine(now)}.`,
    place(reading),
    reading.depth === 0
      ? 'The socket is flat: the ball does not climb, and nothing holds it.'
      : slope(reading),
    friction > 0 ? withFriction(reading, friction) : '',
    reading.depth === 0 ? '' : area(reading),
    kept === null ? '' : `Drawn dashed to compare: ${settingLine(kept)}.`,
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

/** Where the ball stands, short enough to be said at every step of a slider. */
export function positionWords({ translation, climb, stabilityRatio }: TracerReading): string {
  const distance = Math.abs(translation);
  const side = distance < 0.005 ? 'centred' : `${hundredths(distance)} ${sideOf(translation)}`;
  return `${side}, climbed ${hundredths(climb)}, ratio ${ratio(stabilityRatio)}`;
}

function place({ translation, place, climb }: TracerReading): string {
  const distance = Math.abs(translation);
  if (distance < 0.005) return 'Its centre stands on the centre line.';
  const where = place === 'rim' ? 'on the rim' : 'inside the cup';
  return `Its centre stands ${hundredths(distance)} to the ${sideOf(translation)}, ${where}, and has climbed ${hundredths(climb)}.`;
}

function slope({ stabilityRatio, angle, peak, rimContact }: TracerReading): string {
  return (
    `The slope of its path there is the stability ratio, ${ratio(stabilityRatio)}; the contact is tilted by ${degrees(angle)}. ` +
    `The ratio is greatest, ${ratio(peak)}, at ${tenths(rimContact)}.`
  );
}

function withFriction({ ratioWithFriction }: TracerReading, friction: number): string {
  return Number.isFinite(ratioWithFriction)
    ? `With a friction of ${friction.toFixed(2)} the ratio there is ${ratio(ratioWithFriction)}.`
    : `With a friction of ${friction.toFixed(2)} no side force moves it from there.`;
}

function area({ areaSoFar, climb, wholeArea, depth }: TracerReading): string {
  return (
    `The area under the ratio so far is ${hundredths(areaSoFar)}, the climb ${hundredths(climb)}; ` +
    `the whole area is ${hundredths(wholeArea)}, the depth ${hundredths(depth)}.`
  );
}

function sideOf(translation: number): string {
  return translation < 0 ? 'left' : 'right';
}
