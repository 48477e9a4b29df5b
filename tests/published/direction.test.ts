import { describe } from 'vitest';
import { sphericalSocket } from '../../sims/geometry/index.ts';
import { forceOnSocket, restUnderForce } from '../../sims/mechanics/index.ts';
import { fact, runChecks, type PublishedCheck } from './check.ts';
import { spread } from './sockets.ts';

const degree = Math.PI / 180;
const straight = [0, 0, -100] as const;

/** A socket 28 mm wide that holds to a ratio: R sin β = 14 mm, tan β the ratio. */
function holdingTo(ratio: number): ReturnType<typeof sphericalSocket> {
  return sphericalSocket({ width: 28, curvatureRadius: 14 / Math.sin(Math.atan(ratio)) });
}

/** Share of the margin under a straight force that a tilt of the socket (degrees) has used up. */
function marginUsed(
  socket: ReturnType<typeof sphericalSocket>,
  tilt: { readonly version?: number; readonly inclination?: number },
): number {
  const margin = (version = 0, inclination = 0): number =>
    restUnderForce({
      socket,
      ballRadius: 0.9 * socket.curvatureRadius,
      force: straight,
      version: version * degree,
      inclination: inclination * degree,
    }).marginAngle;
  return 1 - margin(tilt.version, tilt.inclination) / margin();
}

/*
 * Wu 2005, J Biomech 38:981–992 (from memory): axes of a right scapula, x anterior, y superior, z lateral. A socket that
 * looks back is pushed on toward its back edge by a straight force, one that looks up toward its upper edge.
 */
const frame: readonly PublishedCheck[] = [
  {
    kind: 'hard',
    what: 'direction on the face under retroversion, °: posterior',
    sources: ['isb-shoulder-2005'],
    compute: () => forceOnSocket({ force: straight, version: 0.2 }).direction / degree,
    expected: 180,
    tolerance: 1e-9,
    why: 'A convention, and the geometry of it.',
  },
  {
    kind: 'hard',
    what: 'direction on the face under superior inclination, °: superior',
    sources: ['isb-shoulder-2005'],
    compute: () => forceOnSocket({ force: straight, inclination: 0.2 }).direction / degree,
    expected: 90,
    tolerance: 1e-9,
    why: 'A convention, and the geometry of it.',
  },
];

const anterior = fact('stability-ratio-anterior-intact');
const anteriorScatter = fact('stability-ratio-anterior-intact', 'sd');

/** Sockets of components from front to back, in the proportions of Iannotti's mean face. */
const components = spread(
  fact('component-height-range', 'low'),
  fact('component-height-range', 'high'),
  5,
).flatMap((height) =>
  spread(fact('component-radius-range', 'low'), fact('component-radius-range', 'high'), 4).map(
    (curvatureRadius) =>
      sphericalSocket({
        curvatureRadius,
        width: (height * fact('face-lower-width')) / fact('face-height'),
      }),
  ),
);

/*
 * Are tilts that shoulders have, and tilts that studies warn of, ones that a socket can hold at all? Plausibility only:
 * how far a shoulder may be tilted is not for this arithmetic to say, as muscles turn their pull along with it.
 */
const tilts: readonly PublishedCheck[] = [
  {
    // Matsumura 2014, abstract: −9 to 13° in 410 shoulders. Yamamoto 2009, abstract: ratio 0.32 (0.06) forward.
    kind: 'band',
    what: 'share of the margin that the normal socket farthest off uses up',
    sources: ['matsumura-2014', 'yamamoto-2009'],
    compute: () =>
      [fact('socket-retroversion', 'low'), fact('socket-retroversion', 'high')].flatMap((version) =>
        [anterior - anteriorScatter, anterior, anterior + anteriorScatter].map((ratio) =>
          marginUsed(holdingTo(ratio), { version: Math.abs(version) }),
        ),
      ),
    expected: 0.5,
    tolerance: 0.5,
    why: 'No normal shoulder slips out under a straight pull: more than none, less than all. Forward stands for backward.',
  },
  {
    // PMC12925909, abstract: 7.1° (4.1) of upward tilt. Lippitt 1993, abstract: up to 0.60 upward.
    kind: 'band',
    what: 'share of the upward margin that two deviations of inclination use up',
    sources: ['labrum-shape-mri', 'lippitt-1993'],
    compute: () =>
      marginUsed(holdingTo(fact('stability-ratio-intact-greatest')), {
        inclination: fact('bony-inclination') + 2 * fact('bony-inclination', 'sd'),
      }),
    expected: 0.5,
    tolerance: 0.5,
    why: 'As above.',
  },
  {
    // Farron 2006, abstract: correct beyond 10°. Ho 2013, abstract: odds 5.23 at 15° and more.
    kind: 'band',
    what: 'share of a component’s margin that the retroversions of two warnings use up',
    sources: ['farron-2006', 'ho-2013', 'iannotti-1992'],
    compute: () =>
      [fact('retroversion-to-correct'), 15].flatMap((version) =>
        components.map((socket) => marginUsed(socket, { version })),
      ),
    expected: 0.6,
    tolerance: 0.4,
    why: 'Both warn of loosening, not of slipping out: they should come before the margin is gone, and not when it is whole.',
  },
];

describe('frame of version and inclination', () => runChecks(frame));
describe('tilts and margins', () => runChecks(tilts));
