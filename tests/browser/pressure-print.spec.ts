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

const BENCH = 'pressure-print';
const TRANSLATION = 'Translation of the ball';
const SLIDERS = [
  TRANSLATION,
  'Radial mismatch',
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
  await expect.poll(() => queryOf(page).get('by')).toBe('arc');
  await page.getByRole('button', { name: 'Start over' }).focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => new URL(page.url()).search).toBe('');
  await page.getByText('Read the curves as a table').focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('columnheader', { name: 'peak pressure (MPa)' })).toBeVisible();
});

test('the ball is dragged with the mouse until the edge of the rim carries it', async ({
  page,
}) => {
  await openBench(page, BENCH);
  const start = await firstPoint(page);
  await expect(readingOf(page, 'Near the rim')).toHaveText(/^0/);
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await page.mouse.move(start.x + 40, start.y, { steps: 6 });
  await expect.poll(() => numberOf(page, 'Near the rim')).toBeGreaterThan(50);
  await page.mouse.up();
  const at = Number(await sliderOf(page, TRANSLATION).inputValue());
  expect(at).toBeGreaterThan(1.5);
  // The slider stands on its nearest step.
  await expect.poll(() => Number(queryOf(page).get('at'))).toBeCloseTo(at, 1);
  await expect(page.getByText(/^The edge of the rim carries the ball\./)).toBeVisible();
});

test('pictures and numbers can be taken home, and say what the bench says', async ({ page }) => {
  await openBench(page, BENCH, '?mismatch=2&at=0.5&load=800');
  const svg = await takeFile(page, 'Picture (SVG)');
  expect(svg.name).toBe('pressure-print.svg');
  const words = await svgWords(page, svg.content);
  for (const part of [
    'Pressure Print',
    '800 N',
    'radial mismatch 2.0 mm (diametral 4.0 mm)',
    'peak',
  ]) {
    expect(words).toContain(part);
  }
  const png = await takeFile(page, 'Picture (PNG)');
  const width = await picture(page).evaluate((element) => element.clientWidth);
  expect(pngWidth(png.content)).toBeGreaterThanOrEqual(2 * width);

  const [header, ...rows] = csvRows((await takeFile(page, 'Numbers (CSV)')).content);
  expect(header?.[0]).toBe('translation (mm)');
  expect(rows.length).toBeGreaterThan(100);
  expect(Number(rows[0]?.[0])).toBe(0);
  expect(Number(rows.at(-1)?.[0])).toBe(14);
  const states = rows.map((row) => row.at(-1));
  expect(states[0]).toBe('on the face');
  expect(states.at(-1)).toBe('on the rim edge');

  const map = csvRows((await takeFile(page, /^Take the map’s numbers/)).content);
  expect(map[0]).toEqual([
    'along the translation (mm)',
    'across it (mm)',
    'area (mm²)',
    'pressure (MPa)',
  ]);
  const area = map.slice(1).reduce((sum, row) => sum + Number(row[2]), 0);
  expect(Math.abs(area - (await numberOf(page, 'Print')))).toBeLessThan(0.6);
  const peak = Math.max(...map.slice(1).map((row) => Number(row[3])));
  const written = await numberOf(page, 'Peak pressure');
  expect(peak).toBeLessThanOrEqual(written + 0.05);
  expect(peak).toBeGreaterThan(0.9 * written);
});

test('keeps its whole state over a reload', async ({ page }) => {
  await openBench(page, BENCH, '?by=depth&depth=5&mismatch=4&thickness=6&load=900&at=2');
  await sliderOf(page, TRANSLATION).focus();
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => queryOf(page).get('at')).toBe('2.25');
  const words = page.locator('figure .visually-hidden').first();
  const before = await words.textContent();
  await page.reload();
  await expect(sliderOf(page, TRANSLATION)).toHaveValue('2.25');
  await expect(sliderOf(page, 'Depth')).toHaveValue('5');
  await expect(words).toHaveText(before ?? '');
});

test('a broken address gives one clear line and a safe default', async ({ page }) => {
  for (const search of [
    'at=abc',
    'at=-1',
    'mismatch=99',
    'thickness=0',
    'modulus=NaN',
    'by=__proto__',
    'load=1e99',
  ]) {
    await openBench(page, BENCH, `?${search}`);
    await expect(page.getByText('Not taken from the link'), search).toHaveCount(1);
    await expect(sliderOf(page, TRANSLATION), search).toHaveValue('1');
    await expect(sliderOf(page, 'Radial mismatch'), search).toHaveValue('3');
    await expect(readingOf(page, 'Peak pressure'), search).toHaveText(/25\.1/);
  }
});

test('nonsense gets a sentence and the nearest that makes sense', async ({ page }) => {
  await openBench(page, BENCH, '?at=20');
  await expect(
    page.getByText(/The ball leaves this socket at 14\.0.mm: it stands there\./),
  ).toBeVisible();
  await expect(sliderOf(page, TRANSLATION)).toHaveValue('14');
  await openBench(page, BENCH, '?ball=30&width=60');
  await expect(page.getByText(/The width is set to 2\d\.\d.mm\./)).toBeVisible();
  const mismatch = page.getByRole('textbox', { name: /^Radial mismatch, typed/ });
  await mismatch.fill('-2');
  await mismatch.press('Enter');
  await expect(mismatch).toHaveValue('0.0');
  await expect(page.getByText('Set to the nearest')).toBeVisible();
  const thickness = page.getByRole('textbox', { name: /^Thickness of the plastic, typed/ });
  await thickness.fill('0');
  await thickness.press('Enter');
  await expect(thickness).toHaveValue('2.0');
});

test('nothing about it keeps anybody out', async ({ page }) => {
  await openBench(page, BENCH, '?at=2');
  await expectNoAxeViolations(page, 'figure');
});
