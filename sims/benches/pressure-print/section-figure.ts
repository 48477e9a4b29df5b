import { fixed, polyline, type Point, type View } from '../../figures/view.ts';
import type { Print } from './print.ts';

const ARC_POINTS = 40;
const TICKS = 26;
const TICK = 1.5;

/** The layer in section: its outline, the backing it stands on, and the short strokes that say it does not give. */
export function layerFigure(
  { field, layer }: Print,
  view: View,
): {
  readonly outline: string;
  readonly surface: string;
  readonly backing: string;
  readonly strokes: string;
} {
  const { curvatureRadius, halfArc } = field;
  const outer = curvatureRadius + layer.thickness;
  const at = (radius: number, turn: number): Point => ({
    x: view.x(radius * Math.sin(turn)),
    y: view.y(curvatureRadius - radius * Math.cos(turn)),
  });
  const arc = (radius: number): readonly Point[] =>
    Array.from({ length: ARC_POINTS + 1 }, (_, i) =>
      at(radius, halfArc * ((2 * i) / ARC_POINTS - 1)),
    );
  const strokes = Array.from({ length: TICKS }, (_, i) => {
    const turn = halfArc * ((2 * (i + 0.5)) / TICKS - 1);
    const [from, to] = [at(outer, turn), at(outer + TICK, turn - TICK / outer)];
    return `M${fixed(from.x)} ${fixed(from.y)}L${fixed(to.x)} ${fixed(to.y)}`;
  });
  return {
    outline: `${polyline([...arc(curvatureRadius), ...arc(outer).toReversed()])}Z`,
    surface: polyline(arc(curvatureRadius)),
    backing: polyline(arc(outer)),
    strokes: strokes.join(''),
  };
}
