/** What a control accepts: the one definition its slider, its typed number and its place in a link all share. */
export interface Range {
  readonly min: number;
  readonly max: number;
  readonly step: number;
  readonly digits: number;
  readonly unit: string;
}

/** The allowed value nearest to `value`; the range's own end where it lies outside. */
export function nearestAllowed(value: number, range: Range): number {
  const steps = Math.round((value - range.min) / range.step);
  const onStep = range.min + steps * range.step;
  return Math.max(range.min, Math.min(range.max, Number(onStep.toFixed(6))));
}

/**
 * Reads a number a person typed: a decimal comma is taken, a unit is not needed.
 *
 * @param current the value kept where the text is no number
 * @returns the nearest allowed value, and a sentence where that is not what was typed ('' where it is)
 */
export function readTyped(
  text: string,
  range: Range,
  current: number,
): { value: number; problem: string } {
  const span = `${range.min} to ${range.max}${range.unit === '' ? '' : ` ${range.unit}`}`;
  const cleaned = text.trim().replace(range.unit, '').replace(',', '.').replace('−', '-').trim();
  const typed = cleaned === '' ? NaN : Number(cleaned);
  if (!Number.isFinite(typed)) {
    return {
      value: current,
      problem: `“${text.slice(0, 20)}” is not a number. Allowed: ${span}. Nothing was changed.`,
    };
  }
  const value = nearestAllowed(typed, range);
  const isOutside = typed < range.min || typed > range.max;
  return { value, problem: isOutside ? `Allowed: ${span}. Set to the nearest.` : '' };
}
