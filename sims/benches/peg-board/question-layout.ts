import type { Rose } from '../round-the-rim/layout.ts';
import { layoutFor } from './layout.ts';
import type { Round } from './question-grade.ts';
import { designOf, type PegTask } from './question-task.ts';
import type { RoseRow } from './rose.ts';
import type { Stand } from './stand.ts';

/** Where the parts of a question’s drawing stand, CSS pixels. */
export interface QuestionLayout {
  readonly width: number;
  readonly height: number;
  readonly size: number;
  readonly small: number;
  readonly rose: Rose;
  readonly rows: readonly RoseRow[];
  /** Of a socket of which nothing is known yet */
  readonly blank: Stand;
}

const WIDEST = 520;
/** The limit’s ring stands at this share of the scale at most, so that a bar beyond it is seen to be. */
const OVER_LIMIT = 1.25;

const blank: Stand = {
  outcome: 'unsettled',
  displacement: [0, 0, 0],
  rotation: [0, 0, 0],
  tilt: { a: 0, b: 0, c: 0 },
  liftOff: 0,
  pressIn: 0,
  peakPressure: 0,
  contactShare: 0,
  pegs: [],
  keel: null,
};

/** The drawing of Peg Board without its section, and with room for the limit on the rose’s scale. */
export function questionLayout(task: PegTask, round: Round | null, room: number): QuestionLayout {
  const width = Math.min(room, WIDEST);
  const rows = (round?.turns ?? []).map(({ load, stand }): RoseRow => ({
    bearing: load.bearing,
    outcome: stand.outcome,
    liftOff: stand.outcome === 'balanced' ? stand.liftOff : NaN,
    margin: Math.min(Infinity, ...stand.pegs.map(({ margin }) => margin)),
  }));
  const limit: RoseRow = {
    bearing: 0,
    outcome: 'balanced',
    liftOff: task.limits.lift * OVER_LIMIT,
    margin: Infinity,
  };
  const design = designOf(task, task.start);
  const { rose, size, small } = layoutFor(task.ground, design, [...rows, limit], width);
  const height = Math.ceil(rose.centre.y + rose.outer + size * 4.2);
  return { width, height, size, small, rose, rows, blank };
}
