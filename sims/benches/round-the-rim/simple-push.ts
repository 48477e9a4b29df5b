import { directionOf } from './bearing.ts';
import { rimPoint } from '../../geometry/index.ts';
import type { SoundShape } from './sound-shape.ts';
import { wayIn } from './way.ts';

/** A place of the ball's centre in the section through a push, mm: along the push, and up out of the socket. */
export interface BallSpot {
  readonly at: number;
  readonly z: number;
}

/** What a steady push does to a ball that lies in the middle. */
export interface PushedBall {
  readonly isHeld: boolean;
  /** Where its centre goes, from rest on; to where it stays, or out over the edge. */
  readonly path: readonly BallSpot[];
}

/** How far past the edge (share of the ball's radius) a ball that slipped is followed. */
const PAST = 0.5;
const STEPS = 14;

/**
 * Pushes a ball with a side force of `ratio` times the press. It moves on while the ratio of its path is smaller than
 * that, and stays where the two are equal; where they never are it goes out over the edge.
 *
 * @param bearing degrees from forward toward up
 * @param ratio above 0
 */
export function pushBall(sound: SoundShape, bearing: number, ratio: number): PushedBall {
  const { ballRadius } = sound;
  const { out } = wayIn(sound, bearing);
  const spot = (translation: number, climb: number): BallSpot => ({
    at: translation,
    z: ballRadius + climb,
  });
  const beyond = out.findIndex((row) => row.stabilityRatio >= ratio);
  if (beyond > 0) {
    const before = out[beyond - 1];
    const after = out[beyond];
    if (before === undefined || after === undefined) throw new RangeError('a path has no rows');
    const share = (ratio - before.stabilityRatio) / (after.stabilityRatio - before.stabilityRatio);
    const mix = (a: number, b: number): number => a + share * (b - a);
    return {
      isHeld: true,
      path: [
        ...out.slice(0, beyond).map((row) => spot(row.translation, row.climb)),
        spot(mix(before.translation, after.translation), mix(before.climb, after.climb)),
      ],
    };
  }
  const { x, y, z } = rimPoint(sound.face, directionOf(bearing));
  const edge = Math.hypot(x, y);
  const fall = Array.from({ length: STEPS }, (_, i) => {
    const past = ((i + 1) / STEPS) * PAST * ballRadius;
    return { at: edge + past, z: z + Math.sqrt(ballRadius ** 2 - past ** 2) };
  });
  return {
    isHeld: false,
    path: [...out.map((row) => spot(row.translation, row.climb)), ...fall],
  };
}

/** The place a share (0 … 1) of the way along a path, by its length along the push. */
export function spotOn(path: readonly BallSpot[], share: number): BallSpot {
  const first = path[0];
  const last = path.at(-1);
  if (first === undefined || last === undefined) throw new RangeError('a path has no places');
  const wanted = first.at + Math.max(0, Math.min(1, share)) * (last.at - first.at);
  const next = path.findIndex(({ at }) => at >= wanted);
  const b = path[Math.max(0, next)] ?? last;
  const a = path[Math.max(0, next - 1)] ?? first;
  const run = b.at - a.at;
  const part = run > 0 ? (wanted - a.at) / run : 0;
  return { at: a.at + part * run, z: a.z + part * (b.z - a.z) };
}
