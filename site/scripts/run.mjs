import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { delimiter, dirname, join } from 'node:path';
import { currentNode } from './current-node.mjs';
import { root } from './project.mjs';

/** @type {Set<import('node:child_process').ChildProcess>} */
const running = new Set();

for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM'])) {
  process.on(signal, () => {
    for (const child of running) child.kill(signal);
    // A server started in this process closes itself on the same signal; without one there is nothing to wait for.
    if (process.listenerCount(signal) === 1) process.exit(128 + (signal === 'SIGINT' ? 2 : 15));
  });
}

/**
 * Runs a command from the project's top folder, its output passed on, its input closed.
 *
 * @param {string} command
 * @param {readonly string[]} args
 * @param {Readonly<Record<string, string | undefined>>} [env] added to this process's own; undefined takes one out
 * @returns {Promise<number>} its exit code; 1 where a signal ended it or it could not start
 */
export function run(command, args, env = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd: root,
      env: { ...process.env, ...env },
      stdio: ['ignore', 'inherit', 'inherit'],
    });
    running.add(child);
    const end = (/** @type {number} */ code) => {
      running.delete(child);
      resolve(code);
    };
    child.on('error', (error) => {
      console.error(`${command}: ${error.message}`);
      end(1);
    });
    child.on('close', (code) => {
      end(code ?? 1);
    });
  });
}

/**
 * Runs an installed package's command on the current Node, whichever Node runs this.
 *
 * @param {string} name package and command, as `astro`, or `@playwright/test playwright` where they differ
 * @param {readonly string[]} args
 * @param {Readonly<Record<string, string | undefined>>} [env]
 */
export function runTool(name, args, env = {}) {
  const node = currentNode();
  const path = `${dirname(node)}${delimiter}${process.env.PATH ?? ''}`;
  return run(node, [entryOf(name), ...args], {
    PATH: path,
    ASTRO_TELEMETRY_DISABLED: '1',
    ...env,
  });
}

function entryOf(/** @type {string} */ name) {
  const [packageName = name, command = packageName] = name.split(' ');
  const folder = join(root, 'node_modules', packageName);
  const { bin } = /** @type {{ bin?: string | Record<string, string> }} */ (
    JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'))
  );
  const entry = typeof bin === 'string' ? bin : bin?.[command];
  if (entry === undefined) throw new Error(`The package ${packageName} has no command ${command}`);
  return join(folder, entry);
}
