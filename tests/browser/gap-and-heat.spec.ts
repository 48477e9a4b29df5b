import { acts } from '../../lessons/08-cement/acts.ts';
import { gapCells } from '../../sims/benches/gap-and-heat/acts.ts';
import { expectNoAxeViolations } from './support/accessibility.ts';
import {
  csvRows,
  expectKeyboard,
  numberOf,
  openBench,
  queryOf,
  readingOf,
  sliderOf,
  svgWords,
  takeFile,
} from './support/bench-page.ts';
import { expect, test } from './support/test.ts';

const BENCH = 'gap-and-heat';
const TIME = 'Time since the cement went in';
const SLIDERS = [
  TIME,
  'Gap planned, all round',
  'Fit error, on every side',
  'Pegs',
  'Length of the keel',
  'Heat of setting',
  'Cement and component go in at',
];

test('every slider answers the keyboard and stands in the address, and a reload keeps it', async ({
  page,
}) => {
  await openBench(page, BENCH);
  await expectKeyboard(page, SLIDERS);
  const words = page.locator('figure .visually-hidden').first();
  const before = await words.textContent();
  await page.reload();
  await expect(sliderOf(page, TIME)).toHaveValue(queryOf(page).get('at') ?? '');
  await expect(words).toHaveText(before ?? '');
  await expectNoAxeViolations(page, 'figure');
});

test('whoever wants no motion has the end at once', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await openBench(page, BENCH, '?at=0');
  await page.getByRole('button', { name: 'Let it set' }).click();
  await expect(sliderOf(page, TIME)).toHaveValue('1800');
  await expect(page.getByRole('button', { name: 'Let it set' })).toBeVisible();
});

test('pictures and numbers can be taken home, and say what the bench says', async ({ page }) => {
  await openBench(page, BENCH, '?gap=0.5&error=1.5&in=pegs&at=330');
  const words = await svgWords(page, (await takeFile(page, 'Picture (SVG)')).content);
  for (const part of ['Gap and Heat', 'fit error 1.5 mm', 'after 5 min 30 s', 'weighed']) {
    expect(words).toContain(part);
  }
  const [header, ...rows] = csvRows((await takeFile(page, 'Numbers (CSV)')).content);
  expect(header?.[1]).toBe('bone at a peg (°C)');
  const peak = Math.max(...rows.map((row) => Number(row[1])));
  expect(Math.abs(peak - (await numberOf(page, 'Peak at the bone')))).toBeLessThan(0.15);
  await openBench(page, BENCH, '?gap=abc&heat=9');
  await expect(page.getByText('Not taken from the link')).toHaveCount(1);
  await expect(readingOf(page, 'Peak at the bone')).toHaveText(/47\.7/);
});

test('in the lecture each press of the clicker fills another gap, and lets it set', async ({
  page,
}) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto('lecture/08-cement/#4');
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
  const step = page.locator('.step[data-now]');
  const now = step.locator('.now td');
  await expect(now).toHaveText(['?', '?', '?']);
  const peaks: number[] = [];
  for (const { text, result } of acts) {
    await page.keyboard.press('PageDown');
    await expect(now).toHaveText([...gapCells(result)]);
    await expect(step.getByRole('row', { name: text }).locator('td')).toHaveText([
      ...gapCells(result),
    ]);
    peaks.push(result.peak);
  }
  expect(peaks).toHaveLength(5);
  expect(peaks[2]).toBeGreaterThan((peaks[0] ?? NaN) + 8);
  await page.keyboard.press('PageDown');
  await expect(page.locator('.count')).toHaveText(/^5 \//);
});
