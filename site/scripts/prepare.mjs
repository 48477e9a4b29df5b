import { existsSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { currentNode } from './current-node.mjs';
import { fail, isMain, root } from './project.mjs';
import { run } from './run.mjs';

/**
 * Installs the packages of the lockfile where they are not installed yet, or other ones are. Otherwise says nothing.
 *
 * @throws Error where npm fails or no Node new enough for the build is found
 */
export async function prepare() {
  const reason = whyInstall();
  if (reason !== undefined) {
    console.log(`Installing packages: ${reason}.`);
    const { command, args } = npm();
    const flags = ['--include=dev', '--no-audit', '--no-fund', '--loglevel=error'];
    const code = await run(command, [...args, 'ci', ...flags]);
    if (code !== 0) throw new Error('`npm ci` failed; what it said is above.');
  }
  currentNode();
}

/** Why an install is due, in words, or undefined. */
function whyInstall() {
  const installedFile = join(root, 'node_modules', '.package-lock.json');
  if (!existsSync(installedFile)) return 'node_modules is not there yet';
  const wanted = packagesOf(join(root, 'package-lock.json'));
  const installed = packagesOf(installedFile);
  const changed = Object.entries(wanted).find(([path, { version, optional }]) => {
    if (path === '') return false;
    const there = installed[path];
    // An optional package may be meant for another system.
    return there === undefined ? optional !== true : there.version !== version;
  });
  return changed && `${changed[0].replace(/^node_modules\//, '')} is not as in the lockfile`;
}

/**
 * @param {string} lockfile
 * @returns {Record<string, { version?: string, optional?: boolean }>}
 */
function packagesOf(lockfile) {
  const { packages } = /** @type {{ packages: ReturnType<typeof packagesOf> }} */ (
    JSON.parse(readFileSync(lockfile, 'utf8'))
  );
  return packages;
}

/** How to start npm: the very one that runs this script where there is one, else the one on the path. */
function npm() {
  const script = process.env.npm_execpath;
  if (script !== undefined && basename(script) === 'npm-cli.js') {
    return { command: process.env.npm_node_execpath ?? process.execPath, args: [script] };
  }
  return process.platform === 'win32'
    ? { command: 'cmd', args: ['/c', 'npm'] }
    : { command: 'npm', args: [] };
}

if (isMain(import.meta.url)) {
  await prepare().catch(fail);
}
