import { rimShareOf, solveContact } from './contact-pressure.ts';
import type { ContactQuestion, ContactState } from './contact-pressure-types.ts';

/** One translation of {@link elasticStabilityCurve}. */
export interface ElasticStabilityRow {
  /** mm */
  readonly translation: number;
  /** Side force over compressive load; null where the layer cannot carry the load. */
  readonly stabilityRatio: number | null;
  /** MPa */
  readonly peakPressure: number | null;
  /** Share of the load within 1 mm of the rim, 0 … 1. */
  readonly rimShare: number | null;
  readonly state: ContactState;
}

/** As for {@link contactPressure}, for many translations instead of one. */
export type ElasticCurveQuestion = DistributiveOmit<ContactQuestion, 'translation'> & {
  /** mm, each from 0 to where the rigid ball leaves the socket */
  readonly translations: readonly number[];
};

type DistributiveOmit<T, Field extends PropertyKey> = T extends unknown ? Omit<T, Field> : never;

/**
 * Stability ratio against translation for a ball on an elastic layer, with what the layer feels on the way.
 *
 * The stiffer the layer, the nearer it comes to the rigid curve of `stabilityRatioAt`; what is left is greatest at first
 * rim contact, where the rigid curve has its corner and the patch is cut in two. The peak comes out lower than rigid.
 *
 * @returns one row a translation, in the order given
 * @throws RangeError as {@link contactPressure}
 */
export function elasticStabilityCurve(
  question: ElasticCurveQuestion,
): readonly ElasticStabilityRow[] {
  const { translations, ...rest } = question;
  return translations.map((translation) => {
    const { bed, ball, drop } = solveContact({ ...rest, translation });
    if (drop === null) {
      return {
        translation,
        stabilityRatio: null,
        peakPressure: null,
        rimShare: null,
        state: 'too much for the layer',
      };
    }
    const sums = ball.sumsAt(drop);
    return {
      translation,
      stabilityRatio: (bed * sums.reaction.side) / question.compressiveLoad,
      peakPressure: bed * sums.deepest,
      rimShare: rimShareOf(sums),
      state: sums.state,
    };
  });
}
