import type { Locator, Page } from '@playwright/test';
import { expectNoAxeViolations, expectNoFaintText } from './support/accessibility.ts';
import { lessonRoutes } from './support/routes.ts';
import { expect, test } from './support/test.ts';

const lesson = 'clinic/01-ball-and-cup/';
const MOST_TAPS = 7;
/** Sizes of a target in px: the least anywhere in this edition, and the least of its main buttons. */
const LEAST = 44;
const LEAST_MAIN = 56;

const headings = [
  'Your shoulder is a ball and a cup',
  'Muscles press the ball into the cup',
  'Try it with a ball and a cup',
  'Surgery can give you a new cup',
  'Questions to ask your care team',
];

/**
 * The whole way of a lesson, from the first page to the sheet, pressing things in one way. Answers how often it
 * pressed.
 */
async function walk(
  page: Page,
  press: (target: Locator) => Promise<void>,
  route = lesson,
): Promise<number> {
  let taps = 0;
  const tap = async (target: Locator) => {
    taps += 1;
    await press(target);
  };
  const turn = (name: string) => page.locator('.turn a:visible').filter({ hasText: name });
  await page.goto('clinic/');
  const topic = page.locator(`a.topic[href$="${route}"]`);
  const title = await topic.locator('strong').innerText();
  await tap(topic);
  await page.waitForURL(`**/${route}`, { waitUntil: 'load' });
  const heading = page.getByRole('heading', { level: 2 });
  const cards = await page.locator('.card').count();
  for (let i = 1; i <= cards; i++) {
    await expect(page.getByText(`Step ${i} of ${cards}`, { exact: true })).toBeVisible();
    if (i > 1) await expect(heading).toBeFocused();
    if ((await page.locator('.card:visible .simple').count()) > 0) {
      const simple = await bench(page);
      const before = await simple.innerText();
      await tap(lastThingToPress(simple));
      await expect.poll(() => simple.innerText()).not.toBe(before);
    }
    await tap(turn(i < cards ? 'Next' : 'Take it home'));
  }
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(title);
  await expect(page.getByRole('button', { name: 'Print' })).toBeVisible();
  return taps;
}

function lastThingToPress(simple: Locator): Locator {
  return simple
    .locator('label:not(:has(:checked)), button:not([aria-disabled="true"]):visible')
    .last();
}

/** The bench, once it answers. */
async function bench(page: Page): Promise<Locator> {
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
  return page.locator('.simple');
}

async function expectNothingKept(page: Page): Promise<void> {
  const kept = await page.evaluate(async () => ({
    local: Object.keys(localStorage),
    session: Object.keys(sessionStorage),
    cookie: document.cookie,
    databases: await indexedDB.databases(),
  }));
  expect(kept).toEqual({ local: [], session: [], cookie: '', databases: [] });
}

test.describe('the whole path', () => {
  for (const route of lessonRoutes('clinic')) {
    test(`of ${route} by mouse, and nothing is kept`, async ({ page }) => {
      expect(await walk(page, (target) => target.click(), route)).toBeLessThanOrEqual(MOST_TAPS);
      await expectNothingKept(page);
    });
  }

  test('by keyboard alone', async ({ page }) => {
    const tabTo = async (target: Locator) => {
      const isThere = () => target.evaluate((element) => element === document.activeElement);
      for (let i = 0; i < 20 && !(await isThere()); i += 1) await page.keyboard.press('Tab');
      await expect(target).toBeFocused();
      await page.keyboard.press('Enter');
    };
    expect(await walk(page, tabTo)).toBeLessThanOrEqual(MOST_TAPS);
  });

  test('with less motion: the answer is there at once', async ({ page }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    expect(await walk(page, (target) => target.click())).toBe(MOST_TAPS);
  });

  test.describe('on a tablet', () => {
    test.use({ hasTouch: true, viewport: { width: 820, height: 1180 } });
    test('by touch', async ({ page }) => {
      expect(await walk(page, (target) => target.tap())).toBe(MOST_TAPS);
      await expectNothingKept(page);
    });
  });
});

test.describe('the bench', () => {
  test('a harder press and a deeper cup hold more; a flat holds nothing', async ({ page }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.goto(`${lesson}#step-3`);
    const outcome = (await bench(page)).locator('.outcome p');
    const push = page.getByRole('button', { name: 'Push' });
    await push.click();
    await expect(outcome).toHaveText(/^It held a firm push\. Then it slipped\.\s*$/);
    await page.getByRole('radio', { name: 'Deep cup' }).check({ force: true });
    await push.click();
    await expect(outcome).toContainText(
      'It held a strong push. Then it slipped. That is more than last time.',
    );
    await page.getByRole('button', { name: 'Press harder' }).click();
    await push.click();
    await expect(outcome).toContainText(
      'a very strong push. Then it slipped. That is more than last time.',
    );
    await page.getByRole('radio', { name: 'Flat dish' }).check({ force: true });
    await push.click();
    await expect(outcome).toContainText('It slipped at once. That is less than last time.');
  });

  test('the ball can be pulled', async ({ page }) => {
    await page.goto(`${lesson}#step-3`);
    const box = await (await bench(page)).locator('.ball').boundingBox();
    if (box === null) throw new Error('no ball');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + box.width, y, { steps: 8 });
    await expect(page.locator('.outcome p')).toHaveText('The ball is out of the cup.');
    await page.mouse.up();
  });
});

test.describe('the place', () => {
  test('stands in the address: reload and the browser’s own Back keep it', async ({ page }) => {
    await page.goto(lesson);
    const heading = page.getByRole('heading', { level: 2 });
    await page.locator('a:visible', { hasText: 'Next' }).click();
    await page.locator('a:visible', { hasText: 'Next' }).click();
    await expect(heading).toHaveText([headings[2] ?? '']);
    await page.reload();
    await expect(heading).toHaveText([headings[2] ?? '']);
    await page.goBack();
    await expect(heading).toHaveText([headings[1] ?? '']);
    await page.locator('a:visible', { hasText: 'Back' }).click();
    await expect(heading).toHaveText([headings[0] ?? '']);
  });

  test('an unknown place is the start', async ({ page }) => {
    await page.goto(`${lesson}#step-99`);
    await expect(page.getByRole('heading', { level: 2 })).toHaveText([headings[0] ?? '']);
  });

  test('“Start again” clears the address and puts the bench back', async ({ page }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.goto(`${lesson}#step-3`);
    await bench(page);
    await page.getByRole('radio', { name: 'Deep cup' }).check({ force: true });
    await page.getByRole('button', { name: 'Push' }).click();
    await page.getByRole('link', { name: 'Start again' }).click();
    await expect(page).toHaveURL(new RegExp(`${lesson}$`));
    await expect(page.getByRole('heading', { name: headings[0] ?? '' })).toBeFocused();
    await page.goto(`${lesson}#step-3`);
    await expect(page.getByRole('radio', { name: 'Shallow cup' })).toBeChecked();
    await expect(page.locator('.outcome p')).toHaveText(
      'Touch “Push” to see if the cup holds the ball.',
    );
  });
});

/** Every place of a lesson: its cards and its sheet. */
async function placesOf(page: Page, route: string): Promise<readonly string[]> {
  await page.goto(route);
  const cards = await page.locator('.card').count();
  return [...Array.from({ length: cards }, (_, i) => `${route}#step-${i + 1}`), `${route}sheet/`];
}

const screens = [
  { name: 'tablet', width: 820, height: 1180 },
  { name: 'phone', width: 390, height: 844 },
  { name: 'desk', width: 1280, height: 720 },
];

for (const route of ['', ...lessonRoutes('clinic')]) {
  test(`every target of ${route || 'the start'} is big enough for a finger, and every text to read`, async ({
    page,
  }) => {
    for (const place of route === '' ? ['clinic/'] : await placesOf(page, route)) {
      await page.goto(place);
      for (const screen of screens) {
        await page.setViewportSize(screen);
        const at = `${place} on a ${screen.name}`;
        const targets = await page
          .locator(':is(a, button, label):visible')
          .evaluateAll((elements) =>
            elements.map((element) => {
              const { width, height } = element.getBoundingClientRect();
              const isMain = element.closest('main') !== null;
              return { text: element.textContent.trim(), width, height, isMain };
            }),
          );
        expect(targets.length, at).toBeGreaterThan(0);
        const small = targets.filter(
          ({ width, height, isMain }) => Math.min(width, height) < (isMain ? LEAST_MAIN : LEAST),
        );
        expect(small, at).toEqual([]);
        const least = screen.name === 'phone' ? 20 : 24;
        const sizes = await page
          .locator('main :is(p, li):visible')
          .evaluateAll((elements) =>
            elements.map((element) => parseFloat(getComputedStyle(element).fontSize)),
          );
        expect(Math.min(...sizes), at).toBeGreaterThanOrEqual(least);
      }
    }
  });
}

for (const route of lessonRoutes('clinic')) {
  // Its sheet is looked at with the other pages, and again on paper.
  test(`no card of ${route} has anything axe objects to, light or dark`, async ({ page }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    for (const place of (await placesOf(page, route)).filter((each) => each.includes('#'))) {
      await page.emulateMedia({ colorScheme: 'light' });
      await page.goto(place);
      if ((await page.locator('.card:visible .simple').count()) > 0) {
        await lastThingToPress(await bench(page)).click();
      }
      await expectNoAxeViolations(page);
      await page.emulateMedia({ colorScheme: 'dark' });
      await expectNoFaintText(page);
    }
  });
}

test.describe('without a script', () => {
  test.use({ javaScriptEnabled: false });
  test('every card stands below the other with its picture', async ({ page }) => {
    await page.goto(lesson);
    await expect(page.getByRole('heading', { level: 2 })).toHaveText(headings);
    for (const heading of headings) {
      const card = page.getByRole('region', { name: heading });
      await expect(card.locator('svg').first()).toBeVisible();
      await expect(card.getByRole('link')).toHaveCount(0);
    }
    await expect(page.getByRole('button')).toHaveCount(0);
    await expect(page.getByRole('radio')).toHaveCount(0);
    await expect(page.getByText('A flat dish cannot hold it.')).toBeVisible();
    await page.getByRole('link', { name: 'Sheet to take home' }).click();
    await expect(page.getByRole('article')).toBeVisible();
  });
});
