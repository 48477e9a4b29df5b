import { expect } from 'vitest';

/**
 * Runs a function on a frozen copy of its input: a write to it would throw, and the input must come out as it went in.
 */
export function withFrozen<Input extends object, Output>(
  input: Input,
  run: (frozen: Input) => Output,
): Output {
  const frozen = Object.freeze({ ...input });
  const output = run(frozen);
  expect(frozen).toStrictEqual(input);
  return output;
}
