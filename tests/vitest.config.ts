import { svelte } from '@sveltejs/vite-plugin-svelte';
import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { browserFlags } from '../site/scripts/browser-flags.mjs';
import { requireBrowser } from '../site/scripts/find-browser.mjs';
import { root } from '../site/scripts/project.mjs';

const executablePath = await requireBrowser();

export default defineConfig({
  root,
  cacheDir: 'node_modules/.vite-tests',
  plugins: [svelte({ configFile: false })],
  optimizeDeps: { include: ['vitest-browser-svelte', 'svelte'] },
  test: {
    allowOnly: false,
    // A test that draws many faces takes its time on a machine that is busy with other things.
    testTimeout: 30_000,
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['tests/unit/**/*.test.ts', 'tests/published/**/*.test.ts'],
          environment: 'node',
        },
      },
      {
        extends: true,
        test: {
          name: 'component',
          include: ['tests/component/**/*.test.ts'],
          browser: {
            enabled: true,
            headless: true,
            provider: playwright({ launchOptions: { executablePath, args: browserFlags } }),
            instances: [{ browser: 'chromium', viewport: { width: 1024, height: 768 } }],
            screenshotFailures: false,
          },
        },
      },
      {
        extends: true,
        test: {
          name: 'site',
          include: ['tests/site/**/*.test.ts'],
          environment: 'node',
        },
      },
    ],
  },
});
