import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

/** Absolute path of the project's top folder. */
export const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

/** Where the built site lies, and where reports and pictures go (neither is kept in git). */
export const dist = join(root, 'dist');
export const artefacts = join(root, 'artefacts');

/** The path the site is served under, with a slash at either end. */
export function basePath(base = process.env.BASE_PATH ?? '/') {
  const inner = base.split('/').filter(Boolean).join('/');
  return inner === '' ? '/' : `/${inner}/`;
}

/** Whether a module is the script Node was started with, rather than imported. */
export function isMain(/** @type {string} */ moduleUrl) {
  const entry = process.argv[1];
  return entry !== undefined && moduleUrl === pathToFileURL(entry).href;
}

/**
 * Ends the process with an error's message.
 *
 * @param {unknown} error
 * @returns {never}
 */
export function fail(error) {
  console.error(error instanceof Error ? error.message : error);
  process.exit(1);
}

/** The built site's folder, or an error saying what to do first. */
export function builtSite() {
  if (!existsSync(join(dist, 'index.html'))) {
    throw new Error('There is no built site in dist/. Run `npm run build` first.');
  }
  return dist;
}
