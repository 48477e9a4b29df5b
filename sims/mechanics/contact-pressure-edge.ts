import type { CapContact, CapPose } from './contact-pressure-cap.ts';
import { penetrationOnCap } from './contact-pressure-cap.ts';
import { GAUSS_NODES, GAUSS_WEIGHTS, halfTurn } from './contact-pressure-rings.ts';

const PANELS = 12;

/** What the edge of the layer adds to the pressure on its face. */
export interface EdgeLoad {
  /** Part along the centre line that helps to carry the ball, N. */
  readonly compressive: number;
  /** Part against the translation, N: negative, as the edge pushes the ball outward. */
  readonly side: number;
}

/**
 * The line load with which the rim, where it cuts the pressed cap, bears on a smooth ball: ½ k h² for each millimetre
 * of rim, h the penetration there, within the face and outward. For a bed modulus of 1 N/mm³.
 *
 * Derivation: a smooth ball can be pushed along its own normal only. Where that leans from the socket's normal, a spring
 * that bears p = kh along the socket's normal also bears p ∂h/∂s along the face, which is ∂(½kh²)/∂s. Summed over a
 * face this cancels, but for its value on the border, and there is none where the pressure fades to zero. So it is felt
 * at the rim alone. Without it the sum of the forces would not be the slope of the stored energy, and a stiff layer
 * would not come to the rigid ball on the rim, whose force leans less and less as it climbs. (The curvature of the face
 * leaves a rest of h/R in the pressure, a thousandth, which is dropped.)
 */
export function edgeLoadOnCap(cap: CapContact, pose: CapPose): EdgeLoad {
  const { halfArc, curvatureRadius } = cap;
  const { tilt, reach } = pose;
  if (reach <= Math.abs(halfArc - tilt)) return { compressive: 0, side: 0 };
  const end = reach >= halfArc + tilt ? Math.PI : halfTurn(halfArc, tilt, reach);
  const [sine, cosine] = [Math.sin(halfArc), Math.cos(halfArc)];
  const nearest = Math.sin((halfArc - tilt) / 2) ** 2;
  const widening = sine * Math.sin(tilt);
  let energy = 0;
  let outward = 0;
  for (let panel = 0; panel < PANELS; panel++) {
    for (let node = 0; node < 3; node++) {
      const turn = (end * (panel + (GAUSS_NODES[node] ?? 0))) / PANELS;
      const alpha =
        2 * Math.asin(Math.min(1, Math.sqrt(nearest + widening * Math.sin(turn / 2) ** 2)));
      const penetration = penetrationOnCap(cap, pose, alpha);
      // Both sides of the plane: twice ½h².
      const strength = ((GAUSS_WEIGHTS[node] ?? 0) / PANELS) * penetration ** 2;
      energy += strength;
      if (tilt > 0) outward += strength * Math.cos(turn);
    }
  }
  const length = curvatureRadius * sine * end;
  return { compressive: length * sine * energy, side: -length * cosine * outward };
}
