import { beforeEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import PegBoardQuestion from '../../sims/study/PegBoardQuestion.svelte';
import { defaultBoard, newPeg } from '../../sims/benches/peg-board/settings.ts';
import type { PegTask } from '../../sims/benches/peg-board/question-task.ts';
import EraseDevice from '../../sims/study/EraseDevice.svelte';
import Question from '../../sims/study/Question.svelte';
import QuestionTally from '../../sims/study/QuestionTally.svelte';
import { deviceStore } from '../../sims/study/device-store.ts';
import { NO_LONGER_FITS } from '../../sims/study/kept-answer.svelte.ts';
import type {
  ChoiceQuestion,
  NumberQuestion,
  SetQuestion,
} from '../../sims/study/prepare-questions.ts';
import '../../site/styles/tokens.css';
import '../../site/styles/base.css';

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
  document.querySelector('#said-politely')?.remove();
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

test('an answer that no longer fits is let go, with a sentence', async () => {
  deviceStore().keepAnswer(LESSON, 'flat', { given: 'gone', isRight: true, tries: 1 });
  await show(choice);
  await expect.element(page.getByText(NO_LONGER_FITS)).toBeVisible();
  await expect.element(button('Answer')).toBeVisible();
});

describe('a bench to set', () => {
  const { ground, load } = defaultBoard;
  const task: PegTask = {
    ground,
    load: { press: load.press, shear: load.shear, share: load.share },
    peg: newPeg,
    start: [9, 0, -9].map((y) => ({ x: 0, y })),
    way: [
      { x: 0, y: 9 },
      { x: 5.5, y: -7 },
      { x: -5.5, y: -7 },
    ],
    limits: { lift: 0.115, margin: 1.25, wall: 3 },
  };
  const set: SetQuestion<PegTask> = {
    ...shared,
    id: 'lay-out',
    kind: 'set',
    bench: 'peg-board',
    ask: 'Lay three pegs out.',
    task,
    reason: 'They span the back both ways.',
    outcomes: [
      { id: 'one-line', reason: 'They stand on one line.' },
      { id: 'near-across', reason: 'Too near from front to back.' },
    ],
  };
  const board = () => render(PegBoardQuestion, { lesson: LESSON, number: 1, question: set });
  const cell = (name: string) => page.getByRole('textbox', { name: `${name}, in mm` });
  const peg = (number: number): HTMLButtonElement => {
    const found = document.querySelector<HTMLButtonElement>(`[data-handle="${number - 1}"]`);
    if (found === null) throw new Error(`no peg ${number}`);
    return found;
  };
  const type = async (name: string, value: string): Promise<void> => {
    await cell(name).fill(value);
    await userEvent.keyboard('{Enter}');
  };
  const kept = () => deviceStore().answer(LESSON, 'lay-out');

  test('tells each requirement with its number, and why; and counts', async () => {
    await board();
    await render(QuestionTally, { lesson: LESSON, questions: ['lay-out'] });
    await button('Check this layout').click();
    await expect.element(page.getByText('2 of 3 met')).toBeVisible();
    await expect.element(page.getByText(/Not met: 148.µm, with the load forward/)).toBeVisible();
    await expect.element(page.getByText('They stand on one line.')).toBeVisible();
    await expect.element(page.getByText('1 of 1 answered, 0 right.')).toBeVisible();
    expect(document.activeElement?.textContent).toContain('2 of 3 met');

    await type('Peg 3, front', '-5.5');
    await expect.element(page.getByText('Changed since it was last checked.')).toBeVisible();
    await expect.element(page.getByText('2 of 3 met')).not.toBeInTheDocument();
    await type('Peg 3, up', '-7');
    await type('Peg 2, front', '5.5');
    await type('Peg 2, up', '-7');
    await button('Check this layout').click();
    await expect.element(page.getByText('Everything is met, at try 2')).toBeVisible();
    await expect.element(page.getByText('They span the back both ways.')).toBeVisible();
    await expect.element(page.getByText('1 of 1 answered, 1 right.')).toBeVisible();
    expect(kept()).toMatchObject({ given: '0*9_5.5*-7_-5.5*-7', isRight: true, tries: 2 });

    await button('Clear these answers for another go').click();
    await expect.element(cell('Peg 2, front')).toHaveValue('0.0');
    await expect.element(button('Check this layout')).toBeVisible();
  });

  test('is set by keys, finely with shift, and keeps pegs where there is room', async () => {
    await board();
    await expect.poll(() => document.querySelectorAll('[data-handle]').length).toBe(3);
    peg(2).focus();
    await userEvent.keyboard('{ArrowRight}{Shift>}{ArrowRight}{/Shift}');
    await expect.element(cell('Peg 2, front')).toHaveValue('0.6');
    expect(document.activeElement).toBe(peg(2));
    await type('Peg 2, up', '7');
    const message = () => document.querySelector('.message')?.textContent ?? '';
    await expect.poll(message).toContain('Peg 2 would reach peg 1.');
  });

  test('is dragged; a drag that a scroll or Escape ends puts the peg back', async () => {
    await board();
    await expect.poll(() => document.querySelectorAll('[data-handle]').length).toBe(3);
    const box = peg(3).getBoundingClientRect();
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    // A made-up pointer cannot be captured.
    peg(3).setPointerCapture = () => undefined;
    const send = (name: string, at: number): void => {
      const given = { pointerId: 1, button: 0, clientX: at, clientY: y, bubbles: true };
      peg(3).dispatchEvent(new PointerEvent(name, given));
    };
    send('pointerdown', x);
    send('pointermove', x + 30);
    await expect.element(cell('Peg 3, front')).not.toHaveValue('0.0');
    send('pointercancel', x + 30);
    await expect.element(cell('Peg 3, front')).toHaveValue('0.0');
    peg(3).focus();
    send('pointerdown', x);
    send('pointermove', x + 30);
    await expect.element(cell('Peg 3, front')).not.toHaveValue('0.0');
    await userEvent.keyboard('{Escape}');
    send('pointermove', x + 30);
    await expect.element(cell('Peg 3, front')).toHaveValue('0.0');
    send('pointerdown', x);
    send('pointermove', x + 30);
    send('pointerup', x + 30);
    await expect.element(cell('Peg 3, front')).not.toHaveValue('0.0');
  });

  test('shows one layout that meets everything only after a check that failed', async () => {
    await board();
    await expect.element(button('Check this layout')).toBeVisible();
    await expect.element(button('Set one that meets everything')).not.toBeInTheDocument();
    await button('Check this layout').click();
    await button('Set one that meets everything').click();
    await expect.element(cell('Peg 3, front')).toHaveValue('-5.5');
    expect(kept()).toMatchObject({ isRight: false });
  });

  test('has the layout last checked when it comes back', async () => {
    deviceStore().keepAnswer(LESSON, 'lay-out', {
      given: '0*9_3*-7_-3*-7',
      isRight: false,
      tries: 3,
    });
    await board();
    await expect.element(cell('Peg 2, front')).toHaveValue('3.0');
    await expect.element(page.getByText('Too near from front to back.')).toBeVisible();
  });

  test.each(['nonsense', '0*9_0*0', '0*9_0*8_0*-9'])(
    'begins afresh, with a sentence, where “%s” was kept',
    async (given) => {
      deviceStore().keepAnswer(LESSON, 'lay-out', { given, isRight: true, tries: 1 });
      await board();
      await expect.element(page.getByText(NO_LONGER_FITS)).toBeVisible();
      await expect.element(cell('Peg 1, up')).toHaveValue('9.0');
      await expect.element(button('Check this layout')).toBeVisible();
    },
  );
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
