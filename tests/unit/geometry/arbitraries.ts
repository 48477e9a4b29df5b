import fc from 'fast-check';
import {
  socketFromDepth,
  sphericalSocket,
  type SphericalSocket,
} from '../../../sims/geometry/index.ts';

/** A socket with a ball that fits it. */
export interface Pair {
  readonly socket: SphericalSocket;
  readonly ballRadius: number;
}

const degree = Math.PI / 180;

/** A real number, all parts of the range alike. (`fc.double` mostly gives numbers next to 0.) */
export const real = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 2 ** 31 - 1 }).map((i) => min + (max - min) * (i / (2 ** 31 - 1)));

/** A number from 0 to 1, both ends included and often hit. */
export const fraction = fc.oneof(
  { weight: 1, arbitrary: fc.constantFrom(0, 0.5, 1) },
  {
    weight: 8,
    arbitrary: real(1e-9, 1),
  },
);

const widths = real(5, 120);

const withArc = (minimum: number, maximum: number): fc.Arbitrary<SphericalSocket> =>
  fc.tuple(widths, real(minimum, maximum)).map(([width, halfArc]) =>
    sphericalSocket({
      width,
      curvatureRadius: Math.max(width / 2, width / 2 / Math.sin(halfArc)),
    }),
  );

/** Half arcs as shoulder sockets and their components have them. */
export const ordinarySocket = withArc(5 * degree, 70 * degree);

/** Depth a thousandth of the width and less. */
export const shallowSocket = fc
  .tuple(widths, real(-8, -3))
  .map(([width, power]) => socketFromDepth({ width, depth: width * 10 ** power }));

/** Half arc from 85° up to the hemisphere itself. */
export const deepSocket = fc.oneof(
  withArc(85 * degree, 90 * degree),
  widths.map((width) => sphericalSocket({ width, curvatureRadius: width / 2 })),
);

/** Any hollow socket: ordinary, shallow or deep. */
export const anySocket = fc.oneof(ordinarySocket, shallowSocket, deepSocket);

/**
 * The same with a ball: the socket's own radius, as good as that, a hair less, or anything down to a fiftieth.
 */
export const pairOf = (sockets: fc.Arbitrary<SphericalSocket>): fc.Arbitrary<Pair> =>
  fc
    .tuple(
      sockets,
      fc.oneof(
        fc.constantFrom(1, 1 - 5e-10, 1 + 5e-10),
        real(-7, -2).map((power) => 1 - 10 ** power),
        real(0.02, 1),
      ),
    )
    .map(([socket, conformity]) => ({ socket, ballRadius: socket.curvatureRadius * conformity }));

/** As {@link pairOf}, without the conforming and the nearly conforming. */
export const mismatchedPairOf = (sockets: fc.Arbitrary<SphericalSocket>): fc.Arbitrary<Pair> =>
  fc
    .tuple(sockets, real(0.02, 0.98))
    .map(([socket, conformity]) => ({ socket, ballRadius: socket.curvatureRadius * conformity }));

/** Coulomb coefficients from none to far more than any bearing has. */
export const friction = fc.oneof(fc.constant(0), real(0, 0.5), real(0, 20));
