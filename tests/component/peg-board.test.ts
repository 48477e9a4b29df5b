import { beforeEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import Bench from '../../sims/benches/peg-board/Bench.svelte';
import '../../site/styles/tokens.css';
import '../../site/styles/base.css';
import { lettering } from './support/bench-drawing.ts';

beforeEach(async () => {
  await page.viewport(1100, 1000);
});

const handle = (which: string): HTMLButtonElement => {
  const found = document.querySelector<HTMLButtonElement>(`[data-handle="${which}"]`);
  if (found === null) throw new Error(`no handle ${which}`);
  return found;
};
const middle = (which: string): { x: number; y: number } => {
  const { x, y, width, height } = handle(which).getBoundingClientRect();
  return { x: x + width / 2, y: y + height / 2 };
};
const typed = (name: string) => page.getByRole('textbox', { name: `${name}, in mm` });
const button = (name: string) => page.getByRole('button', { name, exact: true });
const send = (which: string, type: string, x: number, y: number): void => {
  const given = { pointerId: 1, button: 0, clientX: x, clientY: y, bubbles: true };
  const target = handle(which);
  // A made-up pointer cannot be captured.
  target.setPointerCapture = () => undefined;
  target.dispatchEvent(new PointerEvent(type, given));
};
const message = (): string => document.querySelector('.message')?.textContent ?? '';
const pegs = (): number =>
  document.querySelectorAll('[data-handle]:not([data-handle="load"])').length;

describe('the keyboard', () => {
  test('moves the peg that has the focus, in half millimetres, and finer with shift', async () => {
    await render(Bench);
    handle('0').focus();
    await userEvent.keyboard('{ArrowRight}');
    await expect.element(typed('Peg 1, front')).toHaveValue('0.5');
    await userEvent.keyboard('{Shift>}{ArrowDown}{/Shift}');
    await expect.element(typed('Peg 1, up')).toHaveValue('8.9');
    expect(document.activeElement).toBe(handle('0'));
  });

  test('removes it with Delete, and undoes that with Control and Z', async () => {
    await render(Bench);
    handle('1').focus();
    await userEvent.keyboard('{Delete}');
    await expect.poll(pegs).toBe(2);
    await userEvent.keyboard('{Control>}z{/Control}');
    await expect.poll(pegs).toBe(3);
    await userEvent.keyboard('{Control>}y{/Control}');
    await expect.poll(pegs).toBe(2);
  });

  test('carries the load', async () => {
    await render(Bench);
    const direction = page.getByRole('slider', { name: 'Direction' });
    await expect.element(direction).toHaveValue('30');
    handle('load').focus();
    await userEvent.keyboard('{ArrowUp}{ArrowUp}');
    expect(Number((direction.element() as HTMLInputElement).value)).toBeGreaterThan(32);
  });
});

describe('a pointer', () => {
  test('drags a peg and leaves it where there is room', async () => {
    await render(Bench);
    await expect.poll(pegs).toBe(3);
    const { x, y } = middle('0');
    send('0', 'pointerdown', x, y);
    send('0', 'pointermove', x + 10, y + 20);
    send('0', 'pointermove', x + 500, y);
    send('0', 'pointerup', x + 500, y);
    await expect.poll(message).toContain('Peg 1 would reach the edge of the back.');
    const front = Number((typed('Peg 1, front').element() as HTMLInputElement).value);
    expect(front).toBeGreaterThan(5);
    expect(front).toBeLessThan(12);
    expect(middle('0').x).toBeGreaterThan(x + 20);
    await button('Undo').click();
    await expect.element(typed('Peg 1, front')).toHaveValue('0.0');
  });

  test('that is taken away by a scroll puts it back', async () => {
    await render(Bench);
    await expect.poll(pegs).toBe(3);
    const { x, y } = middle('0');
    send('0', 'pointerdown', x, y);
    send('0', 'pointermove', x + 20, y + 20);
    send('0', 'pointercancel', x + 20, y + 20);
    await expect.element(typed('Peg 1, front')).toHaveValue('0.0');
    await expect.element(button('Undo')).toBeDisabled();
  });

  test('is given up with Escape while it drags', async () => {
    await render(Bench);
    await expect.poll(pegs).toBe(3);
    const { x, y } = middle('0');
    handle('0').focus();
    send('0', 'pointerdown', x, y);
    send('0', 'pointermove', x + 20, y + 20);
    await expect.element(typed('Peg 1, front')).not.toHaveValue('0.0');
    await userEvent.keyboard('{Escape}');
    send('0', 'pointermove', x + 30, y + 20);
    send('0', 'pointerup', x + 30, y + 20);
    await expect.element(typed('Peg 1, front')).toHaveValue('0.0');
    await expect.element(button('Undo')).toBeDisabled();
  });

  test('drags the load, and the drawing follows', async () => {
    await render(Bench);
    await expect.poll(pegs).toBe(3);
    const before = lettering();
    const { x, y } = middle('load');
    send('load', 'pointerdown', x, y);
    send('load', 'pointermove', x - 150, y + 60);
    send('load', 'pointerup', x - 150, y + 60);
    await expect.poll(lettering).not.toBe(before);
    expect(lettering()).toMatch(/Section along the load, \d+°, backward/);
  });
});

describe('the rows', () => {
  test.each([
    ['Peg 1, thick', '0', '3.0', 'Allowed: 3 to 9 mm. Set to the nearest.'],
    ['Peg 1, deep', '0', '4.0', 'Allowed: 4 to 16 mm. Set to the nearest.'],
    ['Peg 2, up', 'high', '-7.0', '“high” is not a number.'],
    ['Peg 2, front', '-4', '', 'Peg 2 would reach peg 3.'],
  ])('%s of %s is set right with a sentence', async (name, asked, stands, says) => {
    await render(Bench);
    await typed(name).fill(asked);
    await userEvent.keyboard('{Enter}');
    await expect.poll(message).toContain(says);
    if (stands !== '') await expect.element(typed(name)).toHaveValue(stands);
  });

  test('say what each pulls and where it comes out; another kind holds otherwise', async () => {
    await render(Bench);
    const row = () =>
      document.querySelectorAll('li')[2]?.textContent.replaceAll('\u00a0', ' ') ?? '';
    expect(row()).toMatch(/\d+ N, \d\.\d ×\s*out at 298 N/);
    await page.getByRole('combobox', { name: 'Peg 3, hold' }).selectOptions('textured cemented');
    await expect.poll(row).toMatch(/out at 628 N/);
  });

  test('add a peg and a keel, and take them away', async () => {
    await render(Bench);
    await button('Add a peg').click();
    await expect.poll(pegs).toBe(4);
    await button('Add a keel').click();
    await expect.poll(pegs).toBe(5);
    await button('Remove keel').click();
    await button('Remove peg 4').click();
    await expect.poll(pegs).toBe(3);
  });
});

test('presets, and the distance from front to back', async () => {
  await render(Bench);
  await button('Triangle, far').click();
  const spread = page.getByRole('slider', { name: 'Pegs apart, front to back' });
  await expect.element(spread).toHaveValue('16');
  spread.element().focus();
  await userEvent.keyboard('{ArrowLeft}{ArrowLeft}');
  await expect.element(typed('Peg 2, front')).toHaveValue('7.0');
  await button('Two in line').click();
  await expect.element(spread).not.toBeInTheDocument();
  await button('Keel').click();
  await expect
    .element(page.getByRole('textbox', { name: 'Keel, long, in mm' }))
    .toHaveValue('18.0');
});

test('a socket without rest is said in words and drawn, with no numbers', async () => {
  await render(Bench);
  await button('Nothing').click();
  await expect.poll(lettering).toContain('SLIDES OFF');
  expect(message()).toBe('Slides off: nothing holds it along the bone.');
  expect(lettering()).toContain('slid off: no place of rest');
  expect(lettering()).toContain('no rest: overturns or slides off');
  await page.getByRole('radio', { name: 'press and grip' }).click();
  await expect.poll(lettering).not.toContain('SLIDES OFF');
  const shear = page.getByRole('slider', { name: 'Shear, outward' });
  shear.element().focus();
  await userEvent.keyboard('{End}');
  await expect.poll(lettering).toContain('OVERTURNED');
  expect(lettering()).toContain('drawn tipped: no place of rest');
  const words = document.querySelector('figure .visually-hidden')?.textContent ?? '';
  expect(words).toContain('Overturned: nothing balances this load.');
  expect(document.querySelector('dl dd')?.textContent).toBe('–');
});

test('another shape of the back, and a bone or a foam under it', async () => {
  await render(Bench);
  const words = (): string => document.querySelector('figure .visually-hidden')?.textContent ?? '';
  await page.getByRole('radio', { name: 'round' }).click();
  await expect.element(page.getByRole('slider', { name: 'Radius of the back' })).toHaveValue('36');
  await expect.poll(words).toContain('round with a radius of 36.0');
  const lift = (): number =>
    Number.parseFloat(document.querySelector('dl dd')?.textContent ?? 'none');
  const before = lift();
  await page.getByRole('combobox', { name: 'Bone or foam' }).selectOptions('foam grade 10');
  await expect
    .element(page.getByRole('slider', { name: 'Stiffness of the bone' }))
    .toHaveValue('58');
  await expect.element(page.getByText(/58\sMPa \(ASTM F1839, from memory\)\.$/)).toBeVisible();
  await expect.poll(lift).toBeGreaterThan(2 * before);
  await button('Undo').click();
  await expect
    .element(page.getByText(/Seliktar et al\. 2003, read as an abstract\)\.$/))
    .toBeVisible();
});

test('on its own page it takes its setting from the link, and says in one line what it did not take', async () => {
  const { search, pathname } = window.location;
  const given = `${search}${search === '' ? '?' : '&'}pegs=s_0_0_6_12*f_0_9_4_6&press=99999`;
  window.history.replaceState(null, '', pathname + given);
  await render(Bench, { page: true });
  window.history.replaceState(null, '', pathname + search);
  await expect
    .element(
      page.getByText(
        'Not taken from the link: press “99999” (allowed: 50 to 1500 N). Its default stands instead.',
      ),
    )
    .toBeVisible();
  await expect.poll(pegs).toBe(2);
  await expect.element(typed('Peg 1, deep')).toHaveValue('12.0');
});
