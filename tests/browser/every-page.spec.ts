import type { Page } from '@playwright/test';
import { expectNoAxeViolations, expectNoFaintText } from './support/accessibility.ts';
import { layoutShift, overflow, visitWhole } from './support/measure.ts';
import { builtRoutes } from './support/routes.ts';
import { screenOf } from './support/screens.ts';
import { expect, test } from './support/test.ts';

const LARGEST_SHIFT = 0.05;

for (const route of builtRoutes()) {
  test.describe(`page /${route}`, () => {
    test('fits and stays put on a phone, and fits a tablet', async ({ page }) => {
      await page.setViewportSize(screenOf('phone'));
      await page.goto(route);
      await visitWhole(page);
      await expectToFit(page);
      await expectStill(page);
      await page.setViewportSize(screenOf('tablet'));
      await expectToFit(page);
    });

    test('fits and stays put on a laptop, fits a projector, and has nothing axe objects to, light or dark', async ({
      page,
    }) => {
      await page.setViewportSize(screenOf('laptop'));
      await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
      await page.goto(route);
      await visitWhole(page);
      await expectToFit(page);
      await expectStill(page);
      await expectNoAxeViolations(page);
      await page.emulateMedia({ colorScheme: 'dark' });
      await expectNoFaintText(page);
      await page.setViewportSize(screenOf('projector'));
      await expectToFit(page);
    });
  });
}

/** What measures its own room answers a frame or two later. */
async function expectToFit(page: Page): Promise<void> {
  await expect.poll(() => overflow(page), { message: 'scrolls sideways by' }).toBe(0);
}

async function expectStill(page: Page): Promise<void> {
  expect(await layoutShift(page), 'layout shift').toBeLessThanOrEqual(LARGEST_SHIFT);
}
