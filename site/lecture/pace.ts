/** How a lecture keeps to its plan. Seconds throughout; plans are in minutes a step. */
export interface Pace {
  /** When the plan begins and ends the step, seconds from the start. */
  readonly plannedStart: number;
  readonly plannedEnd: number;
  /** Seconds late: below 0 before the step's planned start, above 0 after its planned end, 0 between the two. */
  readonly late: number;
}

/** The plan of one step held against the time gone by, s. */
export function paceAt(minutes: readonly number[], step: number, elapsed: number): Pace {
  const plannedStart = 60 * sum(minutes.slice(0, step));
  const plannedEnd = plannedStart + 60 * (minutes[step] ?? 0);
  const late = elapsed > plannedEnd ? elapsed - plannedEnd : Math.min(0, elapsed - plannedStart);
  return { plannedStart, plannedEnd, late };
}

export function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/** Seconds as minutes and seconds, "3:07"; part seconds are dropped. */
export function minutesAndSeconds(seconds: number): string {
  const whole = Math.max(0, Math.floor(seconds));
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}

/** How late, in words. */
export function paceInWords(late: number): string {
  if (Math.abs(late) < 1) return 'On time';
  return `${minutesAndSeconds(Math.abs(late))} ${late > 0 ? 'behind' : 'ahead'}`;
}
