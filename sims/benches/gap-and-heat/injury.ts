import { BONE_HEAT_LIMIT, SKIN_BURN_LIMIT, type CementHeat } from '../../mechanics/index.ts';
import { fixedText } from '../../shared/format.ts';

/** A number that may be tiny or huge, in a few digits. */
function plain(value: number): string {
  if (value < 0.001) return 'under 0.001';
  if (value >= 1000) return 'over 1\u202f000';
  return fixedText(value, value < 0.1 ? 3 : value < 10 ? 2 : 0);
}

/** What both criteria make of the bone’s surface, and that they are two. */
export function injuryWords({ injury }: Pick<CementHeat, 'injury'>): string {
  const { cem43, arrhenius, isPastBoneLimit, isPastSkinLimit } = injury;
  const bone =
    `Counted as minutes at 43 °C, the half hour gives the bone’s surface ${plain(cem43)}; ` +
    `${BONE_HEAT_LIMIT} are as much as the one minute at 47 °C that injures bone.`;
  const skin = `Counted as a burn of skin it gives ${plain(arrhenius)}; ${SKIN_BURN_LIMIT} is a burn all through.`;
  return `${bone} ${skin} ${verdict(isPastBoneLimit, isPastSkinLimit)}`;
}

function verdict(bone: boolean, skin: boolean): string {
  if (bone && skin) return 'Both say harm.';
  if (!bone && !skin) return 'Neither says harm.';
  return 'They do not agree: the first is of bone, the second of skin, and neither is a law.';
}
