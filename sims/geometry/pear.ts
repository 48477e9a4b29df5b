/**
 * The family of pears, b = a √(1 − η²)(1 − kη + cη²): which k and c give a ratio of upper width to width. See
 * {@link Outline} in outline.ts.
 */

export const ELLIPSE_UPPER_SHARE = Math.sqrt(3) / 2;
const GREATEST_SKEW = Math.SQRT1_2;
const GREATEST_FULLNESS = 0.5;

/** Upper width over width of the most pointed and of the fullest pear that is still convex. */
export const LEAST_UPPER_SHARE = upperShare(GREATEST_SKEW);
export const GREATEST_UPPER_SHARE = ELLIPSE_UPPER_SHARE * (1 + GREATEST_FULLNESS / 4);

/** Greatest value of √(1 − η²)(1 − kη); it lies where 2kη² − η − k = 0. */
export function widest(skew: number): number {
  const eta = (-2 * skew) / (1 + Math.sqrt(1 + 8 * skew * skew));
  return Math.sqrt(1 - eta * eta) * (1 - skew * eta);
}

function upperShare(skew: number): number {
  return (ELLIPSE_UPPER_SHARE * (1 - skew / 2)) / widest(skew);
}

/** The skew that gives a ratio of the two widths: by halving, as the ratio falls with it. None from the ellipse's on. */
export function skewFor(share: number): number {
  if (share >= ELLIPSE_UPPER_SHARE) return 0;
  let low = 0;
  let high = GREATEST_SKEW;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (upperShare(middle) > share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The fullness that does: none up to the ellipse's ratio. */
export function fullnessFor(share: number): number {
  return Math.max(0, 4 * (share / ELLIPSE_UPPER_SHARE - 1));
}
