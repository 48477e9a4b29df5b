import { factEntry, factRange, factValue } from '../fact-value.ts';
import { sourceName } from '../source-name.ts';
import { underTest } from './rocked.ts';

/** One line of the drawing: what moved, and by how much, mm. */
export interface Motion {
  readonly id: string;
  readonly name: string;
  readonly words: string;
  /** How it was read, or that the model has it. */
  readonly howRead: string;
  readonly at?: number;
  readonly sd?: number;
  readonly range?: readonly [number, number];
}

export interface MotionGroup {
  readonly title: string;
  readonly lines: readonly Motion[];
}

const line = (id: string, name: string, place: Partial<Motion>): Motion => ({
  id,
  name,
  words: [sourceName(id), counted(id)].filter(Boolean).join(', '),
  howRead: factEntry(id).howRead,
  ...place,
});
const counted = (id: string): string => {
  const { n } = factEntry(id);
  return n === undefined ? '' : `n = ${n}`;
};
const mean = (id: string) => ({ at: factValue(id), sd: factValue(id, 'sd') });

/** Distances found in print for components that were rocked, and the model’s beside them. */
export const motions: readonly MotionGroup[] = [
  {
    title: 'Measured in foam: translation',
    lines: [
      line('component-translation-cemented', 'cemented', mean('component-translation-cemented')),
      line(
        'component-translation-press-fit',
        'pressed in',
        mean('component-translation-press-fit'),
      ),
      line('component-translation-hybrid', 'both', mean('component-translation-hybrid')),
    ],
  },
  {
    title: 'Measured: micromotion, base plates',
    lines: [
      line('base-plate-micromotion', 'metal, two kinds', {
        range: factRange('base-plate-micromotion'),
      }),
    ],
  },
  {
    title: 'Computed: lift of the far edge',
    lines: underTest.map(({ name, lift }) => ({
      id: name,
      name,
      words: 'rigid model',
      howRead: 'computed',
      at: lift,
    })),
  },
];

/** mm at the end of the axis. */
export const FARTHEST = 0.5;
