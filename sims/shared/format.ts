/*
 * Numbers for people: a true minus, spaces that never break a line, words where there is no number.
 */

const NO_BREAK_SPACE = '\u00a0';
const NARROW_NO_BREAK_SPACE = '\u202f';
const MINUS = '−';
export const NO_LIMIT = 'no limit';

/** Digits that count as meant: what differs only beyond them is the computer's rounding, as in 0.1 + 0.2. */
const MEANT_DIGITS = 12;

/**
 * A number with a fixed count of decimals, halves rounded away from 0 as on paper, a true minus, and thousands set
 * apart from 10 000 up; "no limit" for Infinity.
 *
 * @param digits decimals, a whole number from 0 up
 * @throws RangeError for NaN, which is never a result
 */
export function fixedText(value: number, digits: number): string {
  if (Number.isNaN(value)) throw new RangeError('value is NaN; allowed: any number');
  if (!Number.isFinite(value)) return value > 0 ? NO_LIMIT : `${MINUS}${NO_LIMIT}`;
  const size = roundedHalfUp(meant(Math.abs(value)), digits);
  const text = grouped(size.toFixed(digits));
  return value < 0 && size > 0 ? `${MINUS}${text}` : text;
}

/** A length in mm; whole millimetres are written without decimals where `digits` is left out. */
export function mm(value: number, digits = Number.isInteger(meant(value)) ? 0 : 1): string {
  return withUnit(value, digits, 'mm');
}

/** A force in N. */
export function newtons(value: number, digits = 0): string {
  return withUnit(value, digits, 'N');
}

/** An angle in rad, written in degrees. */
export function degrees(angle: number, digits = 1): string {
  const text = fixedText((angle * 180) / Math.PI, digits);
  return Number.isFinite(angle) ? `${text}°` : text;
}

/** A ratio of two forces. */
export function ratio(value: number, digits = 2): string {
  return fixedText(value, digits);
}

/** A share of one, written in per cent. */
export function percent(share: number, digits = 0): string {
  return withUnit(share * 100, digits, '%');
}

/**
 * A difference: as `format` writes it, with a plus where it is more than nothing.
 *
 * @param format one of the functions above, as in `signed(0.021, percent)`
 */
export function signed(value: number, format: (value: number) => string): string {
  const text = format(value);
  return value > 0 && /[1-9]|no limit/.test(text) ? `+${text}` : text;
}

function withUnit(value: number, digits: number, unit: string): string {
  const text = fixedText(value, digits);
  return Number.isFinite(value) ? `${text}${NO_BREAK_SPACE}${unit}` : text;
}

function meant(value: number): number {
  return Number(value.toPrecision(MEANT_DIGITS));
}

/** Rounds the decimal number a person would read, not the binary one behind it: 0.15 to 0.2. */
function roundedHalfUp(value: number, digits: number): number {
  const [mantissa = '0', exponent = '0'] = String(value).split('e');
  const shifted = Number(`${mantissa}e${Number(exponent) + digits}`);
  return Math.round(shifted) / 10 ** digits;
}

function grouped(text: string): string {
  const [whole = '', decimals] = text.split('.');
  const parted =
    whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, NARROW_NO_BREAK_SPACE) : whole;
  return decimals === undefined ? parted : `${parted}.${decimals}`;
}
