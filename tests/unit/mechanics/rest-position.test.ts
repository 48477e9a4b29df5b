import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  climbAt,
  contactAt,
  rimContactTranslation,
  socketFromDepth,
  sphericalSocket,
} from '../../../sims/geometry/index.ts';
import { restPosition, type RestPosition } from '../../../sims/mechanics/index.ts';
import {
  anySocket,
  fraction,
  friction,
  mismatchedPairOf,
  ordinarySocket,
  pairOf,
  real,
} from '../geometry/arbitraries.ts';
import { expectClose } from '../geometry/close.ts';

const degree = Math.PI / 180;
const cup = sphericalSocket({ curvatureRadius: 25, width: 30 });
const flat = socketFromDepth({ depth: 0, width: 30 });

/** Every angle a force may have: upright, ordinary, and all but square to the centre line. */
const forceAngles = fc.oneof(
  fc.constantFrom(0, 1e-12, Math.PI / 2 - 1e-9),
  real(0, Math.PI / 2 - 1e-9),
);

const overTheRim = { translation: null, range: null, contactAngle: null, state: 'over the rim' };

function numbersOf({ translation, range, contactAngle, marginAngle }: RestPosition): number[] {
  return [translation, ...(range ?? []), contactAngle, marginAngle].filter((n) => n !== null);
}

/** Where the ball has least potential under the force, found by looking everywhere up to first rim contact. */
function lowestPlace(pair: typeof cup, ballRadius: number, forceAngle: number): number {
  const rim = rimContactTranslation(pair, ballRadius);
  const steps = 20_000;
  let best = 0;
  let lowest = Infinity;
  for (let i = 0; i <= steps; i++) {
    const x = (rim * i) / steps;
    const climb = climbAt(pair, ballRadius, x);
    const potential = climb * Math.cos(forceAngle) - x * Math.sin(forceAngle);
    if (potential < lowest) {
      lowest = potential;
      best = x;
    }
  }
  return best;
}

describe('restPosition', () => {
  test('restPosition: a straight force centres the ball', () => {
    expect(restPosition({ socket: cup, ballRadius: 20, forceAngle: 0 })).toStrictEqual({
      translation: 0,
      range: [0, 0],
      contactAngle: 0,
      marginAngle: cup.halfArc,
      state: 'centred',
    });
  });

  test('restPosition: a tilted force moves it to x = m sin α', () => {
    const rest = restPosition({ socket: cup, ballRadius: 20, forceAngle: 30 * degree });
    expectClose(rest.translation ?? NaN, 2.5, { relative: 1e-14 });
    expect(rest.contactAngle).toBe(30 * degree);
    expectClose(rest.marginAngle, cup.halfArc - 30 * degree, { relative: 1e-14 });
    expect(rest.state).toBe('off-centre');
  });

  test('restPosition: it lies lowest there of all places', () => {
    const force = real(0, 0.98);
    fc.assert(
      fc.property(mismatchedPairOf(ordinarySocket), force, ({ socket, ballRadius }, part) => {
        const forceAngle = part * socket.halfArc;
        const { translation } = restPosition({ socket, ballRadius, forceAngle });
        // The search looks at 20,000 places.
        expectClose(translation ?? NaN, lowestPlace(socket, ballRadius, forceAngle), {
          absolute: rimContactTranslation(socket, ballRadius) / 10_000,
        });
      }),
      { numRuns: 40 },
    );
  });

  test('restPosition: α = β is over the rim already', () => {
    fc.assert(
      fc.property(pairOf(anySocket), ({ socket, ballRadius }) => {
        fc.pre(socket.halfArc < Math.PI / 2);
        const rest = restPosition({ socket, ballRadius, forceAngle: socket.halfArc });
        expect(rest).toStrictEqual({ ...overTheRim, marginAngle: 0 });
      }),
    );
  });

  test('restPosition: just under β it still lies inside, at the rim all but a hair', () => {
    const forceAngle = cup.halfArc - 1e-9;
    const rest = restPosition({ socket: cup, ballRadius: 20, forceAngle });
    expect(rest.state).toBe('off-centre');
    expectClose(rest.translation ?? NaN, 3, { absolute: 1e-8 });
    expectClose(rest.marginAngle, 1e-9, { relative: 1e-6 });
  });

  test('restPosition: α in [β, β + λ) is held at the rim by friction', () => {
    const between = fc.oneof(fc.constant(0), real(0, 0.999));
    fc.assert(
      fc.property(pairOf(ordinarySocket), between, ({ socket, ballRadius }, part) => {
        const lambda = Math.atan(0.2);
        const forceAngle = socket.halfArc + part * lambda;
        fc.pre(forceAngle < Math.PI / 2);
        const rest = restPosition({ socket, ballRadius, forceAngle, friction: 0.2 });
        const rim = rimContactTranslation(socket, ballRadius);
        expect(rest.state).toBe('at the rim');
        expect(rest.translation).toBe(rim);
        expect(rest.contactAngle).toBe(socket.halfArc);
        expect(rest.range?.[1]).toBe(rim);
        expect(rest.marginAngle).toBeGreaterThan(0);
      }),
    );
  });

  test('restPosition: α = β + λ is over the rim, friction or not', () => {
    const lambda = Math.atan(0.2);
    const at = (forceAngle: number): RestPosition =>
      restPosition({ socket: cup, ballRadius: 20, forceAngle, friction: 0.2 });
    expect(at(cup.halfArc + lambda)).toStrictEqual({ ...overTheRim, marginAngle: 0 });
    expect(at(cup.halfArc + lambda + 0.1)).toMatchObject(overTheRim);
    expectClose(at(cup.halfArc + lambda + 0.1).marginAngle, -0.1, { absolute: 1e-15 });
    expect(at(cup.halfArc + lambda - 1e-9).state).toBe('at the rim');
  });

  test('restPosition: where β + λ passes a right angle, every force is held', () => {
    const rest = restPosition({
      socket: cup,
      ballRadius: 20,
      forceAngle: Math.PI / 2 - 1e-9,
      friction: 1.5,
    });
    expect(rest.state).toBe('at the rim');
    expectClose(rest.marginAngle, 1e-9, { relative: 1e-6 });
  });

  test('restPosition: a hemisphere holds every force', () => {
    const socket = sphericalSocket({ curvatureRadius: 25, width: 50 });
    const rest = restPosition({ socket, ballRadius: 20, forceAngle: 89 * degree });
    expect(rest.state).toBe('off-centre');
    expectClose(rest.translation ?? NaN, 5 * Math.sin(89 * degree), { relative: 1e-14 });
  });

  test('restPosition: conforming stays centred however the force is tilted, until it goes over', () => {
    fc.assert(
      fc.property(ordinarySocket, fraction, (socket, part) => {
        const forceAngle = part * socket.halfArc;
        const rest = restPosition({ socket, ballRadius: socket.curvatureRadius, forceAngle });
        if (part === 1) {
          expect(rest).toMatchObject(overTheRim);
          return;
        }
        expect(rest).toStrictEqual({
          translation: 0,
          range: [0, 0],
          contactAngle: forceAngle,
          marginAngle: socket.halfArc - forceAngle,
          state: 'centred',
        });
      }),
    );
  });

  test('restPosition: flat and straight stays wherever it is put', () => {
    expect(restPosition({ socket: flat, ballRadius: 24, forceAngle: 0 })).toStrictEqual({
      translation: 0,
      range: [0, 15],
      contactAngle: 0,
      marginAngle: 0,
      state: 'centred',
    });
  });

  test('restPosition: flat and tilted is held by friction alone', () => {
    const at = (forceAngle: number, mu: number): RestPosition =>
      restPosition({ socket: flat, ballRadius: 24, forceAngle, friction: mu });
    expect(at(1e-12, 0)).toMatchObject(overTheRim);
    expect(at(0.1, 0.2)).toMatchObject({ translation: 0, range: [0, 15], contactAngle: 0 });
    expect(at(Math.atan(0.2), 0.2)).toMatchObject(overTheRim);
  });

  test('restPosition: friction holds everywhere in the range, and nowhere just outside it', () => {
    fc.assert(
      fc.property(
        mismatchedPairOf(ordinarySocket),
        forceAngles,
        friction,
        fraction,
        ({ socket, ballRadius }, forceAngle, mu, part) => {
          const rest = restPosition({ socket, ballRadius, forceAngle, friction: mu });
          if (rest.range === null) return;
          const [inner, outer] = rest.range;
          const rim = rimContactTranslation(socket, ballRadius);
          const lambda = Math.atan(mu);
          // Held where the force lies inside the friction cone about the contact normal.
          const outsideCone = (x: number): number =>
            Math.abs(contactAt(socket, ballRadius, x).angle - forceAngle) - lambda;
          expect(outsideCone(inner + part * (outer - inner))).toBeLessThanOrEqual(1e-7);
          const step = rim / 1000;
          if (inner > step) expect(outsideCone(inner - step)).toBeGreaterThan(0);
          if (outer < rim - step) expect(outsideCone(outer + step)).toBeGreaterThan(0);
        },
      ),
    );
  });

  test('restPosition: never NaN, and one consistent answer, whatever is asked', () => {
    const sockets = fc.oneof(anySocket, fc.constant(flat));
    fc.assert(
      fc.property(
        sockets,
        real(0.01, 1),
        forceAngles,
        friction,
        (socket, conformity, forceAngle, mu) => {
          const ballRadius = conformity * Math.min(socket.curvatureRadius, 100);
          const rest = restPosition({ socket, ballRadius, forceAngle, friction: mu });
          for (const number of numbersOf(rest)) expect(number).not.toBeNaN();
          expect(rest.translation === null).toBe(rest.state === 'over the rim');
          expect(rest.range === null).toBe(rest.state === 'over the rim');
          expect(rest.contactAngle === null).toBe(rest.state === 'over the rim');
          if (rest.translation === null || rest.range === null) {
            expect(rest.marginAngle).toBeLessThanOrEqual(0);
            return;
          }
          const [inner, outer] = rest.range;
          expect(inner).toBeGreaterThanOrEqual(0);
          expect(rest.translation).toBeGreaterThanOrEqual(inner);
          expect(rest.translation).toBeLessThanOrEqual(outer);
          expect(outer).toBeLessThanOrEqual(socket.width / 2);
          if (rest.state === 'centred') expect(rest.translation).toBe(0);
          if (rest.state === 'off-centre') expect(rest.translation).toBeGreaterThan(0);
        },
      ),
    );
  });

  test('restPosition: without friction as with friction 0', () => {
    const question = { socket: cup, ballRadius: 20, forceAngle: 0.3 };
    expect(restPosition({ ...question, friction: 0 })).toStrictEqual(restPosition(question));
  });

  test('restPosition: question unmodified', () => {
    const question = Object.freeze({
      socket: Object.freeze({ ...cup }),
      ballRadius: 20,
      forceAngle: 0.3,
      friction: 0.1,
    });
    restPosition(question);
    expect(question).toStrictEqual({ socket: cup, ballRadius: 20, forceAngle: 0.3, friction: 0.1 });
  });

  const refused: readonly (readonly [argument: string, value: unknown])[] = [
    ...[-1e-12, -1, Math.PI / 2, 3, NaN, Infinity, '0.3', null].map(
      (value) => ['forceAngle', value] as const,
    ),
    ...[0, -20, 25.001, NaN, Infinity, '20', null].map((value) => ['ballRadius', value] as const),
    ...[-0.1, NaN, Infinity, '0.1', null].map((value) => ['friction', value] as const),
  ];

  test.each(refused)('restPosition: refuses %s %j', (argument, value) => {
    const good = { socket: cup, ballRadius: 20, forceAngle: 0.3, friction: 0.1 };
    const ask = (): RestPosition => restPosition({ ...good, [argument]: value });
    expect(ask).toThrow(RangeError);
    expect(ask).toThrow(`${argument} is ${String(value)}; allowed: `);
  });
});
