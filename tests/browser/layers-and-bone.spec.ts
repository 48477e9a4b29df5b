import { WEEKS } from '../../sims/benches/week-by-week/settings.ts';
import { buttonWords, outcomeOf, plainRun } from '../../sims/benches/week-by-week/simple-words.ts';
import { expect, test } from './support/test.ts';

// Weeks that go by are over at once.
test.use({ contextOptions: { reducedMotion: 'reduce' } });

test('the two benches go through their acts by the clicker, and each act is what it says', async ({
  page,
}) => {
  for (const step of [3, 9]) {
    await page.goto(`lecture/09-layers-and-bone/#${step}`);
    const now = page.locator('.step[data-now] .now td');
    const rows = page.locator('.step[data-now] tr.build');
    await expect(now.first()).toHaveText('?');
    const count = await rows.count();
    expect(count).toBe(5);
    for (let act = 0; act < count; act += 1) {
      await page.keyboard.press('PageDown');
      await expect(now).toHaveText(await rows.nth(act).locator('td').allTextContents());
      await expect(now.first()).toHaveText(/\d/);
    }
  }
});

test('in the clinic weeks go by at a tap, and Start again brings the first day back', async ({
  page,
}) => {
  await page.goto('clinic/09-layers-and-bone/#step-3');
  // A choice made before its script is there is not taken.
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  const said = page.locator('.outcome');
  await page.getByText('It moves a lot', { exact: true }).click();
  await page.getByRole('button', { name: buttonWords.begin }).click();
  await expect(said).toHaveText(outcomeOf(plainRun('much'), WEEKS));
  await page.getByRole('link', { name: 'Start again' }).click();
  await expect(said).toHaveText(outcomeOf(plainRun('little'), 0));
});
