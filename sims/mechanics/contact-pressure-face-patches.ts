import type { FaceContact } from './contact-pressure-face.ts';
import { alongPart } from './contact-pressure-face-sums.ts';
import { overRays, PANELS_DRAWN } from './contact-pressure-rays.ts';
import { penetrationAtSpot } from './contact-pressure-spot.ts';
import type { Patch } from './contact-pressure-types.ts';

/** Patches along each pressed stretch of a ray. */
const CELLS = 24;

/**
 * The pressed patch of a face cut up along its rays. A cell's pressure is its mean and its place the centre of pressure.
 *
 * @param bed modulus, N/mm³
 */
export function patchesOnFace(contact: FaceContact, height: number, bed: number): readonly Patch[] {
  const { ball, sectors } = contact;
  const { spot } = ball;
  const patches: Patch[] = [];
  overRays(ball, sectors, height, PANELS_DRAWN, ({ ray, weight, parts }) => {
    for (const part of parts) {
      let [area, pressed, out] = [0, 0, 0];
      let last = 0;
      const finish = (): void => {
        if (!(area > 0 && pressed > 0)) return;
        const distance = out / pressed;
        patches.push({
          x: distance * ray.cosine,
          y: distance * ray.sine,
          area,
          pressure: (bed * pressed) / area,
        });
      };
      alongPart(ball, ray, part, CELLS, (distance, step, cell) => {
        if (cell !== last) {
          finish();
          [area, pressed, out, last] = [0, 0, 0, cell];
        }
        const bit = weight * step * distance * Math.sqrt(1 + spot.zx * spot.zx + spot.zy * spot.zy);
        const share = bit * penetrationAtSpot(ball, height);
        area += bit;
        pressed += share;
        out += share * distance;
      });
      finish();
    }
  });
  return patches;
}
