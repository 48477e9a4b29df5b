import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './project.mjs';

/** The oldest major version of Node that the build and the tests run on. */
const OLDEST_MAJOR = 24;

const binary = process.platform === 'win32' ? 'node.exe' : 'node';
const installedNode = join(root, 'node_modules', 'node', 'bin', binary);

/**
 * Path of a Node new enough for the build: the one installed with the packages, else the one running this.
 *
 * @throws Error saying what to do where neither will do
 */
export function currentNode() {
  if (existsSync(installedNode) && majorOf(installedNode) >= OLDEST_MAJOR) return installedNode;
  if (majorOf(process.execPath) >= OLDEST_MAJOR) return process.execPath;
  throw new Error(
    `The build needs Node ${OLDEST_MAJOR} or later; this is ${process.version}, and the copy that is installed with ` +
      'the packages is not there (are install scripts switched off in npm?). ' +
      `Run \`npm rebuild node --ignore-scripts=false\`, or install Node ${OLDEST_MAJOR}.`,
  );
}

function majorOf(/** @type {string} */ executable) {
  if (executable === process.execPath) return Number(process.versions.node.split('.')[0]);
  const { status, stdout } = spawnSync(executable, ['--version'], { encoding: 'utf8' });
  return status === 0 ? Number(stdout.trim().replace(/^v/, '').split('.')[0]) : 0;
}
