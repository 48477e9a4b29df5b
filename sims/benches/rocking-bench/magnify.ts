import type { PlanePose } from '../../physics/rocking-springs.ts';
import type { View } from '../../figures/view.ts';
import type { Posed } from './posed.ts';

const ROUND = [500, 200, 100, 50, 20, 10, 5, 2, 1] as const;
/** The largest movement of the back is drawn no longer than this, mm. */
const LONGEST = 4.6;

/** How many times the sockets’ movement is drawn: the largest round number that keeps the pictures in bounds. */
export function magnification(posed: readonly Posed[]): number {
  const largest = posed
    .filter(({ state }) => !isLost(state))
    .reduce((most, { liftOff, pressIn }) => Math.max(most, liftOff, pressIn), 0);
  return ROUND.find((times) => times * largest <= LONGEST) ?? 1;
}

/**
 * The same where the movement is to be drawn as large from one picture to the next: `usual` times, and less only where it
 * would leave the picture. Lost ones count too.
 */
export function steadyMagnification(posed: readonly Posed[], usual: number): number {
  const largest = posed.reduce((most, { liftOff, pressIn }) => Math.max(most, liftOff, pressIn), 0);
  return Math.min(usual, LONGEST / Math.max(largest, Number.MIN_VALUE));
}

export const isLost = (state: Posed['state']): boolean =>
  state === 'overturned' || state === 'sliding';

/** A place of the socket, mm, carried along by its movement drawn `times` as large. */
export function carried(
  { x, z, turn }: PlanePose,
  times: number,
  at: { readonly x: number; readonly z: number },
): { readonly x: number; readonly z: number } {
  return { x: at.x + times * (x - turn * at.z), z: at.z + times * (z + turn * at.x) };
}

/** The same as an SVG transform of the unmoved drawing. Small turns only move places; a turn drawn large also grows. */
export function carriedTransform({ x, z, turn }: PlanePose, times: number, view: View): string {
  const [originX, originY] = [view.x(0), view.y(0)];
  const shear = times * turn;
  const right = view.scale * times * x - shear * originY;
  const down = shear * originX - view.scale * times * z;
  return `matrix(1 ${text(-shear)} ${text(shear)} 1 ${text(right)} ${text(down)})`;
}

function text(value: number): string {
  return String(Number(value.toFixed(5)));
}
