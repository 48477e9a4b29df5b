import { chromium, type Browser } from '@playwright/test';
import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import { parseArgs } from 'node:util';
import { visitWhole } from '../../tests/browser/support/measure.ts';
import { builtRoutes } from '../../tests/browser/support/routes.ts';
import {
  pictureFile,
  schemes,
  screens,
  type Scheme,
  type Screen,
} from '../../tests/browser/support/screens.ts';
import { browserFlags } from './browser-flags.mjs';
import { requireBrowser } from './find-browser.mjs';
import { serve } from './serve.mjs';

/**
 * Pictures of the built site, into artefacts/screenshots.
 *
 *   npm run screenshots -- [route …] [--window] [--only phone] [--scheme dark]
 *
 * Without a route, of every page; whole pages, unless --window asks for what the window shows.
 */
const { positionals, values } = parseArgs({
  allowPositionals: true,
  options: {
    window: { type: 'boolean', default: false },
    only: { type: 'string' },
    scheme: { type: 'string' },
  },
});

const routes =
  positionals.length > 0 ? positionals.map((r) => r.replace(/^\//, '')) : builtRoutes();
const chosenScreens = screens.filter(
  ({ name }) => values.only === undefined || name === values.only,
);
const chosenSchemes = schemes.filter(
  (name) => values.scheme === undefined || name === values.scheme,
);

async function picture(
  browser: Browser,
  address: string,
  route: string,
  screen: Screen,
  colorScheme: Scheme,
): Promise<string> {
  const page = await browser.newPage({ viewport: screen, colorScheme, reducedMotion: 'reduce' });
  await page.goto(new URL(route, address).href);
  await visitWhole(page);
  const path = pictureFile(route, screen, colorScheme);
  mkdirSync(dirname(path), { recursive: true });
  await page.screenshot({ path, fullPage: !values.window });
  await page.close();
  return path;
}

const { address, close } = await serve({ port: 0 });
const browser = await chromium.launch({
  executablePath: await requireBrowser(),
  args: browserFlags,
});
try {
  for (const route of routes) {
    for (const screen of chosenScreens) {
      for (const scheme of chosenSchemes) {
        console.log(await picture(browser, address, route, screen, scheme));
      }
    }
  }
} finally {
  await browser.close();
  await close();
}
