/*
 * Numbers for people: a true minus, a no-break space before the unit, words where there is no number.
 */

const NO_BREAK_SPACE = '\u00a0';
const MINUS = '−';
export const NO_LIMIT = 'no limit';

/** A number with a fixed count of decimals and a true minus; "no limit" for Infinity. */
export function fixedText(value: number, digits: number): string {
  if (Number.isNaN(value)) throw new RangeError('value is NaN; allowed: any number');
  if (!Number.isFinite(value)) return value > 0 ? NO_LIMIT : `${MINUS}${NO_LIMIT}`;
  const text = value.toFixed(digits);
  return Number(text) === 0 ? text.replace('-', '') : text.replace('-', MINUS);
}

function withUnit(value: number, digits: number, unit: string): string {
  const text = fixedText(value, digits);
  return Number.isFinite(value) ? `${text}${NO_BREAK_SPACE}${unit}` : text;
}

/** A length in mm; whole millimetres are written without decimals where `digits` is left out. */
export function mm(value: number, digits = Number.isInteger(value) ? 0 : 1): string {
  return withUnit(value, digits, 'mm');
}

/** A force in N. */
export function newtons(value: number, digits = 0): string {
  return withUnit(value, digits, 'N');
}

/** An angle in rad, written in degrees. */
export function degrees(angle: number, digits = 1): string {
  return `${fixedText((angle * 180) / Math.PI, digits)}°`;
}

/** A ratio of two forces. */
export function ratio(value: number, digits = 2): string {
  return fixedText(value, digits);
}

/** A share of one, written in per cent. */
export function percent(share: number, digits = 0): string {
  return withUnit(share * 100, digits, '%');
}
