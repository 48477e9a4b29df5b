import {
  climbAt,
  contactAt,
  peakStabilityRatio,
  rimContactTranslation,
  stabilityRatioAt,
} from '../../geometry/index.ts';
import type { Cup } from '../shared/cup-setting.ts';
import { areaUnderRatio } from './area.ts';

/** What the instrument reads with the ball at one place. */
export interface TracerReading {
  /** Signed, mm: to the left negative. */
  readonly translation: number;
  /** mm */
  readonly climb: number;
  /** Slope of the path there, without friction. */
  readonly stabilityRatio: number;
  /** Side force ÷ compressive load with friction; Infinity where no side force moves the ball. */
  readonly ratioWithFriction: number;
  /** Tilt of the contact normal, rad. */
  readonly angle: number;
  readonly place: 'inside' | 'rim';
  /** Area under the ratio as far as the ball has come, mm, by summation. */
  readonly areaSoFar: number;
  readonly wholeArea: number;
  readonly depth: number;
  readonly peak: number;
  readonly peakWithFriction: number;
  /** Translation at which the peak is met, mm. */
  readonly rimContact: number;
}

/** Reads every number for a cup, a friction and a place; a place outside the cup is brought to its rim. */
export function readTracer(cup: Cup, friction: number, position: number): TracerReading {
  const { socket, ballRadius } = cup;
  const reach = socket.width / 2;
  const translation = Math.max(-reach, Math.min(reach, position));
  const distance = Math.abs(translation);
  const { angle, place } = contactAt(socket, ballRadius, distance);
  return {
    translation,
    climb: climbAt(socket, ballRadius, distance),
    stabilityRatio: stabilityRatioAt(socket, ballRadius, distance),
    ratioWithFriction: stabilityRatioAt(socket, ballRadius, distance, friction),
    angle,
    place,
    areaSoFar: areaUnderRatio(cup, distance),
    wholeArea: areaUnderRatio(cup, reach),
    depth: socket.depth,
    peak: peakStabilityRatio(socket),
    peakWithFriction: peakStabilityRatio(socket, friction),
    rimContact: rimContactTranslation(socket, ballRadius),
  };
}
