import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { playwrightTally, vitestTally } from '../../../site/scripts/tally.mjs';

const folder = mkdtempSync(join(tmpdir(), 'held-in-the-cup-tally-'));

afterAll(() => {
  rmSync(folder, { recursive: true });
});

function report(content: object): string {
  const file = join(folder, 'report.json');
  writeFileSync(file, JSON.stringify(content));
  return file;
}

test('a test file that could not be loaded counts as a failure', () => {
  const file = report({
    numPassedTests: 3,
    numFailedTests: 1,
    numPendingTests: 1,
    numTodoTests: 1,
    testResults: [
      { status: 'passed', assertionResults: [{ status: 'passed' }] },
      { status: 'failed', assertionResults: [{ status: 'failed' }, { status: 'passed' }] },
      { status: 'failed', assertionResults: [] },
    ],
  });
  expect(vitestTally(file)).toEqual({ passed: 3, failed: 2, skipped: 2 });
});

test('an error outside any browser test and a test that passed only on a second try count as failures', () => {
  const file = report({
    stats: { expected: 5, unexpected: 2, flaky: 1, skipped: 1 },
    errors: [{ message: 'a file could not be loaded' }],
  });
  expect(playwrightTally(file)).toEqual({ passed: 5, failed: 4, skipped: 1 });
});

test('without a report there is nothing to count', () => {
  const missing = join(folder, 'missing.json');
  expect(vitestTally(missing)).toEqual({ passed: 0, failed: 0, skipped: 0 });
});
