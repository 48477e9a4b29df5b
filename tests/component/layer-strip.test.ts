import { beforeEach, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import Bench from '../../sims/benches/layer-strip/Bench.svelte';
import '../../site/styles/tokens.css';
import '../../site/styles/base.css';
import { drawing, lettering, reading } from './support/bench-drawing.ts';

beforeEach(async () => {
  await page.viewport(1000, 900);
});

const peakMark = (): SVGCircleElement => {
  const found = drawing().querySelector<SVGCircleElement>('circle[r="5"][fill="var(--force)"]');
  if (found === null) throw new Error('no mark of the peak');
  return found;
};

test('picking another material changes the step, the pair and the joint', async () => {
  await render(Bench);
  expect(reading('Step in stiffness')).toBe('165 : 1');
  expect(lettering()).toContain('Titanium alloy, 3.0 mm');
  const peak = reading('Greatest shear');
  await page.getByLabelText('Lower layer').selectOptions('bone cement');
  expect(reading('Step in stiffness')).toBe('3.6 : 1');
  expect(lettering()).toContain('Bone cement, 3.0 mm');
  expect(reading('Greatest shear')).not.toBe(peak);
  expect(reading('Dundurs’ α')).toMatch(/^−0\.5/);
});

test('the mark of the peak goes to the other end when the strip is turned over', async () => {
  await render(Bench);
  const before = Number(peakMark().getAttribute('cx'));
  await page.getByRole('button', { name: 'Turn the strip over' }).click();
  await expect.poll(() => Number(peakMark().getAttribute('cx'))).toBeGreaterThan(before + 200);
  expect(lettering()).toContain('Polyethylene, 4.0 mm');
});

test('sliders answer the keyboard; more length hardly lowers the peak', async () => {
  await render(Bench);
  const length = page.getByRole('slider', { name: 'Length of the strip' });
  length.element().focus();
  const before = reading('Greatest shear');
  await userEvent.keyboard('{End}');
  await expect.element(length).toHaveValue('60');
  expect(reading('Greatest shear')).toBe(before);
  await userEvent.keyboard('{Home}');
  await expect.element(length).toHaveValue('10');
  await expect.poll(() => reading('Greatest shear')).not.toBe(before);
});

test('a preset stands until something is changed', async () => {
  await render(Bench);
  const button = page.getByRole('button', { name: 'Metal on bone' });
  await button.click();
  await expect.element(button).toHaveAttribute('aria-pressed', 'true');
  await expect.element(page.getByText('A metal back that bone has grown onto.')).toBeVisible();
  page.getByRole('slider', { name: 'Press at the rim' }).element().focus();
  await userEvent.keyboard('{ArrowRight}');
  await expect.element(button).toHaveAttribute('aria-pressed', 'false');
});

test('the words follow the picture', async () => {
  await render(Bench);
  const words = document.querySelector('figure .visually-hidden')?.textContent ?? '';
  expect(words).toMatch(/4\.0.mm of polyethylene on 3\.0.mm of titanium alloy/);
  expect(words).toContain('the left end, where the upper layer is pulled');
});

test('a number out of range is answered with a sentence', async () => {
  await render(Bench);
  const film = page.getByRole('textbox', { name: /^Cement between them, typed/ });
  await film.fill('4');
  await userEvent.keyboard('{Enter}');
  await expect.element(film).toHaveValue('1.00');
  await expect
    .element(page.getByRole('alert'))
    .toHaveTextContent('Allowed: 0 to 1 mm. Set to the nearest.');
});

test('no lettering runs out of the picture on a phone', async () => {
  await page.viewport(390, 800);
  await render(Bench);
  const { left, right } = drawing().getBoundingClientRect();
  for (const text of drawing().querySelectorAll('text')) {
    const box = text.getBoundingClientRect();
    expect(box.left, text.textContent).toBeGreaterThanOrEqual(left - 1);
    expect(box.right, text.textContent).toBeLessThanOrEqual(right + 1);
    expect(box.height).toBeGreaterThan(0);
  }
});
