import { degrees, mm, newtons, signed } from '../../shared/format.ts';
import { placeText, tiltText, turnText } from './lettering.ts';
import { sideWord } from './planes.ts';
import type { ForceReading } from './reading.ts';
import type { Settled } from './settle.ts';

/** The figure in words, for whoever hears it instead of seeing it. */
export function describe(reading: ForceReading, measured: Settled | null): string {
  return [scene(reading), pulling(reading), outcome(reading), trial(reading, measured)]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

/** The outcome alone, short enough to be said after every change. */
export function outcome(reading: ForceReading): string {
  const { plane, state, angle, margin, balanceAngle, friction } = reading;
  if (angle === null || margin === null) return 'No force acts on the ball.';
  const arc = `the arc of ${degrees(balanceAngle)} to either side${friction > 0 ? ', friction included' : ''}`;
  const where =
    turnText(plane, angle) === 'straight in'
      ? 'The net force lies on the socket’s centre line'
      : `The net force lies ${turnText(plane, angle)} of the socket’s centre line`;
  if (state === 'pulled off the socket') {
    return `${where}: it draws the ball off the socket.`;
  }
  if (state === 'over the rim') {
    const rim = `${sideWord(plane.sides, angle)} rim`;
    return `${where}, outside ${arc} by ${degrees(-margin)}: the ball goes over the ${rim} and has no place of rest.`;
  }
  return `${where}, inside ${arc} with a margin of ${degrees(margin)}. ${rest(reading)}`;
}

function rest({ plane, state, translation, gap, range, friction }: ForceReading): string {
  if (translation === null || gap === null) return '';
  const where = `${mm(gap.length, 1)} and ${degrees(gap.angle)} from the rim`;
  const place =
    state === 'centred'
      ? `The ball rests centred, ${where}.`
      : state === 'at the rim'
        ? 'The ball rests at the rim, held there by friction alone.'
        : `The ball rests off-centre, ${placeText(plane, translation)}, ${where}.`;
  const [inner, outer] = (range ?? [0, 0]).map((end) => Math.abs(end)) as [number, number];
  return friction > 0 && outer - inner >= 0.05
    ? `${place} Friction can hold it anywhere from ${mm(inner, 1)} to ${mm(outer, 1)}.`
    : place;
}

function scene({ cup, plane, tilt }: ForceReading): string {
  const { socket, ballRadius } = cup;
  const shape =
    socket.depth === 0
      ? `a flat socket ${mm(socket.width, 1)} wide`
      : `a socket ${mm(socket.width, 1)} wide and ${mm(socket.depth, 1)} deep`;
  return `A right shoulder ${plane.seen}: a ball of ${mm(2 * ballRadius, 1)} diameter in ${shape}, ${tiltText(plane, tilt)}.`;
}

function pulling({ plane, pulls, netSize, lean }: ForceReading): string {
  const each = pulls.map(({ name, size, turn }) =>
    size === 0
      ? `${name.toLowerCase()} not at all`
      : `${name.toLowerCase()} ${newtons(size)} ${turnText(plane, turn, 0)}`,
  );
  if (netSize === 0) return '';
  return `Pulls: ${each.join(', ')}; together a net force of ${newtons(netSize)}, ${turnText(plane, lean)}.`;
}

/** Where the simulated ball is expected: it comes from the middle, so friction stops it at the inner end; mm. */
export function expectedOf({ range }: ForceReading): number | null {
  return range === null ? null : Math.abs(range[0]);
}

/** What the simulation measured, beside theory; '' where it has not been asked. */
export function trial(reading: ForceReading, measured: Settled | null): string {
  if (measured === null) return '';
  const expected = expectedOf(reading);
  const { translation, time } = measured;
  const place = mm(Math.max(0, translation), 2);
  switch (measured.outcome) {
    case 'moving':
      return 'The simulation is running.';
    case 'held':
      return expected === null
        ? `The simulated ball came to rest at ${place}; theory says it goes over.`
        : `The simulated ball came to rest at ${place}; theory says ${mm(expected, 2)}, ` +
            `a difference of ${signed(shownDifference(translation, expected), (value) => mm(value, 2))}.`;
    case 'over the rim':
      return expected === null
        ? 'The simulated ball went over the rim, as theory says.'
        : 'The simulated ball went over the rim; theory says it is held.';
    case 'undecided':
      return `The simulated ball still crept at ${place} after ${time.toFixed(0)} s: the force is within a hair of the limit.`;
  }
}

/** Of the two numbers as they are written, so that a reader who subtracts them gets the same; mm. */
function shownDifference(measured: number, expected: number): number {
  return Number(Math.max(0, measured).toFixed(2)) - Number(expected.toFixed(2));
}
