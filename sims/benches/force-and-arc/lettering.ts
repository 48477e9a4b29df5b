import { degrees, fixedText, mm, newtons } from '../../shared/format.ts';
import { sideWord, type Plane } from './planes.ts';
import { inDegrees, type ForceReading } from './reading.ts';

/** Below this an angle counts as straight: half of the last digit written, rad. */
const STRAIGHT = (0.05 * Math.PI) / 180;

/** "15.0° to the back", or "straight in". */
export function turnText(plane: Plane, angle: number, digits = 1): string {
  if (Math.abs(angle) < STRAIGHT) return 'straight in';
  return `${degrees(Math.abs(angle), digits)} ${sideWord(plane.towards, angle)}`;
}

/** "turned back 15.0°", or "not turned". */
export function tiltText(plane: Plane, angle: number): string {
  if (Math.abs(angle) < STRAIGHT) return 'not turned';
  return `${sideWord(plane.turned, angle)} ${degrees(Math.abs(angle))}`;
}

/** "version 15.0° back". */
export function tiltLabel({ plane, tilt }: ForceReading): string {
  return Math.abs(tilt) < STRAIGHT
    ? `${plane.tilt} 0°`
    : `${plane.tilt} ${degrees(Math.abs(tilt))} ${sideWord(plane.turned, tilt).replace('turned ', '')}`;
}

/** A place on the face: "1.3 mm to the back", or "0.0 mm". */
export function placeText(plane: Plane, translation: number, digits = 1): string {
  const size = Math.abs(translation);
  const text = mm(size, digits);
  return Number(size.toFixed(digits)) === 0
    ? text
    : `${text} ${sideWord(plane.towards, translation)}`;
}

/** What is set, in one line for the foot of a picture. */
export function settingLine({ cup, plane, tilt, friction, pulls }: ForceReading): string {
  const { ballRadius, socket } = cup;
  const pulling = pulls
    .map(
      ({ name, size, turn }) =>
        `${name.toLowerCase()} ${newtons(size)} ${turnText(plane, turn, 0)}`,
    )
    .join(', ');
  return (
    `${plane.seen}; ball ${mm(2 * ballRadius, 1)}, width ${mm(socket.width, 1)}, depth ${mm(socket.depth, 1)}; ` +
    `${plane.tilt} ${fixedText(inDegrees(tilt), 1)}°; friction ${friction.toFixed(2)}; ${pulling}`
  );
}
