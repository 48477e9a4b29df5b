import type { HoldKind } from '../../mechanics/index.ts';
import type { Range } from '../../shared/range.ts';
import {
  choiceField,
  numberField,
  switchField,
  type UrlField,
  type UrlFields,
} from '../../shared/url-state.ts';

/** The two designs that are rocked in the same run. */
export type DesignName = 'a' | 'b';
export const designNames: readonly DesignName[] = ['a', 'b'];

export type LayoutKind = 'none' | 'one' | 'upright' | 'level' | 'four' | 'keel';
/** What the bone under the back can do: press; press and hold against sliding while it does; or pull as well. */
export type BedKind = 'pressed' | 'rough' | 'bonded';
export type PlaneName = 'top-bottom' | 'front-back';

/** A socket’s back: what stands on it, how that holds, and what the bed can do. Lengths mm. */
export interface Design {
  readonly layout: LayoutKind;
  /** Between pegs that stand apart, middle to middle; of four, along the longer way */
  readonly spacing: number;
  readonly kind: HoldKind;
  readonly diameter: number;
  readonly length: number;
  readonly bed: BedKind;
}

/** Everything on the bench that a visitor sets. Lengths mm. */
export interface RockingSetting {
  readonly plane: PlaneName;
  /** N */
  readonly press: number;
  /** Where the ball presses, per cent of the way from the middle to the rim; + is to the front or the top */
  readonly place: number;
  readonly cycles: number;
  /** Per cent of the hold that is left after long slipping */
  readonly left: number;
  readonly ballDiameter: number;
  /** Diametral */
  readonly mismatch: number;
  readonly height: number;
  readonly width: number;
  /** Young’s modulus of the bone, MPa */
  readonly modulus: number;
  /** Of bone that gives */
  readonly layer: number;
  /** Whether the bone yields at its strength, or comes back from any press */
  readonly yields: boolean;
  readonly a: Design;
  readonly b: Design;
}

type Numbers = Exclude<keyof RockingSetting, 'plane' | 'yields' | DesignName>;

export const ranges: Readonly<Record<Numbers, Range>> = {
  press: { min: 50, max: 1000, step: 10, digits: 0, unit: 'N' },
  place: { min: -100, max: 100, step: 1, digits: 0, unit: '%' },
  cycles: { min: 1, max: 50, step: 1, digits: 0, unit: '' },
  left: { min: 10, max: 100, step: 5, digits: 0, unit: '%' },
  ballDiameter: { min: 36, max: 56, step: 1, digits: 0, unit: 'mm' },
  mismatch: { min: 2, max: 14, step: 0.5, digits: 1, unit: 'mm' },
  height: { min: 30, max: 44, step: 1, digits: 0, unit: 'mm' },
  width: { min: 22, max: 34, step: 1, digits: 0, unit: 'mm' },
  modulus: { min: 50, max: 500, step: 1, digits: 0, unit: 'MPa' },
  layer: { min: 3, max: 15, step: 0.5, digits: 1, unit: 'mm' },
};

export const designRanges = {
  spacing: { min: 8, max: 26, step: 1, digits: 0, unit: 'mm' },
  diameter: { min: 3, max: 8, step: 0.5, digits: 1, unit: 'mm' },
  length: { min: 5, max: 15, step: 1, digits: 0, unit: 'mm' },
} as const satisfies Record<string, Range>;

/** Pegs apart keep this much of the back beyond their edge, mm. */
const EDGE = 1.5;
/** Four pegs stand this much closer along the shorter way. */
export const FOUR_ACROSS = 0.6;

/** How far apart the pegs of a layout may stand on a back of this size. */
export function spacingRange(setting: RockingSetting, { layout, diameter }: Design): Range {
  const { height, width } = setting;
  const { spacing } = designRanges;
  const least = Math.ceil(diameter + 1);
  // A corner peg of four must lie inside the ellipse.
  const along =
    layout === 'four'
      ? Math.hypot(1 / height, FOUR_ACROSS / width) ** -1
      : layout === 'level'
        ? width
        : height;
  const most = Math.floor(along - diameter - 2 * EDGE);
  return { ...spacing, min: least, max: Math.max(least, Math.min(spacing.max, most)) };
}

export const layoutWords: Readonly<Record<LayoutKind, string>> = {
  none: 'nothing',
  one: 'one peg in the middle',
  upright: 'two pegs, top and bottom',
  level: 'two pegs, front and back',
  four: 'four pegs',
  keel: 'a keel',
};

export const kindWords: readonly HoldKind[] = [
  'smooth cemented',
  'textured cemented',
  'fluted press-fit',
  'in-grown',
  'keel cemented',
  'metal-backed screw-fixed',
];

const layouts: readonly LayoutKind[] = ['none', 'one', 'upright', 'level', 'four', 'keel'];

const alike: Design = {
  layout: 'one',
  spacing: 20,
  kind: 'smooth cemented',
  diameter: 6,
  length: 10,
  bed: 'pressed',
};

export const defaultSetting: RockingSetting = {
  plane: 'top-bottom',
  press: 500,
  place: 90,
  cycles: 10,
  left: 100,
  ballDiameter: 48,
  mismatch: 6,
  height: 36,
  width: 27,
  modulus: 210,
  layer: 6,
  yields: false,
  a: alike,
  b: { ...alike, layout: 'upright' },
};

const number = (key: string, name: string, of: Numbers): UrlField<number> =>
  numberField(key, name, ranges[of], defaultSetting[of]);

/** One field a thing: the two designs are spread out, so that each stands in the address by itself. */
export type FlatSetting = Omit<RockingSetting, DesignName> & {
  readonly [Key in keyof Design as `a-${Key}`]: Design[Key];
} & { readonly [Key in keyof Design as `b-${Key}`]: Design[Key] };

function designFields(of: DesignName) {
  const usual = defaultSetting[of];
  const says = of.toUpperCase();
  const size = (key: 'spacing' | 'diameter' | 'length') =>
    numberField(`${of}-${key}`, `${says}, ${key}`, designRanges[key], usual[key]);
  return {
    layout: choiceField(`${of}-back`, `${says}, back`, layouts, usual.layout),
    spacing: size('spacing'),
    kind: choiceField(`${of}-hold`, `${says}, hold`, kindWords, usual.kind),
    diameter: size('diameter'),
    length: size('length'),
    bed: choiceField(`${of}-bed`, `${says}, bed`, ['pressed', 'rough', 'bonded'], usual.bed),
  };
}

const [a, b] = [designFields('a'), designFields('b')];

export const rockingFields: UrlFields<FlatSetting> = {
  plane: choiceField('plane', 'plane', ['top-bottom', 'front-back'], defaultSetting.plane),
  press: number('press', 'press', 'press'),
  place: number('place', 'place of the ball', 'place'),
  cycles: number('cycles', 'cycles', 'cycles'),
  left: number('left', 'hold left', 'left'),
  ballDiameter: number('ball', 'ball diameter', 'ballDiameter'),
  mismatch: number('mismatch', 'diametral mismatch', 'mismatch'),
  height: number('height', 'height of the back', 'height'),
  width: number('width', 'width of the back', 'width'),
  modulus: number('bone', 'modulus of the bone', 'modulus'),
  layer: number('layer', 'bone that gives', 'layer'),
  yields: switchField('yields', 'bone yields', defaultSetting.yields),
  'a-layout': a.layout,
  'a-spacing': a.spacing,
  'a-kind': a.kind,
  'a-diameter': a.diameter,
  'a-length': a.length,
  'a-bed': a.bed,
  'b-layout': b.layout,
  'b-spacing': b.spacing,
  'b-kind': b.kind,
  'b-diameter': b.diameter,
  'b-length': b.length,
  'b-bed': b.bed,
};

export function flat({ a: first, b: second, ...rest }: RockingSetting): FlatSetting {
  return {
    ...rest,
    'a-layout': first.layout,
    'a-spacing': first.spacing,
    'a-kind': first.kind,
    'a-diameter': first.diameter,
    'a-length': first.length,
    'a-bed': first.bed,
    'b-layout': second.layout,
    'b-spacing': second.spacing,
    'b-kind': second.kind,
    'b-diameter': second.diameter,
    'b-length': second.length,
    'b-bed': second.bed,
  };
}

export function unflat(state: FlatSetting): RockingSetting {
  const { plane, press, place, cycles, left, ballDiameter, mismatch } = state;
  const { height, width, modulus, layer, yields } = state;
  const common = { plane, press, place, cycles, left, ballDiameter, mismatch };
  return {
    ...common,
    height,
    width,
    modulus,
    layer,
    yields,
    a: {
      layout: state['a-layout'],
      spacing: state['a-spacing'],
      kind: state['a-kind'],
      diameter: state['a-diameter'],
      length: state['a-length'],
      bed: state['a-bed'],
    },
    b: {
      layout: state['b-layout'],
      spacing: state['b-spacing'],
      kind: state['b-kind'],
      diameter: state['b-diameter'],
      length: state['b-length'],
      bed: state['b-bed'],
    },
  };
}
