import { beforeEach, expect, test, vi } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { gapAct, gapCells } from '../../sims/benches/gap-and-heat/acts.ts';
import OnStage from '../../sims/benches/gap-and-heat/OnStage.svelte';
import Simple from '../../sims/benches/gap-and-heat/Simple.svelte';
import { outcomeOf, underWay, waiting } from '../../sims/benches/gap-and-heat/simple-words.ts';
import '../../site/styles/tokens.css';
import '../../site/styles/base.css';

/** A run takes five seconds of frames, which a busy machine draws seldom. */
const LONG = { timeout: 25_000 };
const RESET = 'test:reset';
const words = () => page.getByRole('status');
const set = () => page.getByRole('button', { name: 'Let it set' });
const heightOf = (selector: string, name: string): number =>
  Number(document.querySelector(selector)?.getAttribute(name));

beforeEach(async () => {
  await page.viewport(1200, 820);
});

test('plain: the cement sets, the bone warms past the mark of hot, and it cools', async () => {
  await render(Simple, { resetOn: RESET });
  await expect.element(words()).toHaveTextContent(waiting('snug'));
  await page.getByRole('radio', { name: 'Loose fit' }).click();
  await expect.element(words()).toHaveTextContent(waiting('loose'));
  expect(document.querySelector('.pointer')).toBeNull();
  const body = heightOf('.column', 'y');
  await set().click();
  await expect.element(words()).toHaveTextContent(underWay);
  await expect.element(words(), LONG).toHaveTextContent(outcomeOf('loose'));
  const pointer = document.querySelector('.pointer')?.getAttribute('d') ?? '';
  const highest = Number(/^M[\d.]+ ([\d.]+)/.exec(pointer)?.[1]);
  const hot = [...document.querySelectorAll('text')].find(
    ({ textContent }) => textContent === 'hot',
  );
  expect(highest).toBeLessThan(Number(hot?.getAttribute('y')) - 20);
  expect(heightOf('.column', 'y')).toBeGreaterThan(highest + 30);
  expect(heightOf('.column', 'y')).toBeLessThan(body);
  expect(document.querySelector('svg')?.textContent).not.toMatch(/\d/);
});

test('plain: another fit begins with soft cement, and the page can ask for the beginning', async () => {
  await render(Simple, { resetOn: RESET });
  await page.getByRole('radio', { name: 'Loose fit' }).click();
  await set().click();
  await expect.element(words()).toHaveTextContent(underWay);
  await page.getByRole('radio', { name: 'Snug fit' }).click();
  await expect.element(words()).toHaveTextContent(waiting('snug'));
  await page.getByRole('radio', { name: 'Loose fit' }).click();
  await set().click();
  window.dispatchEvent(new Event(RESET));
  await expect.element(words()).toHaveTextContent(waiting('snug'));
  await expect.element(page.getByRole('radio', { name: 'Snug fit' })).toBeChecked();
  expect(document.querySelector('.pointer')).toBeNull();
});

test.each([
  [1200, 820],
  [390, 844],
])('plain: every button is large enough for a thumb at %i × %i', async (width, height) => {
  await page.viewport(width, height);
  await render(Simple);
  const targets = [...document.querySelectorAll('button, label')];
  expect(targets).toHaveLength(3);
  for (const target of targets) {
    const box = target.getBoundingClientRect();
    expect(Math.min(box.width, box.height), target.textContent).toBeGreaterThanOrEqual(56);
  }
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
});

const acts = [
  gapAct('snug', { measured: 'pegs', fitError: 0 }),
  gapAct('loose', { measured: 'keel', fitError: 3 }),
] as const;
const rows = (): readonly HTMLElement[] => [...document.querySelectorAll<HTMLElement>('.build')];
const cells = (row: Element | null | undefined): readonly string[] =>
  [...(row?.querySelectorAll('td') ?? [])].map(({ textContent }) => textContent);
const now = () => cells(document.querySelector('.now'));
const drawn = (): string => document.querySelector('figure svg')?.textContent ?? '';

test('on stage nothing is told before the first act, and each sets before its row is told', async () => {
  await render(OnStage, { acts });
  await vi.waitFor(() => expect(now()).toEqual(['?', '?', '?']));
  expect(drawn()).not.toContain('°C');
  const [first, second] = acts.map(({ result }) => gapCells(result));
  rows()[0]?.setAttribute('data-shown', '');
  await vi.waitFor(() => expect(cells(rows()[0])).toEqual(['…', '…', '…']));
  expect(cells(rows()[1])).toEqual(second);
  await expect.poll(() => cells(rows()[0]), LONG).toEqual(first);
  expect(now()).toEqual(first);
  expect(drawn()).toContain('24 min');
  rows()[1]?.setAttribute('data-shown', '');
  await vi.waitFor(() => expect(cells(rows()[1])).toEqual(['…', '…', '…']));
  rows()[1]?.removeAttribute('data-shown');
  await vi.waitFor(() => expect(now()).toEqual(first));
  expect(drawn()).toContain('6 min');
  rows()[0]?.removeAttribute('data-shown');
  await vi.waitFor(() => expect(now()).toEqual(['?', '?', '?']));
});

test('on stage, by hand: a looser fit takes more cement, and the moment can be chosen', async () => {
  await render(OnStage, { acts });
  await vi.waitFor(() => expect(now()).toEqual(['?', '?', '?']));
  await page.getByRole('slider', { name: 'Fit error' }).fill('3');
  const { result } = gapAct('', { measured: 'pegs', fitError: 3 });
  await vi.waitFor(() => expect(now()).toEqual(gapCells(result)));
  expect(result.cement).toBeGreaterThan(acts[0].result.cement);
  await page.getByRole('slider', { name: 'Time' }).fill('0');
  await expect.poll(drawn).toContain('0 min');
  await set().click();
  await expect.poll(drawn, LONG).toMatch(/1\d min/);
});
