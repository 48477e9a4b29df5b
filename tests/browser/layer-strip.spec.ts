import { expectNoAxeViolations } from './support/accessibility.ts';
import {
  csvRows,
  expectKeyboard,
  numberOf,
  openBench,
  queryOf,
  readingOf,
  svgWords,
  takeFile,
} from './support/bench-page.ts';
import { expect, test } from './support/test.ts';

const BENCH = 'layer-strip';

test('what is set stands in the address, and comes back from it', async ({ page }) => {
  await openBench(page, BENCH);
  await expectKeyboard(page, ['Thickness of the upper layer', 'Cement between them']);
  await page.getByLabel('Upper layer', { exact: true }).selectOption('cobalt-chromium');
  await expect.poll(() => queryOf(page).get('upper')).toBe('cobalt-chromium');
  const peak = await readingOf(page, 'Greatest shear').textContent();
  await page.reload();
  await expect(readingOf(page, 'Greatest shear')).toHaveText(peak ?? '');
  await openBench(page, BENCH, '?lower=glass&length=1e9');
  await expect(page.getByText('Not taken from the link')).toHaveCount(1);
});

test('picture and numbers can be taken home; nothing keeps anybody out', async ({ page }) => {
  await openBench(page, BENCH, '?upper=bone+cement&lower=cancellous+bone&lower-thickness=10');
  const svg = await takeFile(page, 'Picture (SVG)');
  const words = await svgWords(page, svg.content);
  for (const part of [
    'Layer Strip',
    'Bone cement, 4.0 mm',
    'Shear in the joint, MPa',
    'Dundurs’',
  ]) {
    expect(words).toContain(part);
  }
  const csv = await takeFile(page, 'Numbers (CSV)');
  const [header, ...rows] = csvRows(csv.content);
  expect(header?.[1]).toBe('shear in the joint under the pull (MPa)');
  const peak = Math.max(...rows.map(([, shear]) => Number(shear)));
  expect(peak).toBeCloseTo(await numberOf(page, 'Greatest shear'), 1);
  await expectNoAxeViolations(page, 'figure');
});
