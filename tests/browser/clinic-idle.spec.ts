import { ANSWER, QUIET } from '../../site/clinic/idle.ts';
import { expectNoAxeViolations } from './support/accessibility.ts';
import { expect, test } from './support/test.ts';

const lesson = 'clinic/01-ball-and-cup/';

test.beforeEach(async ({ page }) => {
  await page.clock.install();
});

test('a tablet left alone warns, and goes back to the start', async ({ page }) => {
  await page.goto(`${lesson}#step-4`);
  const warning = page.getByRole('dialog', { name: 'Are you still there?' });
  await page.clock.fastForward(QUIET - 5000);
  await expect(warning).toBeHidden();
  await page.clock.fastForward(5000);
  await expect(warning).toBeVisible();
  await expectNoAxeViolations(page);
  await page.clock.fastForward(ANSWER);
  await expect(warning).toBeHidden();
  await expect(page).toHaveURL(new RegExp(`${lesson}$`));
  await expect(page.getByRole('heading', { level: 2 })).toHaveText([
    'Your shoulder is a ball and a cup',
  ]);
  await expect(page.getByRole('heading', { level: 2 })).toBeFocused();
});

test('the bench goes back with it', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto(`${lesson}#step-3`);
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
  await page.getByRole('radio', { name: 'Deep cup' }).check({ force: true });
  await page.clock.fastForward(QUIET);
  await page.clock.fastForward(ANSWER);
  await expect(page).toHaveURL(new RegExp(`${lesson}$`));
  await expect(page.locator('input[value="shallow"]')).toBeChecked();
});

for (const [how, answer] of [
  ['its button', 'button'],
  ['a touch beside it', 'beside'],
  ['a key', 'key'],
] as const) {
  test(`the warning is answered by ${how}, and the card stays`, async ({ page }) => {
    await page.goto(`${lesson}#step-2`);
    const warning = page.getByRole('dialog');
    await page.clock.fastForward(QUIET);
    await expect(warning).toBeVisible();
    if (answer === 'button') await page.getByRole('button', { name: 'I am still here' }).click();
    if (answer === 'beside') await page.mouse.click(12, 12);
    if (answer === 'key') await page.keyboard.press('ArrowRight');
    await page.clock.runFor(500);
    await expect(warning).toBeHidden();
    await page.clock.fastForward(QUIET - 5000);
    await expect(warning).toBeHidden();
    await expect(page).toHaveURL(/#step-2$/);
    await page.clock.fastForward(5000);
    await expect(warning).toBeVisible();
  });
}

test.describe('by touch', () => {
  test.use({ hasTouch: true, viewport: { width: 820, height: 1180 } });
  test('a touch that answers the warning does not press what lies under it', async ({ page }) => {
    await page.goto(`${lesson}#step-2`);
    const next = await page.locator('a:visible', { hasText: 'Next' }).boundingBox();
    if (next === null) throw new Error('no way on');
    await page.clock.fastForward(QUIET);
    await expect(page.getByRole('dialog')).toBeVisible();
    await page.touchscreen.tap(next.x + next.width / 2, next.y + next.height / 2);
    await page.clock.runFor(500);
    await expect(page.getByRole('dialog')).toBeHidden();
    await expect(page).toHaveURL(/#step-2$/);
  });
});

test('at the first card nobody is asked anything', async ({ page }) => {
  await page.goto(lesson);
  await page.clock.fastForward(QUIET + ANSWER);
  await page.clock.fastForward(QUIET + ANSWER);
  await expect(page.getByRole('dialog')).toBeHidden();
});

test('the sheet left alone leads back to the first card', async ({ page }) => {
  await page.goto(`${lesson}sheet/`);
  await page.clock.fastForward(QUIET);
  await expect(page.getByRole('dialog')).toBeVisible();
  await page.clock.fastForward(ANSWER);
  await expect(page).toHaveURL(new RegExp(`${lesson}$`));
});
