import { boneAt, heatOf } from '../../../../sims/benches/gap-and-heat/heat.ts';
import { DENSITY } from '../../../../sims/benches/gap-and-heat/mantle.ts';
import { defaultGap, holdNames } from '../../../../sims/benches/gap-and-heat/settings.ts';
import { arrheniusDamage, cem43, henriques, materials } from '../../../../sims/mechanics/index.ts';
import { fixedText } from '../../../../sims/shared/format.ts';

const GAPS = [0.5, 1, 2, 4, 6];

const runs = GAPS.flatMap((gap) =>
  holdNames.map((name) => heatOf({ ...defaultGap, gap, fitError: 0 }, name)),
);

/** Mantles whose heat was added up when the page was built, and the greatest part of it that was missing. */
export const balanced = runs.length;
export const largestLoss = Math.max(
  ...runs.map(({ conduction: { heat } }) => {
    const { released, entered, stored } = heat;
    return Math.abs(released + entered.left + entered.right - stored) / released;
  }),
);

/** Peak at the bone of the mantles beside a keel and round a peg, °C. */
export const peaks = GAPS.map((gap) => {
  const at = (name: (typeof holdNames)[number]): number =>
    heatOf({ ...defaultGap, gap, fitError: 0 }, name).peakAtBone;
  return { gap, pegs: at('pegs'), keel: at('keel') };
});

/** A minute at 47 °C by both criteria. */
const minute = { times: [0, 60], temperatures: [47, 47] };
export const minuteOfBone = cem43(minute);
export const minuteOfSkin = arrheniusDamage(minute, henriques);

/** The bone is as warm as the body until the heat comes: what the cold component takes from it at most, °C. */
export const chill = Math.min(
  ...[20, 60, 120].map((time) => boneAt(heatOf(defaultGap, 'keel'), time)),
);

/** Conductivities, W/(m·K). */
const perMetre = (name: 'bone cement' | 'cancellous bone', digits: number): string =>
  fixedText(materials[name].conductivity.value * 1000, digits);
export const cementConductivity = perMetre('bone cement', 2);
export const boneConductivity = perMetre('cancellous bone', 3);
/** Of cement, g/cm³. */
export const density = fixedText(DENSITY * 1000, 2);
