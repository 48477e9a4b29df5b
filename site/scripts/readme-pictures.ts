import { chromium, type Page } from '@playwright/test';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { browserFlags } from './browser-flags.mjs';
import { requireBrowser } from './find-browser.mjs';
import { serve } from './serve.mjs';

/** The pictures of the README, taken from the built site: npm run readme-pictures */

interface Picture {
  readonly name: string;
  readonly route: string;
  readonly width: number;
  readonly height: number;
  /** What a visitor would do first. */
  readonly before?: (page: Page) => Promise<void>;
  /** The part of the page to take; the window where it is left out. */
  readonly part?: string;
}

const folder = join(import.meta.dirname, '../readme');
const SLIPPED = 30_000;

const pictures: readonly Picture[] = [
  {
    name: 'push-bench',
    route: 'bench/push-bench/',
    width: 1200,
    height: 860,
    part: 'figure.sheet',
    before: async (page) => {
      await page.getByRole('button', { name: 'Push until it slips' }).click();
      await page.getByText('out of the cup').waitFor({ timeout: SLIPPED });
    },
  },
  {
    name: 'path-tracer',
    route: 'bench/path-tracer/',
    width: 1200,
    height: 1000,
    part: 'figure.sheet',
  },
  { name: 'study', route: 'study/01-ball-and-cup/', width: 1200, height: 1050 },
  { name: 'lecture', route: 'lecture/07-holding-fast/#3.5', width: 1280, height: 720 },
  { name: 'clinic', route: 'clinic/01-ball-and-cup/', width: 820, height: 1000 },
];

mkdirSync(folder, { recursive: true });
const { address, close } = await serve({ port: 0 });
const browser = await chromium.launch({
  executablePath: await requireBrowser(),
  args: browserFlags,
});
try {
  for (const { name, route, width, height, before, part } of pictures) {
    const page = await browser.newPage({ viewport: { width, height } });
    await page.goto(new URL(route, address).href);
    await page.waitForLoadState('networkidle');
    await before?.(page);
    const path = join(folder, `${name}.png`);
    await (part === undefined ? page : page.locator(part).first()).screenshot({ path });
    await page.close();
    console.log(path);
  }
} finally {
  await browser.close();
  await close();
}
