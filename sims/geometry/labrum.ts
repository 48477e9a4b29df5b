import { positive } from './numeric.ts';

/**
 * A rigid labral lip: it raises the surface linearly over the outer `width` mm, to `height` mm at the outline. The width
 * is measured along the ray from the middle of the face, so the lip's inner edge lies `width` mm inward of the outline
 * on every ray. Where a defect has taken the bone, its lip is gone as well; a bare edge has none.
 */
export interface Labrum {
  /** Rise at the outline, mm. */
  readonly height: number;
  /** mm, along the ray from the middle. */
  readonly width: number;
}

/** @throws RangeError for a height or width that is not finite and positive, or a lip wider than the face */
export function checkedLabrum(labrum: Labrum, shortestRadius: number): Labrum {
  const unit = 'mm (the shortest way from the middle to the rim)';
  return {
    height: positive('labrum.height', labrum.height, 'mm'),
    width: positive('labrum.width', labrum.width, unit, shortestRadius),
  };
}

/** How much the lip adds to the surface, mm, on a ray where the outline lies at `radius`. */
export function labrumRise(labrum: Labrum | undefined, radius: number, distance: number): number {
  if (labrum === undefined) return 0;
  const inward = Math.min(labrum.width, Math.max(0, radius - distance));
  return labrum.height * (1 - inward / labrum.width);
}
