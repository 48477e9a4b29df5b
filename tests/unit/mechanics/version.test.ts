import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sphericalSocket } from '../../../sims/geometry/index.ts';
import {
  forceOnSocket,
  pullVector,
  restPosition,
  restUnderForce,
  socketAxes,
  sumOfForces,
  type Vector3,
} from '../../../sims/mechanics/index.ts';
import { real } from '../geometry/arbitraries.ts';
import { expectClose } from '../geometry/close.ts';

const degree = Math.PI / 180;
const near = { absolute: 1e-12 };

type Matrix = readonly [Vector3, Vector3, Vector3];

/** Right-handed rotations about the axes, as rows. */
const aboutX = (a: number): Matrix => [
  [1, 0, 0],
  [0, Math.cos(a), -Math.sin(a)],
  [0, Math.sin(a), Math.cos(a)],
];
const aboutY = (a: number): Matrix => [
  [Math.cos(a), 0, Math.sin(a)],
  [0, 1, 0],
  [-Math.sin(a), 0, Math.cos(a)],
];
const dot = (a: Vector3, b: Vector3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const column = (m: Matrix, i: 0 | 1 | 2): Vector3 => [m[0][i], m[1][i], m[2][i]];
const times = (a: Matrix, b: Matrix): Matrix => {
  const row = (r: Vector3): Vector3 => [
    dot(r, column(b, 0)),
    dot(r, column(b, 1)),
    dot(r, column(b, 2)),
  ];
  return [row(a[0]), row(a[1]), row(a[2])];
};

function expectVector(actual: Vector3, expected: Vector3): void {
  actual.forEach((part, i) => expectClose(part, expected[i] ?? NaN, near));
}

const angle = real(-85 * degree, 85 * degree);
const part = real(-300, 300);
const straight: Vector3 = [0, 0, -400];

describe('socketAxes', () => {
  test('socketAxes: version about the superior axis, then inclination about the carried anterior axis', () => {
    fc.assert(
      fc.property(angle, angle, (version, inclination) => {
        const axes = socketAxes({ version, inclination });
        // Carried axes multiply on the right. Backward and upward are both left-handed turns.
        const turn = times(aboutY(-version), aboutX(-inclination));
        expectVector(axes.anterior, column(turn, 0));
        expectVector(axes.superior, column(turn, 1));
        expectVector(axes.lateral, column(turn, 2));
      }),
    );
  });

  test('socketAxes: retroversion looks backward, superior inclination upward', () => {
    expectVector(socketAxes({ version: 30 * degree }).lateral, [-0.5, 0, Math.sqrt(0.75)]);
    expectVector(socketAxes({ inclination: 30 * degree }).lateral, [0, 0.5, Math.sqrt(0.75)]);
    expect(socketAxes({})).toStrictEqual({
      anterior: [1, 0, 0],
      superior: [0, 1, -0],
      lateral: [-0, 0, 1],
    });
  });

  test('socketAxes: version is read on a horizontal slice, inclination as the rise out of it', () => {
    fc.assert(
      fc.property(angle, angle, (version, inclination) => {
        const [x, y, z] = socketAxes({ version, inclination }).lateral;
        expectClose(Math.atan2(-x, z), version, near);
        expectClose(Math.asin(y), inclination, { absolute: 1e-9 });
      }),
    );
  });

  test('socketAxes: the other order turns the face about its centre line, by nearly version × inclination', () => {
    const [version, inclination] = [10 * degree, 8 * degree];
    const ours = socketAxes({ version, inclination });
    const other = times(aboutX(-inclination), aboutY(-version));
    const spin = dot(column(other, 0), ours.superior);
    expectClose(Math.abs(spin), version * inclination, { relative: 0.01 });
    expectClose(dot(column(other, 2), ours.lateral), 1, { absolute: 2e-4 });
  });

  test.each([
    ['version', 90 * degree],
    ['version', NaN],
    ['inclination', -2],
    ['inclination', Infinity],
  ])('socketAxes: refuses %s %d', (name, value) => {
    expect(() => socketAxes({ [name]: value })).toThrow(
      `${name} is ${value}; allowed: above −π/2 to below π/2 rad`,
    );
  });
});

describe('forceOnSocket', () => {
  test('forceOnSocket: a straight force is off by the version, pointing posterior', () => {
    const felt = forceOnSocket({ force: straight, version: 15 * degree });
    expectClose(felt.angle, 15 * degree, near);
    expectClose(felt.direction, Math.PI, near);
    expectClose(felt.compressive, 400 * Math.cos(15 * degree), { relative: 1e-12 });
    expectClose(felt.side, 400 * Math.sin(15 * degree), { relative: 1e-12 });
    expectClose(felt.size, 400, { relative: 1e-14 });
  });

  test('forceOnSocket: anteversion anterior, upward inclination superior, downward inferior', () => {
    const direction = (tilt: { version?: number; inclination?: number }): number =>
      forceOnSocket({ force: straight, ...tilt }).direction;
    expectClose(direction({ version: -0.2 }), 0, near);
    expectClose(direction({ inclination: 0.2 }), Math.PI / 2, near);
    expectClose(direction({ inclination: -0.2 }), (3 * Math.PI) / 2, near);
  });

  test('forceOnSocket: in one plane force and version add exactly, and so do force and inclination', () => {
    fc.assert(
      fc.property(real(-80, 80), real(-80, 80), real(1, 900), (turned, tilted, size) => {
        const sum = (turned + tilted) * degree;
        const backward = forceOnSocket({
          force: pullVector({ size, forward: -turned * degree }),
          version: tilted * degree,
        });
        const upward = forceOnSocket({
          force: pullVector({ size, upward: turned * degree }),
          inclination: tilted * degree,
        });
        for (const felt of [backward, upward]) {
          expectClose(felt.angle, Math.abs(sum), { absolute: 1e-9 });
          expectClose(felt.compressive, size * Math.cos(sum), { absolute: 1e-10 * size });
        }
        if (Math.abs(sum) < 1e-6) return;
        expectClose(Math.cos(backward.direction), -Math.sign(sum), near);
        expectClose(Math.sin(upward.direction), Math.sign(sum), near);
      }),
    );
  });

  test('forceOnSocket: a force along a tilted centre line is straight, whatever the tilt', () => {
    fc.assert(
      fc.property(angle, angle, (version, inclination) => {
        const [x, y, z] = socketAxes({ version, inclination }).lateral;
        const felt = forceOnSocket({ force: [-7 * x, -7 * y, -7 * z], version, inclination });
        expectClose(felt.angle, 0, { absolute: 1e-9 });
        expectClose(felt.compressive, 7, near);
      }),
    );
  });

  test('forceOnSocket: parts make the whole, and the whole keeps its size', () => {
    fc.assert(
      fc.property(part, part, part, angle, angle, (x, y, z, version, inclination) => {
        fc.pre(Math.hypot(x, y, z) > 1e-6);
        const felt = forceOnSocket({ force: [x, y, z], version, inclination });
        expectClose(Math.hypot(felt.side, felt.compressive), Math.hypot(x, y, z), {
          relative: 1e-12,
        });
        expect(felt.direction).toBeGreaterThanOrEqual(0);
        expect(felt.direction).toBeLessThanOrEqual(2 * Math.PI);
        const turn = times(aboutY(-version), aboutX(-inclination));
        const force: Vector3 = [x, y, z];
        const [forward, upward] = [dot(force, column(turn, 0)), dot(force, column(turn, 1))];
        expectClose(felt.side * Math.cos(felt.direction), forward, { absolute: 1e-9 });
        expectClose(felt.side * Math.sin(felt.direction), upward, { absolute: 1e-9 });
      }),
    );
  });

  test('forceOnSocket: a pull out of the socket has an angle past 90° and a negative compressive part', () => {
    const felt = forceOnSocket({ force: [30, 0, 40] });
    expectClose(felt.angle, Math.PI / 2 + Math.atan2(40, 30), near);
    expect(felt.compressive).toBe(-40);
  });

  test.each([[[0, 0, 0]], [[NaN, 0, -1]], [[0, Infinity, -1]], [[0, 1]]])(
    'forceOnSocket: refuses %j',
    (force) => {
      expect(() => forceOnSocket({ force: force as unknown as Vector3 })).toThrow(RangeError);
    },
  );
});

describe('pullVector and sumOfForces', () => {
  test('pullVector: forward, upward, medial', () => {
    expectVector(pullVector({ size: 10 }), [0, 0, -10]);
    expectVector(pullVector({ size: 10, forward: 90 * degree }), [10, 0, 0]);
    expectVector(pullVector({ size: 10, upward: -90 * degree }), [0, -10, 0]);
    expect(() => pullVector({ size: -1 })).toThrow('size is -1; allowed: 0');
    expect(() => pullVector({ size: 1, upward: NaN })).toThrow('upward is NaN; allowed: ');
  });

  test('sumOfForces: part by part, in any order', () => {
    expect(sumOfForces([])).toStrictEqual([0, 0, 0]);
    const force = fc.tuple(part, part, part);
    fc.assert(
      fc.property(fc.array(force, { maxLength: 6 }), (forces) => {
        const sum = sumOfForces(forces);
        expectVector(sumOfForces([...forces].reverse()), sum);
        const total = forces.reduce((all, [x]) => all + x, 0);
        expectClose(sum[0], total, { absolute: 1e-9 });
      }),
    );
    expect(() => sumOfForces([[1, NaN, 2]])).toThrow('force is (1, NaN, 2); allowed: ');
  });
});

describe('restUnderForce', () => {
  const socket = sphericalSocket({ curvatureRadius: 27, width: 30 });
  const usual = { socket, ballRadius: 24, force: straight };

  test('restUnderForce: retroversion rests the ball posterior, at m sin α', () => {
    const rest = restUnderForce({ ...usual, version: 20 * degree });
    expectClose(rest.translation ?? NaN, 3 * Math.sin(20 * degree), near);
    expectClose(rest.place?.[0] ?? NaN, -3 * Math.sin(20 * degree), near);
    expectClose(rest.place?.[1] ?? NaN, 0, near);
    expectClose(rest.marginAngle, socket.halfArc - 20 * degree, near);
    expect(rest.state).toBe('off-centre');
  });

  test('restUnderForce: as restPosition in the plane of force and centre line', () => {
    const component = real(-300, 300);
    fc.assert(
      fc.property(component, component, angle, angle, (x, y, version, inclination) => {
        const asked = {
          ...usual,
          force: [x, y, -300] as const,
          version,
          inclination,
          friction: 0.1,
        };
        const rest = restUnderForce(asked);
        const { angle: forceAngle, direction } = rest.force;
        if (rest.state === 'pulled off the socket') {
          expect(forceAngle).toBeGreaterThanOrEqual(Math.PI / 2);
          expect(rest.translation).toBeNull();
          expect(rest.marginAngle).toBeLessThan(0);
          return;
        }
        const flat = restPosition({ socket, ballRadius: 24, forceAngle, friction: 0.1 });
        expect(rest).toMatchObject(flat);
        expect(rest.place === null).toBe(rest.translation === null);
        if (rest.place === null || rest.translation === null) return;
        expectClose(rest.place[0], rest.translation * Math.cos(direction), near);
        expectClose(rest.place[1], rest.translation * Math.sin(direction), near);
      }),
    );
  });

  test('restUnderForce: straight is centred, exactly', () => {
    const rest = restUnderForce(usual);
    expect(rest.state).toBe('centred');
    expect(rest.place).toStrictEqual([0, 0]);
    const [x, y, z] = socketAxes({ version: 0.3, inclination: 0.2 }).lateral;
    const along = restUnderForce({
      ...usual,
      force: [-400 * x, -400 * y, -400 * z],
      version: 0.3,
      inclination: 0.2,
    });
    expect(along.state).toBe('centred');
  });

  test('restUnderForce: outward it is pulled off, and still checks the ball', () => {
    expect(restUnderForce({ ...usual, force: [0, 0, 5] })).toMatchObject({
      state: 'pulled off the socket',
      translation: null,
      range: null,
      contactAngle: null,
      place: null,
    });
    expect(() => restUnderForce({ ...usual, force: [0, 0, 5], ballRadius: 28 })).toThrow(
      'ballRadius is 28; allowed: ',
    );
  });
});
