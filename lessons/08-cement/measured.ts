import { factEntry, factValue } from '../fact-value.ts';
import {
  ceiling,
  gramsOf,
  heatAt,
  partsOf,
  PLANNED,
  riseOf,
  THICK,
  thick,
  THIN,
  thin,
  underBack,
  WIDENED,
} from './cements.ts';

/** Something measured, or computed here: a number, a range, or both. */
export interface MeasuredRow {
  readonly id: string;
  readonly name: string;
  readonly words: string;
  readonly value?: number;
  readonly range?: readonly [low: number, high: number];
  readonly howRead: string;
}

/** Rows of one quantity on one axis. */
export interface MeasuredGroup {
  readonly title: string;
  readonly unit: string;
  readonly from: number;
  readonly to: number;
  readonly step: number;
  readonly rows: readonly MeasuredRow[];
}

const published = (id: string, name: string, words: string): MeasuredRow => {
  const { value, low, high, howRead } = factEntry(id);
  return {
    id,
    name,
    words,
    ...(value === undefined ? {} : { value }),
    ...(low === undefined || high === undefined ? {} : { range: [low, high] as const }),
    howRead,
  };
};
const computed = (id: string, words: string, value: number, top?: number): MeasuredRow => ({
  id,
  name: 'this model',
  words,
  ...(top === undefined ? { value } : { range: [value, top] as const }),
  howRead: 'computed',
});

/** The mantle of keels as it was measured, and its heat in the model. */
export const measuredMantle = factValue('keel-mantle');
export const measuredMantleHeat = heatAt(measuredMantle);
export const pressedMantle = factValue('keel-mantle-pressed');
export const pressedMantleHeat = heatAt(pressedMantle);
/** Cement of the model, g: in the holes alone, and with a layer under the back. */
export const inHoles = [
  gramsOf(partsOf('keel', PLANNED).total),
  gramsOf(partsOf('pegs', WIDENED).total),
] as const;
export const withBack = inHoles.map((grams) => grams + gramsOf(underBack));

export const measuredGroups: readonly MeasuredGroup[] = [
  {
    title: 'Highest temperature',
    unit: '°C',
    from: 30,
    to: 80,
    step: 10,
    rows: [
      published('bone-surface-heat', 'cadaver sockets', 'bone’s surface, infrared'),
      published('highest-in-patients', 'patients', 'joints not named, probes'),
      published('resurfacing-peak', 'patients’ hips', 'resurfaced, probes'),
      published('resurfacing-peak-washed', 'patients’ hips', 'washed, with suction'),
      computed(
        'peak-model',
        `${THIN} to ${THICK} mm beside the keel`,
        thin.peakAtBone,
        thick.peakAtBone,
      ),
      computed('peak-ceiling', 'cement without end', ceiling),
    ],
  },
  {
    title: 'Rise of temperature',
    unit: '°C',
    from: 0,
    to: 20,
    step: 5,
    rows: [
      published('keel-warming', 'cadaver sockets', 'round a keel, sensors'),
      published('peg-warming', 'cadaver sockets', 'round pegs, sensors'),
      published('rise-in-patients', 'patients', 'joints not named, probes'),
      computed('rise-model', `${THIN} to ${THICK} mm beside the keel`, riseOf(thin), riseOf(thick)),
    ],
  },
  {
    title: 'Weight of the cement',
    unit: 'g',
    from: 0,
    to: 9,
    step: 1,
    rows: [
      published('cement-in-sockets', 'cadaver sockets', 'all that went in'),
      computed('weight-holes', 'in the holes', inHoles[0], inHoles[1]),
      computed('weight-back', 'and under the back', withBack[0] ?? NaN, withBack[1] ?? NaN),
    ],
  },
];
