import type { CementedKeel, CementedPeg } from './cement-volume-types.ts';

/** Holes that touch are as far apart as they need to be; rounding may bring them this much nearer, mm. */
const TOUCHING = 1e-9;

/** @throws RangeError where two holes meet at the bone’s surface, where they are widest */
export function refuseMeeting(
  pegs: readonly CementedPeg[],
  keel: CementedKeel | undefined,
  fitError: number,
): void {
  const radius = ({ diameter, gap }: CementedPeg): number => diameter / 2 + gap + fitError;
  pegs.forEach((peg, i) => {
    pegs.slice(i + 1).forEach((other, j) => {
      const apart = Math.hypot(peg.x - other.x, peg.y - other.y);
      refuse(`pegs ${i + 1} and ${i + j + 2}`, apart, radius(peg) + radius(other));
    });
    if (keel === undefined) return;
    const beyond = (distance: number, size: number): number =>
      Math.max(0, Math.abs(distance) - size / 2 - keel.gap - fitError);
    const apart = Math.hypot(
      beyond(peg.x - keel.x, keel.thickness),
      beyond(peg.y - keel.y, keel.length),
    );
    refuse(`peg ${i + 1} and the slot of the keel`, apart, radius(peg));
  });
}

function refuse(who: string, apart: number, needed: number): void {
  if (apart >= needed - TOUCHING) return;
  throw new RangeError(
    `distance of ${who} is ${apart}; allowed: ${needed} mm and more, so that their holes do not meet`,
  );
}
