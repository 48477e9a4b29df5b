import type { Page } from '@playwright/test';
import { expectNoAxeViolations } from './support/accessibility.ts';
import {
  csvRows,
  expectKeyboard,
  numberOf,
  openBench,
  pngWidth,
  queryOf,
  readingOf,
  sliderOf,
  svgWords,
  takeFile,
} from './support/bench-page.ts';
import { overflow } from './support/measure.ts';
import { expect, test } from './support/test.ts';

const BENCH = 'peg-board';
const SLIDERS = [
  'Pegs apart, front to back',
  'Press',
  'Shear, outward',
  'Direction',
  'Way to the rim',
  'Height of the back',
  'Width of the back',
  'Stiffness of the bone',
  'Bone that gives',
];
const handle = (page: Page, which: string) => page.locator(`[data-handle="${which}"]`);
const words = (page: Page) => page.locator('figure .visually-hidden').first();
async function middle(page: Page, which: string): Promise<{ x: number; y: number }> {
  await handle(page, which).scrollIntoViewIfNeeded();
  const box = await handle(page, which).boundingBox();
  if (box === null) throw new Error(`no handle ${which}`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

test('every slider answers the keyboard and stands in the address', async ({ page }) => {
  await openBench(page, BENCH);
  await expectKeyboard(page, SLIDERS);
});

test('pegs and load are dragged with the mouse, and the numbers and the address follow', async ({
  page,
}) => {
  await openBench(page, BENCH);
  const before = await numberOf(page, 'Lift-off');
  const load = await middle(page, 'load');
  await page.mouse.move(load.x, load.y);
  await page.mouse.down();
  await page.mouse.move(load.x - 60, load.y + 40, { steps: 5 });
  await page.mouse.up();
  await expect.poll(() => numberOf(page, 'Lift-off')).toBeLessThan(before);
  await expect.poll(() => queryOf(page).get('share')).not.toBeNull();

  const peg = await middle(page, '0');
  await page.mouse.move(peg.x, peg.y);
  await page.mouse.down();
  await page.mouse.move(peg.x + 30, peg.y + 30, { steps: 5 });
  await page.mouse.up();
  await expect.poll(() => queryOf(page).get('pegs')).toMatch(/^s_\d/);
  const moved = queryOf(page).get('pegs');
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect.poll(() => queryOf(page).get('pegs')).toBeNull();
  await page.getByRole('button', { name: 'Redo', exact: true }).click();
  await expect.poll(() => queryOf(page).get('pegs')).toBe(moved);

  // The rose came from a thread of its own, and catches up.
  expect(page.workers()).toHaveLength(1);
  await expect(page.locator('.picture svg')).toContainText('bars: lift-off in µm');
});

test('a peg is added, moved and removed without a pointer', async ({ page }) => {
  await openBench(page, BENCH);
  await page.getByRole('button', { name: 'Add a peg', exact: true }).focus();
  await page.keyboard.press('Enter');
  await handle(page, '3').focus();
  await page.keyboard.press('ArrowUp');
  await expect(page.getByRole('textbox', { name: 'Peg 4, up, in mm' })).toHaveValue(/^\d\.\d$/);
  await expect(page.getByRole('status').last()).toContainText('The back lifts by up to');
  await page.keyboard.press('Delete');
  await expect(handle(page, '3')).toHaveCount(0);
  await expect.poll(() => queryOf(page).get('pegs')).toBeNull();
});

test('pictures and numbers can be taken home, and say what the bench says', async ({ page }) => {
  await openBench(page, BENCH, '?pegs=f_0_0_7_12*s_7_-8_4_6&keel=none&direction=180');
  const svg = await takeFile(page, 'Picture (SVG)');
  expect(svg.name).toBe('peg-board.svg');
  const lettered = await svgWords(page, svg.content);
  for (const part of ['Peg Board', 'Section along the load, 180°, backward', 'fluted press-fit']) {
    expect(lettered).toContain(part);
  }
  const png = await takeFile(page, 'Picture (PNG)');
  expect(pngWidth(png.content)).toBeGreaterThan(1000);
  const csv = await takeFile(page, 'Numbers (CSV)');
  const rows = csvRows(csv.content);
  expect(rows[1]?.[1]).toContain('36 mm by 27 mm; flat; on bone that can only press');
  expect(rows[2]?.slice(0, 4)).toEqual(['peg 1', 'fluted press-fit', '0', '0']);
  const round = rows.filter(([what]) => what === 'load carried to');
  expect(round).toHaveLength(24);
  const here = round.find(([, , bearing]) => bearing === '180');
  const shown = await numberOf(page, 'Lift-off');
  expect(Math.abs(Number(here?.at(-1)) - shown)).toBeLessThanOrEqual(0.5);
});

test('keeps its whole state over a reload', async ({ page }) => {
  await openBench(page, BENCH, '?pegs=t_0_8_6_9&keel=k_0_-5_10_8_3&bed=rough&press=900&back=round');
  await sliderOf(page, 'Shear, outward').focus();
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => queryOf(page).get('shear')).toBe('220');
  const before = await words(page).textContent();
  expect(before).toContain('Keel, keel cemented, 10.0');
  expect(before).toContain('round with a radius of 36.0');
  await page.reload();
  await expect(words(page)).toHaveText(before ?? '');
});

test('a broken address gives one clear line and a safe default', async ({ page }) => {
  for (const search of [
    'pegs=abc',
    'pegs=s_0_0_0_0',
    'pegs=s_1e9_0_5_10',
    'keel=__proto__',
    'press=-1',
    'bed=glue',
    'back=square',
    'radius=3',
    'direction=%3Cscript%3E',
  ]) {
    await openBench(page, BENCH, `?${search}`);
    await expect(page.getByText('Not taken from the link'), search).toHaveCount(1);
    await expect(handle(page, '2'), search).toHaveCount(1);
    await expect(readingOf(page, 'Lift-off'), search).toHaveText(/\d+.µm/);
  }
});

test('pegs that a link puts off the back or into each other are set beside', async ({ page }) => {
  await openBench(page, BENCH, '?pegs=s_20_20_5_10*s_0_0_5_10*s_0_0_5_10');
  await expect(
    page.getByText('Peg 1 and peg 3 were moved to the nearest place with room.'),
  ).toBeVisible();
  await expect(handle(page, '2')).toHaveCount(1);
});

test('a socket without rest is said, and the numbers stay away', async ({ page }) => {
  await openBench(page, BENCH, '?pegs=none');
  await expect(words(page)).toContainText('Slides off: nothing holds it along the bone.');
  await expect(readingOf(page, 'Lift-off')).toHaveText('–');
  await openBench(page, BENCH, '?pegs=none&bed=rough&shear=600');
  await expect(words(page)).toContainText('Overturned: nothing balances this load.');
  await expect(page.locator('.picture svg')).toContainText('OVERTURNED');
});

test('nothing about it keeps anybody out', async ({ page }) => {
  await openBench(page, BENCH);
  await expectNoAxeViolations(page, 'figure');
});

test('fits a phone, with handles a finger finds', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openBench(page, BENCH);
  expect(await overflow(page)).toBe(0);
  for (const which of ['0', '1', '2', 'load']) {
    const box = await handle(page, which).boundingBox();
    expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(24);
  }
});

test('in the lecture each press of the clicker lays out another back', async ({ page }) => {
  await page.goto('lecture/07-holding-fast/#3');
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
  const step = page.locator('.step[data-now]');
  const now = step.locator('.now td');
  await expect(now).toHaveText(['?', '?', '?']);
  const rows = await step
    .locator('tr.build')
    .evaluateAll((all) =>
      all.map((row) => [...row.querySelectorAll('td')].map(({ textContent }) => textContent)),
    );
  expect(rows).toHaveLength(6);
  for (const cells of rows) {
    await page.keyboard.press('PageDown');
    await expect(now).toHaveText(cells);
  }
  await page.keyboard.press('PageDown');
  await expect(page.locator('.count')).toHaveText(/^4 \//);
});
