import fc from 'fast-check';
import {
  designRanges,
  kindWords,
  layoutWords,
  ranges,
  type LayoutKind,
  type RockingSetting,
} from '../../../sims/benches/rocking-bench/settings.ts';

/** Any setting of the bench, whole numbers where it has steps. */
const layouts = Object.keys(layoutWords) as LayoutKind[];
const within = ({ min, max }: { min: number; max: number }) => fc.integer({ min, max });
const design = fc.record({
  layout: fc.constantFrom(...layouts),
  spacing: within(designRanges.spacing),
  kind: fc.constantFrom(...kindWords),
  diameter: within(designRanges.diameter),
  length: within(designRanges.length),
  bed: fc.constantFrom('pressed' as const, 'rough' as const, 'bonded' as const),
});
export const settings: fc.Arbitrary<RockingSetting> = fc.record({
  plane: fc.constantFrom('top-bottom' as const, 'front-back' as const),
  press: within(ranges.press),
  place: within(ranges.place),
  cycles: within(ranges.cycles),
  left: within(ranges.left),
  ballDiameter: within(ranges.ballDiameter),
  mismatch: within(ranges.mismatch),
  height: within(ranges.height),
  width: within(ranges.width),
  modulus: within(ranges.modulus),
  layer: within(ranges.layer),
  yields: fc.boolean(),
  a: design,
  b: design,
});
