import { beforeEach, expect, test, vi } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import LayerStrip from '../../sims/benches/layer-strip/OnStage.svelte';
import { cellsOf as stripCells, stripAct } from '../../sims/benches/layer-strip/acts.ts';
import { defaultStrip } from '../../sims/benches/layer-strip/settings.ts';
import WeekByWeek from '../../sims/benches/week-by-week/OnStage.svelte';
import Simple from '../../sims/benches/week-by-week/Simple.svelte';
import { cellsOf as weekCells, weekAct } from '../../sims/benches/week-by-week/acts.ts';
import { WEEKS } from '../../sims/benches/week-by-week/settings.ts';
import { buttonWords, outcomeOf, plainRun } from '../../sims/benches/week-by-week/simple-words.ts';
import '../../site/styles/tokens.css';
import '../../site/styles/base.css';

const RESET = 'test:reset';
/** All weeks take less than five seconds; a busy machine is given longer. */
const WHOLE = { timeout: 20_000 };

beforeEach(async () => {
  await page.viewport(1200, 820);
});

const shown = () => [...document.querySelectorAll('.now td')].map(({ textContent }) => textContent);
const rowsOf = () => [...document.querySelectorAll<HTMLElement>('.build')];
const show = (row: HTMLElement | undefined) => row?.setAttribute('data-shown', '');
const picture = () => document.querySelector('.picture svg');

const strips = [
  stripAct('plastic on metal', defaultStrip),
  stripAct('plastic twice', { ...defaultStrip, lower: 'polyethylene' }),
] as const;

test('on stage the shear waits for the first act, and each act brings its own strip', async () => {
  await render(LayerStrip, { acts: strips });
  const rows = rowsOf();
  expect(rows).toHaveLength(strips.length);
  await vi.waitFor(() => expect(shown()).toEqual(['?', '?', '?']));
  expect(picture()?.querySelector('path[fill="var(--force-wash)"]')).toBeNull();
  for (const [i, { strip, setting }] of strips.entries()) {
    show(rows[i]);
    await vi.waitFor(() => expect(shown()).toEqual(stripCells(strip)));
    expect(picture()?.querySelector('path[fill="var(--force-wash)"]')).not.toBeNull();
    expect(picture()?.textContent).toContain(setting.lower);
  }
  rows[1]?.removeAttribute('data-shown');
  await vi.waitFor(() => expect(shown()).toEqual(stripCells(strips[0].strip)));
});

test('by hand a thicker soft layer lowers the peak', async () => {
  await render(LayerStrip, { acts: strips });
  await vi.waitFor(() => expect(shown()).toEqual(['?', '?', '?']));
  await page.getByRole('slider', { name: 'Upper layer' }).fill('8');
  await expect.poll(() => Number(shown()[0])).toBeLessThan(0.6 * strips[0].strip.peakShear);
});

const halves = [
  weekAct('light press', { pegs: 'none', press: 250 }),
  weekAct('six times', { pegs: 'none', press: 1500 }),
] as const;

test('on stage the weeks go by at a press, and how they end is not told before', async () => {
  await render(WeekByWeek, { acts: halves });
  const rows = rowsOf();
  await vi.waitFor(() => expect(shown()).toEqual(['?', '?']));
  expect(picture()?.textContent).not.toMatch(/week|%/);
  show(rows[0]);
  await vi.waitFor(() => expect(rows[0]?.textContent).toContain('…'));
  await vi.waitFor(() => expect(shown()).toEqual(weekCells(halves[0].end)), WHOLE);
  await vi.waitFor(() => expect(rows[0]?.textContent).not.toContain('…'), WHOLE);
  expect(picture()?.textContent).toContain(`week ${WEEKS}`);
  show(rows[1]);
  await vi.waitFor(() => expect(picture()?.innerHTML).toMatch(/url\(#[^)]*-flesh\)"[^>]*fill-op/));
  await vi.waitFor(() => expect(shown()).toEqual(weekCells(halves[1].end)), WHOLE);
  // Going back, nothing runs again.
  rows[1]?.removeAttribute('data-shown');
  await vi.waitFor(() => expect(shown()).toEqual(weekCells(halves[0].end)));
});

test('by hand a harder press moves the spaces more and leaves less bone', async () => {
  await render(WeekByWeek, { acts: halves });
  await vi.waitFor(() => expect(shown()).toEqual(['?', '?']));
  await page.getByRole('slider', { name: 'Press' }).fill('1000');
  await expect.poll(() => Number(shown()[0])).toBeGreaterThan(3000 * halves[0].end.motion);
  expect(Number(shown()[1])).toBeLessThan(50 * halves[0].end.share);
  await page.getByRole('slider', { name: 'Toward the rim' }).fill('20');
  await expect.poll(() => Number(shown()[1])).toBeGreaterThan(50 * halves[0].end.share);
});

const said = () => document.querySelector('.outcome')?.textContent;
const pass = () => page.getByRole('button', { name: buttonWords.begin }).click();

test('for a patient the weeks go by, and the words are those of the bench', async () => {
  await render(Simple, { resetOn: RESET });
  const [little, much] = [plainRun('little'), plainRun('much')];
  await expect.poll(said).toBe(outcomeOf(little, 0));
  // For who wants no motion the weeks are over at once.
  const still = vi.spyOn(window, 'matchMedia').mockReturnValue(matchMedia('all'));
  await pass();
  still.mockRestore();
  await expect.poll(said).toBe(outcomeOf(little, WEEKS));
  expect(document.querySelector('.drawing')?.textContent).toContain('new bone');
  await page.getByRole('radio', { name: 'It moves a lot' }).click();
  await expect.poll(said).toBe(outcomeOf(much, 0));
  await pass();
  await expect.poll(said).toBe(outcomeOf(much, 1));
  await expect.poll(() => document.querySelector('g[transform^="rotate"]')).not.toBeNull();
  await expect.poll(said, WHOLE).toBe(outcomeOf(much, WEEKS));
  expect(document.querySelector('.drawing')?.textContent).toContain('soft tissue');
  expect(document.querySelector('g[transform^="rotate"]')).toBeNull();
  window.dispatchEvent(new Event(RESET));
  await expect.poll(said).toBe(outcomeOf(little, 0));
  await expect.element(page.getByRole('radio', { name: 'It hardly moves' })).toBeChecked();
});

test('every button for a patient is large enough for a thumb', async () => {
  await render(Simple);
  const targets = [...document.querySelectorAll('button, label')];
  expect(targets).toHaveLength(3);
  for (const target of targets) {
    const { width, height } = target.getBoundingClientRect();
    expect(Math.min(width, height), target.textContent).toBeGreaterThanOrEqual(44);
  }
});
