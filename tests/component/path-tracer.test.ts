import { beforeEach, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import Bench from '../../sims/benches/path-tracer/Bench.svelte';
import '../../site/styles/tokens.css';
import '../../site/styles/base.css';

const translation = () => page.getByRole('slider', { name: 'Translation of the ball' });

beforeEach(async () => {
  await page.viewport(1000, 900);
});

function drawing(): SVGSVGElement {
  const found = document.querySelector<SVGSVGElement>('.picture svg');
  if (found === null) throw new Error('no drawing');
  return found;
}

/** The three points that move: in the section, on the path, on the ratio. */
function points(): readonly { readonly x: number; readonly y: number }[] {
  return [...drawing().querySelectorAll('circle[r="6"]')].map((circle) => {
    const { x, y, width, height } = circle.getBoundingClientRect();
    return { x: x + width / 2, y: y + height / 2 };
  });
}

function send(type: string, x: number, y: number): void {
  const given = { pointerId: 1, button: 0, clientX: x, clientY: y, bubbles: true };
  drawing().dispatchEvent(new PointerEvent(type, given));
}

async function value(): Promise<number> {
  await new Promise(requestAnimationFrame);
  return Number((translation().element() as HTMLInputElement).value);
}

/** Screen pixels per millimetre of translation, measured by moving the ball. */
async function pixelsPerMillimetre(): Promise<number> {
  const [before] = points();
  const from = await value();
  translation().element().focus();
  await userEvent.keyboard('{ArrowRight}{ArrowRight}{ArrowRight}{ArrowRight}');
  const [after] = points();
  return ((after?.x ?? NaN) - (before?.x ?? NaN)) / ((await value()) - from);
}

test('the three points stand under one another wherever the ball is', async () => {
  await render(Bench);
  translation().element().focus();
  for (const key of ['{End}', '{PageDown}', '{ArrowLeft}', '{Home}']) {
    await userEvent.keyboard(key);
    await value();
    const [section, path, ratio] = points().map(({ x }) => x);
    expect(path).toBeCloseTo(section ?? NaN, 1);
    expect(ratio).toBeCloseTo(section ?? NaN, 1);
  }
});

test('the keyboard moves the ball: arrows a little, with shift less, page keys more, home and end to the rims', async () => {
  await render(Bench);
  translation().element().focus();
  const steps = [
    ['{ArrowRight}', 5.25],
    ['{Shift>}{ArrowRight}{/Shift}', 5.3],
    ['{PageDown}', 3.3],
    ['{End}', 14],
    ['{Home}', -14],
  ] as const;
  for (const [key, expected] of steps) {
    await userEvent.keyboard(key);
    expect(await value()).toBeCloseTo(expected, 9);
  }
  await expect
    .element(translation())
    .toHaveAttribute(
      'aria-valuetext',
      expect.stringMatching(/^14\.00.mm left, climbed 4\.00.mm, ratio 0\.00$/),
    );
});

test('in the section the ball keeps its place under the pointer', async () => {
  await render(Bench);
  const scale = await pixelsPerMillimetre();
  const start = await value();
  const [ball] = points();
  const { x, y } = ball ?? { x: NaN, y: NaN };
  send('pointerdown', x + 30, y + 40);
  expect(await value()).toBeCloseTo(start, 9);
  send('pointermove', x + 30 + 2 * scale, y + 40);
  expect(await value()).toBeCloseTo(start + 2, 1);
  send('pointerup', x + 30 + 2 * scale, y + 40);
  send('pointermove', x - 100, y);
  expect(await value()).toBeCloseTo(start + 2, 1);
});

test.each(['path', 'ratio'])('on the %s the point comes to the pointer', async (panel) => {
  await render(Bench);
  const scale = await pixelsPerMillimetre();
  const start = await value();
  const point = points()[panel === 'path' ? 1 : 2];
  const { x, y } = point ?? { x: NaN, y: NaN };
  send('pointerdown', x + scale, y + 5);
  expect(await value()).toBeCloseTo(start + 1, 1);
  send('pointermove', x - 3 * scale, y - 60);
  expect(await value()).toBeCloseTo(start - 3, 1);
  send('pointermove', x - 300 * scale, y);
  expect(await value()).toBe(-14);
  send('pointerup', x - 300 * scale, y);
  send('pointermove', x, y);
  expect(await value()).toBe(-14);
});

test('a touch that scrolls the page leaves the ball where it was', async () => {
  await render(Bench);
  const start = await value();
  const { x, y } = points()[1] ?? { x: NaN, y: NaN };
  send('pointerdown', x - 60, y);
  expect(await value()).toBeLessThan(start);
  send('pointercancel', x - 60, y + 8);
  expect(await value()).toBe(start);
  send('pointermove', x - 90, y);
  expect(await value()).toBe(start);
});

test('a curve kept to compare is drawn dashed and named; put away, it is gone', async () => {
  await render(Bench);
  const dashed = () =>
    drawing().querySelectorAll('path[stroke="var(--ink-soft)"][stroke-dasharray="7 5"]').length;
  expect(dashed()).toBe(0);
  await page.getByRole('button', { name: 'Keep this curve to compare' }).click();
  const depth = page.getByRole('slider', { name: 'Depth', exact: true });
  depth.element().focus();
  await userEvent.keyboard('{ArrowLeft}');
  // One in each plot, and one in the legend.
  expect(dashed()).toBe(3);
  const legend = drawing().textContent.replaceAll('\u00a0', ' ');
  expect(legend).toContain('kept: ball 48.0, width 28.0, depth 4.0 mm');
  expect(legend).toContain('ball 48.0, width 28.0, depth 3.9 mm');
  await page.getByRole('button', { name: 'Put the kept curve away' }).click();
  await expect.poll(dashed).toBe(0);
});

test('the areas stand beside what they equal', async () => {
  await render(Bench);
  const text = drawing().textContent.replaceAll('\u00a0', ' ');
  expect(text).toMatch(/area so far 2\.25 mm ?= climb now 2\.25 mm/);
  expect(text).toMatch(/whole area 4\.00 mm ?= depth 4\.00 mm/);
});

test('the table has units in its head and runs from the middle to the rim', async () => {
  await render(Bench);
  await page.getByText('Read the curve as a table').click();
  const cells = [...document.querySelectorAll('td')].map((cell) => cell.textContent);
  await expect.element(page.getByRole('columnheader', { name: 'climb (mm)' })).toBeVisible();
  expect(cells.slice(0, 3)).toEqual(['0.00', '0.00', '0.000']);
  expect(cells.slice(-3)).toEqual(['14.00', '4.00', '0.000']);
});

test('a hollow the ball does not fit cannot be set, and the control says why', async () => {
  await render(Bench);
  const typed = page.getByRole('textbox', { name: 'Depth, typed, in mm' });
  await typed.fill('9');
  await userEvent.keyboard('{Enter}');
  await expect.element(typed).toHaveValue('4.5');
  await expect
    .element(page.getByRole('alert'))
    .toHaveTextContent('Allowed: 0 to 4.5 mm. Set to the nearest.');
  await expect
    .element(page.getByText('Stops here: beyond, the ball would not reach the bottom of the cup.'))
    .toBeVisible();
});

test('another knob keeps the cup', async () => {
  await render(Bench);
  await page.getByRole('radio', { name: 'Mismatch' }).click();
  const mismatch = page.getByRole('textbox', { name: 'Diametral mismatch, typed, in mm' });
  await expect.element(mismatch).toHaveValue('5.0');
  expect(drawing().textContent.replaceAll('\u00a0', ' ')).toContain('whole area 4.00 mm');
});

test('on its own page it takes its setting from the link, and says in one line what it did not take', async () => {
  const { search, pathname } = window.location;
  const given = `${search}${search === '' ? '?' : '&'}ball=abc&depth=2.5&at=-3`;
  window.history.replaceState(null, '', pathname + given);
  await render(Bench, { page: true });
  window.history.replaceState(null, '', pathname + search);
  expect(await value()).toBe(-3);
  await expect
    .element(
      page.getByText(
        'Not taken from the link: ball diameter “abc” (allowed: 30 to 60 mm). Its default stands instead.',
      ),
    )
    .toBeVisible();
  expect(drawing().textContent.replaceAll('\u00a0', ' ')).toContain('depth 2.50 mm');
});

test('on a stage it keeps one control, and letters at least 4.5 hundredths of a 16 : 9 screen', async () => {
  await render(Bench, { stage: true });
  expect(page.getByRole('slider').elements()).toHaveLength(1);
  const screenHeight = (drawing().getBoundingClientRect().width * 9) / 16;
  const sizes = [...drawing().querySelectorAll('text')].map((text) =>
    Number.parseFloat(getComputedStyle(text).fontSize),
  );
  expect(Math.min(...sizes)).toBeGreaterThanOrEqual(0.0449 * screenHeight);
});
