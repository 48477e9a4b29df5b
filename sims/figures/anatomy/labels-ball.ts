import type { PlacedLabel } from './labels-front.ts';

/** Labels of the replaced head; the same in both vocabularies. */
export const ballLabels: readonly PlacedLabel[] = [
  { term: 'ball', at: [318, 70], to: [19, 10] },
  { term: 'neck', at: [100, 70], to: [-5, -1], anchor: 'end' },
  { term: 'stem', at: [110, 262], to: [-9, -44], anchor: 'end' },
  { term: 'humerus', at: [270, 300], to: [3.2, -56] },
];
