import { positive } from '../geometry/numeric.ts';

/** Temperatures of one place through time. */
export interface TemperatureHistory {
  /** s, rising */
  readonly times: ArrayLike<number>;
  /** °C, one for each time */
  readonly temperatures: ArrayLike<number>;
}

/** Of a rate of damage A exp(−E/RT). */
export interface ArrheniusConstants {
  /** A, 1/s, above 0 */
  readonly frequency: number;
  /** E, J/mol, above 0 */
  readonly energy: number;
}

/** Henriques’s constants for burns of the skin (1947; from memory). */
export const henriques: ArrheniusConstants = { frequency: 3.1e98, energy: 6.28e5 };

/**
 * Minutes at 43 °C that are as much as 47 °C for one minute, which injures bone in the microscope of living rabbits
 * (Eriksson and Albrektsson 1983, quoted).
 */
export const BONE_HEAT_LIMIT = 16;
/** Damage integral at which Henriques’s skin is burnt all through. */
export const SKIN_BURN_LIMIT = 1;

/** What two criteria of injury say of one history. */
export interface HeatInjury {
  /** Equivalent minutes at 43 °C */
  readonly cem43: number;
  /** Henriques’s damage integral */
  readonly arrhenius: number;
  /** `cem43` has reached {@link BONE_HEAT_LIMIT} */
  readonly isPastBoneLimit: boolean;
  /** `arrhenius` has reached {@link SKIN_BURN_LIMIT} */
  readonly isPastSkinLimit: boolean;
}

/** J/(mol·K), with the digits that go with the constants in print: more would change a damage by a hundredth. */
const GAS_CONSTANT = 8.314;
const ZERO_CELSIUS = 273.15;
const SECONDS = 60;

/**
 * Both criteria side by side. They do not agree, and need not: a minute at 47 °C is 16 equivalent minutes, the limit
 * of bone, but 0.006 of Henriques’s integral, which was fitted to burns of pigs’ and people’s skin. Neither is a
 * law of bone; one at its limit and the other far from it is what is known.
 *
 * @throws RangeError for histories without as many times as temperatures, or too short
 */
export function heatInjury(history: TemperatureHistory): HeatInjury {
  const equivalent = cem43(history);
  const damage = arrheniusDamage(history, henriques);
  return {
    cem43: equivalent,
    arrhenius: damage,
    isPastBoneLimit: equivalent >= BONE_HEAT_LIMIT,
    isPastSkinLimit: damage >= SKIN_BURN_LIMIT,
  };
}

/**
 * Cumulative equivalent minutes at 43 °C: each minute counts R^(43 − T), with R ½ from 43 °C on, ¼ from 39 °C, below that
 * nothing (Sapareto and Dewey 1984, from memory).
 *
 * @returns min
 */
export function cem43(history: TemperatureHistory): number {
  const rate = (celsius: number): number => {
    if (celsius < 39) return 0;
    return (celsius < 43 ? 0.25 : 0.5) ** (43 - celsius);
  };
  return integral(history, rate) / SECONDS;
}

/** The damage integral ∫ A exp(−E/RT) dt, without unit. */
export function arrheniusDamage(
  history: TemperatureHistory,
  { frequency, energy }: ArrheniusConstants,
): number {
  positive('frequency', frequency, '1/s');
  positive('energy', energy, 'J/mol');
  // In one exponent: the factor and the power have a hundred digits each, and cancel.
  const logarithm = Math.log(frequency);
  return integral(history, (celsius) =>
    Math.exp(logarithm - energy / (GAS_CONSTANT * (celsius + ZERO_CELSIUS))),
  );
}

/** How long a history is above a temperature, s, along straight lines between its points. */
export function timeAbove(history: TemperatureHistory, limit: number): number {
  return overSteps(history, (length, from, to) => {
    if (from <= limit && to <= limit) return 0;
    if (from >= limit && to >= limit) return length;
    return (length * (Math.max(from, to) - limit)) / Math.abs(to - from);
  });
}

function integral(history: TemperatureHistory, rate: (celsius: number) => number): number {
  return overSteps(history, (length, from, to) => (length * (rate(from) + rate(to))) / 2);
}

function overSteps(
  { times, temperatures }: TemperatureHistory,
  part: (length: number, from: number, to: number) => number,
): number {
  if (times.length !== temperatures.length || times.length < 2) {
    throw new RangeError(
      `history has ${times.length} times and ${temperatures.length} temperatures; allowed: as many of both, at least 2`,
    );
  }
  let sum = 0;
  for (let i = 1; i < times.length; i++) {
    const length = (times[i] ?? NaN) - (times[i - 1] ?? NaN);
    sum += part(length, temperatures[i - 1] ?? NaN, temperatures[i] ?? NaN);
  }
  return sum;
}
