import { defineConfig } from '@playwright/test';
import { join } from 'node:path';
import { browserFlags } from '../site/scripts/browser-flags.mjs';
import { requireBrowser } from '../site/scripts/find-browser.mjs';
import { artefacts, root } from '../site/scripts/project.mjs';

const executablePath = await requireBrowser();
const server = join(root, 'site', 'scripts', 'serve.mjs');

export default defineConfig({
  testDir: 'browser',
  outputDir: join(artefacts, 'browser'),
  fullyParallel: true,
  forbidOnly: true,
  retries: 0,
  workers: 2,
  timeout: 60_000,
  // Two cores shared with a build or another test answer late; they still must answer.
  expect: { timeout: 10_000 },
  reporter: 'list',
  webServer: {
    command: `"${process.execPath}" "${server}"`,
    env: { PORT: '0' },
    wait: { stdout: /Held in the Cup is at (?<site_address>\S+)/ },
    gracefulShutdown: { signal: 'SIGTERM', timeout: 3000 },
  },
  use: {
    // Set by the server's own words, above.
    baseURL: process.env.SITE_ADDRESS ?? '',
    headless: true,
    viewport: { width: 1280, height: 720 },
    launchOptions: { executablePath, args: browserFlags },
    trace: 'retain-on-failure',
    screenshot: 'only-on-failure',
  },
  projects: [
    { name: 'chromium', testIgnore: 'no-script/**' },
    { name: 'no-script', testMatch: 'no-script/**', use: { javaScriptEnabled: false } },
  ],
});
