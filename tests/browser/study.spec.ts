import type { Locator, Page } from '@playwright/test';
import { lessonRoutes } from './support/routes.ts';
import { expect, test } from './support/test.ts';

const LESSON = 'study/01-ball-and-cup/';
const PUSHED = 40_000;

/** One way of using a page: how something is chosen and pressed. */
interface Hand {
  readonly name: string;
  readonly hasTouch: boolean;
  readonly press: (page: Page, target: Locator) => Promise<void>;
  readonly choose: (page: Page, option: Locator) => Promise<void>;
}

/** Tabs from where the focus is until it reaches the target: what cannot be reached so is out of reach. */
async function tabTo(page: Page, target: Locator): Promise<void> {
  const MOST_TABS = 120;
  for (let i = 0; i < MOST_TABS; i += 1) {
    if (await target.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error('the keyboard does not get there');
}

/** The count of answers at the lesson's end; it starts when it comes into view. */
async function expectTally(page: Page, words: string | RegExp): Promise<void> {
  await page.getByText(/^\d( of \d answered| questions)/).scrollIntoViewIfNeeded();
  await expect(page.getByText(words)).toBeVisible();
}

const hands: readonly Hand[] = [
  {
    name: 'mouse',
    hasTouch: false,
    press: (_, target) => target.click(),
    choose: (_, option) => option.click(),
  },
  {
    name: 'touch',
    hasTouch: true,
    press: (_, target) => target.tap(),
    choose: (_, option) => option.tap(),
  },
  {
    name: 'keyboard alone',
    hasTouch: false,
    press: async (page, target) => {
      await tabTo(page, target);
      await page.keyboard.press('Enter');
    },
    choose: async (page, option) => {
      const radio = option.locator('input');
      const group = option.locator('xpath=ancestor::*[@role="radiogroup"]');
      await tabTo(page, group.getByRole('radio').first());
      await page.keyboard.press('Space');
      while (!(await radio.isChecked())) await page.keyboard.press('ArrowDown');
    },
  },
];

for (const { name, hasTouch, press, choose } of hands) {
  test.describe(`the first lesson by ${name}`, () => {
    test.use({ hasTouch });

    test('predict, push, see the answer, answer a question, come back', async ({ page }) => {
      test.setTimeout(120_000);
      await page.goto('');
      await press(
        page,
        page.getByRole('navigation', { name: 'Editions' }).getByRole('link').first(),
      );
      await page.waitForURL('**/study/');
      await press(page, page.getByRole('main').getByRole('link', { name: 'Ball and cup' }));
      await page.waitForURL(`**/${LESSON}`);

      const explain = page.getByRole('heading', { name: 'One angle decides' });
      await expect(explain).toBeHidden();

      const predict = page.locator('[data-prediction="slip-force"]');
      await predict.scrollIntoViewIfNeeded();
      await choose(page, predict.locator('label').nth(2));
      await press(page, predict.getByRole('button', { name: 'Commit' }));
      await expect(predict.getByText('You predicted')).toBeVisible();
      await expect(explain).toBeHidden();

      const bench = page.getByRole('figure', { name: 'Push Bench' });
      await bench.scrollIntoViewIfNeeded();
      await press(page, bench.getByRole('button', { name: 'Push until it slips' }));
      await expect(bench.getByText(/measured: \d+ N/)).toBeVisible({ timeout: PUSHED });

      await press(page, predict.getByRole('button', { name: 'Show the computed answer' }));
      await expect(predict.getByText('As you predicted')).toBeVisible();
      await expect(explain).toBeVisible();

      const card = page.getByRole('region', { name: /slips over the rim at a side force/ });
      await card.scrollIntoViewIfNeeded();
      await choose(page, card.locator('label').nth(1));
      await press(page, card.getByRole('button', { name: 'Answer' }));
      await expectTally(page, '1 of 6 answered, 1 right.');

      await page.reload();
      await expect(explain).toBeVisible();
      await expectTally(page, '1 of 6 answered, 1 right.');
    });
  });
}

for (const lesson of lessonRoutes('study').filter((route) => route !== LESSON)) {
  test(`${lesson}: predict, see the answer, answer a question, come back`, async ({ page }) => {
    await page.goto(lesson);
    const predict = page.locator('[data-prediction]').first();
    const asked = (await predict.getAttribute('data-prediction')) ?? '';
    const explain = page.locator(`study-reveal[data-of="${asked}"] .content`).first();
    await predict.scrollIntoViewIfNeeded();
    await expect(explain).toBeHidden();
    await predict.locator('label').first().click();
    await predict.getByRole('button', { name: 'Commit' }).click();
    await expect(predict.getByText('You predicted')).toBeVisible();
    await expect(explain).toBeHidden();
    await predict.getByRole('button', { name: 'Show the computed answer' }).click();
    await expect(explain).toBeVisible();

    const card = page
      .getByRole('region')
      .filter({ has: page.getByRole('radio') })
      .filter({ has: page.getByRole('button', { name: 'Answer', exact: true }) })
      .last();
    await card.scrollIntoViewIfNeeded();
    await card.locator('label').first().click();
    await card.getByRole('button', { name: 'Answer', exact: true }).click();
    await expectTally(page, /^1 of \d answered, /);

    await page.reload();
    await expect(explain).toBeVisible();
    await predict.scrollIntoViewIfNeeded();
    await expect(predict.getByText(/you predicted|Your prediction/i).first()).toBeVisible();
  });
}

test('a store from a later version is kept aside, and the page says so', async ({ page }) => {
  await page.goto(LESSON);
  await page.evaluate(() => {
    localStorage.setItem('held-in-the-cup.study', JSON.stringify({ version: 99, lessons: {} }));
  });
  await page.reload();
  const predict = page.locator('[data-prediction="slip-force"]');
  await predict.scrollIntoViewIfNeeded();
  await expect(page.getByText('Answers stored by a newer version').first()).toBeVisible();
  await predict.locator('label').first().click();
  await predict.getByRole('button', { name: 'Commit' }).click();
  await expect(predict.getByText('You predicted')).toBeVisible();
  const kept = await page.evaluate(() =>
    Object.entries<string>(localStorage).flatMap(([key, value]) =>
      key.includes('aside') ? [value] : [],
    ),
  );
  expect(kept).toContain(JSON.stringify({ version: 99, lessons: {} }));
});
