import type { FaceContact } from './contact-pressure-face.ts';
import { deepestOnFace } from './contact-pressure-deepest.ts';
import { marginOnRay } from './contact-pressure-margin.ts';
import type { RayPart } from './contact-pressure-ray.ts';
import { overRays, PANELS } from './contact-pressure-rays.ts';
import { edgeLoadOnRim } from './contact-pressure-rim.ts';
import { GAUSS_NODES, GAUSS_WEIGHTS } from './contact-pressure-rings.ts';
import { RIM_MARGIN } from './contact-pressure-sphere.ts';
import { goTo, penetrationAtSpot, type BallOverFace, type Ray } from './contact-pressure-spot.ts';
import type { ContactSums } from './contact-pressure-types.ts';

/** Panels of Gauss's three-point rule in each pressed stretch of a ray, where penetration is smooth. */
const STRETCH_PANELS = 4;

/** Compressive reaction on the ball at this height, N for a bed modulus of 1 N/mm³. */
export function compressiveOnFace(contact: FaceContact, height: number): number {
  const { ball, sectors, rims, heading } = contact;
  let compressive = 0;
  overRays(ball, sectors, height, PANELS, ({ ray, weight, parts }) => {
    for (const part of parts) compressive += weight * pressedAlong(ball, ray, part, height);
  });
  return compressive + edgeLoadOnRim(ball, rims, height, heading).compressive;
}

/** ∫ h ρ dρ over a stretch of a ray: its pressure’s part along the centre line, as n dA = (−z_x, −z_y, 1) dx dy. */
function pressedAlong(ball: BallOverFace, ray: Ray, part: RayPart, height: number): number {
  let sum = 0;
  alongPart(ball, ray, part, STRETCH_PANELS, (distance, weight) => {
    sum += weight * distance * penetrationAtSpot(ball, height);
  });
  return sum;
}

/** Takes the spot along a stretch of a ray, by Gauss's rule. */
export function alongPart(
  ball: BallOverFace,
  ray: Ray,
  { from, to, onLip }: RayPart,
  panels: number,
  visit: (distance: number, weight: number, panel: number) => void,
): void {
  const length = to - from;
  for (let panel = 0; panel < panels; panel++) {
    for (let node = 0; node < 3; node++) {
      const distance = from + (length * (panel + (GAUSS_NODES[node] ?? 0))) / panels;
      goTo(ball, ray, distance, onLip);
      visit(distance, (length * (GAUSS_WEIGHTS[node] ?? 0)) / panels, panel);
    }
  }
}

/** All sums at this height, for a bed modulus of 1 N/mm³. */
export function sumsOnFace(contact: FaceContact, height: number): ContactSums {
  const { ball, sectors, rims, heading } = contact;
  const [cosine, sine] = heading;
  const { spot } = ball;
  let [total, area, compressive, nearRim] = [0, 0, 0, 0];
  let [inwardX, inwardY, momentX, momentY] = [0, 0, 0, 0];
  let [deepestThere, near, spacing] = [0, 0, 0];
  overRays(ball, sectors, height, PANELS, ({ ray, weight, parts, spacing: beside }) => {
    const margin = parts.length > 0 ? marginOnRay(ball, ray, RIM_MARGIN) : 0;
    for (const part of parts) {
      alongPart(ball, ray, part, STRETCH_PANELS, (distance, step) => {
        const flat = weight * step * distance;
        const penetration = penetrationAtSpot(ball, height);
        const bit = flat * Math.sqrt(1 + spot.zx * spot.zx + spot.zy * spot.zy);
        if (penetration > deepestThere)
          [deepestThere, near, spacing] = [penetration, ray.angle, beside];
        area += bit;
        total += bit * penetration;
        momentX += bit * penetration * spot.x;
        momentY += bit * penetration * spot.y;
        compressive += flat * penetration;
        inwardX += flat * penetration * spot.zx;
        inwardY += flat * penetration * spot.zy;
      });
      if (part.to > margin) {
        const within = { ...part, from: Math.max(margin, part.from) };
        nearRim += weight * pressedAlong(ball, ray, within, height);
      }
    }
  });
  const edge = edgeLoadOnRim(ball, rims, height, heading);
  const deepest = deepestOnFace(contact, height, near, spacing);
  return {
    state: deepest.isOnRim
      ? 'on the rim edge'
      : edge.compressive > 0
        ? 'cut by the rim'
        : 'on the face',
    total,
    reaction: {
      compressive: compressive + edge.compressive,
      side: inwardX * cosine + inwardY * sine + edge.side,
      cross: inwardY * cosine - inwardX * sine + edge.cross,
    },
    edge,
    nearRim: nearRim + edge.compressive,
    area,
    deepest: deepest.penetration,
    centre: [
      (momentX * cosine + momentY * sine) / total,
      (momentY * cosine - momentX * sine) / total,
    ],
  };
}
