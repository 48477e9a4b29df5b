import { describe, expect, test } from 'vitest';
import { canSettle, settle, type Settled } from '../../../sims/benches/force-and-arc/settle.ts';
import {
  frictionAngle,
  rimContactTranslation,
  socketFromDepth,
  sphericalSocket,
  type SphericalSocket,
} from '../../../sims/geometry/index.ts';
import { forceOnSocket, restPosition, type ForceOnSocket } from '../../../sims/mechanics/index.ts';

const TIME_LIMIT = 180_000;
/** What the simulation may be off by: the larger of the two. */
const LENGTH = 0.1;
const SHARE = 0.03;

interface GridCup {
  readonly socket: SphericalSocket;
  readonly ballRadius: number;
}

const cups: readonly GridCup[] = [
  { socket: socketFromDepth({ depth: 4, width: 28 }), ballRadius: 24 },
  { socket: socketFromDepth({ depth: 1.5, width: 28 }), ballRadius: 24 },
  { socket: socketFromDepth({ depth: 2, width: 20 }), ballRadius: 20 },
  { socket: socketFromDepth({ depth: 8, width: 40 }), ballRadius: 28 },
  { socket: sphericalSocket({ curvatureRadius: 24, width: 30 }), ballRadius: 24 },
  { socket: sphericalSocket({ curvatureRadius: 40, width: 44 }), ballRadius: 30 },
];

/** A force turned by so much from the centre line. */
function turned(angle: number, size = 400): ForceOnSocket {
  return forceOnSocket({ force: [0, size * Math.sin(angle), -size * Math.cos(angle)] });
}

interface Row extends GridCup {
  readonly friction: number;
  readonly angle: number;
  readonly measured: Settled;
}

function run(cup: GridCup, friction: number, angle: number): Row {
  return { ...cup, friction, angle, measured: settle({ ...cup, friction, force: turned(angle) }) };
}

function rows(shares: readonly number[], frictions: readonly number[]): readonly Row[] {
  return cups.flatMap((cup) =>
    frictions.flatMap((friction) =>
      shares.map((share) =>
        run(cup, friction, share * (cup.socket.halfArc + frictionAngle(friction))),
      ),
    ),
  );
}

describe('the ball left to find its place', () => {
  test(
    'rests where restPosition says while the force is inside the arc',
    () => {
      const inside = rows([0, 0.25, 0.5, 0.75, 0.95], [0, 0.1, 0.3]);
      let worst = 0;
      for (const { socket, ballRadius, friction, angle, measured } of inside) {
        const { range } = restPosition({ socket, ballRadius, forceAngle: angle, friction });
        // The ball comes from the middle, so friction stops it at the inner end of the range.
        const theory = range?.[0] ?? NaN;
        const error = Math.abs(measured.translation - theory);
        worst = Math.max(worst, error);
        expect(measured.outcome).toBe('held');
        expect(error).toBeLessThanOrEqual(Math.max(LENGTH, SHARE * theory));
      }
      process.stdout.write(`rest: ${inside.length} cases, worst ${worst.toFixed(4)} mm\n`);
    },
    TIME_LIMIT,
  );

  test(
    'goes over when the force is outside the arc',
    () => {
      const outside = rows([1.04, 1.2], [0, 0.1, 0.3]);
      for (const { socket, ballRadius, friction, angle, measured } of outside) {
        const { state } = restPosition({ socket, ballRadius, forceAngle: angle, friction });
        expect(state).toBe('over the rim');
        expect(measured.outcome).toBe('over the rim');
      }
    },
    TIME_LIMIT,
  );

  test('a flat socket holds by friction alone', () => {
    const cup = { socket: socketFromDepth({ depth: 0, width: 28 }), ballRadius: 24 };
    const lambda = frictionAngle(0.2);
    expect(run(cup, 0.2, 0.9 * lambda).measured.outcome).toBe('held');
    expect(run(cup, 0.2, 1.1 * lambda).measured.outcome).toBe('over the rim');
    expect(run(cup, 0, 0.02).measured.outcome).toBe('over the rim');
  });

  test('the same force gives the same run, whatever its size', () => {
    const [cup] = cups;
    if (cup === undefined) throw new Error('no cup');
    const force = turned(0.3);
    expect(settle({ ...cup, friction: 0, force })).toEqual(settle({ ...cup, friction: 0, force }));
    const small = settle({ ...cup, friction: 0, force: turned(0.3, 20) });
    const large = settle({ ...cup, friction: 0, force: turned(0.3, 800) });
    expect(small.translation).toBeCloseTo(large.translation, 6);
    const rim = rimContactTranslation(cup.socket, cup.ballRadius);
    expect(small.translation).toBeLessThan(rim);
  });

  test('a force that does not press the ball in is refused', () => {
    const [cup] = cups;
    if (cup === undefined) throw new Error('no cup');
    expect(canSettle(turned(1.5))).toBe(true);
    for (const angle of [1.53, Math.PI / 2 + 0.1, 3]) {
      expect(canSettle(turned(angle))).toBe(false);
      expect(() => settle({ ...cup, friction: 0, force: turned(angle) })).toThrow(RangeError);
    }
  });
});
