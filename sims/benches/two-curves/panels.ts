import { scaleLinear, type ScaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { ratio } from '../../shared/format.ts';
import type { Layout, PanelName } from './layout.ts';
import { hundredths, megapascals } from './lettering.ts';
import type { PressureRow, ShapeRow } from './sweep.ts';

/** One set of curves: what is drawn in full, or dashed to compare. */
export interface Curves {
  readonly shapes: readonly ShapeRow[];
  readonly pressures: readonly PressureRow[];
}

export type CurvePoint = readonly [mismatch: number, value: number];

export interface PanelKind {
  readonly title: string;
  readonly tone: 'motion' | 'force' | 'ink';
  readonly text: (value: number) => string;
}

export const panelKinds: Readonly<Record<PanelName, PanelKind>> = {
  play: { title: 'Play before the rim is loaded, mm', tone: 'motion', text: hundredths },
  ratio: { title: 'Peak stability ratio', tone: 'force', text: (value) => ratio(value) },
  depth: { title: 'Depth, mm', tone: 'ink', text: hundredths },
  pressure: { title: 'Peak pressure, ball centred, MPa', tone: 'force', text: megapascals },
};

/** The points of one panel's curve; a mismatch at which there is no value is left out. */
export function pointsOf(name: PanelName, { shapes, pressures }: Curves): readonly CurvePoint[] {
  switch (name) {
    case 'play':
      return shapes.map((row) => [row.mismatch, row.play]);
    case 'ratio':
      return shapes.map((row) => [row.mismatch, row.peakRatio]);
    case 'depth':
      return shapes.map((row) => [row.mismatch, row.depth]);
    case 'pressure':
      return pressures.flatMap((row) =>
        row.layer === null ? [] : [[row.mismatch, row.layer] as const],
      );
  }
}

export function hertzPoints({ pressures }: Curves): readonly CurvePoint[] {
  return pressures.flatMap((row) =>
    row.hertz === null ? [] : [[row.mismatch, row.hertz] as const],
  );
}

/** A panel's height scale, from nothing to a round number over all it shows. */
export function heightScale(
  { panels }: Layout,
  name: PanelName,
  values: readonly number[],
): ScaleLinear<number, number> {
  const { top, bottom } = panels[name];
  const most = Math.max(0, ...values);
  return scaleLinear([0, most > 0 ? most * 1.06 : 1], [bottom, top]).nice(2);
}

export function curveLine(
  x: (value: number) => number,
  y: (value: number) => number,
  points: readonly CurvePoint[],
): string {
  const draw = line<CurvePoint>(
    ([mismatch]) => x(mismatch),
    ([, value]) => y(value),
  ).digits(2);
  return draw(points) ?? '';
}
