import {
  ballPath,
  peakStabilityRatio,
  stabilityRatioAt,
  type BallPathRow,
} from '../../geometry/index.ts';
import type { Cup } from '../shared/cup-setting.ts';

/** Rows of a curve from middle to rim: enough that no corner shows at the size of a projector. */
const ROWS = 97;
/** The ratio's axis goes no higher; a cup nearly as deep as a hemisphere runs off it. */
export const HIGHEST_RATIO = 3;

export function rowsOf({ socket, ballRadius }: Cup): readonly BallPathRow[] {
  return ballPath(socket, ballRadius, ROWS);
}

/** A curve from middle to rim mirrored about the centre line: rim to rim. */
export function mirrored(rows: readonly BallPathRow[]): readonly BallPathRow[] {
  const left = rows
    .slice(1)
    .reverse()
    .map((row) => ({ ...row, translation: -row.translation }));
  return [...left, ...rows];
}

/** The same rows with the ratio that Coulomb friction adds to; Infinity where no side force moves the ball. */
export function withFriction(
  rows: readonly BallPathRow[],
  { socket, ballRadius }: Cup,
  friction: number,
): readonly BallPathRow[] {
  return rows.map((row) => ({
    ...row,
    stabilityRatio: stabilityRatioAt(socket, ballRadius, Math.abs(row.translation), friction),
  }));
}

/** Rows from the middle as far as the ball has come, its own place the last of them. */
export function rowsUpTo(rows: readonly BallPathRow[], here: BallPathRow): readonly BallPathRow[] {
  const side = here.translation < 0 ? -1 : 1;
  const reach = Math.abs(here.translation);
  return [
    ...rows
      .filter(({ translation }) => translation < reach)
      .map((row) => ({ ...row, translation: side * row.translation })),
    here,
  ];
}

/** Upper ends of the two axes that hold every cup drawn, mm and ratio. */
export function axisTops(
  cups: readonly Cup[],
  friction: number,
): { readonly climb: number; readonly ratio: number } {
  const depth = Math.max(...cups.map(({ socket }) => socket.depth));
  const peak = Math.max(...cups.map(({ socket }) => peakStabilityRatio(socket, friction)));
  return {
    climb: depth === 0 ? 1 : depth * 1.12,
    ratio: peak === 0 ? 0.5 : Math.min(HIGHEST_RATIO, peak * 1.22),
  };
}
