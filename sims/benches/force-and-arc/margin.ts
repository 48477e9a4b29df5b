import { inDegrees, radians, withTilt, type ForceReading } from './reading.ts';

/** One row of the margin over the tilt. */
export interface MarginRow {
  /** Degrees. */
  readonly tilt: number;
  readonly reading: ForceReading;
}

/** The margin of the present force while the socket is turned from one angle to another, degrees. */
export function marginOverTilt(
  reading: ForceReading,
  [from, to]: readonly [number, number],
  count: number,
): readonly MarginRow[] {
  return Array.from({ length: count }, (_, i) => {
    const tilt = from + ((to - from) * i) / (count - 1);
    return { tilt, reading: withTilt(reading, radians(tilt)) };
  });
}

/** The tilts, degrees, between which the present force stays within the arc; null without a force. */
export function heldTilts({
  state,
  balanceAngle,
  lean,
}: ForceReading): readonly [from: number, to: number] | null {
  if (state === 'no force') return null;
  return [inDegrees(-balanceAngle - lean), inDegrees(balanceAngle - lean)];
}
