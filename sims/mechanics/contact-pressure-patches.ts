import { penetrationOnCap, type CapContact, type CapPose } from './contact-pressure-cap.ts';
import { BANDS, overRings } from './contact-pressure-rings.ts';
import type { Patch } from './contact-pressure-types.ts';

/** Cells in each band of rings. */
const CELLS = 48;

/**
 * The pressed cap cut up for drawing: every band of rings in cells of equal turn. A cell's pressure is its mean and its place
 * the centre of pressure, so that the patches carry the whole load, not nearly.
 *
 * @param direction of the translation, rad
 * @param bed modulus, N/mm³
 */
export function patchesOnCap(
  cap: CapContact,
  pose: CapPose,
  direction: number,
  bed: number,
): readonly Patch[] {
  const count = 2 * BANDS * CELLS;
  const area = new Float64Array(count);
  const volume = new Float64Array(count);
  const x = new Float64Array(count);
  const y = new Float64Array(count);
  const { curvatureRadius } = cap;
  const [sine, cosine] = [Math.sin(pose.tilt), Math.cos(pose.tilt)];
  overRings(pose, cap.halfArc, (band, alpha, weight, half) => {
    const lift = Math.sin(alpha);
    const penetration = penetrationOnCap(cap, pose, alpha);
    const turn = (2 * half) / CELLS;
    const cellArea = curvatureRadius ** 2 * lift * weight * turn;
    const far = Math.cos(alpha) * sine;
    // Mean of a cosine over the turn of a cell.
    const chord = turn > 0 ? Math.sin(turn / 2) / (turn / 2) : 1;
    for (let cell = 0; cell < CELLS; cell++) {
      const at = band * CELLS + cell;
      const middle = (cell + 0.5) * turn - half;
      const share = cellArea * penetration;
      area[at] = (area[at] ?? 0) + cellArea;
      volume[at] = (volume[at] ?? 0) + share;
      const back = lift * chord * Math.cos(middle) * cosine;
      x[at] = (x[at] ?? 0) + share * (far - back);
      y[at] = (y[at] ?? 0) + share * lift * chord * Math.sin(middle);
    }
  });
  const [ahead, aside] = [Math.cos(direction), Math.sin(direction)];
  const patches: Patch[] = [];
  for (let at = 0; at < count; at++) {
    const cell = area[at] ?? 0;
    const pressed = volume[at] ?? 0;
    if (!(cell > 0 && pressed > 0)) continue;
    const along = (curvatureRadius * (x[at] ?? 0)) / pressed;
    const across = (curvatureRadius * (y[at] ?? 0)) / pressed;
    patches.push({
      x: along * ahead - across * aside,
      y: along * aside + across * ahead,
      area: cell,
      pressure: (bed * pressed) / cell,
    });
  }
  return patches;
}
