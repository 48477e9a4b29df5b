import type { Locator, Page } from '@playwright/test';
import { expect, test } from './support/test.ts';

const BENCH = 'bench/push-bench/';
const PUSHED = 40_000;

const reading = (page: Page, name: string): Locator =>
  page.locator('dl > div').filter({ hasText: name }).locator('dd').first();

async function numberOf(page: Page, name: string): Promise<number> {
  const text = (await reading(page, name).textContent()) ?? '';
  return Number.parseFloat(text.replace('−', '-'));
}

/** Controls wait for the script behind them; what is focused or typed before is lost. */
const isReady = (page: Page): Promise<void> =>
  expect(page.getByRole('button', { name: 'Push until it slips' })).toBeEnabled();

test('measures the ratio at slip, and theory shows only then', async ({ page }) => {
  await page.goto(BENCH);
  await expect(reading(page, 'Theory')).toHaveText('?');
  await page.getByRole('button', { name: 'Push until it slips' }).click();
  await expect(page.getByText('out of the cup')).toBeVisible({ timeout: PUSHED });
  const measured = await numberOf(page, 'Slipped at');
  const theory = await numberOf(page, 'Theory');
  expect(theory).toBeGreaterThan(0.5);
  expect(Math.abs(measured / theory - 1)).toBeLessThan(0.03);
});

test('a flat cup is held by nothing', async ({ page }) => {
  await page.goto(`${BENCH}?depth=0`);
  await page.getByRole('button', { name: 'Push until it slips' }).click();
  await expect(page.getByText('out of the cup')).toBeVisible({ timeout: PUSHED });
  expect(await numberOf(page, 'Slipped at')).toBe(0);
});

test('the ball can be taken hold of and pulled', async ({ page }) => {
  await page.goto(BENCH);
  await isReady(page);
  const ball = page.locator('circle.ball');
  const box = await ball.boundingBox();
  if (box === null) throw new Error('no ball');
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  await page.mouse.move(middle.x, middle.y);
  await page.mouse.down();
  await page.mouse.move(middle.x + 60, middle.y, { steps: 8 });
  await expect.poll(() => numberOf(page, 'Moved')).toBeGreaterThan(2);
  await page.mouse.up();
  await expect.poll(() => numberOf(page, 'Moved'), { timeout: 15_000 }).toBeLessThan(0.2);
});

test('a push by hand, by keyboard, leaves the ball where theory has it', async ({ page }) => {
  await page.goto(BENCH);
  await isReady(page);
  const push = page.getByRole('slider', { name: 'Push, by hand' });
  await push.focus();
  for (let i = 0; i < 20; i += 1) await page.keyboard.press('ArrowRight');
  await expect(push).toHaveValue('20');
  // Half the press: the ball rests where the hollow leans by atan ½, at (R − r) sin(atan ½).
  const rest = (26.5 - 24) * Math.sin(Math.atan(20 / 50));
  await expect.poll(() => numberOf(page, 'Moved'), { timeout: 15_000 }).toBeCloseTo(rest, 1);
});

test('holds its setting in the address, and takes it up again', async ({ page }) => {
  await page.goto(`${BENCH}?width=32&press=120`);
  await expect(page.getByRole('slider', { name: 'Socket width' })).toHaveValue('32');
  await expect(page.getByRole('slider', { name: 'Press', exact: true })).toHaveValue('120');
  await page.getByRole('slider', { name: 'Friction' }).focus();
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => new URL(page.url()).searchParams.get('friction')).toBe('0.01');
  await page.reload();
  await expect(page.getByRole('slider', { name: 'Friction' })).toHaveValue('0.01');
});

for (const query of [
  'width=abc',
  'width=-5',
  'depth=1e99',
  'press=%3Cscript%3E',
  'ball=NaN',
  'shape=__proto__',
]) {
  test(`a broken address shows defaults and one clear line: ${query}`, async ({ page }) => {
    await page.goto(`${BENCH}?${query}`);
    await expect(page.getByText('Not taken from the link')).toHaveCount(1);
    await expect(page.getByRole('slider', { name: 'Socket width' })).toHaveValue('28');
    await expect(page.getByRole('slider', { name: 'Depth' })).toHaveValue('4');
  });
}

test('a typed number is taken, brought into range, or refused with a sentence', async ({
  page,
}) => {
  await page.goto(BENCH);
  await isReady(page);
  const typed = page.getByRole('textbox', { name: /^Press, typed/ });
  await typed.fill('120,4');
  await typed.press('Enter');
  await expect(typed).toHaveValue('120');
  await typed.fill('99999');
  await typed.press('Enter');
  await expect(typed).toHaveValue('800');
  await expect(page.getByText('Set to the nearest')).toBeVisible();
  await typed.fill('many');
  await typed.press('Enter');
  await expect(typed).toHaveValue('800');
  await expect(page.getByText('is not a number')).toBeVisible();
});

test('shows the result at once where the visitor asked for less motion', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto(BENCH);
  await page.getByRole('button', { name: 'Push until it slips' }).click();
  await expect(reading(page, 'Theory')).not.toHaveText('?', { timeout: 5000 });
});

test('a picture and the numbers can be taken home', async ({ page }) => {
  await page.goto(BENCH);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.getByRole('button', { name: 'Push until it slips' }).click();
  const files: Readonly<Record<string, RegExp>> = {
    'Picture (SVG)': /\.svg$/,
    'Picture (PNG)': /\.png$/,
    'Numbers (CSV)': /\.csv$/,
  };
  for (const [name, ending] of Object.entries(files)) {
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name }).click();
    expect((await download).suggestedFilename()).toMatch(ending);
  }
});
