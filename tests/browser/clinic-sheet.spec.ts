import type { Page } from '@playwright/test';
import { expectNoAxeViolations } from './support/accessibility.ts';
import { lessonRoutes } from './support/routes.ts';
import { expect, test } from './support/test.ts';

const LEAST_POINTS = 14;
const PX_PER_POINT = 96 / 72;
/** Inside the margins, mm. */
const papers = [
  { format: 'A4', width: 210 - 28, height: 297 - 28 },
  { format: 'Letter', width: 215.9 - 28, height: 279.4 - 28 },
] as const;

async function printedPages(page: Page, format: 'A4' | 'Letter'): Promise<number> {
  const file = await page.pdf({ format, preferCSSPageSize: false });
  return file.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
}

for (const lesson of lessonRoutes('clinic')) {
  for (const { format, width, height } of papers) {
    test(`${lesson}: fills one page of ${format}, and no more`, async ({ page }) => {
      await page.goto(`${lesson}sheet/`);
      expect(await printedPages(page, format)).toBe(1);
    });

    test(`${lesson}: every letter on ${format} is ${LEAST_POINTS} points or more`, async ({
      page,
    }) => {
      const px = (mm: number) => Math.round((mm / 25.4) * 96);
      await page.setViewportSize({ width: px(width), height: px(height) });
      await page.goto(`${lesson}sheet/`);
      await page.emulateMedia({ media: 'print' });
      const sizes = await page.evaluate(() => {
        const texts: { text: string; size: number }[] = [];
        const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
        for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
          const parent = node.parentElement;
          const text = node.textContent?.trim() ?? '';
          if (parent === null || text === '' || !parent.checkVisibility()) continue;
          if (parent.closest('title, desc, script, style') !== null) continue;
          const scale = parent instanceof SVGGraphicsElement ? (parent.getScreenCTM()?.a ?? 0) : 1;
          texts.push({ text, size: parseFloat(getComputedStyle(parent).fontSize) * scale });
        }
        return texts;
      });
      expect(sizes.length).toBeGreaterThan(15);
      const tooSmall = sizes.filter(({ size }) => size < LEAST_POINTS * PX_PER_POINT - 0.01);
      expect(tooSmall).toEqual([]);
    });
  }

  test(`${lesson}: has what a sheet needs`, async ({ page }) => {
    await page.goto(`${lesson}sheet/`);
    await page.emulateMedia({ media: 'print' });
    const sheet = page.getByRole('article');
    await expect(sheet.getByRole('img').first()).toBeVisible();
    const sentences = await sheet.locator('.words p').count();
    expect(sentences).toBeGreaterThanOrEqual(4);
    expect(sentences).toBeLessThanOrEqual(5);
    expect(await sheet.locator('.questions li').count()).toBeGreaterThanOrEqual(3);
    await expect(sheet.getByRole('heading', { name: 'From your clinic' })).toBeVisible();
    await expect(sheet.getByText('Not yet clinically reviewed')).toBeVisible();
    await expect(sheet.getByText(/Text of \d+ \w+ \d{4}/)).toBeVisible();
    await expect(page.getByRole('button')).toHaveCount(0);
  });

  test(`${lesson}: its button prints`, async ({ page }) => {
    await page.addInitScript(() => {
      window.print = () => document.body.setAttribute('data-printed', '');
    });
    await page.goto(`${lesson}sheet/`);
    await page.getByRole('button', { name: 'Print' }).click();
    await expect(page.locator('body')).toHaveAttribute('data-printed');
  });

  test(`${lesson}: has nothing axe objects to on paper either`, async ({ page }) => {
    await page.goto(`${lesson}sheet/`);
    await page.emulateMedia({ media: 'print' });
    await expectNoAxeViolations(page);
  });
}

test('the count of pages sees more than one where there is more', async ({ page }) => {
  await page.goto('clinic/01-ball-and-cup/');
  expect(await printedPages(page, 'A4')).toBeGreaterThan(1);
});
