import { angleOf, pressureAt, type PressureField } from './field.ts';

export interface PlanePoint {
  readonly x: number;
  readonly y: number;
}

/** The part of the face under a pressure or more, seen en face, mm, x along the translation. */
export interface Isobar {
  /** MPa */
  readonly pressure: number;
  /** Closed, from the highest point down the side toward the middle and back up along the other; the rim cuts it. */
  readonly outline: readonly PlanePoint[];
  /** Half of its height across the translation. */
  readonly high: number;
}

/** Rows of an outline. */
const ROWS = 36;
const HALVINGS = 40;

/**
 * An isobar of a field, with what the rim leaves of it; empty where the pressure is nowhere as high.
 *
 * In the plane at y across the translation the socket is a circle of radius ρ = √(R² − y²) about C. A place on it at ψ from
 * the centre line lies at α from the line of centres with R cos α = ρ cos(ψ − τ): so ψ runs from τ − ω to τ + ω,
 * cos ω = R cos α / ρ, but no further than the rim.
 */
export function isobarAt(field: PressureField, pressure: number): Isobar {
  const alpha = angleOf(field, pressure);
  const high = pressureAt(field, 0) < pressure ? null : highestRow(field, alpha);
  if (high === null) return { pressure, outline: [], high: 0 };
  const rows = Array.from({ length: ROWS + 1 }, (_, i) => high * Math.cos((Math.PI * i) / ROWS));
  const ends = rows.map((y) => ({ y, row: rowAt(field, alpha, y) }));
  const side = (end: 0 | 1): readonly PlanePoint[] =>
    ends.flatMap(({ y, row }) => (row === null ? [] : [{ x: row[end], y }]));
  return { pressure, outline: [...side(0), ...side(1).toReversed()], high };
}

/** Ends of the isobar on a row, mm; null where it does not reach the row. */
function rowAt(
  { curvatureRadius, tilt, halfArc }: PressureField,
  alpha: number,
  y: number,
): readonly [left: number, right: number] | null {
  const reach = curvatureRadius * Math.sin(halfArc);
  if (Math.abs(y) > reach) return null;
  const radius = Math.sqrt(curvatureRadius ** 2 - y ** 2);
  const cosine = (curvatureRadius * Math.cos(alpha)) / radius;
  if (cosine > 1) return null;
  const half = Math.acos(Math.max(-1, cosine));
  const rim = Math.asin(Math.min(1, Math.sqrt(reach ** 2 - y ** 2) / radius));
  const left = Math.max(-rim, tilt - half);
  const right = Math.min(rim, tilt + half);
  return left <= right ? [radius * Math.sin(left), radius * Math.sin(right)] : null;
}

/** The highest row an isobar reaches, mm; null where it reaches none. */
function highestRow(field: PressureField, alpha: number): number | null {
  if (rowAt(field, alpha, 0) === null) return null;
  let low = 0;
  let high = field.curvatureRadius * Math.sin(field.halfArc);
  for (let i = 0; i < HALVINGS; i += 1) {
    const middle = (low + high) / 2;
    if (rowAt(field, alpha, middle) === null) high = middle;
    else low = middle;
  }
  return low;
}

/** Where an isobar's side toward the middle of the face stands at a height of its own, mm. */
export function leftEnd(field: PressureField, pressure: number, y: number): number | null {
  return rowAt(field, angleOf(field, pressure), y)?.[0] ?? null;
}
