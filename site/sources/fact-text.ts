import { fixedText } from '../../sims/shared/format.ts';
import { withUnit } from './units.ts';
import type { Fact } from './schema.ts';

type Numbers = Pick<Fact, 'value' | 'sd' | 'low' | 'high' | 'unit'>;

/** Decimals of the number as its source gives it: 0.044 has three. */
function decimals(value: number): number {
  return String(value).split('.')[1]?.length ?? 0;
}

/**
 * A fact's number as it stands in a sentence: "24 ± 2.1 mm", "0.45 to 0.98", "20 %".
 *
 * @param isPlain leave the scatter out
 */
export function factText({ value, sd, low, high, unit }: Numbers, isPlain = false): string {
  if (value !== undefined) {
    const mean = fixedText(value, decimals(value));
    if (sd === undefined || isPlain) return withUnit(mean, unit);
    return withUnit(`${mean} ± ${fixedText(sd, decimals(sd))}`, unit);
  }
  const digits = Math.max(decimals(low ?? 0), decimals(high ?? 0));
  return withUnit(`${fixedText(low ?? 0, digits)} to ${fixedText(high ?? 0, digits)}`, unit);
}

/** What there is besides the number in a sentence: the range beside a mean, and how many were measured. */
export function scatterText({ value, sd, low, high, n, unit }: Numbers & Pick<Fact, 'n'>): string {
  const parts: string[] = [];
  if (sd !== undefined) parts.push('mean ± standard deviation');
  if (value !== undefined && low !== undefined && high !== undefined) {
    parts.push(`from ${factText({ low, high, unit })}`);
  }
  if (n !== undefined) parts.push(`n = ${n}`);
  return parts.join('; ');
}
