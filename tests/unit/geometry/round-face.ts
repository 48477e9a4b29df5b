import { face, type Face, type SphericalSocket } from '../../../sims/geometry/index.ts';

/** The face whose every section through the middle is one and the same spherical socket. */
export const roundFace = ({ curvatureRadius, width }: SphericalSocket): Face =>
  face({
    outline: { kind: 'circle', width, height: width },
    curvatureRadiusAP: curvatureRadius,
    curvatureRadiusSI: curvatureRadius,
  });
