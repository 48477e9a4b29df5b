import type { Page } from '@playwright/test';
import { lessonRoutes } from './support/routes.ts';
import { expect, test } from './support/test.ts';

/*
 * The back row sits six image heights away. Body type is at least 4.5 % of the image's height, key words and the
 * lettering of drawings at least 6 %. The foot with the counter is the presenter's, not the room's, and is left out.
 */
const BODY = 4.5;
const KEY_WORD = 6;
const ROUNDING = 0.02;

interface Lettering {
  readonly text: string;
  /** Size in hundredths of the image's height. */
  readonly size: number;
  readonly isKeyWord: boolean;
  /** By how much it leaves the part of the screen above the foot, px. */
  readonly outside: number;
}

/** Every piece of lettering on the step that is shown. */
function lettering(page: Page): Promise<readonly Lettering[]> {
  return page.evaluate(() => {
    const face = document.querySelector('.step[data-now] .face');
    const foot = document.querySelector('.stage-foot')?.getBoundingClientRect().top ?? 0;
    const isOnShow = (element: Element): boolean => {
      const { width, height } = element.getBoundingClientRect();
      return (
        element.checkVisibility({ visibilityProperty: true }) &&
        width > 2 &&
        height > 2 &&
        element.closest('.katex-mathml, .visually-hidden, title, desc') === null &&
        getComputedStyle(element).clipPath === 'none'
      );
    };
    const isScaleBar = (element: Element, text: string): boolean =>
      /^\d+\s(?:mm|N)$/.test(text) && element.parentElement?.querySelector('path') !== null;
    return [...(face?.querySelectorAll('*') ?? [])].flatMap((element) => {
      const text = [...element.childNodes]
        .filter(({ nodeType }) => nodeType === Node.TEXT_NODE)
        .map(({ textContent }) => textContent?.trim() ?? '')
        .join(' ')
        .trim();
      if (!/[\p{L}\p{N}]/u.test(text) || !isOnShow(element)) return [];
      const matrix = element instanceof SVGGraphicsElement ? element.getScreenCTM() : null;
      const scale = matrix === null ? 1 : Math.hypot(matrix.a, matrix.b);
      const { left, right, top, bottom } = element.getBoundingClientRect();
      return [
        {
          text,
          size: (100 * scale * Number.parseFloat(getComputedStyle(element).fontSize)) / innerHeight,
          isKeyWord:
            element.closest('strong, h2, .vote') !== null ||
            (element.closest('.drawing-place svg') !== null && !isScaleBar(element, text)),
          outside: Math.max(-left, right - innerWidth, -top, bottom - foot, 0),
        },
      ];
    });
  });
}

/** Opens a step with all that comes on it by a press; answers how many steps there are. */
async function openStep(page: Page, deck: string, step: number): Promise<number> {
  await page.goto(`${deck}#${step}.9`);
  await expect(page.locator('.count')).toHaveText(new RegExp(`^${step} / \\d+$`));
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
  await page.evaluate(() => document.fonts.ready);
  return Number((await page.locator('.count').innerText()).split('/')[1]);
}

for (const deck of lessonRoutes('lecture')) {
  for (const size of [
    { width: 1280, height: 720 },
    { width: 1920, height: 1080 },
  ]) {
    test(`${deck} reads from the back row and fits a screen of ${size.width} × ${size.height}`, async ({
      page,
    }) => {
      test.setTimeout(120_000);
      await page.setViewportSize(size);
      for (let step = 1, steps = 1; step <= steps; step++) {
        steps = await openStep(page, deck, step);
        const found = await lettering(page);
        expect(found.length, `step ${step}`).toBeGreaterThan(1);
        const tooSmall = found.filter(
          ({ size: share, isKeyWord }) => share < (isKeyWord ? KEY_WORD : BODY) - ROUNDING,
        );
        expect.soft(tooSmall, `step ${step}`).toEqual([]);
        const outside = found.filter(({ outside }) => outside > 1);
        expect.soft(outside, `step ${step}`).toEqual([]);
        const spilled = await page
          .locator('.step[data-now] .face')
          .evaluate((face) => [
            face.scrollWidth - face.clientWidth,
            face.scrollHeight - face.clientHeight,
          ]);
        expect.soft(spilled, `step ${step}`).toEqual([0, 0]);
      }
    });
  }

  test(`${deck} keeps everything in view on a screen of 4 : 3`, async ({ page }) => {
    test.setTimeout(120_000);
    await page.setViewportSize({ width: 1024, height: 768 });
    for (let step = 1, steps = 1; step <= steps; step++) {
      steps = await openStep(page, deck, step);
      const found = await lettering(page);
      expect
        .soft(
          found.filter(({ outside }) => outside > 1),
          `step ${step}`,
        )
        .toEqual([]);
    }
  });
}
