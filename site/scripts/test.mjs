import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { artefacts, fail } from './project.mjs';
import { stages } from './stages.mjs';
import { nothing, sum } from './tally.mjs';

/** Stages that every run begins with. */
const firstStages = ['packages', 'chromium'];

/**
 * Runs the stages one after another, or only those named on the command line, and stops at the first that fails. Its
 * last line counts the tests; a stage without tests that fails counts as one.
 */
const named = process.argv.slice(2);
const unknown = named.filter((name) => !stages.some((stage) => stage.name === name));
if (unknown.length > 0) {
  fail(`No stage ${unknown.join(', ')}; there are ${stages.map(({ name }) => name).join(', ')}.`);
}
const chosen =
  named.length === 0
    ? stages
    : stages.filter(({ name }) => firstStages.includes(name) || named.includes(name));
rmSync(join(artefacts, 'reports'), { recursive: true, force: true });

/** @type {string[]} */
const summary = [];
let total = nothing;
let hasFailed = false;

for (const { name, run, tally } of chosen) {
  console.log(`\n── ${name} ${'─'.repeat(Math.max(0, 76 - name.length))}`);
  const start = performance.now();
  const holds = await run().catch((/** @type {unknown} */ error) => {
    console.error(error instanceof Error ? error.message : error);
    return false;
  });
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  const counted = tally?.() ?? nothing;
  const count = holds || counted.failed > 0 ? counted : sum(counted, { ...nothing, failed: 1 });
  total = sum(total, count);
  const words = tally === undefined ? '' : `${count.passed} passed, ${count.failed} failed`;
  const skipped = count.skipped > 0 ? `, ${count.skipped} skipped` : '';
  summary.push(
    `${holds ? 'ok    ' : 'FAILED'}  ${name.padEnd(14)} ${seconds.padStart(6)} s  ${words}${skipped}`.trimEnd(),
  );
  if (!holds) {
    hasFailed = true;
    const left = chosen.slice(chosen.findIndex((stage) => stage.name === name) + 1);
    summary.push(...left.map((stage) => `not run ${stage.name}`));
    break;
  }
}

console.log(`\n${summary.join('\n')}\n${total.passed} passed, ${total.failed} failed`);
process.exit(hasFailed ? 1 : 0);
