import { readFile } from 'node:fs/promises';
import type { Locator, Page } from '@playwright/test';
import { openBench } from './support/bench-page.ts';
import { expect, test } from './support/test.ts';

const BENCH = 'rocking-bench';
const SLOW = { timeout: 30_000 };

const cell = (page: Page, name: string): Locator =>
  page.locator('dl > div').filter({ has: page.locator('dt', { hasText: name }) });
const reading = (page: Page, name: string): Locator => cell(page, name).locator('dd').first();
const note = (page: Page, name: string): Locator => cell(page, name).locator('dd.note');

/** The simulation has run for this setting and stands beside the solver. */
async function measured(page: Page): Promise<void> {
  for (const name of ['A, gap', 'B, gap']) {
    await expect(note(page, name)).toHaveText(/^solver .*%$/, SLOW);
  }
}

const place = (page: Page): Locator =>
  page.getByRole('slider', { name: 'Ball, toward the rim', exact: true });

test('the ball at the rim lifts the far side, and the simulation agrees with the solver', async ({
  page,
}) => {
  await openBench(page, BENCH);
  await measured(page);
  for (const name of ['A, gap', 'B, gap', 'A, press-in', 'B, press-in']) {
    const text = (await note(page, name).textContent()) ?? '';
    const difference = Number(/, [+−]?([\d.]+)\u00a0%$/.exec(text)?.[1]);
    expect(difference, text).toBeLessThan(5);
  }
  await place(page).focus();
  await page.keyboard.press('Home');
  await expect(page.locator('figure .visually-hidden')).toContainText('to the bottom rim');
  await measured(page);
});

test('the ball can be taken hold of and drawn across', async ({ page }) => {
  await openBench(page, BENCH, '?place=0');
  await expect(note(page, 'A, gap')).toHaveText(/^solver/, SLOW);
  const box = await page.locator('[data-handle="ball"]').first().boundingBox();
  if (box === null) throw new Error('no ball');
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  await page.mouse.move(middle.x, middle.y);
  await page.mouse.down();
  await page.mouse.move(middle.x - 60, middle.y, { steps: 6 });
  await page.mouse.up();
  await expect.poll(async () => Number(await place(page).inputValue())).toBeLessThan(-20);
  await expect.poll(() => new URL(page.url()).searchParams.get('place')).toMatch(/^-\d+$/);
});

test('rocked, the gap at each load is plotted, tabled and taken home', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await openBench(page, BENCH, '?cycles=3&press=600&left=80');
  await page.getByRole('button', { name: 'Rock them 3 times' }).click();
  await expect(page.locator('.picture').getByText('crosses: the solver')).toBeVisible(SLOW);
  await page.getByText('Read the loads as a table').click();
  await expect(page.locator('figure tbody tr')).toHaveCount(6);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Numbers (CSV)' }).click();
  const lines = (await readFile(await (await download).path(), 'utf8')).trim().split('\r\n');
  expect(lines).toHaveLength(7);
  for (const line of lines.slice(1)) {
    const [, , gap, solved] = line.split(',').map(Number);
    expect(Math.abs((gap ?? NaN) / (solved ?? NaN) - 1), line).toBeLessThan(0.05);
  }
  for (const [name, ending] of [
    ['Picture (SVG)', /\.svg$/],
    ['Picture (PNG)', /\.png$/],
  ] as const) {
    const picture = page.waitForEvent('download');
    await page.getByRole('button', { name }).click();
    expect((await picture).suggestedFilename()).toMatch(ending);
  }
});

test('a rocking can be stopped and sockets made fresh', async ({ page }) => {
  await openBench(page, BENCH, '?cycles=50');
  await page.getByRole('button', { name: 'Rock them 50 times' }).click();
  await page.getByRole('button', { name: 'Stop' }).click();
  await expect(page.getByRole('button', { name: 'Rock them 50 times' })).toBeVisible();
  await page.getByRole('button', { name: 'Fresh sockets' }).click();
  await measured(page);
});

test('holds both designs in the address, and takes them up again', async ({ page }) => {
  await openBench(page, BENCH, '?plane=front-back&a-back=keel&b-back=four&b-bed=bonded');
  await expect(page.getByLabel('A, on its back')).toHaveValue('keel');
  await page.getByRole('radio', { name: 'B', exact: true }).check({ force: true });
  await expect(page.getByLabel('B, on its back')).toHaveValue('four');
  await page.getByLabel('B, hold').selectOption('in-grown');
  await expect.poll(() => new URL(page.url()).searchParams.get('b-hold')).toBe('in-grown');
  await openBench(page, BENCH, new URL(page.url()).search);
  await page.getByRole('radio', { name: 'B', exact: true }).check({ force: true });
  await expect(page.getByLabel('B, hold')).toHaveValue('in-grown');
});

for (const query of ['press=abc', 'a-back=glue', 'b-length=1e9', 'plane=__proto__']) {
  test(`a broken address shows defaults and one clear line: ${query}`, async ({ page }) => {
    await openBench(page, BENCH, `?${query}`);
    await expect(page.getByText('Not taken from the link')).toHaveCount(1);
    await expect(place(page)).toHaveValue('90');
  });
}

test('a socket that nothing holds is said and drawn to be lost', async ({ page }) => {
  await openBench(page, BENCH, '?a-back=none&b-back=none&b-bed=rough');
  await expect(reading(page, 'A, gap')).toHaveText('slid off', SLOW);
  await expect(reading(page, 'B, gap')).toHaveText('overturned', SLOW);
  await expect(page.locator('.picture svg').getByText('slid off its bed')).toBeVisible();
  await expect(page.locator('.picture svg').getByText('overturned')).toBeVisible();
});

test('does no work when it is out of sight', async ({ page }) => {
  await openBench(page, BENCH, '?cycles=50');
  await measured(page);
  await page.getByRole('button', { name: 'Rock them 50 times' }).click();
  await page.evaluate(() => {
    document.querySelector('figure')?.setAttribute('style', 'margin-top: 400vh');
    window.scrollTo(0, 0);
  });
  await page.waitForTimeout(400);
  const frames = await page.evaluate(async () => {
    let count = 0;
    const ask = window.requestAnimationFrame.bind(window);
    window.requestAnimationFrame = (callback) => {
      count += 1;
      return ask(callback);
    };
    await new Promise((done) => setTimeout(done, 500));
    return count;
  });
  expect(frames).toBe(0);
});

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });
  test('stands still, drawn by the solver and described', async ({ page }) => {
    await page.goto(`bench/${BENCH}/`);
    await expect(page.locator('.picture svg:visible')).toHaveCount(1);
    await expect(page.getByText('This is a still.')).toBeVisible();
    await expect(reading(page, 'A, gap')).toHaveText(/\d+\u00a0µm/);
    await expect(note(page, 'A, gap')).toHaveText('by the solver');
  });
});

test('in the lecture the clicker alone brings every act, and what came of it', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto('lecture/06-rim-load/#4');
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
  const rows = page.locator('.step[data-now] .build');
  const last = (): Locator => page.locator('.step[data-now] .build[data-shown]').last();
  for (const [step, ends] of [
    [4, [/^0\u00a0µm$/, /^0\u00a0µm$/, /^\d\d\u00a0µm$/, /^tips$/, /^\d{3}\u00a0µm$/]],
    [8, [/^\d{3}\u00a0µm$/, /^\d{3}\u00a0µm$/, /^\d{3}\u00a0µm$/, /^\d\.\d\d\u00a0mm$/]],
  ] as const) {
    await page.goto(`lecture/06-rim-load/#${step}`);
    await expect(page.locator('.count')).toHaveText(`${step} / 12`);
    await expect(rows).toHaveCount(ends.length);
    for (const end of ends) {
      await page.keyboard.press('PageDown');
      await expect(last().locator('td').first()).toHaveText(end, SLOW);
    }
    await page.keyboard.press('PageDown');
    await expect(page.locator('.count')).toHaveText(`${step + 1} / 12`);
  }
});

test('in the clinic a weak hold wears as it is rocked, and “Start again” puts it back', async ({
  page,
}) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto('clinic/06-rim-load/#step-3');
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
  await page.getByRole('radio', { name: 'Weak hold' }).check({ force: true });
  await expect(page.locator('.outcome')).toHaveText(/No edge lifts\./, SLOW);
  await page.getByRole('radio', { name: 'Again and again' }).check({ force: true });
  await expect(page.locator('.outcome')).toHaveText(/The hold wears, so the lift grows\./, SLOW);
  await page.getByRole('link', { name: 'Start again' }).click();
  await page.goto('clinic/06-rim-load/#step-3');
  await expect(page.getByRole('radio', { name: 'Firm hold' })).toBeChecked();
  await expect(page.locator('.outcome')).toHaveText(/No edge lifts\./);
});
