import type { PlacedLabel } from './labels-front.ts';

/** Labels of the replaced head; the same in both vocabularies. */
export const ballLabels: readonly PlacedLabel[] = [
  { term: 'ball', at: [312, 44], to: [14, 15] },
  { term: 'neck', at: [100, 70], to: [7, 7], anchor: 'end' },
  { term: 'stem', at: [110, 262], to: [-9, -44], anchor: 'end' },
  { term: 'humerus', at: [262, 330], to: [2.6, -62] },
];
