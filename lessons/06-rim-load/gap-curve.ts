/** A curve of gaps: its points in the unit of its axis and mm, its dashes, and where its name ends, the height in µm. */
export interface GapCurve {
  readonly name: string;
  readonly points: readonly (readonly [x: number, gap: number])[];
  readonly dash?: string | undefined;
  readonly label: readonly [x: number, gap: number];
}

/** Curves with their dashes and the places of their names, in order. */
export function named(
  curves: readonly Pick<GapCurve, 'name' | 'points'>[],
  ways: readonly Pick<GapCurve, 'dash' | 'label'>[],
): readonly GapCurve[] {
  return curves.map((curve, i) => ({ ...curve, label: [0, 0], ...ways[i] }));
}

export const DASHED = '8 4';
export const DOTTED = '2 4';
