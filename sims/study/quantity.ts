/** A computed number and how it is written. */
export interface Quantity {
  readonly value: number;
  readonly digits: number;
  readonly unit: string;
}

const NO_BREAK_SPACE = '\u00a0';

/**
 * A number to be written with so many decimals and a unit.
 *
 * @param value finite
 * @param digits decimals, 0 and up
 * @param unit as written after the number; '' where there is none
 * @throws RangeError for a value that is not finite: nothing a person reads says NaN
 */
export function quantity(value: number, digits: number, unit = ''): Quantity {
  if (!Number.isFinite(value)) throw new RangeError(`value is ${value}; allowed: finite numbers`);
  return { value, digits, unit };
}

/** "12.5 mm", "30°", "0.58"; a minus sign, not a hyphen, and no line break before the unit. */
export function writeQuantity({ value, digits, unit }: Quantity): string {
  const number = value.toFixed(digits).replace('-', '−');
  return unit === '' || unit === '°' ? `${number}${unit}` : `${number}${NO_BREAK_SPACE}${unit}`;
}

/**
 * Reads a number a person typed: a decimal comma and the unit are taken.
 *
 * @returns the number, or undefined where there is none
 */
export function readNumber(text: string, unit: string): number | undefined {
  const bare = text.trim();
  const number = unit !== '' && bare.endsWith(unit) ? bare.slice(0, -unit.length) : bare;
  const cleaned = number.replace('−', '-').replace(',', '.').trim();
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(cleaned) ? Number(cleaned) : undefined;
}
