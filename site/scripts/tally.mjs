import { existsSync, readFileSync } from 'node:fs';

/**
 * How the tests of a stage ended.
 *
 * @typedef {object} Tally
 * @property {number} passed
 * @property {number} failed
 * @property {number} skipped
 */

/** @type {Tally} */
export const nothing = { passed: 0, failed: 0, skipped: 0 };

/** @type {(a: Tally, b: Tally) => Tally} */
export function sum(a, b) {
  return {
    passed: a.passed + b.passed,
    failed: a.failed + b.failed,
    skipped: a.skipped + b.skipped,
  };
}

/**
 * From Vitest's JSON report. A test file that could not even be loaded has no tests in it and counts as one failure.
 *
 * @param {string} file
 * @returns {Tally}
 */
export function vitestTally(file) {
  /** @type {{ numPassedTests: number, numFailedTests: number, numPendingTests: number, numTodoTests: number, testResults: { status: string, assertionResults: { status: string }[] }[] } | undefined} */
  const report = read(file);
  if (report === undefined) return nothing;
  const unloaded = report.testResults.filter(
    ({ status, assertionResults }) =>
      status === 'failed' && assertionResults.every((test) => test.status !== 'failed'),
  ).length;
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + unloaded,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}

/**
 * From Playwright's JSON report. Errors outside any test, as of a file that could not be loaded, count as failures.
 *
 * @param {string} file
 * @returns {Tally}
 */
export function playwrightTally(file) {
  /** @type {{ stats: { expected: number, unexpected: number, flaky: number, skipped: number }, errors: unknown[] } | undefined} */
  const report = read(file);
  if (report === undefined) return nothing;
  const { expected, unexpected, flaky, skipped } = report.stats;
  return { passed: expected, failed: unexpected + flaky + report.errors.length, skipped };
}

function read(/** @type {string} */ file) {
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined;
}
