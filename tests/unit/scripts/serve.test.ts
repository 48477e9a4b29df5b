import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { serve } from '../../../site/scripts/serve.mjs';

const folder = mkdtempSync(join(tmpdir(), 'held-in-the-cup-serve-'));
const site = join(folder, 'built');
let server: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  mkdirSync(join(site, 'study'), { recursive: true });
  writeFileSync(join(folder, 'private.txt'), 'outside the site');
  writeFileSync(join(site, 'index.html'), 'home');
  writeFileSync(join(site, '404.html'), 'no such page');
  writeFileSync(join(site, 'study', 'index.html'), 'study');
  server = await serve({ directory: site, base: '/course/', port: 0 });
});

afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

async function get(path: string) {
  const response = await fetch(new URL(path, server.address), { redirect: 'manual' });
  const { status, headers } = response;
  return { status, text: await response.text(), location: headers.get('location') };
}

test('pages are served under the base', async () => {
  expect(await get('/course/')).toMatchObject({ status: 200, text: 'home' });
  expect(await get('/course/study/')).toMatchObject({ status: 200, text: 'study' });
});

test('the bare top and a path without its last slash lead on', async () => {
  expect(await get('/')).toMatchObject({ status: 302, location: '/course/' });
  expect(await get('/course')).toMatchObject({ status: 302, location: '/course/' });
  expect(await get('/course/study?a=1')).toMatchObject({
    status: 302,
    location: '/course/study/?a=1',
  });
});

test.each(['/course/nowhere/', '/elsewhere/', '/course/%E0%A4%A', '/course/..%2fprivate.txt'])(
  '%s is the page for what is not there',
  async (path) => {
    expect(await get(path)).toMatchObject({ status: 404, text: 'no such page' });
  },
);

test('a taken port is an error where that port was asked for', async () => {
  const port = Number(new URL(server.address).port);
  await expect(serve({ directory: site, port })).rejects.toThrow('EADDRINUSE');
});
