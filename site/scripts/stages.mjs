import { join } from 'node:path';
import { ensureBrowser } from './install-browser.mjs';
import { prepare } from './prepare.mjs';
import { artefacts } from './project.mjs';
import { runTool } from './run.mjs';
import { playwrightTally, vitestTally } from './tally.mjs';

/**
 * One stage of `npm test`.
 *
 * @typedef {object} Stage
 * @property {string} name
 * @property {() => Promise<boolean>} run whether it held
 * @property {() => import('./tally.mjs').Tally} [tally] how many tests passed and failed, where it has tests
 */

const report = (/** @type {string} */ name) => join(artefacts, 'reports', `${name}.json`);

/**
 * Runs tools side by side; each says what it found when it ends.
 *
 * @type {(...commands: readonly (readonly [tool: string, ...args: string[]])[]) => Promise<boolean>}
 */
async function tools(...commands) {
  const codes = await Promise.all(commands.map(([tool, ...args]) => runTool(tool, args)));
  return codes.every((code) => code === 0);
}

/** @type {(name: string, projects: readonly string[]) => Stage} */
function vitestStage(name, projects) {
  const file = report(name);
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`];
  return {
    name,
    run: () =>
      tools([
        'vitest',
        'run',
        '--config=tests/vitest.config.ts',
        ...projects.map((project) => `--project=${project}`),
        ...reporters,
      ]),
    tally: () => vitestTally(file),
  };
}

/** Every stage, in the order in which a fault is cheapest to find. @type {readonly Stage[]} */
export const stages = [
  { name: 'packages', run: () => prepare().then(() => true) },
  {
    name: 'chromium',
    run: async () => {
      process.env.CHROMIUM_PATH = await ensureBrowser();
      console.log(process.env.CHROMIUM_PATH);
      return true;
    },
  },
  {
    name: 'source',
    run: async () => {
      // Writes the types that the others read.
      if (!(await tools(['astro', 'check', '--minimumFailingSeverity', 'warning']))) return false;
      const lint = tools(['eslint', '.', '--max-warnings', '0']);
      const others =
        (await tools(['svelte-check', '--fail-on-warnings', '--output', 'human'])) &&
        (await tools(['prettier', '--check', '.']));
      return (await lint) && others;
    },
  },
  vitestStage('unit', ['unit', 'component']),
  { name: 'build', run: () => tools(['astro', 'build', '--silent']) },
  vitestStage('site', ['site']),
  {
    name: 'browser',
    run: async () => {
      process.env.PLAYWRIGHT_JSON_OUTPUT_FILE = report('browser');
      return tools([
        '@playwright/test playwright',
        'test',
        '--config=tests/playwright.config.ts',
        '--reporter=list,json',
      ]);
    },
    tally: () => playwrightTally(report('browser')),
  },
];
