import { contactPoint } from '../../figures/section.ts';
import { climbAt } from '../../geometry/index.ts';
import { turned, type Place } from './layout.ts';
import type { ForceReading } from './reading.ts';
import type { Settled } from './settle.ts';

/** Where the ball is drawn, mm on the scapula. */
export interface BallPose {
  readonly centre: Place;
  /** Where it touches; null where it is leaving. */
  readonly contact: Place | null;
  /** Which way it leaves, of length 1; null where it is held. Drawn to be seen, not computed. */
  readonly leaving: Place | null;
}

/** How far over the rim a leaving ball is drawn, rad: a picture of leaving, not a position. */
const TIPPED = 0.25;
const LIFTED = 5;

/** The ball at its place of rest, where the simulation has it, or leaving. */
export function ballPose(reading: ForceReading, measured: Settled | null): BallPose {
  const { cup, tilt, angle, state, translation } = reading;
  const { socket, ballRadius } = cup;
  const side = angle !== null && angle < 0 ? -1 : 1;
  const onScapula = ({ aside, out }: Place): Place => turned({ aside: side * aside, out }, tilt);
  const half = socket.width / 2;
  const held = (moved: number, climb: number): BallPose => {
    const touch = contactPoint(socket, ballRadius, Math.min(Math.abs(moved), half));
    return {
      centre: onScapula({ aside: moved, out: ballRadius + climb }),
      contact: onScapula({ aside: moved < 0 ? -touch.x : touch.x, out: touch.z }),
      leaving: null,
    };
  };
  const away = onScapula({ aside: Math.cos(TIPPED), out: -Math.sin(TIPPED) });
  if (measured !== null) {
    const pose = held(measured.translation, measured.climb);
    return measured.translation < half ? pose : { ...pose, contact: null, leaving: away };
  }
  if (translation !== null) {
    const moved = Math.abs(translation);
    return held(moved, climbAt(socket, ballRadius, moved));
  }
  if (state === 'no force') return held(0, 0);
  const lift = state === 'pulled off the socket' ? LIFTED : 0;
  return {
    centre: onScapula({
      aside: half + (ballRadius + lift) * Math.sin(TIPPED),
      out: socket.depth + (ballRadius + lift) * Math.cos(TIPPED),
    }),
    contact: null,
    leaving: away,
  };
}
