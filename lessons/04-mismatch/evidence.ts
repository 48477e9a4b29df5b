import { factEntry, factRange, factValue } from '../fact-value.ts';
import { sourceName } from '../source-name.ts';

/** One line of the evidence: what was said or found, and where it lies, in mm of radial mismatch. */
export interface Evidence {
  readonly id: string;
  readonly name: string;
  readonly words: string;
  readonly howRead: string;
  /** A range that was measured, or in which nothing was found to differ. */
  readonly range?: readonly [number, number];
  /** A single figure. */
  readonly at?: number;
  /** Scatter of that figure. */
  readonly sd?: number;
  /** From here on, with no upper end given. */
  readonly above?: number;
  /** Below this, more lucent lines were seen. */
  readonly worseBelow?: number;
  /** Where the line would stand, were radial and diametral exchanged. */
  readonly otherwise?: number;
}

export interface EvidenceGroup {
  readonly title: string;
  readonly lines: readonly Evidence[];
}

const line = (
  id: string,
  words: string,
  place: Partial<Evidence>,
  name = sourceName(id),
): Evidence => ({ id, name, words, howRead: factEntry(id).howRead, ...place });

const said = factValue('mismatch-compromise-diametral');
const advised = factValue('mismatch-advised-above');
const counted = (id: string): string => String(factEntry(id).n ?? '');

/** Everything the lesson found about how much mismatch there is, or should be; all of it in radial mm. */
export const evidence: readonly EvidenceGroup[] = [
  {
    title: 'Natural joints',
    lines: [
      line(
        'socket-minus-head-radius',
        `${counted('socket-minus-head-radius')} joints, from the front`,
        {
          at: factValue('socket-minus-head-radius'),
          sd: factValue('socket-minus-head-radius', 'sd'),
        },
      ),
      line('cartilage-radii-difference', 'cartilage surfaces, all joints', {
        range: factRange('cartilage-radii-difference'),
      }),
      line('natural-radial-mismatch', `${counted('natural-radial-mismatch')} joints, by plane`, {
        range: factRange('natural-radial-mismatch'),
      }),
    ],
  },
  {
    title: 'Said of replaced joints',
    lines: [
      line(
        'mismatch-compromise-diametral',
        `“about ${said} mm”, diametral`,
        { at: said / 2, otherwise: said },
        'Often heard',
      ),
      line('mismatch-recommended-before', 'earlier advice, as summed up', {
        range: factRange('mismatch-recommended-before'),
      }),
    ],
  },
  {
    title: 'Followed up by X-ray or CT',
    lines: [
      line('mismatch-advised-above', `fewer lines above ${advised} mm`, {
        above: advised,
        otherwise: advised / 2,
      }),
      line(
        'mismatch-lucency-below',
        `${counted('mismatch-lucency-below')} joints, more lines below ${factValue('mismatch-lucency-below')} mm`,
        {
          range: factRange('mismatch-of-replacements'),
          worseBelow: factValue('mismatch-lucency-below'),
        },
      ),
      line('mismatch-no-effect', `${counted('mismatch-no-effect')} joints, no difference`, {
        range: factRange('mismatch-no-effect'),
      }),
    ],
  },
];

/** Radial mm at the end of the axis. */
export const FARTHEST = 14;
