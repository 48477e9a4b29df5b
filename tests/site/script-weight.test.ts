import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { readSite } from './built-site.ts';
import { scriptBudget } from './rules/script-budget.ts';
import { gzipped, scriptWeight } from './script-weight.ts';

const folder = mkdtempSync(join(tmpdir(), 'held-in-the-cup-weight-'));

afterAll(() => {
  rmSync(folder, { recursive: true });
});

/** Hardly shrinks when packed: digits that follow no pattern gzip knows. */
const bulk = (length: number) =>
  `export const bulk = '${Array.from({ length }, (_, i) => Math.abs(Math.sin(i * i + 1)).toString(36)[7]).join('')}';`;

const files = {
  'first.js': "import './shared.js'; import('./later.js');",
  'shared.js': 'export const shared = 1;',
  'later.js': bulk(180_000),
  'sim.js': `import './shared.js'; ${bulk(1000)}`,
  'heavy.js': bulk(180_000),
  'asks.js': "import './shared.js'; import('./solid-scene.B1.js');",
  'solid-scene.B1.js': "import './shared.js'; import './kernel.js';",
  'kernel.js': bulk(1000),
  'hasty.js': "import './solid-scene.B1.js';",
};
const start = '<script type="module" src="/first.js"></script>';
const sim = (when: string) => `<astro-island client="${when}" component-url="/sim.js">`;
const pages = {
  'study/waits/index.html': start + sim('visible'),
  'study/eager/index.html': start + sim('load'),
  'bench/one/index.html': start + sim('load'),
  'bench/asks/index.html': '<script type="module" src="/asks.js"></script>',
  'bench/hasty/index.html': '<script type="module" src="/hasty.js"></script>',
  'study/heavy/index.html': '<script type="module" src="/heavy.js"></script>',
};
for (const [name, text] of Object.entries({ ...files, ...pages })) {
  mkdirSync(dirname(join(folder, name)), { recursive: true });
  writeFileSync(join(folder, name), text);
}
const site = readSite(folder, '/');
const size = (name: keyof typeof files) => gzipped(files[name]);
const atStart = size('first.js') + size('shared.js');

function weigh(route: string) {
  const page = site.pages.find((candidate) => candidate.route === route);
  if (page === undefined) throw new Error(`no page ${route}`);
  return scriptWeight(site, page);
}

test('a file imported twice counts once, and one imported later only all in', () => {
  expect(weigh('study/waits/')).toEqual({
    atRest: atStart,
    allIn: atStart + size('later.js') + size('sim.js'),
    onRequest: 0,
  });
});

test('what a visitor must ask for is weighed apart, with what it brings', () => {
  expect(weigh('bench/asks/')).toEqual({
    atRest: size('asks.js') + size('shared.js'),
    allIn: size('asks.js') + size('shared.js'),
    onRequest: size('solid-scene.B1.js') + size('kernel.js'),
  });
});

test('imported at once, it counts at once', () => {
  const { atRest, onRequest } = weigh('bench/hasty/');
  expect(atRest).toBeGreaterThan(size('solid-scene.B1.js') + size('kernel.js'));
  expect(onRequest).toBe(0);
});

test('a sim that does not wait to be scrolled to counts at once in a lesson, not on its bench', () => {
  expect(weigh('study/eager/').atRest).toBe(atStart + size('sim.js'));
  expect(weigh('bench/one/').atRest).toBe(atStart);
});

test('a page over the budget is found', () => {
  expect(scriptBudget(site)).toEqual([expect.stringMatching(/^study\/heavy\/: \d+ bytes atRest/)]);
});
