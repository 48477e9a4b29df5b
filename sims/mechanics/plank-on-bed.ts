import { inRange, positive } from '../geometry/numeric.ts';

/** A plank that bends, bonded to a bed that answers a pull as it answers a press. Lengths mm, above 0. */
export interface Plank {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  /** Young’s modulus, MPa */
  readonly modulus: number;
  /** Pressure for each mm pressed in, N/mm³ */
  readonly bed: number;
}

/** A place of the plank and how far it has risen, mm; below 0 where it is pressed in. */
export interface Risen {
  /** From the middle, mm */
  readonly at: number;
  readonly rise: number;
}

const PARTS = 72;
/** Couplings of a node reach to the next one: two unknowns each. */
const REACH = 3;

/**
 * How a bonded plank bends under one force across it: a beam on an elastic bed, in finite elements with cubic shapes.
 *
 * @param load N, pressing
 * @param at mm from the middle, up to half the length to either side; the nearest node takes it
 * @returns the rise, mm, at {@link PARTS} + 1 places from one edge to the other
 * @throws RangeError for sizes or a modulus that are not above 0, or a place off the plank
 *
 * Source: beam on elastic foundation (Winkler; Hetényi, from memory); checked against his closed forms.
 */
export function bentBack(plank: Plank, load: number, at: number): readonly Risen[] {
  const { length, width, thickness, modulus, bed } = plank;
  positive('length', length, 'mm');
  positive('width', width, 'mm');
  positive('thickness', thickness, 'mm');
  positive('modulus', modulus, 'MPa');
  positive('bed', bed, 'N/mm³');
  inRange('at', at, -length / 2, length / 2, 'mm');
  const part = length / PARTS;
  const bending = (modulus * width * thickness ** 3) / 12 / part ** 3;
  const bearing = (bed * width * part) / 420;
  const size = 2 * (PARTS + 1);
  const rows = Array.from({ length: size }, () => new Float64Array(size + 1));
  const element = elementOf(part);
  for (let i = 0; i < PARTS; i += 1) {
    element.forEach(({ row, column, bends, bears }) => {
      add(rows, 2 * i + row, 2 * i + column, bending * bends + bearing * bears);
    });
  }
  add(rows, 2 * Math.round((at + length / 2) / part), size, -load);
  const found = solveBand(rows);
  return Array.from({ length: PARTS + 1 }, (_, i) => ({
    at: i * part - length / 2,
    rise: found[2 * i] ?? 0,
  }));
}

/**
 * The same plank where nothing bends: a plane under the load’s force and moment.
 *
 * @param load N, pressing
 * @param at mm from the middle
 * @returns the rise, mm, at both edges
 *
 * Derivation: balance of force and moment on springs all alike.
 */
export function stiffBack(plank: Plank, load: number, at: number): readonly Risen[] {
  const { length, width, bed } = plank;
  const mean = load / (bed * length * width);
  return [-length / 2, length / 2].map((place) => ({
    at: place,
    rise: -mean * (1 + (12 * at * place) / length ** 2),
  }));
}

/** The rise at a place, mm, between those that are known; they are in order. */
export function riseAt(back: readonly Risen[], at: number): number {
  const next = Math.max(
    1,
    back.findIndex((one) => one.at >= at),
  );
  const [from, to] = [back[next - 1], back[next]];
  if (from === undefined || to === undefined) return 0;
  return from.rise + ((to.rise - from.rise) * (at - from.at)) / (to.at - from.at);
}

/** Stiffness of one part against bending and against the bed, its slopes as turns; without their factors. */
function elementOf(part: number) {
  const p = part;
  const bends = [
    [12, 6 * p, -12, 6 * p],
    [6 * p, 4 * p * p, -6 * p, 2 * p * p],
    [-12, -6 * p, 12, -6 * p],
    [6 * p, 2 * p * p, -6 * p, 4 * p * p],
  ];
  const bears = [
    [156, 22 * p, 54, -13 * p],
    [22 * p, 4 * p * p, 13 * p, -3 * p * p],
    [54, 13 * p, 156, -22 * p],
    [-13 * p, -3 * p * p, -22 * p, 4 * p * p],
  ];
  return bends.flatMap((values, row) =>
    values.map((value, column) => ({
      row,
      column,
      bends: value,
      bears: bears[row]?.[column] ?? 0,
    })),
  );
}

function add(rows: readonly Float64Array[], row: number, column: number, value: number): void {
  const found = rows[row];
  if (found !== undefined) found[column] = (found[column] ?? 0) + value;
}

/** Solves a positive definite band of equations whose right side is the last column; overwrites it. */
function solveBand(rows: readonly Float64Array[]): Float64Array {
  const size = rows.length;
  const value = (row: number, column: number): number => rows[row]?.[column] ?? 0;
  for (let pivot = 0; pivot < size; pivot += 1) {
    const end = Math.min(size - 1, pivot + REACH);
    for (let row = pivot + 1; row <= end; row += 1) {
      const share = value(row, pivot) / value(pivot, pivot);
      for (let column = pivot; column <= end; column += 1)
        add(rows, row, column, -share * value(pivot, column));
      add(rows, row, size, -share * value(pivot, size));
    }
  }
  const found = new Float64Array(size);
  for (let row = size - 1; row >= 0; row -= 1) {
    let rest = value(row, size);
    const end = Math.min(size - 1, row + REACH);
    for (let column = row + 1; column <= end; column += 1)
      rest -= value(row, column) * (found[column] ?? 0);
    found[row] = rest / value(row, row);
  }
  return found;
}
