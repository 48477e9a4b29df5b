import { describe } from 'vitest';
import { socketFromDepth } from '../../sims/geometry/index.ts';
import { fact, runChecks, type PublishedCheck } from './check.ts';
import { socketOf } from './sockets.ts';

const boneChord = socketOf(fact('bony-socket-radius'), fact('bony-socket-depth')).width;
const labralChord = socketOf(fact('labral-socket-radius'), fact('labral-socket-depth')).width;

/*
 * Do the means of different papers describe one shoulder? PMC12925909 (abstract, 43 shoulders, top to bottom): bone
 * R 33.4, depth 4.0; with the labrum R 25, depth 7.1 mm. Chen 2023, Folia Morphol 82:325–331 (abstract, 501 bones): 35.1
 * (4.1) mm high. Anthony (abstract, 100 shoulders): 28.0 mm of bone, 31.9 with the labrum, in another plane.
 */
const means: readonly PublishedCheck[] = [
  {
    kind: 'band',
    what: 'chord of the bony arc against the height of the bony face, mm',
    sources: ['labrum-shape-mri', 'chen-2023'],
    compute: () => boneChord,
    expected: fact('bony-face-height'),
    tolerance: fact('bony-face-height', 'sd'),
    why: 'One standard deviation of the height. Radius and depth were measured in other people.',
  },
  {
    kind: 'band',
    what: 'what the labrum adds to the chord, mm',
    sources: ['labrum-shape-mri', 'anthony-labrum-width'],
    compute: () => labralChord - boneChord,
    expected: fact('width-with-labrum') - fact('bony-width-without-labrum'),
    tolerance: 2,
    why: 'Measured in another plane and other people; 2 mm is half of what is expected.',
  },
  {
    kind: 'band',
    what: 'radius of curvature that the bone’s depth and height make, mm',
    sources: ['labrum-shape-mri', 'chen-2023'],
    compute: () =>
      socketFromDepth({ depth: fact('bony-socket-depth'), width: fact('bony-face-height') })
        .curvatureRadius,
    expected: fact('bony-socket-radius'),
    tolerance: 3 * fact('bony-socket-radius', 'sd'),
    why: 'The radius goes with the square of the height: 4.1 mm of scatter there are three deviations here.',
  },
];

describe('means of anatomy', () => runChecks(means));
