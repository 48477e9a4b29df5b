import type { BrowserContext, Page } from '@playwright/test';
import { expect, test } from './support/test.ts';

const deck = 'lecture/01-ball-and-cup/';

async function openStage(context: BrowserContext, hash = ''): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${deck}${hash}`);
  await expect(page.locator('.lecture-stage[data-running]')).toBeVisible();
  return page;
}

async function openSpeaker(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${deck}speaker/`);
  await expect(page.locator('.speaker[data-running]')).toBeVisible();
  return page;
}

const where = (speaker: Page) => speaker.locator('[data-part="where"]');
const count = (stage: Page) => stage.locator('.count');

test('the speaker’s window follows the stage', async ({ context }) => {
  const stage = await openStage(context, '#3');
  const speaker = await openSpeaker(context);
  await expect(speaker.getByText('Linked to the stage window.')).toBeVisible();
  await expect(where(speaker)).toHaveText('Step 3 of 12');
  await stage.keyboard.press('PageDown');
  await expect(where(speaker)).toHaveText('Step 4 of 12');
  await expect(speaker.getByRole('heading', { name: /^Same cup, smaller ball/ })).toBeVisible();
  await expect(speaker.getByText('Neighbours argue for a minute.')).toBeVisible();
  await expect(speaker.locator('[data-part="upcoming"]')).toHaveText('Next press: build 1 of 1');
  await stage.keyboard.press('PageDown');
  await expect(speaker.locator('[data-part="upcoming"]')).toHaveText('Next press: Push Bench');
  await stage.keyboard.press('b');
  await expect(speaker.getByRole('button', { name: 'Dark screen' })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
});

test('the speaker’s window drives the stage, by its buttons and by the clicker', async ({
  context,
}) => {
  const stage = await openStage(context, '#2');
  const speaker = await openSpeaker(context);
  await expect(speaker.getByText('Linked to the stage window.')).toBeVisible();
  await speaker.getByRole('button', { name: 'Forward' }).click();
  await expect(count(stage)).toHaveText('3 / 12');
  await speaker.keyboard.press('PageDown');
  await expect(count(stage)).toHaveText('4 / 12');
  await speaker.keyboard.press('PageUp');
  await expect(count(stage)).toHaveText('3 / 12');
  await speaker.getByRole('button', { name: 'Back' }).click();
  await expect(count(stage)).toHaveText('2 / 12');
  await speaker.getByRole('button', { name: 'Dark screen' }).click();
  await expect(stage.locator('.dark')).toBeVisible();
  await speaker.keyboard.press('.');
  await expect(stage.locator('.dark')).toBeHidden();
  await speaker.getByRole('button', { name: 'First step' }).click();
  await expect(count(stage)).toHaveText('1 / 12');
  await expect(where(speaker)).toHaveText('Step 1 of 12');
});

test('opened first, it says that no stage answers, turns its own pages, and hands its place on', async ({
  context,
}) => {
  const speaker = await openSpeaker(context);
  await expect(speaker.getByText('No stage window answers.')).toBeVisible();
  await speaker.keyboard.press('PageDown');
  await speaker.keyboard.press('PageDown');
  await expect(where(speaker)).toHaveText('Step 2 of 12');
  const [stage] = await Promise.all([
    context.waitForEvent('page'),
    speaker.getByRole('link', { name: 'Open the stage' }).click(),
  ]);
  await expect(count(stage)).toHaveText('2 / 12');
  await expect(speaker.getByText('Linked to the stage window.')).toBeVisible();
  await stage.close();
  await expect(speaker.getByText('No stage window answers.')).toBeVisible();
  await expect(where(speaker)).toHaveText('Step 2 of 12');
});

test('both windows count the same presses in every step', async ({ page }) => {
  const presses = async (address: string): Promise<readonly number[]> => {
    await page.goto(address);
    return page.locator('.step').evaluateAll((steps) =>
      steps.map((step) => {
        const builds = [...step.querySelectorAll('.build')];
        return new Set(builds.map((build) => build.getAttribute('data-with') ?? build)).size;
      }),
    );
  };
  const onStage = await presses(deck);
  expect(onStage.some((count) => count > 2)).toBe(true);
  expect(await presses(`${deck}speaker/`)).toEqual(onStage);
});

test('a second stage is told of and not followed', async ({ context }) => {
  const first = await openStage(context, '#3');
  const speaker = await openSpeaker(context);
  await expect(where(speaker)).toHaveText('Step 3 of 12');
  const second = await openStage(context, '#9');
  await expect(speaker.getByText('A second stage window is open.')).toBeVisible();
  await expect(where(speaker)).toHaveText('Step 3 of 12');
  await speaker.keyboard.press('PageDown');
  await expect(count(first)).toHaveText('4 / 12');
  await expect(count(second)).toHaveText('9 / 12');
});

test('both windows keep place and clock over a reload', async ({ context }) => {
  const stage = await openStage(context, '#6');
  const speaker = await openSpeaker(context);
  await speaker.reload();
  await expect(where(speaker)).toHaveText('Step 6 of 12');
  await stage.reload();
  await expect(count(stage)).toHaveText('6 / 12');
  await speaker.keyboard.press('PageDown');
  await expect(stage).toHaveURL(/#6\.1$/);
});

test('the clock starts with the first step forward and tells the pace', async ({ context }) => {
  const speaker = await context.newPage();
  await speaker.clock.install({ time: new Date('2030-01-15T19:00:00') });
  await speaker.goto(`${deck}speaker/`);
  await speaker.clock.pauseAt(new Date('2030-01-15T19:30:00'));
  const elapsed = speaker.locator('[data-part="elapsed"]');
  const pace = speaker.locator('[data-part="pace"]');
  await speaker.clock.runFor(60_000);
  await expect(elapsed).toHaveText('0:00 of 12:00');
  await expect(pace).toHaveText('Starts with the first step forward; this step ends at 1:00');
  await speaker.keyboard.press('PageDown');
  await speaker.clock.runFor(30_000);
  await expect(elapsed).toHaveText('0:30 of 12:00');
  await expect(pace).toHaveText('On time; this step ends at 1:00');
  await speaker.clock.runFor(45_000);
  await expect(pace).toHaveText('0:15 behind; this step ends at 1:00');
  await speaker.keyboard.press('PageDown');
  await expect(pace).toHaveText('On time; this step ends at 2:00');
  await speaker.getByRole('button', { name: 'Start the clock again' }).click();
  await expect(elapsed).toHaveText('0:00 of 12:00');
  await expect(pace).toHaveText('1:00 ahead; this step ends at 2:00');
});
