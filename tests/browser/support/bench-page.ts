import { readFile } from 'node:fs/promises';
import { expect, type Locator, type Page } from '@playwright/test';

/** Opens a bench's page once its controls answer. */
export async function openBench(page: Page, bench: string, search = ''): Promise<void> {
  await page.goto(`bench/${bench}/${search}`);
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
}

/** A slider of a bench by its whole name. */
export const sliderOf = (page: Page, name: string): Locator =>
  page.getByRole('slider', { name, exact: true });

/** A number in the strip under the drawing, as it is written. */
export const readingOf = (page: Page, name: string): Locator =>
  page.locator('dl > div').filter({ hasText: name }).locator('dd').first();

/** The same as a number. */
export const numberOf = async (page: Page, name: string): Promise<number> =>
  Number.parseFloat(((await readingOf(page, name).textContent()) ?? '').replace('−', '-'));

/** What stands in the address. */
export const queryOf = (page: Page): URLSearchParams => new URL(page.url()).searchParams;

/** Middle of the first point that can be taken hold of in a bench's picture. */
export async function firstPoint(page: Page): Promise<{ readonly x: number; readonly y: number }> {
  const picture = page.locator('.picture svg');
  await picture.scrollIntoViewIfNeeded();
  const box = await picture.locator('circle[r="5.5"]').first().boundingBox();
  if (box === null) throw new Error('no point');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Every slider named answers an arrow key, and what it says stands in the address. */
export async function expectKeyboard(page: Page, names: readonly string[]): Promise<void> {
  for (const name of names) {
    const control = sliderOf(page, name);
    const before = await control.inputValue();
    const address = page.url();
    await control.focus();
    await page.keyboard.press('ArrowLeft');
    if ((await control.inputValue()) === before) await page.keyboard.press('ArrowRight');
    await expect(control, name).not.toHaveValue(before);
    await expect.poll(() => page.url(), { message: name }).not.toBe(address);
  }
}

/** What a button hands over as a file. */
export async function takeFile(
  page: Page,
  button: string | RegExp,
): Promise<{ readonly name: string; readonly content: Buffer }> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: button, exact: true }).click();
  const file = await download;
  return { name: file.suggestedFilename(), content: await readFile(await file.path()) };
}

/** The words of a picture taken as SVG; fails where it does not parse or leans on a style of the page. */
export async function svgWords(page: Page, content: Buffer): Promise<string> {
  const markup = content.toString('utf8');
  expect(markup).not.toContain('var(--');
  // Read on a blank page: the bench's own has a policy against the style in a picture.
  const blank = await page.context().newPage();
  const { isSound, words } = await blank.evaluate((text) => {
    const parsed = new DOMParser().parseFromString(text, 'image/svg+xml');
    return {
      isSound: parsed.querySelector('parsererror') === null,
      words: parsed.documentElement.textContent,
    };
  }, markup);
  await blank.close();
  expect(isSound).toBe(true);
  return words.replaceAll('\u00a0', ' ');
}

/** Width of a picture taken as PNG, in its own pixels; fails where it is none. */
export function pngWidth(content: Buffer): number {
  expect(content.subarray(1, 4).toString('latin1')).toBe('PNG');
  return content.readUInt32BE(16);
}

/** Rows of numbers taken as CSV, the head first. */
export function csvRows(content: Buffer): readonly (readonly string[])[] {
  return content
    .toString('utf8')
    .trimEnd()
    .split('\r\n')
    .map((row) => row.split(','));
}
