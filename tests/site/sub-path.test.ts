import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { basePath, builtSite } from '../../site/scripts/project.mjs';
import { runTool } from '../../site/scripts/run.mjs';
import { readSite, type BuiltSite } from './built-site.ts';
import { rules } from './rules.ts';

const BUILD_TIMEOUT = 180_000;

/** The test runner sets these for itself; the build must not take them for its own. */
const withoutTestRunner = {
  BASE_URL: undefined,
  DEV: undefined,
  MODE: undefined,
  NODE_ENV: undefined,
  PROD: undefined,
  SSR: undefined,
};

describe('the site built for a sub-path', () => {
  const folder = mkdtempSync(join(tmpdir(), 'held-in-the-cup-'));
  let site: BuiltSite;

  beforeAll(async () => {
    const environment = { BASE_PATH: '/course/', ...withoutTestRunner };
    const code = await runTool('astro', ['build', '--silent', '--outDir', folder], environment);
    expect(code, 'exit code of the build').toBe(0);
    site = readSite(folder, '/course/');
  }, BUILD_TIMEOUT);

  afterAll(() => {
    rmSync(folder, { recursive: true });
  });

  test('has the pages of the site at the top', () => {
    const routes = (built: BuiltSite) => built.pages.map(({ route }) => route);
    expect(routes(site)).toEqual(routes(readSite(builtSite(), basePath())));
  });

  test.each(Object.entries(rules))('%s', (_, rule) => {
    expect(rule(site)).toEqual([]);
  });
});
