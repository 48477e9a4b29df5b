import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** The style sheets use light-dark(), which came with this version. */
const OLDEST_MAJOR = 123;

const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome'];

const usualPlaces = {
  darwin: [
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  ],
  win32: ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap((variable) => {
    const folder = process.env[variable];
    return folder === undefined
      ? []
      : [
          join(folder, 'Chromium', 'Application', 'chrome.exe'),
          join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'),
        ];
  }),
};

/**
 * A Chromium or Chrome that runs on this machine: the one CHROMIUM_PATH names, one of the system's, or Playwright's.
 *
 * @returns {Promise<string | undefined>} its path
 * @throws Error where CHROMIUM_PATH names something that does not run
 */
export async function findBrowser() {
  const given = process.env.CHROMIUM_PATH;
  if (given !== undefined && given !== '') {
    if (isUsable(given)) return given;
    throw new Error(`CHROMIUM_PATH is ${given}, which is no Chromium ${OLDEST_MAJOR} or later.`);
  }
  const { chromium } = await import('@playwright/test');
  return [...systemBrowsers(), chromium.executablePath()].find(isUsable);
}

/** As {@link findBrowser}, for what cannot go on without one. */
export async function requireBrowser() {
  const browser = await findBrowser();
  if (browser === undefined) {
    throw new Error('No Chromium found. Run `node site/scripts/install-browser.mjs`.');
  }
  return browser;
}

function systemBrowsers() {
  const onPath = (process.env.PATH ?? '')
    .split(delimiter)
    .flatMap((folder) => names.map((name) => join(folder, name)));
  const { platform } = process;
  return [
    ...onPath,
    ...(platform === 'darwin' || platform === 'win32' ? usualPlaces[platform] : []),
  ];
}

/** Whether a file is a browser that starts and is new enough. Windows opens a window when asked, so there it must exist only. */
function isUsable(/** @type {string} */ path) {
  if (!existsSync(path)) return false;
  if (process.platform === 'win32') return true;
  const { status, stdout } = spawnSync(path, ['--version'], { encoding: 'utf8', timeout: 20_000 });
  const major = Number(/(\d+)\.\d+\.\d+/.exec(stdout)?.[1]);
  return status === 0 && major >= OLDEST_MAJOR;
}
