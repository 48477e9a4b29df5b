import { factEntry, factRange, factValue } from '../fact-value.ts';
import { sourceName } from '../source-name.ts';
import { near, plate } from './seats.ts';

/** Pull-out of whole components, N: measured, with its range, or computed. */
export interface PullOutRow {
  readonly name: string;
  readonly words: string;
  readonly mean: number;
  readonly range?: readonly [low: number, high: number];
}

export const pullOutRows: readonly PullOutRow[] = [
  {
    name: 'pegs, measured',
    words: 'cadaver bone, mean and range',
    mean: factValue('pull-out-pegs'),
    range: factRange('pull-out-pegs'),
  },
  { name: 'three pegs, model', words: 'of the bench', mean: near.pullOut },
  {
    name: 'keel, measured',
    words: 'cadaver bone, mean and range',
    mean: factValue('pull-out-keel'),
    range: factRange('pull-out-keel'),
  },
  { name: 'keel, model', words: 'of the bench', mean: plate.pullOut },
];

/** Two designs that one study compares, in per cent of the components. */
export interface Comparison {
  readonly study: string;
  readonly what: string;
  /** Per cent: pegs or polyethylene first, keel or metal-backed second */
  readonly first: number;
  readonly second: number;
  /** How many of each */
  readonly counts: readonly [number, number];
  readonly howRead: string;
}

export interface ComparisonGroup {
  readonly title: string;
  readonly first: string;
  readonly second: string;
  readonly rows: readonly Comparison[];
}

function compared(what: string, first: string, second: string): Comparison {
  const { howRead, n: many = NaN } = factEntry(first);
  return {
    study: sourceName(first),
    what,
    first: factValue(first),
    second: factValue(second),
    counts: [many, factEntry(second).n ?? NaN],
    howRead,
  };
}

/** Studies of fixation, each with its own measure: shown side by side, never averaged. */
export const comparisons: readonly ComparisonGroup[] = [
  {
    title: 'Pegs and keels',
    first: 'pegs',
    second: 'keel',
    rows: [
      compared('lines, first six weeks', 'lucency-early-pegs', 'lucency-early-keel'),
      compared('lines, first films', 'early-lines-pegs-cohort', 'early-lines-keel-cohort'),
      compared('at risk, about four years', 'loosening-risk-pegs', 'loosening-risk-keel'),
    ],
  },
  {
    title: 'All plastic and metal-backed',
    first: 'polyethylene',
    second: 'metal-backed',
    rows: [
      compared('lines, from three years', 'polyethylene-lines-trial', 'metal-backed-lines-trial'),
      compared(
        'loose, from three years',
        'polyethylene-loosening-trial',
        'metal-backed-loosening-trial',
      ),
      compared('revised, many studies', 'polyethylene-revision', 'metal-backed-revision'),
      compared(
        'revised, under sixty',
        'polyethylene-revision-young',
        'metal-backed-revision-young',
      ),
      compared(
        'loose, later designs',
        'polyethylene-loosening-review',
        'metal-backed-loosening-modern',
      ),
      compared(
        'revised, later designs',
        'polyethylene-revision-review',
        'metal-backed-revision-modern',
      ),
    ],
  },
];
