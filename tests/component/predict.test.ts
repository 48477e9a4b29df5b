import { beforeEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { STATE_KEY } from '../../sims/shared/store.ts';
import Predict from '../../sims/study/Predict.svelte';
import { deviceStore } from '../../sims/study/device-store.ts';

const LESSON = '01-ball-and-cup';
const choice = {
  lesson: LESSON,
  id: 'twice',
  ask: 'Press twice as hard. How much push does it take?',
  options: [
    { id: 'same', text: 'As much', value: 1 },
    { id: 'twice', text: 'Twice as much', value: 2 },
    { id: 'fourfold', text: 'Four times as much', value: 4 },
  ],
  computed: 2,
  finding: 'The ratio stays.',
};
const number = {
  lesson: LESSON,
  id: 'force',
  ask: 'Which push moves it?',
  range: { min: 0, max: 100, step: 1, digits: 0, unit: 'N' },
  computed: 31.1,
  tolerance: 3,
  finding: 'The ratio is the same.',
};

const commit = () => page.getByRole('button', { name: 'Commit' });
const option = (name: string) => page.getByRole('radio', { name, exact: true });
const again = () => page.getByRole('button', { name: 'Take it back and predict again' });

beforeEach(() => {
  deviceStore().erase();
});

describe('a choice', () => {
  test('is a named group of options, and holds its answer back', async () => {
    await render(Predict, choice);
    await expect.element(page.getByRole('radiogroup', { name: choice.ask })).toBeVisible();
    await expect.element(page.getByText(choice.finding)).not.toBeInTheDocument();
  });

  test('asks for an option before it can be committed', async () => {
    await render(Predict, choice);
    await commit().click();
    await expect
      .element(page.getByRole('alert'))
      .toHaveTextContent(
        'Choose one first. A guess will do: guessing is what makes the answer stick.',
      );
    await expect.element(page.getByText(choice.finding)).not.toBeInTheDocument();
    await option('As much').click();
    await expect.element(page.getByRole('alert')).toHaveTextContent('');
  });

  test('shows the prediction beside the computed answer, and moves the focus there', async () => {
    await render(Predict, choice);
    await option('As much').click();
    await commit().click();
    await expect.element(page.getByText('Your prediction: not this one')).toBeVisible();
    await expect.element(page.getByText('Computed', { exact: true })).toBeVisible();
    await expect.element(page.getByText(choice.finding)).toBeVisible();
    expect(document.activeElement?.textContent).toContain('It comes out as “Twice as much”.');
    await expect.element(page.getByRole('radio')).not.toBeInTheDocument();
  });

  test('stands until the answer is shown, where there is something to try first', async () => {
    await render(Predict, { ...choice, observe: 'Try it on the bench.' });
    await option('Twice as much').click();
    await commit().click();
    await expect.element(page.getByText('You predicted: Twice as much')).toBeVisible();
    expect(document.activeElement?.textContent).toContain('Try it on the bench.');
    await expect.element(page.getByText('Try it on the bench.')).toBeVisible();
    await expect.element(page.getByText(choice.finding)).not.toBeInTheDocument();
    await expect.element(again()).not.toBeInTheDocument();
    await expect.element(page.getByRole('radio')).not.toBeInTheDocument();
    await page.getByRole('button', { name: 'Show the computed answer' }).click();
    await expect.element(page.getByText('As you predicted')).toBeVisible();
    await expect
      .element(page.getByRole('status'))
      .toHaveTextContent('What follows is open to read.');
    await expect.element(again()).toBeVisible();
  });

  test('can be taken back afterwards, and starts empty', async () => {
    await render(Predict, choice);
    await option('As much').click();
    await commit().click();
    await again().click();
    await expect.element(option('As much')).toHaveFocus();
    await expect.element(option('As much')).not.toBeChecked();
    expect(deviceStore().prediction(LESSON, 'twice')).toBeUndefined();
  });

  test('works by keyboard alone', async () => {
    await render(Predict, choice);
    await userEvent.tab();
    await userEvent.keyboard('{ArrowDown}');
    await expect.element(option('Twice as much')).toBeChecked();
    await userEvent.tab();
    await expect.element(commit()).toHaveFocus();
    await userEvent.keyboard('{Enter}');
    await expect.element(page.getByText('As you predicted')).toBeVisible();
    await userEvent.tab();
    await expect.element(again()).toHaveFocus();
  });
});

describe('a number', () => {
  test('is set on a slider and compared in words', async () => {
    await render(Predict, number);
    await page.getByRole('slider').fill('70');
    await commit().click();
    await expect.element(page.getByText('Too high')).toBeVisible();
    await expect
      .element(page.getByText(/You predicted 70.N; the computed answer is 31.N/))
      .toBeVisible();
  });

  test('within the tolerance is close', async () => {
    await render(Predict, number);
    await page.getByRole('slider').fill('33');
    await commit().click();
    await expect.element(page.getByText('Close')).toBeVisible();
  });
});

describe('what the device keeps', () => {
  test('a prediction made before is shown again', async () => {
    deviceStore().keepPrediction(LESSON, 'twice', { given: 'fourfold', isShown: true });
    await render(Predict, choice);
    await expect.element(page.getByText('Your prediction: not this one')).toBeVisible();
  });

  test('a prediction the question no longer has is left out', async () => {
    deviceStore().keepPrediction(LESSON, 'twice', { given: 'thrice', isShown: true });
    await render(Predict, choice);
    await expect.element(option('As much')).toBeVisible();
  });

  test('reading on without predicting shows the answer and says so', async () => {
    await render(Predict, choice);
    deviceStore().keepPrediction(LESSON, 'twice', { given: null, isShown: true });
    await expect.element(page.getByText('Read on without predicting')).toBeVisible();
    await expect.element(page.getByText('Computed', { exact: true })).toBeVisible();
    await page.getByRole('button', { name: 'Predict after all' }).click();
    await expect.element(option('As much')).toHaveFocus();
  });

  test('a prediction made in another tab is followed', async () => {
    await render(Predict, choice);
    const prediction = { given: 'twice', isShown: true, at: 1 };
    const lessons = { [LESSON]: { predictions: { twice: prediction }, answers: {} } };
    localStorage.setItem(STATE_KEY, JSON.stringify({ version: 1, lessons }));
    window.dispatchEvent(new StorageEvent('storage', { key: STATE_KEY }));
    await expect.element(page.getByText('As you predicted')).toBeVisible();
  });

  test('a state of a newer version is told in one line', async () => {
    localStorage.setItem(STATE_KEY, JSON.stringify({ version: 99 }));
    window.dispatchEvent(new StorageEvent('storage', { key: STATE_KEY }));
    await render(Predict, choice);
    await expect.element(page.getByText(/kept aside, untouched/)).toBeVisible();
    expect(localStorage.getItem(STATE_KEY)).toContain('99');
  });
});
