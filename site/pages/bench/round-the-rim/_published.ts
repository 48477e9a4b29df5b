import { directionOf } from '../../../../sims/benches/round-the-rim/bearing.ts';
import type { PublishedRatio } from '../../../../sims/benches/round-the-rim/published.ts';
import { factOf, sourceOf } from '../../../sources/library.ts';
import { shortReference } from '../../../sources/reference.ts';

/** A fact laid on the rose: where, and in a few words what was measured. */
interface Laid {
  readonly fact: string;
  /** Degrees from anterior toward superior. */
  readonly bearing: number;
  readonly label: string;
  readonly isWorn?: boolean;
}

const FORWARD = 0;
const UP = 90;
const DOWN = 270;
const FORWARD_AND_DOWN = 315;

const laid: readonly Laid[] = [
  { fact: 'stability-ratio-anterior-intact', bearing: FORWARD, label: 'Forward, whole' },
  {
    fact: 'stability-ratio-anterior-cartilage-intact',
    bearing: FORWARD,
    label: 'Forward, whole cartilage',
  },
  {
    fact: 'stability-ratio-anterior-with-labrum',
    bearing: FORWARD,
    label: 'Forward, with its lip',
  },
  {
    fact: 'stability-ratio-anteroinferior-cartilage-intact',
    bearing: FORWARD_AND_DOWN,
    label: 'Forward and down, whole cartilage',
  },
  { fact: 'stability-ratio-inferior-with-labrum', bearing: DOWN, label: 'Down, with its lip' },
  { fact: 'stability-ratio-intact-greatest', bearing: DOWN, label: 'Down, the greatest measured' },
  { fact: 'stability-ratio-intact-greatest', bearing: UP, label: 'Up, the greatest measured' },
  {
    fact: 'stability-ratio-superior-without-labrum',
    bearing: UP,
    label: 'Up, without its lip',
  },
  {
    fact: 'stability-ratio-anterior-defect',
    bearing: FORWARD,
    label: 'Forward, 6 mm of the front rim taken',
    isWorn: true,
  },
  {
    fact: 'stability-ratio-anterior-cartilage-defect',
    bearing: FORWARD,
    label: 'Forward, cartilage of the front rim taken',
    isWorn: true,
  },
  {
    fact: 'stability-ratio-anteroinferior-cartilage-defect',
    bearing: FORWARD_AND_DOWN,
    label: 'Forward and down, cartilage of the front rim taken',
    isWorn: true,
  },
];

const readWords: Readonly<Record<string, string>> = {
  abstract: 'read as an abstract',
  'from memory': 'from memory',
};

/** Stability ratios measured on cadaver shoulders, for laying over computed ones. */
export function publishedRatios(): Promise<readonly PublishedRatio[]> {
  return Promise.all(
    laid.map(async ({ fact: id, bearing, label, isWorn = false }) => {
      const where = 'Round the Rim';
      const { value, sd, n, source, howRead } = await factOf(id, where);
      if (value === undefined || source === undefined) {
        throw new Error(`${where}: the fact “${id}” has no single value or no source`);
      }
      const reference = shortReference(await sourceOf(source, where));
      const count = n === undefined ? '' : `, n = ${n}`;
      return {
        direction: directionOf(bearing),
        value,
        sd,
        label,
        source: `${reference}${count}, ${readWords[howRead] ?? howRead}`,
        isWorn,
      };
    }),
  );
}
