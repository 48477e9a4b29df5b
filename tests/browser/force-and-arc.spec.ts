import { readFile } from 'node:fs/promises';
import type { Download, Locator, Page } from '@playwright/test';
import { inDegrees, readForce } from '../../sims/benches/force-and-arc/reading.ts';
import { defaultSetting, type ForceSetting } from '../../sims/benches/force-and-arc/settings.ts';
import { expect, test } from './support/test.ts';

const BENCH = 'bench/force-and-arc/';
const SETTLED = 20_000;
/** How near a simulated ball must rest to theory, mm: the facets of the engine’s hollow. */
const NEAR = 0.1;

const sliders = {
  above: [
    'Version (+ turned back)',
    'Front cuff, pull',
    'Front cuff, direction',
    'Back cuff, pull',
    'Back cuff, direction',
    'Deltoid and others, pull',
    'Deltoid and others, direction',
    'Ball diameter',
    'Socket width, in this plane',
    'Depth',
    'Friction',
  ],
  front: [
    'Inclination (+ turned up)',
    'Upper cuff, pull',
    'Upper cuff, direction',
    'Lower cuff, pull',
    'Lower cuff, direction',
    'Deltoid and others, pull',
    'Deltoid and others, direction',
  ],
} as const;

const slider = (page: Page, name: string): Locator =>
  page.getByRole('slider', { name, exact: true });
const reading = (page: Page, name: string): Locator =>
  page.locator('dl > div').filter({ hasText: name }).locator('dd').first();
const find = (page: Page): Locator => page.getByRole('button', { name: 'Let it find its place' });
const trial = (page: Page): Locator => page.locator('.trial');
const query = (page: Page): URLSearchParams => new URL(page.url()).searchParams;

/** Opens the bench once its controls answer. */
async function open(page: Page, search = ''): Promise<void> {
  await page.goto(`${BENCH}${search}`);
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
}

async function numberOf(page: Page, name: string): Promise<number> {
  const text = (await reading(page, name).textContent()) ?? '';
  return Number.parseFloat(text.replace('−', '-'));
}

for (const plane of ['above', 'front'] as const) {
  test(`every slider answers the keyboard and stands in the address: ${plane}`, async ({
    page,
  }) => {
    await open(page, `?seen=${plane}`);
    for (const name of sliders[plane]) {
      const control = slider(page, name);
      const before = await control.inputValue();
      const address = page.url();
      await control.focus();
      await page.keyboard.press('ArrowLeft');
      if ((await control.inputValue()) === before) await page.keyboard.press('ArrowRight');
      await expect(control, name).not.toHaveValue(before);
      await expect.poll(() => page.url(), { message: name }).not.toBe(address);
    }
  });
}

test('choices, situations and buttons answer the keyboard', async ({ page }) => {
  await open(page);
  const above = page.getByRole('radio', { name: 'From above: version' });
  await above.focus();
  await page.keyboard.press('ArrowRight');
  await expect(slider(page, 'Inclination (+ turned up)')).toBeVisible();
  await page.keyboard.press('ArrowLeft');
  await page.getByRole('button', { name: 'Front cuff weak', exact: true }).focus();
  await page.keyboard.press('Enter');
  await expect(slider(page, 'Front cuff, pull')).toHaveValue('20');
  const depth = page.getByRole('radio', { name: 'Depth', exact: true });
  await depth.focus();
  await page.keyboard.press('ArrowRight');
  await expect(slider(page, 'Radius of curvature')).toBeVisible();
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await find(page).focus();
  await page.keyboard.press('Enter');
  await expect(trial(page)).toContainText('came to rest', { timeout: SETTLED });
  await page.getByRole('button', { name: 'Back to theory' }).focus();
  await page.keyboard.press('Space');
  await expect(trial(page)).toContainText('told no formula');
});

test('the head of the net force is dragged with the mouse until the ball goes over', async ({
  page,
}) => {
  await open(page, '?version=0');
  const grip = page.locator('[data-handle="pull-2"]');
  await grip.scrollIntoViewIfNeeded();
  const box = await grip.boundingBox();
  if (box === null) throw new Error('no handle');
  const start = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await page.mouse.move(start.x - 20, start.y - 40, { steps: 4 });
  expect(await numberOf(page, 'Margin')).toBeLessThan(30);
  await page.mouse.move(start.x - 90, start.y - 110, { steps: 8 });
  await expect(reading(page, 'State')).toHaveText('over the rim');
  await page.mouse.up();
  expect(Number(await slider(page, 'Deltoid and others, direction').inputValue())).toBeGreaterThan(
    20,
  );
  await expect.poll(() => query(page).get('others-turn')).not.toBeNull();
});

for (const [name, search] of [
  ['turned back', '?version=15'],
  ['front weak, shallow', '?version=0&front-cuff=100&depth=3'],
  ['from the front, with friction', '?seen=front&inclination=18&friction=0.08'],
] as const) {
  test(`the simulated ball rests where the theory says: ${name}`, async ({ page }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await open(page, search);
    await find(page).click();
    await expect(trial(page)).toContainText('came to rest at', { timeout: SETTLED });
    const said = ((await trial(page).textContent()) ?? '').replaceAll('\u00a0', ' ');
    const found = /rest at (\d+\.\d+) mm; theory says (\d+\.\d+) mm/.exec(said);
    expect(Math.abs(Number(found?.[1]) - Number(found?.[2]))).toBeLessThanOrEqual(NEAR);
  });
}

test('outside the arc the simulated ball goes over, as the theory says', async ({ page }) => {
  await open(page, '?version=34');
  await expect(reading(page, 'State')).toHaveText('over the rim');
  await find(page).click();
  await expect(trial(page)).toContainText('went over the rim, as theory says', {
    timeout: SETTLED,
  });
});

async function take(page: Page, button: string): Promise<{ text: Buffer; file: Download }> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: button }).click();
  const file = await download;
  return { text: await readFile(await file.path()), file };
}

test('picture and numbers can be taken home, and say what the bench says', async ({ page }) => {
  await open(page, '?version=12&back-cuff=120');
  const svg = await take(page, 'Picture (SVG)');
  expect(svg.file.suggestedFilename()).toBe('force-and-arc.svg');
  // Read on a blank page: the bench’s own has a policy against the style in a picture.
  const blank = await page.context().newPage();
  const drawn = await blank.evaluate((text) => {
    const parsed = new DOMParser().parseFromString(text, 'image/svg+xml');
    return {
      isSound: parsed.querySelector('parsererror') === null,
      words: parsed.documentElement.textContent,
    };
  }, svg.text.toString('utf8'));
  await blank.close();
  expect(drawn.isSound).toBe(true);
  expect(svg.text.toString('utf8')).not.toContain('var(--');
  for (const part of ['Force and Arc', 'back of the body', 'net force', 'version 12.0']) {
    expect(drawn.words.replaceAll('\u00a0', ' ')).toContain(part);
  }

  const png = await take(page, 'Picture (PNG)');
  expect(png.text.subarray(1, 4).toString('latin1')).toBe('PNG');
  const width = await page.locator('.picture svg').evaluate((element) => element.clientWidth);
  expect(png.text.readUInt32BE(16)).toBeGreaterThanOrEqual(2 * width);

  const csv = (await take(page, 'Numbers (CSV)')).text.toString('utf8');
  const [header = '', ...rows] = csv.trimEnd().split('\r\n');
  expect(header).toContain('version (°)');
  expect(rows.length).toBeGreaterThan(100);
  const setting: ForceSetting = { ...defaultSetting, version: 12, backCuffSize: 120 };
  for (const row of rows.filter((_, i) => i % 10 === 0)) {
    const [version = '', angle, margin, rest, state] = row.split(',');
    const expected = readForce({ ...setting, version: Number(version) });
    expect(Number(angle)).toBeCloseTo(inDegrees(expected.angle ?? Number.NaN), 3);
    expect(Number(margin)).toBeCloseTo(inDegrees(expected.margin ?? Number.NaN), 3);
    expect(rest).toBe(
      expected.translation === null ? '' : String(Number(expected.translation.toFixed(4))),
    );
    expect(state).toBe(expected.state);
  }
});

test('keeps its whole state over a reload', async ({ page }) => {
  await open(page, '?seen=front&inclination=-4&lower-cuff=120&depth=3');
  await slider(page, 'Deltoid and others, direction').focus();
  await page.keyboard.press('ArrowLeft');
  await expect.poll(() => query(page).get('deltoid-turn')).toBe('39');
  const before = await page.locator('figure .visually-hidden').first().textContent();
  await page.reload();
  await expect(slider(page, 'Deltoid and others, direction')).toHaveValue('39');
  await expect(slider(page, 'Inclination (+ turned up)')).toHaveValue('-4');
  await expect(slider(page, 'Lower cuff, pull')).toHaveValue('120');
  await expect(page.locator('figure .visually-hidden').first()).toHaveText(before ?? '');
});

test('a broken address gives one clear line and a safe default', async ({ page }) => {
  for (const search of [
    'version=abc',
    'version=99',
    'front-cuff=-5',
    'friction=NaN',
    'seen=below',
    'back-cuff-turn=1e9',
    'shape=__proto__',
  ]) {
    await open(page, `?${search}`);
    await expect(page.getByText('Not taken from the link'), search).toHaveCount(1);
    await expect(slider(page, 'Version (+ turned back)'), search).toHaveValue('15');
    await expect(slider(page, 'Front cuff, pull'), search).toHaveValue('200');
    await expect(reading(page, 'State'), search).toHaveText('off-centre');
  }
});

test('nonsense gets a sentence and the nearest that makes sense', async ({ page }) => {
  await open(page, '?shape=radius&radius=24&ball=60');
  await expect(page.getByText('would not reach the bottom')).toBeVisible();
  const radius = Number(await slider(page, 'Radius of curvature').inputValue());
  const ball = Number(await slider(page, 'Ball diameter').inputValue());
  expect(radius).toBeGreaterThanOrEqual(ball / 2);
  const typed = page.getByRole('textbox', { name: /^Version .* typed/ });
  await typed.fill('80');
  await typed.press('Enter');
  await expect(typed).toHaveValue('35.0');
  await expect(page.getByText('Set to the nearest')).toBeVisible();
  await typed.fill('back');
  await typed.press('Enter');
  await expect(typed).toHaveValue('35.0');
  await expect(page.getByText('is not a number')).toBeVisible();
  for (const name of ['Front cuff, pull', 'Back cuff, pull', 'Deltoid and others, pull']) {
    await slider(page, name).focus();
    await page.keyboard.press('Home');
  }
  await expect(reading(page, 'State')).toHaveText('no force');
  await find(page).click();
  await expect(trial(page)).toContainText('no trial to run');
});
