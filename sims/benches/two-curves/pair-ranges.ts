import type { Range } from '../../shared/range.ts';

/** Which of the two curves gives way to make a mismatch; the other stays as it is. */
export type Change = 'socket' | 'ball';

/** What the socket keeps while its curve changes. */
export type Held = 'width' | 'depth' | 'arc';

/**
 * A ball and a socket as the controls hold them. Of ball and radius only the one that stays counts, of width, depth and
 * arc only the one that is held: everything else follows.
 */
export interface PairSetting {
  readonly change: Change;
  readonly held: Held;
  /** mm; counts where the socket is what changes. */
  readonly ballDiameter: number;
  /** The socket's radius of curvature, mm; counts where the ball is what changes. */
  readonly radius: number;
  /** Radial, R − r, mm. */
  readonly mismatch: number;
  /** Rim to rim, mm. */
  readonly width: number;
  readonly depth: number;
  /** Rim to rim, seen from the socket's centre, degrees. */
  readonly arc: number;
}

export type PairField = Exclude<keyof PairSetting, 'change' | 'held'>;

export const pairRanges: Readonly<Record<PairField, Range>> = {
  ballDiameter: { min: 30, max: 70, step: 0.5, digits: 1, unit: 'mm' },
  radius: { min: 15, max: 45, step: 0.25, digits: 2, unit: 'mm' },
  mismatch: { min: 0, max: 10, step: 0.1, digits: 1, unit: 'mm' },
  width: { min: 10, max: 60, step: 0.5, digits: 1, unit: 'mm' },
  depth: { min: 0.5, max: 16, step: 0.1, digits: 1, unit: 'mm' },
  arc: { min: 20, max: 120, step: 0.5, digits: 1, unit: '°' },
};

/** A ball of twice the mean radius of a head, in a socket 3 mm more in radius: the common compromise. */
export const defaultPair: PairSetting = {
  change: 'socket',
  held: 'width',
  ballDiameter: 48,
  radius: 27,
  mismatch: 3,
  width: 28,
  depth: 4,
  arc: 62,
};
