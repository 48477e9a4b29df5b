import { existsSync } from 'node:fs';
import { findBrowser } from './find-browser.mjs';
import { fail, isMain } from './project.mjs';
import { run, runTool } from './run.mjs';

/**
 * The path of a browser for the tests, installed first where the machine has none: Playwright's own, or, where that
 * cannot be had on Debian or Ubuntu as root, the system's package.
 *
 * @returns {Promise<string>}
 * @throws Error saying what to do where nothing works
 */
export async function ensureBrowser() {
  const found = await findBrowser();
  if (found !== undefined) return found;

  const isDebianRoot = existsSync('/etc/debian_version') && process.getuid?.() === 0;
  console.log(
    'No Chromium or Chrome on this machine. Installing the one that comes with Playwright.',
  );
  await runTool('playwright', ['install', ...(isDebianRoot ? ['--with-deps'] : []), 'chromium']);
  const own = await findBrowser();
  if (own !== undefined) return own;

  if (isDebianRoot) {
    console.log('That did not work. Installing the package `chromium` of the system instead.');
    const quiet = { DEBIAN_FRONTEND: 'noninteractive' };
    await run('apt-get', ['update', '-q'], quiet);
    await run('apt-get', ['install', '-q', '-y', '--no-install-recommends', 'chromium'], quiet);
    const packaged = await findBrowser();
    if (packaged !== undefined) return packaged;
  }
  throw new Error(
    'No browser for the tests could be found or installed. Install Chromium or Chrome, or set CHROMIUM_PATH to one, and try again.',
  );
}

if (isMain(import.meta.url)) {
  console.log(await ensureBrowser().catch(fail));
}
