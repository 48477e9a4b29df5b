import fc from 'fast-check';
import type { FaceInput } from '../../../sims/geometry/index.ts';
import { real } from './arbitraries.ts';
import type { OracleInput } from './face-oracle.ts';

/** A face both the module and the oracle can be made of. */
export type TestFace = FaceInput & OracleInput;

/** The pear that all measurements of speed are made with: a lip, and 5 mm of bone gone in front. */
export const wornPear: TestFace = {
  outline: { kind: 'pear', width: 29, height: 39, upperWidth: 23 },
  curvatureRadiusAP: 40,
  curvatureRadiusSI: 27,
  labrum: { height: 2.5, width: 4 },
  defect: { direction: 0.3, depth: 5, kind: 'cut' },
};

export const direction = real(0, 2 * Math.PI);

export const anyOutline = fc.oneof(
  real(15, 40).map((width) => ({ kind: 'circle' as const, width, height: width })),
  fc.tuple(real(15, 40), real(0.4, 2.5)).map(([width, tallness]) => ({
    kind: 'ellipse' as const,
    width,
    height: width * tallness,
  })),
  fc.tuple(real(15, 40), real(0.9, 1.8), real(0.5, 0.96)).map(([width, tallness, upper]) => ({
    kind: 'pear' as const,
    width,
    height: width * tallness,
    upperWidth: width * upper,
  })),
);

const anyLabrum = fc.option(fc.record({ height: real(0.1, 4), width: real(1, 2.8) }), {
  nil: undefined,
});

const anyDefect = (width: number, height: number) =>
  fc.option(
    fc.record({
      direction,
      depth: real(0.3, 0.28 * Math.min(width, height)),
      kind: fc.constantFrom('cut' as const, 'segment' as const),
      span: real(0.3, 2.5),
    }),
    { nil: undefined },
  );

/** Any face that can be: any outline, one radius or two, with and without lip and defect. */
export const anyFace: fc.Arbitrary<TestFace> = anyOutline.chain((outline) => {
  const reach = 0.55 * Math.hypot(outline.width, outline.height);
  return fc
    .record({
      a: real(1, 2.5),
      b: real(1, 2.5),
      isSphere: fc.boolean(),
      labrum: anyLabrum,
      defect: anyDefect(outline.width, outline.height),
    })
    .map(({ a, b, isSphere, labrum, defect }) => ({
      outline,
      curvatureRadiusAP: reach * a,
      curvatureRadiusSI: reach * (isSphere ? a : b),
      labrum,
      defect,
    }));
});

/** A ball for it, of 3 mm and more: much smaller than the hollow, a little, a hair, exactly as large, and larger. */
export const ballFor = (input: TestFace): fc.Arbitrary<number> => {
  const smaller = Math.min(input.curvatureRadiusAP, input.curvatureRadiusSI);
  return fc
    .oneof(
      { weight: 1, arbitrary: fc.constantFrom(1, 1 - 1e-6, 1 - 1e-3) },
      { weight: 3, arbitrary: real(0.5, 1) },
      { weight: 1, arbitrary: real(0.1, 0.5) },
      { weight: 1, arbitrary: real(1, 2) },
    )
    .map((conformity) => Math.max(3, conformity * smaller));
};

/** A face and a ball. */
export const anyFaceAndBall = anyFace.chain((input) =>
  ballFor(input).map((ballRadius) => ({ input, ballRadius })),
);
