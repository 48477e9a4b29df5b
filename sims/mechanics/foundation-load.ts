/** Relative error at which a load counts as met. */
const LOAD_TOLERANCE = 1e-10;

/** Far more steps than the search needs: halving alone would be done by then. */
const MOST_STEPS = 200;

/**
 * How far the ball must drop below first touch to carry a load, mm, or null where even `limit` is too little.
 *
 * Load rises with drop all but as a power of it: the first power for a fitting ball, the second for a mismatched one,
 * more over the rim. Newton's method on the logarithms is therefore done in a few steps; its slope is the one just
 * measured, and it is kept between a drop that carries too little and one that carries too much.
 *
 * @param loadAt load (N) at a drop (mm); rises with it
 * @param limit largest drop allowed, mm, above 0
 */
export function dropForLoad(
  loadAt: (drop: number) => number,
  load: number,
  limit: number,
): number | null {
  const excess = (logDrop: number): number => Math.log(loadAt(Math.exp(logDrop)) / load);
  let high = Math.log(limit);
  const most = excess(high);
  if (!(most >= 0)) return null;
  let low = -Infinity;
  let [before, excessBefore] = [high, most];
  let now = high - most / 2;
  for (let step = 0; step < MOST_STEPS; step++) {
    const excessNow = excess(now);
    if (Math.abs(excessNow) <= LOAD_TOLERANCE) break;
    if (excessNow < 0) low = now;
    else high = now;
    const slope = (excessNow - excessBefore) / (now - before);
    const newton = now - excessNow / slope;
    [before, excessBefore] = [now, excessNow];
    now = newton > low && newton < high ? newton : between(low, high);
    // Neighbouring numbers: rounding allows no better.
    if (now === before) break;
  }
  return Math.exp(now);
}

/** The middle, or well below the upper end while there is no lower one. */
function between(low: number, high: number): number {
  return low === -Infinity ? high - 3 : (low + high) / 2;
}
