import type { PlacedLabel } from './labels-front.ts';
import type { Words } from './terms.ts';

const bone = 'var(--bone)';

const inBoth: readonly PlacedLabel[] = [
  { term: 'head', at: [166, 196], anchor: 'middle', ground: bone },
  { term: 'scapula', at: [392, 44], to: [58, 37], anchor: 'middle' },
  { term: 'glenoid', at: [322, 316], to: [22.8, 10.7], anchor: 'middle' },
  { term: 'labrum', at: [262, 342], to: [24.4, -1.7], anchor: 'middle' },
  { term: 'infraspinatus', at: [262, 24], to: [32, 38], anchor: 'middle' },
  { term: 'subscapularis', at: [372, 250], to: [58, 10], anchor: 'middle' },
];

const inTradeOnly: readonly PlacedLabel[] = [
  { term: 'greaterTuberosity', at: [56, 56], to: [-23, 8], anchor: 'middle' },
  { term: 'lesserTuberosity', at: [176, 356], to: [-6.4, -23], anchor: 'middle' },
];

/** The labels of the section from above in one vocabulary: patients get the fewer. */
export function aboveLabels(words: Words): readonly PlacedLabel[] {
  return words === 'trade' ? [...inBoth, ...inTradeOnly] : inBoth;
}
