import fc from 'fast-check';
import { defaultShape } from '../../../sims/benches/round-the-rim/presets.ts';
import {
  rimRanges,
  type RimField,
  type RimShape,
} from '../../../sims/benches/round-the-rim/setting.ts';

const whole = (field: RimField): fc.Arbitrary<number> => {
  const { min, max, step } = rimRanges[field];
  return fc.integer({ min: 0, max: Math.round((max - min) / step) }).map((i) => min + i * step);
};

/** Any shape the controls can be asked for, possible or not. */
export const anyShape: fc.Arbitrary<RimShape> = fc.record({
  outline: fc.constantFrom('pear', 'ellipse', 'circle'),
  height: whole('height'),
  width: whole('width'),
  upperWidth: whole('upperWidth'),
  sameRadius: fc.boolean(),
  radiusAP: whole('radiusAP'),
  radiusSI: whole('radiusSI'),
  lip: fc.boolean(),
  lipHeight: whole('lipHeight'),
  lipWidth: whole('lipWidth'),
  defect: fc.constantFrom('none', 'cut', 'segment'),
  clock: whole('clock'),
  defectDepth: whole('defectDepth'),
  ballDiameter: whole('ballDiameter'),
});

/** Numbers no control gives. */
export const wildNumber = fc.oneof(
  fc.constantFrom(NaN, Infinity, -Infinity, 0, -1, 1e9),
  fc.double({ min: -100, max: 100, noNaN: true }),
);

export const shapeWith = (change: Partial<RimShape>): RimShape => ({ ...defaultShape, ...change });

export const plainly = (text: string): string => text.replaceAll('\u00a0', ' ');
