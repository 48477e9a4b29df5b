import { isOnFace, rimLine, rimPoint, surfaceHeight, type Face } from '../../geometry/index.ts';

/** x anterior, y superior, z lateral of the deepest point, mm. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** Where a ball lies on a face: its centre, and the place that bears it. */
export interface Seat {
  readonly centre: Place;
  readonly contact: Place;
}

interface Found extends Place {
  /** Height of the ball's centre that this place would bear. */
  readonly height: number;
}

const RAYS = 24;
const SHARES = [0, 0.2, 0.4, 0.6, 0.8, 0.95] as const;
const FIRST_STEP = 2;
/** Places are found to this, mm: finer than any line. */
const FOUND = 1e-5;
const COMPASS = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
] as const;

/**
 * The seat of a ball let down on a face with its centre held over one place: the highest of z + √(r² − distance²).
 *
 * It is for drawing. Climb and ratio come from `pathOverFace`, and tests hold the two against each other.
 *
 * @param direction rad from anterior toward superior
 * @param translation mm from the middle, negative to the opposite side
 */
export function seatOn(
  onFace: Face,
  ballRadius: number,
  direction: number,
  translation: number,
): Seat {
  const x = translation * Math.cos(direction);
  const y = translation * Math.sin(direction);
  const bear = (place: Place): Found => {
    const room = ballRadius ** 2 - (place.x - x) ** 2 - (place.y - y) ** 2;
    return { ...place, height: room < 0 ? -Infinity : place.z + Math.sqrt(room) };
  };
  const inside = onSurface(onFace, bear);
  const edge = onRim(onFace, bear);
  const best = edge.height > inside.height ? edge : inside;
  return {
    centre: { x, y, z: best.height },
    contact: { x: best.x, y: best.y, z: best.z },
  };
}

type Bear = (place: Place) => Found;

/** The highest place of the surface: the best of a coarse look, then by steps that halve. */
function onSurface(onFace: Face, bear: Bear): Found {
  const at = (x: number, y: number): Found => bear({ x, y, z: surfaceHeight(onFace, x, y) });
  let best = at(0, 0);
  for (let i = 0; i < RAYS; i++) {
    const end = rimPoint(onFace, (2 * Math.PI * i) / RAYS);
    for (const share of SHARES) {
      const found = at(end.x * share, end.y * share);
      if (found.height > best.height) best = found;
    }
  }
  for (let step = FIRST_STEP; step > FOUND;) {
    let better = best;
    for (const [dx, dy] of COMPASS) {
      const x = best.x + dx * step;
      const y = best.y + dy * step;
      if (!isOnFace(onFace, x, y)) continue;
      const found = at(x, y);
      if (found.height > better.height) better = found;
    }
    if (better === best) step /= 2;
    else best = better;
  }
  return best;
}

/** The highest place of the rim: the best of its points, then between it and its neighbours. */
function onRim(onFace: Face, bear: Bear): Found {
  const points = rimLine(onFace).map(bear);
  const index = points.reduce(
    (top, { height }, i) => (height > (points[top]?.height ?? -Infinity) ? i : top),
    0,
  );
  const top = points[index];
  if (top === undefined) throw new RangeError('a face has no rim');
  const sides = [index - 1, index + 1].map((i) => points[(i + points.length) % points.length]);
  return sides.reduce<Found>((best, side) => {
    if (side === undefined) return best;
    const between = topBetween(top, side, bear);
    return between.height > best.height ? between : best;
  }, top);
}

function topBetween(a: Place, b: Place, bear: Bear): Found {
  const at = (share: number): Found =>
    bear({
      x: a.x + (b.x - a.x) * share,
      y: a.y + (b.y - a.y) * share,
      z: a.z + (b.z - a.z) * share,
    });
  let low = 0;
  let high = 1;
  while (high - low > 1e-4) {
    const third = (high - low) / 3;
    if (at(low + third).height < at(high - third).height) low += third;
    else high -= third;
  }
  return at((low + high) / 2);
}
