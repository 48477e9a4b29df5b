import type { Page } from '@playwright/test';
import { everySentence as ofForceAndArc } from '../../sims/benches/force-and-arc/simple-words.ts';
import { everySentence as ofGapAndHeat } from '../../sims/benches/gap-and-heat/simple-words.ts';
import { everySentence as ofPegBoard } from '../../sims/benches/peg-board/simple-words.ts';
import { everySentence as ofPressurePrint } from '../../sims/benches/pressure-print/simple-words.ts';
import { everySentence as ofPushBench } from '../../sims/benches/push-bench/simple-words.ts';
import { everySentence as ofRockingBench } from '../../sims/benches/rocking-bench/simple-words.ts';
import { everySentence as ofRoundTheRim } from '../../sims/benches/round-the-rim/simple-words.ts';
import { everySentence as ofWeekByWeek } from '../../sims/benches/week-by-week/simple-words.ts';
import { patientBlocks } from '../../site/clinic/patient-text.ts';
import {
  countText,
  fleschKincaidGrade,
  sentencesOf,
  smogGrade,
  wordsOf,
} from '../../site/clinic/reading-grade.ts';
import { lessonRoutes } from './support/routes.ts';
import { expect, test } from './support/test.ts';

/** All that the bench of a lesson can say. */
const saidByBench: Readonly<Record<string, readonly string[]>> = {
  'clinic/01-ball-and-cup/': ofPushBench,
  'clinic/03-depth-and-direction/': ofRoundTheRim,
  'clinic/04-mismatch/': ofPressurePrint,
  'clinic/05-direction-of-force/': ofForceAndArc,
  'clinic/06-rim-load/': ofRockingBench,
  'clinic/07-holding-fast/': ofPegBoard,
  'clinic/08-cement/': ofGapAndHeat,
  'clinic/09-layers-and-bone/': ofWeekByWeek,
};
const LONGEST_SENTENCE = 15;
const MOST_SENTENCES_A_CARD = 3;

/** All that a patient can read or hear in the pages of a lesson as they were built. */
async function patientText(page: Page, lesson: string): Promise<readonly string[]> {
  const routes = ['clinic/', lesson, `${lesson}sheet/`];
  const pages = await Promise.all(
    routes.map(async (route) => (await page.request.get(route)).text()),
  );
  return [...new Set(pages.flatMap(patientBlocks))];
}

for (const lesson of lessonRoutes('clinic')) {
  const everySentence = saidByBench[lesson] ?? [];
  test(`${lesson}: what its bench says is known here`, () => {
    expect(everySentence.length).toBeGreaterThan(3);
  });

  test(`${lesson}: grade at most 6 by Flesch–Kincaid and 8 by SMOG, over thirty sentences or more`, async ({
    page,
  }) => {
    const counts = countText(await patientText(page, lesson));
    expect(counts.sentences).toBeGreaterThanOrEqual(30);
    expect(fleschKincaidGrade(counts)).toBeLessThanOrEqual(6);
    expect(smogGrade(counts)).toBeLessThanOrEqual(8);
  });

  test(`${lesson}: what the bench says is no harder`, async ({ page }) => {
    const counts = countText(await patientText(page, lesson));
    const bench = countText(everySentence);
    expect(fleschKincaidGrade(bench)).toBeLessThanOrEqual(fleschKincaidGrade(counts));
    expect(smogGrade(bench)).toBeLessThanOrEqual(smogGrade(counts));
  });

  test(`${lesson}: every sentence is whole, and fifteen words or fewer`, async ({ page }) => {
    for (const block of [...(await patientText(page, lesson)), ...everySentence]) {
      expect(block).toMatch(/[.?!]$/);
      for (const sentence of sentencesOf(block)) {
        expect(wordsOf(sentence).length, sentence).toBeLessThanOrEqual(LONGEST_SENTENCE);
      }
    }
  });

  test(`${lesson}: the staff page gives the grade that the built pages have`, async ({ page }) => {
    const counts = countText(await patientText(page, lesson));
    await page.goto('clinic/');
    const title = page.locator(`a.topic[href$="${lesson}"] strong`);
    const name = await title.innerText();
    await page.goto('clinic/staff/');
    const table = page.getByRole('table', { name });
    const row = (name: string) =>
      table.getByRole('row').filter({ hasText: name }).getByRole('cell').first();
    await expect(row('Flesch–Kincaid')).toHaveText(fleschKincaidGrade(counts).toFixed(1));
    await expect(row('SMOG')).toHaveText(smogGrade(counts).toFixed(1));
    await expect(row('Longest sentence')).toHaveText(`${counts.longestSentence} words`);
    await expect(row('Text measured')).toHaveText(
      `${counts.sentences} sentences, ${counts.words} words`,
    );
  });

  test(`${lesson}: a card says three things at most`, async ({ page }) => {
    await page.goto(lesson);
    const cards = page.locator('.card');
    expect(await cards.count()).toBeGreaterThanOrEqual(3);
    const texts = await cards.evaluateAll((elements) =>
      elements.map((card) =>
        [...card.querySelectorAll('.words > p, .words > .needs-script > p, .balance li')].map(
          (element) => element.textContent,
        ),
      ),
    );
    const counts = texts.map((text) => text.flatMap(sentencesOf).length);
    expect(counts.filter((count) => count > 0).length).toBeGreaterThanOrEqual(3);
    expect(Math.max(...counts)).toBeLessThanOrEqual(MOST_SENTENCES_A_CARD);
  });

  test(`${lesson}: the cautions stand on every page, and nothing is asked for`, async ({
    page,
  }) => {
    for (const route of ['clinic/', lesson, `${lesson}sheet/`]) {
      await page.goto(route);
      for (const words of [
        'For education only',
        'not advice about your own care',
        'Not yet clinically reviewed',
      ]) {
        await expect(page.getByText(words).first()).toBeVisible();
      }
      await expect(page.locator('input:not([type="radio"]), textarea, select, form')).toHaveCount(
        0,
      );
    }
  });
}
