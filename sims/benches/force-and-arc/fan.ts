import type { ScapulaView } from './layout.ts';
import type { ForceReading } from './reading.ts';

/** How far the drawn fan reaches beyond the ball, mm. */
export const FAN_BEYOND = 13;

/** Screen direction into the socket along its centre line, rad clockwise from the right: the middle of the fan. */
export function arcAxis(view: ScapulaView, { tilt }: Pick<ForceReading, 'tilt'>): number {
  return Math.atan2(-view.out.y, -view.out.x) + tilt;
}
