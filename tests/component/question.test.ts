import { beforeEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import EraseDevice from '../../sims/study/EraseDevice.svelte';
import Question from '../../sims/study/Question.svelte';
import QuestionTally from '../../sims/study/QuestionTally.svelte';
import { deviceStore } from '../../sims/study/device-store.ts';
import type { ChoiceQuestion, NumberQuestion } from '../../sims/study/prepare-questions.ts';

const LESSON = '01-ball-and-cup';
const shared = { objective: 'o1', isInvented: false, sources: [] };
const choice: ChoiceQuestion = {
  ...shared,
  id: 'flat',
  kind: 'choice',
  ask: 'What moves a ball on a flat?',
  key: 'any',
  isNumeric: false,
  options: [
    { id: 'any', text: 'Any push', reason: 'Nothing pushes back sideways.' },
    { id: 'half', text: 'Half the press', reason: 'That would be friction.' },
    { id: 'full', text: 'More than the press', reason: 'The two are square to each other.' },
  ],
};
const number: NumberQuestion = {
  ...shared,
  id: 'ratio',
  kind: 'number',
  ask: 'How large is the ratio?',
  answer: { value: 0.7002, digits: 2, unit: '' },
  tolerance: 0.01,
  reason: 'It is the tangent.',
  slips: [{ value: { value: 0.5736, digits: 2, unit: '' }, reason: 'This is the sine.' }],
};

const show = (question: ChoiceQuestion | NumberQuestion) =>
  render(Question, { lesson: LESSON, number: 1, question });
const button = (name: string) => page.getByRole('button', { name });
const radio = (name: string) => page.getByRole('radio', { name });

beforeEach(() => {
  deviceStore().erase();
});

describe('a choice', () => {
  test('asks for an option first', async () => {
    await show(choice);
    await button('Answer').click();
    await expect
      .element(page.getByRole('alert'))
      .toHaveTextContent('Choose one of the options first.');
  });

  test('answered rightly says so and gives every reason', async () => {
    await show(choice);
    await radio('Any push').click();
    await button('Answer').click();
    await expect.element(page.getByText('Your answer: right')).toBeVisible();
    for (const { reason } of choice.options) {
      await expect.element(page.getByText(reason)).toBeVisible();
    }
    expect(document.activeElement?.textContent).toContain('Right');
  });

  test('answered wrongly says why, and keeps the answer for another try', async () => {
    await show(choice);
    await radio('Half the press').click();
    await button('Answer').click();
    await expect.element(page.getByText('Your answer: not this one')).toBeVisible();
    await expect.element(page.getByText('That would be friction.')).toBeVisible();
    await expect.element(page.getByText(/Nothing pushes back/)).not.toBeInTheDocument();
    await button('Try again').click();
    await expect.element(radio('Any push')).toHaveFocus();
    await radio('Any push').click();
    await button('Answer').click();
    await expect.element(page.getByText('Right, at try 2')).toBeVisible();
  });

  test('answered wrongly can show the answer and why the others tempt', async () => {
    await show(choice);
    await radio('Half the press').click();
    await button('Answer').click();
    await button('Show the answer and why').click();
    await expect.element(page.getByText('The best answer', { exact: true })).toBeVisible();
    await expect.element(page.getByText(/Nothing pushes back/)).toBeVisible();
    expect(deviceStore().answer(LESSON, 'flat')).toMatchObject({ given: 'half', isRight: false });
  });

  test('works by keyboard alone', async () => {
    await show(choice);
    await userEvent.tab();
    await userEvent.keyboard(' ');
    await expect.element(radio('Any push')).toBeChecked();
    await userEvent.tab();
    await userEvent.keyboard('{Enter}');
    await expect.element(page.getByText('Your answer: right')).toBeVisible();
  });
});

describe('a number', () => {
  test.each(['0.70', '0,71', ' .7 '])('typed as “%s” is right', async (text) => {
    await show(number);
    await page.getByRole('textbox', { name: 'Your answer' }).fill(text);
    await userEvent.keyboard('{Enter}');
    await expect.element(page.getByText('Right', { exact: true })).toBeVisible();
    await expect.element(page.getByText('It is the tangent.')).toBeVisible();
  });

  test('that a slip leads to is told its slip', async () => {
    await show(number);
    await page.getByRole('textbox').fill('0.57');
    await button('Answer').click();
    await expect.element(page.getByText('Not right: too low')).toBeVisible();
    await expect.element(page.getByText('This is the sine.')).toBeVisible();
    await expect.element(page.getByText('It is the tangent.')).not.toBeInTheDocument();
  });

  test('that is no number is asked for again', async () => {
    await show(number);
    await page.getByRole('textbox').fill('half');
    await button('Answer').click();
    await expect.element(page.getByRole('alert')).toHaveTextContent('“half” is not a number.');
    await expect.element(page.getByRole('textbox')).toHaveAttribute('aria-invalid', 'true');
    expect(deviceStore().answer(LESSON, 'ratio')).toBeUndefined();
  });
});

test('an answer given before is remembered', async () => {
  deviceStore().keepAnswer(LESSON, 'flat', { given: 'full', isRight: false, tries: 2 });
  await show(choice);
  await expect.element(page.getByText('The two are square to each other.')).toBeVisible();
});

test('the tally counts, and clears the answers for another go', async () => {
  await show(choice);
  await render(QuestionTally, { lesson: LESSON, questions: ['flat', 'ratio'] });
  await expect
    .element(page.getByRole('status'))
    .toHaveTextContent('2 questions, none answered yet.');
  await radio('Any push').click();
  await button('Answer').click();
  await expect.element(page.getByRole('status')).toHaveTextContent('1 of 2 answered, 1 right.');
  await button('Clear these answers for another go').click();
  await expect
    .element(page.getByRole('status'))
    .toHaveTextContent('2 questions, none answered yet.');
  await expect.element(radio('Any push')).not.toBeChecked();
});

test('erasing asks once, then leaves nothing of the course on the device', async () => {
  deviceStore().keepAnswer(LESSON, 'flat', { given: 'any', isRight: true, tries: 1 });
  localStorage.setItem('held-in-the-cup.theme', 'night');
  localStorage.setItem('somebody.else', 'stays');
  await render(EraseDevice, {});
  await expect.element(page.getByText(/no predictions and 1 answer/)).toBeVisible();
  await button('Erase what this device keeps').click();
  await expect.element(button('Erase')).toHaveFocus();
  await button('Keep it').click();
  expect(deviceStore().answer(LESSON, 'flat')).toBeDefined();
  await button('Erase what this device keeps').click();
  await button('Erase').click();
  await expect
    .element(page.getByRole('status'))
    .toHaveTextContent('Erased. Nothing of the course is kept here now.');
  expect(Object.keys(localStorage).filter((key) => key.startsWith('held-in-the-cup'))).toEqual([]);
  expect(localStorage.getItem('somebody.else')).toBe('stays');
  localStorage.removeItem('somebody.else');
});
