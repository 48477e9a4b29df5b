import type { PlacedLabel } from './labels-front.ts';
import type { Fixation } from './socket-component.ts';

const onEach: readonly PlacedLabel[] = [
  { term: 'ball', at: [214, 50], anchor: 'middle', ground: 'var(--metal)' },
  { term: 'bone', at: [214, 362], anchor: 'middle', ground: 'var(--bone)' },
];

const byFixation: Record<Fixation, readonly PlacedLabel[]> = {
  pegs: [
    { term: 'plastic', at: [102, 246], to: [-13, 1.6], anchor: 'end' },
    { term: 'peg', at: [362, 262], to: [6.2, -9] },
    { term: 'cement', at: [362, 310], to: [8.4, -12] },
  ],
  keel: [
    { term: 'plastic', at: [102, 246], to: [-13, 1.6], anchor: 'end' },
    { term: 'keel', at: [362, 262], to: [1.4, -9] },
    { term: 'cement', at: [362, 310], to: [3.2, -13] },
  ],
  'metal-backed': [
    { term: 'plastic', at: [102, 246], to: [-13, 1.6], anchor: 'end' },
    { term: 'tray', at: [362, 246], to: [11, -3] },
    { term: 'post', at: [362, 306], to: [2, -13] },
  ],
};

export function sectionLabels(fixation: Fixation): readonly PlacedLabel[] {
  return [...onEach, ...byFixation[fixation]];
}

/** The section in words. */
export function sectionWords(
  fixation: Fixation,
  width: number,
  depth: number,
  radii: { readonly ball: number; readonly hollow: number },
): string {
  const held = {
    pegs: 'Two grooved pegs of the same plastic go into the bone, each in a bed of bone cement.',
    keel: 'One keel of the same plastic, seen end on and narrower at its waist, goes into the bone in a bed of bone cement.',
    'metal-backed':
      'A metal back lies between plastic and bone, with a post that goes into the bone without cement.',
  };
  return `A metal ball of radius ${radii.ball} mm rests in a plastic dish ${width} mm wide and ${depth.toFixed(1)} mm deep, whose hollow has a radius of ${radii.hollow} mm, so that a thin gap opens towards the rim. ${held[fixation]} The bone narrows below.`;
}
