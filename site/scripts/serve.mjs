import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { join } from 'node:path';
import sirv from 'sirv';
import { basePath, builtSite, fail, isMain } from './project.mjs';

const USUAL_PORT = 4400;

/**
 * Serves a built site on this machine alone.
 *
 * @param {object} [options]
 * @param {string} [options.directory] the built site; dist/ where it is left out
 * @param {string} [options.base] path to serve it under; BASE_PATH or / where it is left out
 * @param {number} [options.port] 0 for any free one; where it is left out, 4400, or any free one if that is taken
 * @returns {Promise<{ address: string, close: () => Promise<void> }>}
 */
export async function serve({ directory = builtSite(), base = basePath(), port } = {}) {
  const files = sirv(directory, { dev: true, etag: true });
  const server = createServer((request, response) => {
    const url = new URL(request.url ?? '/', 'http://localhost');
    const target = redirection(url.pathname, directory, base);
    if (target !== undefined) {
      response.writeHead(302, { location: target + url.search }).end();
      return;
    }
    if (!url.pathname.startsWith(base)) {
      notFound(response, directory);
      return;
    }
    request.url = `/${url.pathname.slice(base.length)}${url.search}`;
    files(request, response, () => {
      notFound(response, directory);
    });
  });
  const bound = await listen(server, port ?? USUAL_PORT, port === undefined);
  return {
    address: `http://localhost:${bound}${base}`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => {
          resolve();
        });
        server.closeAllConnections();
      }),
  };
}

/**
 * Where a path without its last slash, or the bare top of a site under a sub-path, leads; undefined for all others.
 *
 * @param {string} path
 * @param {string} directory
 * @param {string} base
 */
function redirection(path, directory, base) {
  if (`${path}/` === base || (path === '/' && base !== '/')) return base;
  if (path.endsWith('/') || !path.startsWith(base)) return undefined;
  const folder = join(directory, path.slice(base.length));
  const isFolder =
    folder.startsWith(directory) && existsSync(folder) && statSync(folder).isDirectory();
  return isFolder ? `${path}/` : undefined;
}

/**
 * @param {import('node:http').ServerResponse} response
 * @param {string} directory
 */
function notFound(response, directory) {
  const page = join(directory, '404.html');
  response.writeHead(404, { 'content-type': 'text/html; charset=utf-8' });
  response.end(existsSync(page) ? readFileSync(page) : 'Not found');
}

/**
 * @param {import('node:http').Server} server
 * @param {number} port
 * @param {boolean} orAnother whether any free port will do where this one is taken
 * @returns {Promise<number>} the port it listens on
 */
function listen(server, port, orAnother) {
  return new Promise((resolve, reject) => {
    server.once('error', (/** @type {NodeJS.ErrnoException} */ error) => {
      if (orAnother && error.code === 'EADDRINUSE') resolve(listen(server, 0, false));
      else reject(error);
    });
    server.listen(port, '127.0.0.1', () => {
      const address = server.address();
      if (address !== null && typeof address === 'object') resolve(address.port);
    });
  });
}

/** Serves until the process is told to end, or the npm that started it is gone; prints the address in one line. */
export async function serveUntilEnded() {
  const given = process.env.PORT;
  const { address, close } = await serve(given === undefined ? {} : { port: Number(given) });
  const end = () => {
    void close().then(() => process.exit(0));
  };
  process.on('SIGINT', end);
  process.on('SIGTERM', end);
  if (process.env.npm_lifecycle_event !== undefined) onParentGone(end);
  console.log(`Held in the Cup is at ${address} (Ctrl-C ends it)`);
}

/** npm starts a script through a shell that does not hand on the signal which ends it; the script is then left alone. */
function onParentGone(/** @type {() => void} */ end) {
  const parent = process.ppid;
  setInterval(() => {
    if (process.ppid !== parent) end();
  }, 500).unref();
}

if (isMain(import.meta.url)) {
  await serveUntilEnded().catch(fail);
}
