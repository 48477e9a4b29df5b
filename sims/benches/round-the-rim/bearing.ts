/** Whole turn, degrees. */
const TURN = 360;

const SECTORS = [
  'forward',
  'forward and up',
  'up',
  'backward and up',
  'backward',
  'backward and down',
  'down',
  'forward and down',
] as const;

/** A bearing is a direction as a person reads it: degrees from anterior toward superior, from 0 to below 360. */
export function wrapped(bearing: number): number {
  const turned = bearing % TURN;
  return turned < 0 ? turned + TURN : turned === 0 ? 0 : turned;
}

/** The direction of a bearing, rad from anterior toward superior. */
export function directionOf(bearing: number): number {
  return (bearing * Math.PI) / 180;
}

/** The bearing of a direction given in rad, to a whole degree. */
export function bearingOf(direction: number): number {
  return wrapped(Math.round((direction * 180) / Math.PI));
}

/** The nearest of eight directions in words. */
export function bearingName(bearing: number): string {
  const sector = Math.round(wrapped(bearing) / 45) % SECTORS.length;
  return SECTORS[sector] ?? SECTORS[0];
}

/** "135°, backward and up" */
export function bearingText(bearing: number): string {
  return `${wrapped(bearing)}°, ${bearingName(bearing)}`;
}

/**
 * The direction of an hour on a clock face laid on a right socket seen from the side, rad: 12 is superior, 3 anterior.
 *
 * @param hours half hours as decimals; any finite number
 */
export function directionOfClock(hours: number): number {
  return ((3 - hours) * Math.PI) / 6;
}

/** "3 o’clock", "half past 12" */
export function clockText(hours: number): string {
  const whole = Math.floor(hours);
  return hours === whole ? `${whole} o’clock` : `half past ${whole}`;
}
