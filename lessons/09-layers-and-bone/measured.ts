import { factEntry, factRange, factValue } from '../fact-value.ts';
import { sourceName } from '../source-name.ts';
import { early, late, MICROMETRES } from './weeks.ts';

/** Share of pores filled, per cent, by week. */
export const filling: readonly {
  readonly weeks: number;
  readonly low: number;
  readonly high: number;
}[] = [
  fillingAt(2, [factValue('pores-filled-two-weeks'), factValue('pores-filled-two-weeks')]),
  fillingAt(4, factRange('pores-filled-four-weeks')),
  fillingAt(16, factRange('pores-filled-later')),
  fillingAt(52, factRange('pores-filled-later')),
];

function fillingAt(weeks: number, [low, high]: readonly [number, number]) {
  return { weeks, low, high };
}

/** What became of a place: bone, fibrous tissue, both, or as the model has it. */
export type Fate = 'bone' | 'both' | 'fibrous' | 'computed';

/** A line of the drawing of motion and what came of it, µm. */
export interface MotionLine {
  readonly id: string;
  readonly what: string;
  readonly who: string;
  readonly howRead: string;
  readonly fate: Fate;
  readonly at?: number;
  readonly sd?: number;
  readonly range?: readonly [low: number, high: number];
}

/** µm at the end of the axis. */
export const FARTHEST = 600;

const line = (id: string, what: string, fate: Fate, place: Partial<MotionLine>): MotionLine => ({
  id,
  what,
  who: sourceName(id),
  howRead: factEntry(id).howRead,
  fate,
  ...place,
});
const single = (id: string, what: string, fate: Fate): MotionLine =>
  line(id, what, fate, { at: factValue(id) });
const spread = (id: string, what: string, fate: Fate): MotionLine =>
  line(id, what, fate, { at: factValue(id), sd: factValue(id, 'sd') });

export const motionLines: readonly {
  readonly title: string;
  readonly lines: readonly MotionLine[];
}[] = [
  {
    title: 'Single studies, dogs',
    lines: [
      line('ingrowth-motion-most', 'bone, up to', 'bone', {
        range: [0, factValue('ingrowth-motion-most')],
      }),
      line('ingrowth-motion-fibrous-least', 'fibrous tissue, from', 'fibrous', {
        range: [factValue('ingrowth-motion-fibrous-least'), FARTHEST],
      }),
      single('ingrowth-motion-continuous', 'bone, joined', 'bone'),
      single('ingrowth-motion-mixed', 'bone and fibrous', 'both'),
      single('ingrowth-motion-dense-fibrous', 'dense fibrous', 'fibrous'),
    ],
  },
  {
    title: 'Many kinds, many animals',
    lines: [
      spread('motion-of-implants-that-took', 'took', 'bone'),
      spread('motion-of-implants-that-did-not-take', 'did not take', 'fibrous'),
    ],
  },
  {
    title: 'This lesson’s peg, most and least of its spaces',
    lines: [early, late].map(({ name, places }): MotionLine => ({
      id: name,
      what: name,
      who: '',
      howRead: 'computed',
      fate: 'computed',
      range: [
        MICROMETRES * Math.min(...places.map(({ motion }) => motion)),
        MICROMETRES * Math.max(...places.map(({ motion }) => motion)),
      ],
    })),
  },
];
