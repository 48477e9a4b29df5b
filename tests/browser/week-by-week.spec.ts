import { expectNoAxeViolations } from './support/accessibility.ts';
import {
  csvRows,
  expectKeyboard,
  openBench,
  queryOf,
  sliderOf,
  takeFile,
} from './support/bench-page.ts';
import { expect, test } from './support/test.ts';

const BENCH = 'week-by-week';

test('what is set stands in the address, and comes back from it', async ({ page }) => {
  await openBench(page, BENCH);
  await expectKeyboard(page, ['Week', 'Press, every day', 'Rest first', 'Bone grows up to']);
  await page.getByRole('radio', { name: 'None', exact: true }).check({ force: true });
  await expect.poll(() => queryOf(page).get('pegs')).toBe('none');
  await page.reload();
  await expect(page.getByRole('radio', { name: 'None', exact: true })).toBeChecked();
  await expect(sliderOf(page, 'Week')).toHaveValue('7');
});

test('who wants no motion sees the last week at once; numbers go home; nothing keeps anybody out', async ({
  page,
}) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await openBench(page, BENCH);
  await page.getByRole('button', { name: 'Let the weeks go by' }).click();
  await expect(sliderOf(page, 'Week')).toHaveValue('26');
  await expect.poll(() => queryOf(page).get('week')).toBe('26');
  const csv = await takeFile(page, 'Numbers (CSV)');
  const [header, ...rows] = csvRows(csv.content);
  expect(header?.[1]).toBe('greatest motion (µm)');
  expect(rows).toHaveLength(26);
  await expectNoAxeViolations(page, 'figure');
});
