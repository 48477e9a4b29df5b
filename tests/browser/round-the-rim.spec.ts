import { readFile } from 'node:fs/promises';
import type { Locator, Page } from '@playwright/test';
import { expect, test } from './support/test.ts';

const BENCH = 'bench/round-the-rim/';
/** A lip and a cut: every control is there. */
const ALL = `${BENCH}?lip=1&defect=cut`;

const direction = (page: Page): Locator =>
  page.getByRole('slider', { name: 'Direction', exact: true });

/** Controls wait for the script behind them. */
async function open(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await expect(page.getByRole('button', { name: 'Start over' })).toBeEnabled();
  await expect(page.locator('.picture svg')).toHaveCount(1);
}

/** Where on the screen a direction of the rose is: half way between the numbers of its clock, and on. */
async function onRose(page: Page, bearing: number): Promise<{ x: number; y: number }> {
  const at = async (text: string): Promise<{ x: number; y: number }> => {
    const letter = page.locator('.picture svg text').getByText(text, { exact: true }).first();
    const box = await letter.boundingBox();
    if (box === null) throw new Error(`no ${text}`);
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  };
  const [three, six, nine, twelve] = [await at('3'), await at('6'), await at('9'), await at('12')];
  const reach = 0.75 * (three.x - nine.x);
  const angle = (bearing * Math.PI) / 180;
  return {
    x: (three.x + nine.x) / 2 + reach * Math.cos(angle),
    y: (twelve.y + six.y) / 2 - reach * Math.sin(angle),
  };
}

test('every slider answers to the keyboard, and says its value', async ({ page }) => {
  await open(page, ALL);
  const sliders = page.getByRole('slider');
  const count = await sliders.count();
  expect(count).toBe(12);
  for (let i = 0; i < count; i += 1) {
    const slider = sliders.nth(i);
    await slider.focus();
    const before = await slider.inputValue();
    await page.keyboard.press('ArrowLeft');
    if ((await slider.inputValue()) === before) await page.keyboard.press('ArrowRight');
    const name = (await slider.getAttribute('aria-label')) ?? (await slider.getAttribute('id'));
    expect(await slider.inputValue(), name ?? '').not.toBe(before);
    expect(await slider.getAttribute('aria-valuetext'), name ?? '').not.toMatch(/NaN|undefined|^$/);
  }
});

test('every choice, switch and button answers to the keyboard', async ({ page }) => {
  await open(page, ALL);
  const press = async (part: Locator, key: string): Promise<void> => {
    await part.focus();
    await page.keyboard.press(key);
  };
  for (const [from, to] of [
    ['Pear', 'Ellipse'],
    ['Cut', 'Segment'],
  ] as const) {
    await press(page.getByRole('radio', { name: from }), 'ArrowRight');
    await expect(page.getByRole('radio', { name: to })).toBeChecked();
  }
  for (const name of ['Same radius both ways', 'Labral lip', 'Ratios measured on shoulders']) {
    const box = page.getByRole('checkbox', { name });
    const before = await box.isChecked();
    await press(box, 'Space');
    await expect(box).toBeChecked({ checked: !before });
  }
  const preset = page.getByRole('button', { name: 'Front rim worn' });
  await press(preset, 'Enter');
  await expect(preset).toHaveAttribute('aria-pressed', 'true');
  await press(page.getByText('Read the rose as a table'), 'Enter');
  await expect(page.getByRole('columnheader', { name: 'Peak ratio' })).toBeVisible();
  await press(page.getByRole('button', { name: 'Start over' }), 'Enter');
  await expect(preset).toHaveAttribute('aria-pressed', 'false');
});

test('the ray follows the pointer round the rose, and the address with it', async ({ page }) => {
  await open(page, BENCH);
  await page.locator('.picture svg').scrollIntoViewIfNeeded();
  const [from, over, to] = [
    await onRose(page, 80),
    await onRose(page, 130),
    await onRose(page, 200),
  ];
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(over.x, over.y, { steps: 6 });
  await page.mouse.move(to.x, to.y, { steps: 6 });
  await page.mouse.up();
  await expect
    .poll(async () => Math.abs(Number(await direction(page).inputValue()) - 200))
    .toBeLessThan(3);
  const kept = await direction(page).inputValue();
  await page.mouse.move(from.x, from.y, { steps: 3 });
  await expect(direction(page)).toHaveValue(kept);
  await expect.poll(() => new URL(page.url()).searchParams.get('direction')).toBe(kept);
});

test('picture and numbers, read back, say what the page says', async ({ page, context }) => {
  await open(page, `${BENCH}?defect=cut&clock=3&direction=0`);
  const download = async (name: string): Promise<Buffer> => {
    const coming = page.waitForEvent('download');
    await page.getByRole('button', { name }).click();
    return readFile(await (await coming).path());
  };
  const drawn = (await page.locator('.picture svg').textContent()) ?? '';
  const peak = /peak (0\.\d+)/.exec(drawn)?.[1] ?? '';
  expect(peak).toMatch(/^0\.\d\d$/);

  const svg = (await download('Picture (SVG)')).toString();
  // The picture brings its style with it, which a page of the course allows nobody.
  const blank = await context.newPage();
  const parsed = await blank.evaluate((text) => {
    const parts = new DOMParser().parseFromString(text, 'image/svg+xml');
    const paths = [...parts.querySelectorAll('path')].map((path) => path.getAttribute('d') ?? '');
    return {
      root: parts.documentElement.localName,
      fault: parts.querySelector('parsererror')?.textContent ?? '',
      lettered: parts.documentElement.textContent,
      paths: paths.length,
      broken: paths.filter((d) => /NaN|undefined|Infinity/.test(d)).length,
    };
  }, svg);
  expect(parsed).toMatchObject({ root: 'svg', fault: '', broken: 0 });
  expect(parsed.paths).toBeGreaterThan(10);
  expect(parsed.lettered).toContain(`peak ${peak}`);
  expect(svg).not.toMatch(/var\(--/);

  const png = await download('Picture (PNG)');
  expect(png.subarray(1, 4).toString()).toBe('PNG');
  const box = await page.locator('.picture svg').boundingBox();
  expect(png.readUInt32BE(16)).toBeGreaterThanOrEqual(Math.floor(box?.width ?? Infinity));

  const lines = (await download('Numbers (CSV)')).toString().trimEnd().split('\r\n');
  const header = lines.findIndex((line) => line.startsWith('direction (°)'));
  const rows = lines.slice(header + 1).map((line) => line.split(','));
  expect(rows).toHaveLength(72);
  expect(Number(rows[0]?.[2]).toFixed(2)).toBe(peak);
  for (const row of rows) {
    for (const cell of [0, 2, 3, 4, 5, 6]) expect(Number(row[cell])).not.toBeNaN();
  }
});

test('a reload keeps the whole setting', async ({ page }) => {
  await open(page, BENCH);
  await page.getByRole('radio', { name: 'Segment' }).check();
  await page.getByRole('checkbox', { name: 'Labral lip' }).check();
  await page.getByRole('slider', { name: 'Depth from the rim' }).focus();
  await page.keyboard.press('ArrowRight');
  await direction(page).focus();
  await page.keyboard.press('PageUp');
  const values = (): Promise<readonly string[]> =>
    page
      .getByRole('slider')
      .evaluateAll((all) => all.map((slider) => (slider as HTMLInputElement).value));
  const before = await values();
  // The direction is changed last: once it stands in the address, all stands there.
  await expect.poll(() => new URL(page.url()).searchParams.get('direction')).not.toBeNull();
  await open(page, page.url());
  await expect.poll(values).toEqual(before);
  await expect(page.getByRole('checkbox', { name: 'Labral lip' })).toBeChecked();
});

test('a broken address gets one sentence and a safe default', async ({ page }) => {
  for (const query of [
    'width=abc',
    'ball=-5',
    'defect-depth=1e99',
    'outline=%3Cscript%3E',
    'direction=NaN',
    'defect=__proto__',
    'lip-width=0',
  ]) {
    await open(page, `${BENCH}?${query}`);
    await expect(page.getByText('Not taken from the link'), query).toHaveCount(1);
    await expect(page.getByRole('slider', { name: 'Width', exact: true }), query).toHaveValue('26');
    await expect(direction(page), query).toHaveValue('315');
  }
});

test('what cannot be is said in a sentence, with the nearest that can', async ({ page }) => {
  const message = page.locator('p.message');
  await open(page, `${BENCH}?defect=cut&clock=3&defect-depth=20`);
  await expect(message).toContainText('would reach the middle of the face');
  await expect(message).toContainText('The depth of the defect is set to');
  const depth = Number(await page.getByRole('slider', { name: 'Depth from the rim' }).inputValue());
  expect(depth).toBeGreaterThan(5);
  expect(depth).toBeLessThan(13);

  await open(page, `${BENCH}?radius-ap=16&radius-si=16`);
  await expect(message).toContainText('the rim would stand nearly upright');
  const radius = page.getByRole('slider', { name: 'Radius top to bottom' });
  expect(Number(await radius.inputValue())).toBeGreaterThan(17);

  await open(page, `${BENCH}?ball=60&one-radius=1&radius-si=25`);
  await expect(page.getByText(/^The ball’s radius.*bridges the hollow/)).toBeVisible();
  await expect(page.locator('.picture svg')).not.toContainText(/NaN|Infinity/);
});

test('three dimensions come when they are asked for, turn by keyboard, and read as a table', async ({
  page,
}) => {
  await open(page, ALL);
  const button = page.getByRole('button', { name: 'Show in three dimensions' });
  await expect(page.locator('canvas')).toHaveCount(0);
  await button.focus();
  await page.keyboard.press('Enter');
  const stage = page.getByRole('img', { name: /^The face in three dimensions/ });
  const missing = page.getByText('This browser draws nothing in three dimensions');
  await expect(stage.or(missing)).toBeVisible();
  if (await stage.isVisible()) {
    const seen = (await stage.getAttribute('aria-label')) ?? '';
    await page.getByRole('button', { name: 'En face' }).focus();
    await page.keyboard.press('Enter');
    await expect(stage).not.toHaveAttribute('aria-label', seen);
    await page.getByRole('button', { name: 'Close this view' }).click();
    await expect(button).toBeVisible();
  }
  await page.getByText('Read the rose as a table').click();
  const rows = page.getByRole('region', { name: /table/ }).locator('tbody tr');
  expect(await rows.count()).toBeGreaterThanOrEqual(8);
  await expect(rows.first()).toContainText(/0\.\d{3}/);
});
