import { beforeEach, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import Bench from '../../sims/benches/week-by-week/Bench.svelte';
import '../../site/styles/tokens.css';
import '../../site/styles/base.css';
import { drawing, lettering, reading } from './support/bench-drawing.ts';

beforeEach(async () => {
  await page.viewport(1000, 900);
});

const week = () => page.getByRole('slider', { name: 'Week', exact: true });
const weekShown = (): number => Number((week().element() as HTMLInputElement).value);
const pointX = (): number =>
  Number(drawing().querySelector('circle[r="5.5"]')?.getAttribute('cx') ?? NaN);

test('the week is moved by keyboard, and the peg fills as it goes on', async () => {
  await render(Bench);
  week().element().focus();
  await userEvent.keyboard('{Home}');
  await expect.poll(() => reading('Filled with bone')).toBe('0 %');
  const start = pointX();
  await userEvent.keyboard('{End}');
  await expect.poll(() => reading('Filled with bone')).not.toBe('0 %');
  expect(pointX()).toBeGreaterThan(start + 100);
  await expect
    .element(week())
    .toHaveAttribute('aria-valuetext', expect.stringMatching(/^Week 26: the spaces move/));
});

test('weeks go by until they are paused, and from the end they start over', async () => {
  await render(Bench, { initial: { week: 26 } });
  await page.getByRole('button', { name: 'Let the weeks go by' }).click();
  await expect.poll(weekShown).toBeLessThan(20);
  await expect.poll(weekShown).toBeGreaterThan(1);
  await page.getByRole('button', { name: 'Pause' }).click();
  const paused = weekShown();
  await new Promise(requestAnimationFrame);
  await new Promise(requestAnimationFrame);
  expect(weekShown()).toBe(paused);
  await expect.element(page.getByRole('button', { name: 'Let the weeks go by' })).toBeVisible();
});

test('a press at the rim and no small pegs: hardly any bone', async () => {
  await render(Bench);
  await page.getByRole('radio', { name: 'None' }).click();
  page.getByRole('slider', { name: 'Ball, toward the rim' }).element().focus();
  await userEvent.keyboard('{End}');
  // One at most: near the height about which the peg tilts.
  await expect.poll(() => reading('Spaces more than half bone')).toMatch(/^[01] of 12$/);
  expect(Number.parseFloat(reading('Motion in this week'))).toBeGreaterThan(150);
  expect(reading('Bone')).not.toBe('grows');
});

test('rest is drawn as rest', async () => {
  await render(Bench, { initial: { rest: 12 } });
  expect(lettering()).toContain('at rest');
  expect(reading('Motion in this week')).toBe('0.0 µm');
});

test('no lettering runs out of the picture on a phone', async () => {
  await page.viewport(390, 800);
  await render(Bench);
  const { left, right } = drawing().getBoundingClientRect();
  for (const text of drawing().querySelectorAll('text')) {
    const box = text.getBoundingClientRect();
    expect(box.left, text.textContent).toBeGreaterThanOrEqual(left - 1);
    expect(box.right, text.textContent).toBeLessThanOrEqual(right + 1);
  }
});
