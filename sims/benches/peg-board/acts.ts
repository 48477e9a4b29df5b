import type { SeatOutcome } from '../../mechanics/index.ts';
import { fixedText } from '../../shared/format.ts';
import { MICROMETRES } from './layout.ts';
import { marginText } from './lettering.ts';
import { liftRose, type RoseRow } from './rose.ts';
import { seatOf } from './seat.ts';
import { defaultBoard, type BallLoad, type Design } from './settings.ts';

/** One layout of a demonstration: what it is called, what stands on the back, and what follows from it. */
export interface BoardAct {
  readonly text: string;
  readonly design: Design;
  readonly ends: RoseEnds;
}

/** What the room reads of a rose: lift-off (mm) with the load in front and above, and the least margin all round. */
export interface RoseEnds {
  readonly front: number;
  readonly up: number;
  readonly margin: number;
  /** How the places end that come to no rest; null where all do. */
  readonly lost: SeatOutcome | null;
}

/** Every act bears the board’s own load, at the front to begin with. */
export const stageLoad: BallLoad = { ...defaultBoard.load, bearing: 0 };

/** Outermost ring of the rose on stage, µm: one scale for every act. */
export const stageTop = 300;

const FRONT = 0;
const UP = 90;
/** A margin as near to one as this is that of a hold that slips. */
const SLACK = 5e-4;

export function endsOfRose(rows: readonly RoseRow[]): RoseEnds {
  const at = (bearing: number): number =>
    rows.find((row) => row.bearing === bearing)?.liftOff ?? NaN;
  return {
    front: at(FRONT),
    up: at(UP),
    margin: Math.min(...rows.map(({ margin }) => margin)),
    lost: rows.find(({ outcome }) => outcome !== 'balanced')?.outcome ?? null,
  };
}

/** An act with its numbers computed. */
export function boardAct(text: string, design: Design): BoardAct {
  return {
    text,
    design,
    ends: endsOfRose(liftRose(seatOf(design, defaultBoard.ground), stageLoad)),
  };
}

/** Three cells: lift-off in µm with the load in front and above, and the least margin. */
export function cellsOf({ front, up, margin, lost }: RoseEnds): readonly [string, string, string] {
  const lift = (value: number): string =>
    Number.isNaN(value) ? '–' : fixedText(value * MICROMETRES, 0);
  const least = lost !== null ? '–' : margin < 1 + SLACK ? 'slips' : marginText({ margin });
  return [lift(front), lift(up), least];
}
