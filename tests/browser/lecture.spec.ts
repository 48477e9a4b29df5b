import type { Page } from '@playwright/test';
import { lessonRoutes } from './support/routes.ts';
import { expect, test } from './support/test.ts';

const deck = 'lecture/01-ball-and-cup/';
const STEPS = 12;

/** The place a stage shows: its step by the counter, its hash, and how many builds are on. */
function shown(
  page: Page,
): Promise<{ count: string; hash: string; title: string; builds: number }> {
  return page.evaluate(() => {
    const steps = [...document.querySelectorAll<HTMLElement>('.step')].filter((step) =>
      step.checkVisibility(),
    );
    const [step] = steps;
    if (step === undefined || steps.length !== 1)
      throw new Error(`${steps.length} steps are shown`);
    const builds = [...step.querySelectorAll('.build')]
      .filter((build) => build.checkVisibility({ visibilityProperty: true }))
      .map((build) => build.getAttribute('data-with') ?? build);
    return {
      count: document.querySelector('.count')?.textContent ?? '',
      hash: location.hash,
      title: step.querySelector('h2')?.textContent ?? '',
      builds: new Set(builds).size,
    };
  });
}

async function open(page: Page, hash = '', route = deck): Promise<void> {
  await page.goto(`${route}${hash}`);
  await expect(page.locator('.lecture-stage[data-running]')).toBeVisible();
}

for (const route of lessonRoutes('lecture')) {
  test(`the whole of ${route} by the two keys of a clicker, and all the way back`, async ({
    page,
  }) => {
    test.setTimeout(90_000);
    await open(page, '', route);
    const places = [await shown(page)];
    for (let press = 0; press < 90; press++) {
      await page.keyboard.press('PageDown');
      const place = await shown(page);
      if (place.hash === places.at(-1)?.hash) break;
      places.push(place);
    }
    const steps = await page.locator('.step').count();
    const counts = [...new Set(places.map(({ count }) => count))];
    expect(counts).toEqual(Array.from({ length: steps }, (_, i) => `${i + 1} / ${steps}`));
    expect(new Set(places.map(({ title }) => title)).size).toBe(steps);
    expect(places.length).toBeGreaterThan(steps);
    for (const { hash, builds } of places) expect(Number(hash.split('.')[1] ?? 0)).toBe(builds);

    for (const place of places.slice(0, -1).reverse()) {
      await page.keyboard.press('PageUp');
      expect(await shown(page)).toEqual(place);
    }
  });
}

test('every key for it goes forward or back', async ({ page }) => {
  await open(page, '#3');
  for (const key of ['ArrowRight', 'ArrowDown', 'Space', 'Enter', 'n']) {
    await page.keyboard.press(key);
    expect((await shown(page)).hash, key).toBe('#4');
    await page.keyboard.press('PageUp');
    expect((await shown(page)).hash).toBe('#3');
  }
  for (const key of ['ArrowLeft', 'ArrowUp', 'Backspace', 'p', 'Shift+Space']) {
    await page.keyboard.press(key);
    expect((await shown(page)).hash, key).toBe('#2');
    await page.keyboard.press('PageDown');
    expect((await shown(page)).hash).toBe('#3');
  }
});

test('Home and End go to the ends; a key held down counts once', async ({ page }) => {
  await open(page, '#3');
  await page.keyboard.press('End');
  expect((await shown(page)).count).toBe(`${STEPS} / ${STEPS}`);
  await page.keyboard.press('Home');
  await page.keyboard.press('PageDown');
  await page.keyboard.press('PageDown');
  expect((await shown(page)).hash).toBe('#2');
  for (let i = 0; i < 5; i++) await page.keyboard.down('PageDown');
  await page.keyboard.up('PageDown');
  expect((await shown(page)).hash).toBe('#3');
});

for (const key of ['.', 'b']) {
  test(`${key} darkens every pixel, and brings the same place back`, async ({ page }) => {
    await open(page, '#4.1');
    const before = await shown(page);
    await page.keyboard.press(key);
    const lit = await page.evaluate(() => {
      const dark = document.querySelector('.dark');
      const points = [0.001, 0.25, 0.5, 0.75, 0.999].flatMap((x) =>
        [0.001, 0.25, 0.5, 0.75, 0.999].map((y) => [x * innerWidth, y * innerHeight] as const),
      );
      const colour = dark === null ? '' : getComputedStyle(dark).backgroundColor;
      return {
        colour,
        uncovered: points.filter(([x, y]) => document.elementFromPoint(x, y) !== dark),
      };
    });
    expect(lit).toEqual({ colour: 'rgb(0, 0, 0)', uncovered: [] });
    await page.keyboard.press(key);
    await expect(page.locator('.dark')).toBeHidden();
    expect(await shown(page)).toEqual(before);
  });
}

test('a move in the dark brings the light back and skips nothing', async ({ page }) => {
  await open(page, '#4');
  await page.keyboard.press('b');
  await page.keyboard.press('PageDown');
  await expect(page.locator('.dark')).toBeHidden();
  expect((await shown(page)).hash).toBe('#4');
});

test('a reload keeps step and build, even without its hash', async ({ page }) => {
  await open(page, '#4');
  await page.keyboard.press('PageDown');
  const before = await shown(page);
  expect(before.hash).toBe('#4.1');
  await page.reload();
  await expect.poll(() => shown(page)).toEqual(before);
  await page.evaluate(() => {
    history.replaceState(null, '', location.pathname);
  });
  await page.reload();
  await expect.poll(() => shown(page)).toEqual(before);
});

test('Esc changes nothing, and F5 is left to the browser', async ({ page }) => {
  await open(page, '#5');
  const before = await shown(page);
  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');
  expect(await shown(page)).toEqual(before);
  const isTaken = await page.evaluate(() => {
    const event = new KeyboardEvent('keydown', { key: 'F5', bubbles: true, cancelable: true });
    return !document.body.dispatchEvent(event);
  });
  expect(isTaken).toBe(false);
});

for (const hash of ['#99', '#0', '#4.99', '#<img src=x onerror=alert(1)>', '#%E0%A4%A', '#step']) {
  test(`the address ${hash} shows a step of the deck`, async ({ page }) => {
    await open(page, hash);
    const { count, title } = await shown(page);
    expect(count).toMatch(new RegExp(`^([1-9]|1[0-2]) / ${STEPS}$`));
    expect(title).not.toBe('');
  });
}

test('the clicker alone pushes the ball out, act by act, and takes the acts back', async ({
  page,
}) => {
  await open(page, '#5');
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
  const rows = page.locator('.step[data-now] li.build[data-shown]');
  const now = page.locator('.step[data-now] .readings p');
  const acts = [
    { row: 'large ball 0.62', now: '31 N ÷ 50 N = 0.62' },
    { row: 'small ball 0.62', now: '31 N ÷ 50 N = 0.62' },
    { row: 'twice the press 0.62', now: '62 N ÷ 100 N = 0.62' },
    { row: 'flat 0.00', now: '0 N ÷ 50 N = 0.00' },
  ];
  for (const [index, act] of acts.entries()) {
    await page.keyboard.press('PageDown');
    await expect(rows).toHaveCount(index + 1);
    await expect(now).toContainText('slipped at', { timeout: 15_000 });
    await expect(now).toContainText(act.now);
    await expect(rows.last()).toHaveText(act.row.replace(/ (?=[\d.]+$)/, ''));
  }
  await page.keyboard.press('PageUp');
  await expect(rows).toHaveCount(3);
  await expect(now).toContainText('0 N ÷ 100 N = 0.00');
  await page.keyboard.press('End');
  await open(page, '#5.2');
  await expect(rows).toHaveText(['large ball0.62', 'small ball0.62']);
});

test('a focused slider keeps its arrows but never the clicker', async ({ page }) => {
  await open(page, '#5');
  const slider = page.locator('.step[data-now] input[type="range"]').first();
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
  await slider.focus();
  const value = await slider.inputValue();
  await page.keyboard.press('ArrowRight');
  expect(await slider.inputValue()).not.toBe(value);
  expect((await shown(page)).hash).toBe('#5');
  await slider.focus();
  await page.keyboard.press('PageDown');
  expect((await shown(page)).hash).toBe('#5.1');
  await slider.focus();
  await page.keyboard.press('PageUp');
  expect((await shown(page)).hash).toBe('#5');
  await slider.focus();
  await page.keyboard.press('PageUp');
  expect((await shown(page)).count).toBe(`4 / ${STEPS}`);
});

test.describe('without a network', () => {
  // The browser asks for the tab's icon again at every change of the address; the room never sees it.
  test.use({ expectedFaults: [/ERR_INTERNET_DISCONNECTED/] });

  test('once open, the deck runs to its end', async ({ page, context }) => {
    const requests: string[] = [];
    await open(page);
    await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
    await page.waitForFunction(() =>
      [...document.fonts]
        .filter(({ family }) => /Source Serif|Sofia Sans/.test(family))
        .every(({ status }) => status === 'loaded'),
    );
    await page.waitForLoadState('networkidle');
    await context.setOffline(true);
    page.on('request', (request) => {
      if (!request.url().endsWith('/icon.svg')) requests.push(request.url());
    });
    for (let press = 0; press < 40; press++) await page.keyboard.press('PageDown');
    expect((await shown(page)).count).toBe(`${STEPS} / ${STEPS}`);
    expect(requests).toEqual([]);
  });
});

test('the buttons of the foot do what the keys do', async ({ page }) => {
  await open(page, '#2');
  await page.getByRole('button', { name: 'Forward' }).click();
  expect((await shown(page)).hash).toBe('#3');
  await page.getByRole('button', { name: 'Back' }).click();
  expect((await shown(page)).hash).toBe('#2');
  await page.getByRole('button', { name: 'Dark' }).click();
  await expect(page.locator('.dark')).toBeVisible();
});

test('a swipe turns the step, a swipe on the bench does not', async ({ page }) => {
  const swipe = (selector: string, from: number, to: number): Promise<void> =>
    page.locator(selector).evaluate(
      (target, [a, b]) => {
        const send = (type: string, x: number): void => {
          const finger = new Touch({ identifier: 1, target, clientX: x, clientY: 200 });
          const touches = type === 'touchend' ? [] : [finger];
          target.dispatchEvent(
            new TouchEvent(type, { touches, changedTouches: [finger], bubbles: true }),
          );
        };
        send('touchstart', a);
        send('touchend', b);
      },
      [from, to] as const,
    );
  await open(page, '#3');
  await swipe('.step[data-now] .face', 600, 300);
  expect((await shown(page)).hash).toBe('#4');
  await swipe('.step[data-now] .face', 300, 600);
  await swipe('.step[data-now] .face', 300, 330);
  expect((await shown(page)).hash).toBe('#3');
  await page.keyboard.press('End');
  await open(page, '#5');
  await swipe('.bench-on-stage', 600, 300);
  expect((await shown(page)).hash).toBe('#5');
});

test('printed, every step lies on a sheet of its own with its notes under it', async ({ page }) => {
  await open(page, '#3');
  await page.emulateMedia({ media: 'print' });
  const sheets = await page.evaluate(() =>
    [...document.querySelectorAll('.step')].map((step) => {
      const [face, notes] = ['.face', '.notes'].map((part) =>
        step.querySelector(part)?.getBoundingClientRect(),
      );
      return face && notes
        ? face.height > 100 && notes.height > 20 && notes.top >= face.bottom
        : false;
    }),
  );
  expect(sheets).toEqual(Array.from({ length: STEPS }, () => true));
  const hiddenBuilds = await page.locator('.build:not(:visible)').count();
  expect(hiddenBuilds).toBe(0);
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  expect(pdf.match(/\/Type \/Page\b(?!s)/g)).toHaveLength(STEPS);
});

test.describe('without a script', () => {
  test.use({ javaScriptEnabled: false });

  test('every step reads one under another, with its notes and builds', async ({ page }) => {
    await page.goto(deck);
    await expect(page.locator('.step:visible')).toHaveCount(STEPS);
    await expect(page.locator('.notes:visible')).toHaveCount(STEPS);
    await expect(page.locator('.build:not(:visible)')).toHaveCount(0);
    await expect(page.locator('.tools')).toBeHidden();
  });
});

test('the index lists every step with its minutes, and their sum', async ({ page }) => {
  await page.goto('lecture/');
  const list = page.getByRole('region', { name: 'Ball and cup' });
  await expect(list.getByRole('listitem')).toHaveCount(STEPS);
  const minutes = await list.locator('li .minutes').allInnerTexts();
  const sum = minutes.reduce((total, text) => total + Number.parseFloat(text), 0);
  await expect(list.getByText(`${STEPS} steps, ${sum} minutes`)).toBeVisible();
  await list.getByRole('link', { name: 'Open the stage' }).click();
  await expect(page).toHaveURL(new RegExp(`${deck}(#1)?$`));
});
