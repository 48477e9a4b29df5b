import { expectNoAxeViolations, expectNoFaintText } from './support/accessibility.ts';
import { layoutShift, overflow, visitWhole } from './support/measure.ts';
import { builtRoutes } from './support/routes.ts';
import { screens } from './support/screens.ts';
import { expect, test } from './support/test.ts';

const LARGEST_SHIFT = 0.05;

for (const route of builtRoutes()) {
  test.describe(`page /${route}`, () => {
    for (const screen of screens) {
      test(`fits and stays put on a ${screen.name}`, async ({ page }) => {
        await page.setViewportSize(screen);
        await page.goto(route);
        await visitWhole(page);
        expect(await overflow(page), 'scrolls sideways by').toBe(0);
        expect(await layoutShift(page), 'layout shift').toBeLessThanOrEqual(LARGEST_SHIFT);
      });
    }

    test('has nothing axe objects to, light or dark', async ({ page }) => {
      await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
      await page.goto(route);
      await visitWhole(page);
      await expectNoAxeViolations(page);
      await page.emulateMedia({ colorScheme: 'dark' });
      await expectNoFaintText(page);
    });
  });
}
