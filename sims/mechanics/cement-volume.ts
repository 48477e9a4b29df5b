import { inRange, positive } from '../geometry/numeric.ts';
import { refuseMeeting } from './cement-meeting.ts';
import type {
  CementDesign,
  CementedKeel,
  CementedPeg,
  CementVolume,
  MantleVolume,
} from './cement-volume-types.ts';

/**
 * Cement that fills the holes of pegs and the slot of a keel, below the level of the bone’s surface. Closed form: hole
 * less what is in it. Holes must not meet, for then their cement is no sum; cement under the back is not counted.
 *
 * @param design mm; `fitError` widens and deepens every hole on every side
 * @returns mm³
 * @throws RangeError naming the argument, its value and what is allowed; also for holes that meet
 *
 * Derivation: cylinders and half balls; a keel by the prismoid rule, exact for a section that narrows evenly.
 */
export function cementVolume({ pegs = [], keel, fitError = 0 }: CementDesign): CementVolume {
  inRange('fitError', fitError, 0, Infinity, 'mm');
  const mantles = pegs.map((peg, i) => pegMantle(peg, `peg ${i + 1}`, fitError));
  const slot = keel === undefined ? null : keelMantle(keel, fitError);
  refuseMeeting(pegs, keel, fitError);
  return {
    total: [...mantles, ...(slot === null ? [] : [slot])].reduce(
      (sum, { cement }) => sum + cement,
      0,
    ),
    pegs: mantles,
    keel: slot,
  };
}

function pegMantle(peg: CementedPeg, name: string, fitError: number): MantleVolume {
  const { diameter, length, tip, gap, tipGap = gap, holeEnd = tip } = peg;
  inRange(`x of ${name}`, peg.x, -Infinity, Infinity, 'mm');
  inRange(`y of ${name}`, peg.y, -Infinity, Infinity, 'mm');
  positive(`diameter of ${name}`, diameter, 'mm');
  inRange(`gap of ${name}`, gap, 0, Infinity, 'mm');
  inRange(`tipGap of ${name}`, tipGap, 0, Infinity, 'mm');
  if (tip === 'flat' && holeEnd === 'round') {
    throw new RangeError(`holeEnd of ${name} is round; allowed: flat, for a flat tip`);
  }
  const radius = diameter / 2;
  const holeRadius = radius + gap + fitError;
  const depth = length + tipGap + fitError;
  positive(`length of ${name}`, length, 'mm');
  if (tip === 'round') inRange(`length of ${name}`, length, radius, Infinity, 'mm');
  if (holeEnd === 'round')
    inRange(`depth of the hole of ${name}`, depth, holeRadius, Infinity, 'mm');
  return mantle(pinVolume(holeRadius, depth, holeEnd), pinVolume(radius, length, tip));
}

/** A cylinder, or one that ends in half a ball, with its whole length. */
function pinVolume(radius: number, length: number, end: 'flat' | 'round'): number {
  // Half a ball is a third less than the cylinder round it.
  const missing = end === 'round' ? radius / 3 : 0;
  return Math.PI * radius ** 2 * (length - missing);
}

function keelMantle(keel: CementedKeel, fitError: number): MantleVolume {
  const { length, thickness, height, gap, tipGap = gap } = keel;
  inRange('x of the keel', keel.x, -Infinity, Infinity, 'mm');
  inRange('y of the keel', keel.y, -Infinity, Infinity, 'mm');
  positive('length of the keel', length, 'mm');
  positive('thickness of the keel', thickness, 'mm');
  positive('height of the keel', height, 'mm');
  inRange('gap of the keel', gap, 0, Infinity, 'mm');
  inRange('tipGap of the keel', tipGap, 0, Infinity, 'mm');
  const tipLength = positive('tipLength of the keel', keel.tipLength ?? length, 'mm', length);
  const tipThickness = positive(
    'tipThickness of the keel',
    keel.tipThickness ?? thickness,
    'mm',
    thickness,
  );
  const tapered = (room: number): number => {
    const area = (part: number): number =>
      (length + part * (tipLength - length) + 2 * room) *
      (thickness + part * (tipThickness - thickness) + 2 * room);
    return (height * (area(0) + 4 * area(0.5) + area(1))) / 6;
  };
  const room = gap + fitError;
  // Beyond the tip the slot goes on straight.
  const beyond = (tipLength + 2 * room) * (tipThickness + 2 * room) * (tipGap + fitError);
  return mantle(tapered(room) + beyond, tapered(0));
}

function mantle(hole: number, inside: number): MantleVolume {
  return { hole, inside, cement: Math.max(0, hole - inside) };
}
