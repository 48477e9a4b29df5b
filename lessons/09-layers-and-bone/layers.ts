import {
  elastic,
  shearGive,
  stripOf,
  WIDTH,
  type Strip,
} from '../../sims/benches/layer-strip/strip.ts';
import { presets } from '../../sims/benches/layer-strip/presets.ts';
import { defaultStrip, type StripSetting } from '../../sims/benches/layer-strip/settings.ts';
import { bimetalCurvature, materials, type MaterialName } from '../../sims/mechanics/index.ts';

/*
 * What the lesson says of layers, computed: strips of Layer Strip, of its materials and its teaching values for sizes and loads.
 */

export const modulusOf = (name: MaterialName): number => materials[name].youngsModulus.value;
export const stepOf = (one: MaterialName, other: MaterialName): number =>
  Math.max(modulusOf(one), modulusOf(other)) / Math.min(modulusOf(one), modulusOf(other));

/** A strip with all that the lesson says of it. */
export interface Joint {
  readonly name: string;
  readonly setting: StripSetting;
  readonly strip: Strip;
}

export function jointOf(name: string, change: Partial<StripSetting> = {}): Joint {
  const setting = { ...defaultStrip, ...change };
  return { name, setting, strip: stripOf(setting) };
}

function preset(id: string): Joint {
  const found = presets.find((each) => each.id === id);
  if (found === undefined) throw new RangeError(`id is ${id}; allowed: a preset of Layer Strip`);
  return jointOf(found.name, found.setting);
}

export const metalBack = preset('metal-back');
export const onCement = preset('cemented');
export const cementOnBone = preset('cement-bone');
export const metalOnBone = preset('metal-bone');
export const equals = preset('equals');
export { WIDTH };

/** Shear at the left end, in the middle and at the right end, MPa. */
export function shearAlong({
  strip,
}: Joint): readonly [left: number, middle: number, right: number] {
  const { shear } = strip.shear;
  const at = (i: number): number => shear[i]?.stress ?? NaN;
  return [at(0), at((shear.length - 1) / 2), at(shear.length - 1)];
}

/** Where the shear of the joint is greatest: what the first prediction asks. */
export function shearOutcomeOf(joint: Joint): 'even' | 'both' | 'plastic' | 'metal' {
  const [left, middle, right] = shearAlong(joint);
  const most = Math.max(left, right);
  if (most < 1.1 * middle) return 'even';
  if (Math.min(left, right) > 0.9 * most) return 'both';
  return left > right ? 'plastic' : 'metal';
}
export const shearOutcome = shearOutcomeOf(metalBack);

/** The strip of the prediction with one thing changed. */
export const changes: readonly Joint[] = [
  jointOf('as it is'),
  jointOf('half as long', { length: defaultStrip.length / 2 }),
  jointOf('much longer', { length: 60 }),
  jointOf('plastic half as thick', { upperThickness: defaultStrip.upperThickness / 2 }),
  jointOf('metal twice as thick', { lowerThickness: 2 * defaultStrip.lowerThickness }),
  jointOf('cobalt–chromium for titanium', { lower: 'cobalt-chromium' }),
  jointOf('half a millimetre of cement between', { film: 0.5 }),
  { ...equals, name: 'plastic for the metal' },
];
export const [asItIs, shorter, longer, thinner, , cobalt, filled] = changes as readonly [
  Joint,
  Joint,
  Joint,
  Joint,
  Joint,
  Joint,
  Joint,
  ...Joint[],
];

/** Pairs of joined layers in a socket, the upper one first. */
export const pairs: readonly { readonly name: string; readonly joint: Joint }[] = [
  { name: 'plastic on metal', joint: metalBack },
  { name: 'plastic on cement', joint: onCement },
  { name: 'cement on bone', joint: cementOnBone },
  { name: 'metal on bone', joint: metalOnBone },
];

/*
 * Sharing
 */

/** Pressed with this, MPa, and stretched by this share: round numbers to compare layers by. */
export const PRESSURE = 1;
const STRETCH = 0.001;

/** What a layer does in a stack that is pressed through, and along a stack that is stretched. */
export interface Share {
  readonly material: MaterialName;
  /** Share by which it shortens under {@link PRESSURE} */
  readonly strain: number;
  /** MPa under {@link STRETCH} */
  readonly stress: number;
}
export const shareOf = (material: MaterialName): Share => ({
  material,
  strain: PRESSURE / modulusOf(material),
  stress: STRETCH * modulusOf(material),
});
/** A layer of a stack, mm thick; the first is the plastic, measured under the middle of the cup. */
export interface StackLayer {
  readonly material: MaterialName;
  readonly thickness: number;
}
/** The two layers of a joint on so much bone as is shown, mm. */
export const stackOf = ({ setting }: Joint, bone: number): readonly StackLayer[] => [
  { material: setting.upper, thickness: setting.upperThickness },
  { material: setting.lower, thickness: setting.lowerThickness },
  { material: 'cancellous bone', thickness: bone },
];
const BONE = 7;
export const stacks: readonly { readonly name: string; readonly layers: readonly StackLayer[] }[] =
  [
    {
      name: 'plastic in cement',
      layers: stackOf(onCement, BONE),
    },
    {
      name: 'metal-backed',
      layers: stackOf(metalBack, BONE),
    },
  ];

/*
 * A mismatch without a load
 */

/** By how much the plastic would be shorter than the metal, were it free: a teaching value. */
export const MISMATCH = 0.001;
export const BONDED = metalBack.setting;

/** 1/mm, the layer that shrank on the inside. */
export const curvature = bimetalCurvature({
  thicknesses: [BONDED.upperThickness, BONDED.lowerThickness],
  moduli: [modulusOf(BONDED.upper), modulusOf(BONDED.lower)],
  mismatchStrain: MISMATCH,
});
/** How far the ends rise over the middle, mm. */
export const endRise = (curvature * BONDED.length ** 2) / 8;
/** What the plastic, alone, would be shorter by, mm. */
export const freeShrinking = MISMATCH * BONDED.length;

/**
 * Shear in a joint between layers that would rather be of different lengths, MPa, at x mm from the middle. The law of
 * the pulled joint, τ″ = ω²τ, with nothing pulled at either end: τ = (Δε/gω) sinh ωx / cosh ωh.
 */
export function mismatchShear(setting: StripSetting, mismatch: number, x: number): number {
  const omega = 1 / stripOf(setting).shear.transferLength;
  const reach = (omega * setting.length) / 2;
  const away = Math.exp(omega * Math.abs(x) - reach);
  const shape = (away - away * Math.exp(-2 * omega * Math.abs(x))) / (1 + Math.exp(-2 * reach));
  return (Math.sign(x) * mismatch * shape) / (shearGive(setting) * omega);
}
export const mismatchPeak = mismatchShear(BONDED, MISMATCH, BONDED.length / 2);

/** Shear modulus, MPa. */
function shearModulusOf(name: MaterialName): number {
  const { youngsModulus, poissonRatio } = elastic(name);
  return youngsModulus / (2 * (1 + poissonRatio));
}
/** 1/ω over the thickness of a layer on a rigid one: √(E/3G). */
export const reachOfPlastic = Math.sqrt(
  modulusOf('polyethylene') / (3 * shearModulusOf('polyethylene')),
);
