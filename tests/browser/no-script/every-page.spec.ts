import { builtRoutes } from '../support/routes.ts';
import { expect, test } from '../support/test.ts';

for (const route of builtRoutes()) {
  test(`page /${route} reads without a script`, async ({ page }) => {
    await page.goto(route);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await expect(page.getByText('For education only').first()).toBeVisible();
    // What needs a script is not shown as if it worked.
    await expect(page.locator('.needs-script:visible')).toHaveCount(0);
  });
}
