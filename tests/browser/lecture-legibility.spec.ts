import type { Page } from '@playwright/test';
import { expect, test } from './support/test.ts';

/*
 * The back row sits six image heights away. Body type is at least 4.5 % of the image's height, key words and the
 * lettering of drawings at least 6 %. The foot with the counter is the presenter's, not the room's, and is left out.
 */
const deck = 'lecture/01-ball-and-cup/';
const STEPS = 12;
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

for (const size of [
  { width: 1280, height: 720 },
  { width: 1920, height: 1080 },
]) {
  test.describe(`at ${size.width} × ${size.height}`, () => {
    test.use({ viewport: size });

    for (let step = 1; step <= STEPS; step++) {
      test(`step ${step} reads from the back row and fits the screen`, async ({ page }) => {
        await page.goto(`${deck}#${step}.9`);
        await expect(page.locator('.count')).toHaveText(`${step} / ${STEPS}`);
        await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
        await page.evaluate(() => document.fonts.ready);
        const found = await lettering(page);
        expect(found.length).toBeGreaterThan(1);
        const tooSmall = found.filter(
          ({ size: share, isKeyWord }) => share < (isKeyWord ? KEY_WORD : BODY) - ROUNDING,
        );
        expect(tooSmall).toEqual([]);
        expect(found.filter(({ outside }) => outside > 1)).toEqual([]);
        const spilled = await page
          .locator('.step[data-now] .face')
          .evaluate((face) => [
            face.scrollWidth - face.clientWidth,
            face.scrollHeight - face.clientHeight,
          ]);
        expect(spilled).toEqual([0, 0]);
      });
    }
  });
}

test('a screen of 4 : 3 keeps everything in view', async ({ page }) => {
  await page.setViewportSize({ width: 1024, height: 768 });
  for (let step = 1; step <= STEPS; step++) {
    await page.goto(`${deck}#${step}.9`);
    await expect(page.locator('.count')).toHaveText(`${step} / ${STEPS}`);
    const found = await lettering(page);
    expect(found.filter(({ outside }) => outside > 1)).toEqual([]);
  }
});
