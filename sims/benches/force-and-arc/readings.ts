import { degrees, mm } from '../../shared/format.ts';
import { turnText } from './lettering.ts';
import { sideWord } from './planes.ts';
import type { ForceReading } from './reading.ts';

/** A number under the drawing: its name, itself, what it means. */
interface Shown {
  readonly name: string;
  readonly value: string;
  readonly note: string;
  readonly tone?: 'force' | 'motion';
}

const NONE = '–';

/** The strip of numbers under the drawing. */
export function readingsOf(reading: ForceReading): readonly Shown[] {
  const { plane, state, angle, margin, translation, gap, rimContact } = reading;
  return [
    {
      name: 'State',
      value: state,
      note:
        angle === null
          ? 'nothing pulls'
          : `force ${turnText(plane, angle)}${angle === 0 ? '' : ' of the centre line'}`,
      tone: 'force',
    },
    {
      name: 'Margin',
      value: margin === null ? NONE : degrees(margin),
      note: marginNote(reading),
      tone: 'force',
    },
    {
      name: 'Rest position',
      value: translation === null ? NONE : mm(Math.abs(translation), 1),
      note: restNote(reading),
      tone: 'motion',
    },
    {
      name: 'Gap left to the rim',
      value: gap === null ? NONE : mm(gap.length, 1),
      note:
        gap === null
          ? 'no gap without a rest'
          : `${degrees(gap.angle)}; first contact at ${mm(rimContact, 1)}`,
      tone: 'motion',
    },
    limitReading(reading),
  ];
}

function marginNote({ angle, halfArc, frictionAngle, friction }: ForceReading): string {
  const arc = friction > 0 ? `${degrees(halfArc)} + ${degrees(frictionAngle)}` : degrees(halfArc);
  return angle === null ? `arc ${arc}` : `${arc} − ${degrees(Math.abs(angle))}`;
}

function restNote({ plane, translation, range, friction }: ForceReading): string {
  if (translation === null) return 'it has none';
  const [inner, outer] = (range ?? [0, 0]).map((end) => Math.abs(end)) as [number, number];
  if (friction > 0 && outer - inner >= 0.05) {
    return `friction holds from ${mm(inner, 1)} to ${mm(outer, 1)}`;
  }
  return Math.abs(translation) < 0.05 ? 'on the centre line' : sideWord(plane.towards, translation);
}

/** The moment the present force goes over, as a turn of the socket. */
function limitReading({ plane, tiltAtLimit, tilt, angle, margin }: ForceReading): Shown {
  const name = `Goes over at ${plane.tilt}`;
  if (tiltAtLimit === null || angle === null || margin === null) {
    return { name, value: NONE, note: 'nothing pulls' };
  }
  // No socket is turned by a right angle.
  if (Math.abs(tiltAtLimit) >= Math.PI / 2)
    return { name, value: NONE, note: 'no turn takes it there' };
  const away = `${degrees(Math.abs(tiltAtLimit - tilt))} ${margin > 0 ? 'from here' : 'behind'}`;
  return {
    name,
    value: degrees(tiltAtLimit),
    note: `${away}, ${sideWord(plane.sides, angle)} rim`,
  };
}
