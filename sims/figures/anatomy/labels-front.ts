import type { Point } from './path.ts';
import type { Term, Words } from './terms.ts';

/** Where one label stands: `at` in drawing units, `to` in mm from the centre of the humeral head. */
export interface PlacedLabel {
  readonly term: Term;
  readonly at: Point;
  readonly to?: Point;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly ground?: string;
}

const bone = 'var(--bone)';

const inBoth: readonly PlacedLabel[] = [
  { term: 'acromion', at: [196, 46], to: [-1, 41], anchor: 'middle' },
  { term: 'clavicle', at: [338, 28], to: [48, 46], anchor: 'middle' },
  { term: 'head', at: [204, 196], anchor: 'middle', ground: bone },
  { term: 'glenoid', at: [307, 218], anchor: 'middle', ground: bone },
  { term: 'cuff', at: [62, 30], to: [-13, 24.6], anchor: 'middle' },
  { term: 'deltoid', at: [66, 262], to: [-41, -22], anchor: 'end' },
  { term: 'labrum', at: [244, 322], to: [17.6, -21] },
  { term: 'humerus', at: [238, 348], to: [1.4, -60] },
  { term: 'scapula', at: [366, 250], anchor: 'middle', ground: bone },
];

const inTradeOnly: readonly PlacedLabel[] = [
  { term: 'greaterTuberosity', at: [80, 170], to: [-26, 8], anchor: 'end' },
  { term: 'coracoid', at: [376, 190], to: [41, 20], anchor: 'middle', ground: bone },
];

/** The labels of the front section in one vocabulary: patients get the fewer. */
export function frontLabels(words: Words): readonly PlacedLabel[] {
  return words === 'trade' ? [...inBoth, ...inTradeOnly] : inBoth;
}
