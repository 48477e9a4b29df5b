import { describe, expect, test } from 'vitest';
import {
  balanceStabilityAngle,
  ballPath,
  climbAt,
  contactAt,
  frictionAngle,
  peakStabilityRatio,
  radialMismatch,
  rimContactTranslation,
  socketFromDepth,
  sphericalSocket,
  stabilityRatioAt,
} from '../../../sims/geometry/index.ts';

const cup = sphericalSocket({ curvatureRadius: 25, width: 30 });
const flat = socketFromDepth({ depth: 0, width: 30 });

interface Argument {
  readonly function: string;
  readonly argument: string;
  readonly call: (value: number) => unknown;
  /** Words the message must hold to tell what is allowed. */
  readonly allowed: string;
  /** Finite numbers outside the range. */
  readonly outside: readonly number[];
  /** Numbers just inside it: the range must not be drawn too narrow either. */
  readonly inside: readonly number[];
}

const ballArgument = (name: string, call: (ballRadius: number) => unknown): Argument => ({
  function: name,
  argument: 'ballRadius',
  call,
  allowed: '25 mm',
  outside: [0, -1, 25.001, 25 * (1 + 1e-8), 1e9],
  inside: [1e-6, 24, 25, 25 * (1 + 1e-10)],
});

const translationArgument = (name: string, call: (x: number) => unknown): Argument => ({
  function: name,
  argument: 'translation',
  call,
  allowed: '0 to 15 mm',
  outside: [-1e-12, 15.0001, 30],
  inside: [0, 15],
});

const frictionArgument = (name: string, call: (friction: number) => unknown): Argument => ({
  function: name,
  argument: 'friction',
  call,
  allowed: '0 to any larger finite value',
  outside: [-1e-12, -1],
  inside: [0, 1, 1e6],
});

const table: readonly Argument[] = [
  {
    function: 'sphericalSocket',
    argument: 'curvatureRadius',
    call: (curvatureRadius) => sphericalSocket({ curvatureRadius, width: 1e-6 }),
    allowed: 'above 0 mm',
    outside: [0, -25],
    inside: [1e-3, 1e9],
  },
  {
    function: 'sphericalSocket',
    argument: 'width',
    call: (width) => sphericalSocket({ curvatureRadius: 25, width }),
    allowed: 'above 0 to 50 mm',
    outside: [0, -30, 50.001, 1e9],
    inside: [1e-6, 49.999, 50, 50 * (1 + 1e-10)],
  },
  {
    function: 'socketFromDepth',
    argument: 'depth',
    call: (depth) => socketFromDepth({ depth, width: 30 }),
    allowed: '0 to 15 mm',
    outside: [-1e-12, 15.0001],
    inside: [0, 15],
  },
  {
    function: 'socketFromDepth',
    argument: 'width',
    call: (width) => socketFromDepth({ depth: 0, width }),
    allowed: 'above 0 mm',
    outside: [0, -30],
    inside: [1e-6, 1e6],
  },
  ballArgument('radialMismatch', (r) => radialMismatch(cup, r)),
  ballArgument('rimContactTranslation', (r) => rimContactTranslation(cup, r)),
  ballArgument('contactAt', (r) => contactAt(cup, r, 4)),
  ballArgument('climbAt', (r) => climbAt(cup, r, 4)),
  ballArgument('stabilityRatioAt', (r) => stabilityRatioAt(cup, r, 4)),
  ballArgument('ballPath', (r) => ballPath(cup, r, 5)),
  translationArgument('contactAt', (x) => contactAt(cup, 20, x)),
  translationArgument('climbAt', (x) => climbAt(cup, 20, x)),
  translationArgument('stabilityRatioAt', (x) => stabilityRatioAt(cup, 20, x)),
  translationArgument('contactAt (flat)', (x) => contactAt(flat, 20, x)),
  translationArgument('climbAt (flat)', (x) => climbAt(flat, 20, x)),
  frictionArgument('frictionAngle', (mu) => frictionAngle(mu)),
  frictionArgument('stabilityRatioAt', (mu) => stabilityRatioAt(cup, 20, 4, mu)),
  frictionArgument('peakStabilityRatio', (mu) => peakStabilityRatio(cup, mu)),
  frictionArgument('balanceStabilityAngle', (mu) => balanceStabilityAngle(cup, mu)),
  {
    function: 'ballPath',
    argument: 'count',
    call: (count) => ballPath(cup, 20, count),
    allowed: '3',
    outside: [2, 0, -5, 3.5, 10.000_001],
    inside: [3, 4, 500],
  },
];

/** What is no finite number at all. A page may hand on text it has not read as a number. */
const notNumbers: readonly unknown[] = [NaN, Infinity, -Infinity, '12', '', null, true, [12]];

function thrownBy(run: () => unknown): unknown {
  try {
    run();
  } catch (error) {
    return error;
  }
  return undefined;
}

describe.each(table)('$function: $argument', (row) => {
  const bad = [...row.outside, ...notNumbers];

  test.each(bad.map((value) => [value]))(`${row.function}: refuses ${row.argument} %j`, (value) => {
    const error = thrownBy(() => row.call(value as number));
    expect(error).toBeInstanceOf(RangeError);
    const { message } = error as RangeError;
    expect(message.startsWith(`${row.argument} is ${String(value)}; allowed: `)).toBe(true);
  });

  test.each(row.outside.map((value) => [value]))(
    `${row.function}: says what is allowed, for %j`,
    (value) => {
      const error = thrownBy(() => row.call(value));
      expect((error as RangeError).message).toContain(row.allowed);
    },
  );

  test.each(row.inside.map((value) => [value]))(`${row.function}: takes %j`, (value) => {
    expect(thrownBy(() => row.call(value))).toBeUndefined();
  });
});
