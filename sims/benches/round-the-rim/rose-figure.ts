import { fixed, polyline, type Point } from '../../figures/view.ts';
import type { DirectionRow } from '../../geometry/index.ts';
import { directionOf, wrapped } from './bearing.ts';
import type { Rose } from './layout.ts';

/** A place of the rose, by direction (rad from anterior toward superior) and distance from its middle. */
export function polar({ centre }: Rose, direction: number, radius: number): Point {
  return {
    x: centre.x + radius * Math.cos(direction),
    y: centre.y - radius * Math.sin(direction),
  };
}

/** Distance from the middle at which a ratio stands; one off the scale stands at its end. */
export function radiusOf({ base, inner, top }: Rose, ratio: number): number {
  return base + (inner - base) * Math.max(0, Math.min(1, ratio / top));
}

/** Bearing of a place on the picture, whole degrees. */
export function bearingAt({ centre }: Rose, { x, y }: Point): number {
  const angle = Math.atan2(centre.y - y, x - centre.x);
  return wrapped(Math.round((angle * 180) / Math.PI));
}

/** The peak ratios as a closed line. */
export function ratioCurve(rose: Rose, rows: readonly DirectionRow[]): string {
  const points = rows.map(({ direction, peakStabilityRatio }) =>
    polar(rose, direction, radiusOf(rose, peakStabilityRatio)),
  );
  return `${polyline(points)}Z`;
}

/** A line from the base circle to its ratio for every direction that was computed. */
export function ratioSpokes(rose: Rose, rows: readonly DirectionRow[]): string {
  return rows
    .map(({ direction, peakStabilityRatio }) =>
      polyline([
        polar(rose, direction, rose.base),
        polar(rose, direction, radiusOf(rose, peakStabilityRatio)),
      ]),
    )
    .join('');
}

export function circle({ centre }: Rose, radius: number): string {
  const r = fixed(radius);
  const d = fixed(2 * radius);
  return `M${fixed(centre.x - radius)} ${fixed(centre.y)}a${r} ${r} 0 1 0 ${d} 0a${r} ${r} 0 1 0 -${d} 0Z`;
}

/** Rings of the scale between its two ends, and their ratios. */
export function rings({ top, step }: Rose): readonly number[] {
  const count = Math.round(top / step);
  return Array.from({ length: count - 1 }, (_, i) => Number(((i + 1) * step).toFixed(6)));
}

/** Short strokes every 5° on the inside of the ring of words, longer at the hours. */
export function hourStrokes(rose: Rose, size: number): string {
  return Array.from({ length: 72 }, (_, i) => {
    const direction = directionOf(i * 5);
    const long = i % 6 === 0 ? size * 0.5 : size * 0.25;
    return polyline([
      polar(rose, direction, rose.inner),
      polar(rose, direction, rose.inner + long),
    ]);
  }).join('');
}

/** A half circle to write along, its middle at a bearing: with the clock, or against it so that low words stand upright. */
export function wordArc(rose: Rose, bearing: number, radius: number): string {
  const isLow = bearing > 180;
  const from = polar(rose, directionOf(bearing + (isLow ? -90 : 90)), radius);
  const to = polar(rose, directionOf(bearing + (isLow ? 90 : -90)), radius);
  const r = fixed(radius);
  return `M${fixed(from.x)} ${fixed(from.y)}A${r} ${r} 0 0 ${isLow ? 0 : 1} ${fixed(to.x)} ${fixed(to.y)}`;
}

/** Bearing along which the rings are numbered: away from the chosen one and the four main ones. */
export function numberedBearing(chosen: number): number {
  const away = (bearing: number): number => Math.abs(wrapped(bearing - chosen + 180) - 180);
  return [112.5, 67.5].find((bearing) => away(bearing) > 18) ?? 112.5;
}
