import type { Locator, Page } from '@playwright/test';
import { expectNoAxeViolations } from './support/accessibility.ts';
import {
  csvRows,
  expectKeyboard,
  firstPoint,
  numberOf,
  openBench,
  pngWidth,
  queryOf,
  readingOf,
  sliderOf,
  svgWords,
  takeFile,
} from './support/bench-page.ts';
import { expect, test } from './support/test.ts';

const BENCH = 'two-curves';
const MISMATCH = 'Radial mismatch, R − r';
const SLIDERS = [
  MISMATCH,
  'Ball diameter',
  'Width',
  'Load, pressing in',
  'Thickness of the plastic',
  'Young’s modulus',
  'Poisson’s ratio',
];

const picture = (page: Page): Locator => page.locator('.picture svg');

test('every slider answers the keyboard and stands in the address', async ({ page }) => {
  await openBench(page, BENCH);
  await expectKeyboard(page, SLIDERS);
});

test('choices and buttons answer the keyboard', async ({ page }) => {
  await openBench(page, BENCH);
  await page.getByRole('radio', { name: 'Width', exact: true }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(sliderOf(page, 'Depth')).toBeVisible();
  await page.keyboard.press('ArrowRight');
  await expect(sliderOf(page, 'Arc, rim to rim')).toBeVisible();
  await expect.poll(() => queryOf(page).get('hold')).toBe('arc');
  await page.getByRole('radio', { name: 'Socket', exact: true }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(sliderOf(page, 'Socket’s radius of curvature')).toBeVisible();
  await page.getByRole('button', { name: 'Keep these curves to compare' }).focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => queryOf(page).get('kept')).not.toBeNull();
  await page.getByRole('button', { name: 'Start over' }).focus();
  await page.keyboard.press('Space');
  await expect.poll(() => new URL(page.url()).search).toBe('');
});

test('the line of the mismatch is dragged with the mouse, and all that hangs on it follows', async ({
  page,
}) => {
  await openBench(page, BENCH);
  const start = await firstPoint(page);
  const before = {
    play: await numberOf(page, 'Play before the rim'),
    ratio: await numberOf(page, 'Peak stability ratio'),
  };
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await page.mouse.move(start.x + 60, start.y, { steps: 6 });
  await expect.poll(() => numberOf(page, 'Play before the rim')).toBeGreaterThan(before.play);
  expect(await numberOf(page, 'Peak stability ratio')).toBeLessThan(before.ratio);
  await page.mouse.up();
  const radial = Number(await sliderOf(page, MISMATCH).inputValue());
  expect(radial).toBeGreaterThan(3);
  await expect.poll(() => queryOf(page).get('mismatch')).toBe(String(radial));
  await expect(page.getByText(`Diametral, 2R − 2r: ${(2 * radial).toFixed(1)}`)).toBeVisible();
});

test('pictures and numbers can be taken home, and say what the bench says', async ({ page }) => {
  await openBench(page, BENCH, '?mismatch=5&hold=arc&arc=70');
  const svg = await takeFile(page, 'Picture (SVG)');
  expect(svg.name).toBe('two-curves.svg');
  const words = await svgWords(page, svg.content);
  for (const part of [
    'Two Curves',
    'R − r = 5.0 mm',
    '2R − 2r = 10.0 mm',
    'radial mismatch m, mm',
    'diametral mismatch 2m, mm',
  ]) {
    expect(words).toContain(part);
  }
  const png = await takeFile(page, 'Picture (PNG)');
  const width = await picture(page).evaluate((element) => element.clientWidth);
  expect(pngWidth(png.content)).toBeGreaterThanOrEqual(2 * width);

  const csv = await takeFile(page, 'Numbers (CSV)');
  const [header, ...rows] = csvRows(csv.content);
  expect(header?.slice(0, 2)).toEqual(['radial mismatch (mm)', 'diametral mismatch (mm)']);
  expect(rows.length).toBeGreaterThan(50);
  for (const [radial, diametral, radius, ball, , , arc, play, ratio] of rows) {
    expect(Number(diametral)).toBeCloseTo(2 * Number(radial), 4);
    expect(Number(radius) - Number(ball)).toBeCloseTo(Number(radial), 4);
    expect(Number(arc)).toBeCloseTo(70, 3);
    expect(Number(play)).toBeCloseTo(Number(radial) * Math.sin((35 * Math.PI) / 180), 3);
    expect(Number(ratio)).toBeCloseTo(Math.tan((35 * Math.PI) / 180), 3);
  }
});

test('keeps its whole state over a reload', async ({ page }) => {
  await openBench(page, BENCH, '?hold=depth&depth=5&thickness=6&load=900&kept=1&kept-mismatch=1');
  await sliderOf(page, MISMATCH).focus();
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => queryOf(page).get('mismatch')).toBe('3.1');
  const words = page.locator('figure .visually-hidden').first();
  const before = await words.textContent();
  expect(before).toContain('Drawn dashed to compare');
  await page.reload();
  await expect(sliderOf(page, MISMATCH)).toHaveValue('3.1');
  await expect(sliderOf(page, 'Depth')).toHaveValue('5');
  await expect(words).toHaveText(before ?? '');
});

test('a broken address gives one clear line and a safe default', async ({ page }) => {
  for (const search of [
    'mismatch=abc',
    'mismatch=-2',
    'width=1e99',
    'thickness=0',
    'poisson=0.5',
    'hold=__proto__',
    'change=%3Cscript%3E',
  ]) {
    await openBench(page, BENCH, `?${search}`);
    await expect(page.getByText('Not taken from the link'), search).toHaveCount(1);
    await expect(sliderOf(page, MISMATCH), search).toHaveValue('3');
    await expect(sliderOf(page, 'Width'), search).toHaveValue('28');
    await expect(readingOf(page, 'Depth'), search).toHaveText(/3\.91/);
  }
});

test('nonsense gets a sentence and the nearest that makes sense', async ({ page }) => {
  await openBench(page, BENCH, '?ball=30&width=60');
  await expect(page.getByText(/The width is set to 2\d\.\d.mm\./)).toBeVisible();
  await openBench(page, BENCH, '?change=ball&radius=16&mismatch=9');
  await expect(page.getByText(/^Beyond, the ball would be smaller than 30/)).toBeVisible();
  const thickness = page.getByRole('textbox', { name: /^Thickness of the plastic, typed/ });
  await thickness.fill('0');
  await thickness.press('Enter');
  await expect(thickness).toHaveValue('2.0');
  await expect(page.getByText('Set to the nearest')).toBeVisible();
  await thickness.fill('thick');
  await thickness.press('Enter');
  await expect(page.getByText('is not a number')).toBeVisible();
});

test('nothing about it keeps anybody out', async ({ page }) => {
  await openBench(page, BENCH, '?kept=1&kept-mismatch=1');
  await expectNoAxeViolations(page, 'figure');
});
