import { materials, type MaterialName } from '../../mechanics/index.ts';
import { fixedText, mm } from '../../shared/format.ts';

/** MPa below a gigapascal, GPa from there on. */
export function modulusText(modulus: number): string {
  return modulus < 1000 ? `${fixedText(modulus, 0)}\u00a0MPa` : gigapascals(modulus);
}

function gigapascals(modulus: number): string {
  const value = modulus / 1000;
  return `${fixedText(value, value < 10 ? 1 : 0)}\u00a0GPa`;
}

/** A stress with two or three figures. */
export function stressText(stress: number): string {
  return `${figures(stress)}\u00a0MPa`;
}

export function figures(value: number): string {
  const size = Math.abs(value);
  return fixedText(value, size >= 100 ? 0 : size >= 10 ? 1 : size >= 0.1 ? 2 : 3);
}

/** A small length: micrometres below a tenth of a millimetre. */
export function lengthText(length: number): string {
  return Math.abs(length) < 0.1 ? `${figures(length * 1000)}\u00a0µm` : mm(length, 2);
}

/** How many times stiffer, in round numbers. */
export function stepText(step: number): string {
  return `${fixedText(step, step < 10 ? 1 : 0)}\u00a0:\u00a01`;
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const modulusOf = (name: MaterialName): number => materials[name].youngsModulus.value;
