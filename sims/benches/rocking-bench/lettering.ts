import { fixedText, newtons, signed } from '../../shared/format.ts';

const MICROMETRES = 1000;
/** Below this the millimetre is the wrong unit, mm. */
const SMALL = 1;

/** A small length, mm, as it stands beside the drawing: µm, or mm from a whole one on. */
export function small(value: number): string {
  return value < SMALL
    ? `${fixedText(value * MICROMETRES, 0)}\u00a0µm`
    : `${fixedText(value, 2)}\u00a0mm`;
}

/** Measured against the solver’s, in per cent; null where there is nothing to compare. */
export function differenceOf(measured: number, theory: number): number | null {
  const LEAST = 1e-4;
  return Math.abs(theory) < LEAST ? null : (measured / theory - 1) * 100;
}

export function differenceText(difference: number | null): string {
  if (difference === null) return 'both none';
  return `${signed(difference, (value) => fixedText(value, 1))}\u00a0%`;
}

export const force = (value: number): string => newtons(Math.abs(value));
