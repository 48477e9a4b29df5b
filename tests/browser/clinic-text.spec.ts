import type { Page } from '@playwright/test';
import { everySentence } from '../../sims/benches/push-bench/simple-words.ts';
import { patientBlocks } from '../../site/clinic/patient-text.ts';
import {
  countText,
  fleschKincaidGrade,
  sentencesOf,
  smogGrade,
  wordsOf,
} from '../../site/clinic/reading-grade.ts';
import { expect, test } from './support/test.ts';

const lesson = 'clinic/01-ball-and-cup/';
const LONGEST_SENTENCE = 15;
const MOST_SENTENCES_A_CARD = 3;

/** All that a patient can read or hear in the pages as they were built. */
async function patientText(page: Page): Promise<readonly string[]> {
  const routes = ['clinic/', lesson, `${lesson}sheet/`];
  const pages = await Promise.all(
    routes.map(async (route) => (await page.request.get(route)).text()),
  );
  return [...new Set(pages.flatMap(patientBlocks))];
}

test('grade at most 6 by Flesch–Kincaid and 8 by SMOG, over thirty sentences or more', async ({
  page,
}) => {
  const counts = countText(await patientText(page));
  expect(counts.sentences).toBeGreaterThanOrEqual(30);
  expect(fleschKincaidGrade(counts)).toBeLessThanOrEqual(6);
  expect(smogGrade(counts)).toBeLessThanOrEqual(8);
});

test('what the bench says is no harder', async ({ page }) => {
  const counts = countText(await patientText(page));
  const bench = countText(everySentence);
  expect(fleschKincaidGrade(bench)).toBeLessThanOrEqual(fleschKincaidGrade(counts));
  expect(smogGrade(bench)).toBeLessThanOrEqual(smogGrade(counts));
});

test('every sentence is whole, and fifteen words or fewer', async ({ page }) => {
  for (const block of [...(await patientText(page)), ...everySentence]) {
    expect(block).toMatch(/[.?!]$/);
    for (const sentence of sentencesOf(block)) {
      expect(wordsOf(sentence).length, sentence).toBeLessThanOrEqual(LONGEST_SENTENCE);
    }
  }
});

test('the staff page gives the grade that the built pages have', async ({ page }) => {
  const counts = countText(await patientText(page));
  await page.goto('clinic/staff/');
  const row = (name: string) =>
    page.getByRole('row').filter({ hasText: name }).getByRole('cell').first();
  await expect(row('Flesch–Kincaid')).toHaveText(fleschKincaidGrade(counts).toFixed(1));
  await expect(row('SMOG')).toHaveText(smogGrade(counts).toFixed(1));
  await expect(row('Longest sentence')).toHaveText(`${counts.longestSentence} words`);
  await expect(row('Text measured')).toHaveText(
    `${counts.sentences} sentences, ${counts.words} words`,
  );
});

test('a card says three things at most', async ({ page }) => {
  await page.goto(lesson);
  const cards = page.locator('.card');
  await expect(cards).toHaveCount(5);
  const texts = await cards.evaluateAll((elements) =>
    elements.map((card) =>
      [...card.querySelectorAll('.words > p, .words > .needs-script > p, .balance li')].map(
        (element) => element.textContent,
      ),
    ),
  );
  const counts = texts.map((text) => text.flatMap(sentencesOf).length);
  expect(Math.max(...counts)).toBe(MOST_SENTENCES_A_CARD);
});

test('the cautions stand on every page, and nothing is asked for', async ({ page }) => {
  for (const route of ['clinic/', lesson, `${lesson}sheet/`]) {
    await page.goto(route);
    for (const words of [
      'For education only',
      'not advice about your own care',
      'Not yet clinically reviewed',
    ]) {
      await expect(page.getByText(words).first()).toBeVisible();
    }
    await expect(page.locator('input:not([type="radio"]), textarea, select, form')).toHaveCount(0);
  }
});
