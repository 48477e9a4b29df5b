import { beforeEach, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import Bench from '../../sims/benches/gap-and-heat/Bench.svelte';
import '../../site/styles/tokens.css';
import '../../site/styles/base.css';
import { drawing, lettering, points, reading, send, valueOf } from './support/bench-drawing.ts';

beforeEach(async () => {
  await page.viewport(1000, 900);
});

const slider = (name: string) => page.getByRole('slider', { name, exact: true });
const TIME = 'Time since the cement went in';
/** The sim runs at the pace of the frames, which a busy machine draws seldom. */
const PATIENCE = { timeout: 15_000 };
const degrees = (): number => Number.parseFloat(reading('Peak at the bone'));

test('a looser fit takes more cement and makes the bone hotter', async () => {
  await render(Bench);
  const [cement, peak] = [reading('Cement of the keel'), degrees()];
  slider('Fit error, on every side').element().focus();
  await userEvent.keyboard('{End}');
  expect(Number.parseFloat(reading('Cement of the keel'))).toBeGreaterThan(
    Number.parseFloat(cement),
  );
  expect(degrees()).toBeGreaterThan(peak + 5);
  expect(lettering()).toContain('4.0 mm');
  await userEvent.keyboard('{Home}');
  expect(reading('Above 47 °C')).toBe('never');
  expect(lettering()).not.toContain('dotted');
});

test('the thermometer goes from the keel to a peg', async () => {
  await render(Bench);
  expect(lettering()).toContain('bone at a peg');
  const before = degrees();
  await page.getByRole('radio', { name: 'Round a peg' }).click();
  await expect.poll(degrees).not.toBe(before);
  expect(points(6)).toHaveLength(1);
});

test('the moment is moved with the keyboard and by its line, and the thermometer follows', async () => {
  await render(Bench, { initial: { time: 0 } });
  expect(lettering()).toContain('after 0 s');
  slider(TIME).element().focus();
  await userEvent.keyboard('{ArrowRight}');
  expect(await valueOf(slider(TIME).element())).toBe(30);
  const [from] = points(5.5);
  if (from === undefined) throw new Error('no point');
  const frame = drawing().getBoundingClientRect();
  const y = frame.bottom - 120;
  send('pointerdown', from.x, y);
  send('pointermove', from.x + 60, y);
  send('pointerup', from.x + 60, y);
  await expect.poll(() => valueOf(slider(TIME).element())).toBeGreaterThan(200);
  const [to] = points(5.5);
  expect(Math.abs((to?.x ?? NaN) - from.x - 60)).toBeLessThan(3);
});

test('it sets by itself, and stops when it is told to', async () => {
  await render(Bench, { initial: { time: 0 } });
  await page.getByRole('button', { name: 'Let it set' }).click();
  await expect.poll(() => valueOf(slider(TIME).element()), PATIENCE).toBeGreaterThan(20);
  await page.getByRole('button', { name: 'Pause' }).click();
  const stands = await valueOf(slider(TIME).element());
  await new Promise(requestAnimationFrame);
  expect(await valueOf(slider(TIME).element())).toBe(stands);
});

test('after the half hour it begins anew', async () => {
  await render(Bench, { initial: { time: 1795 } });
  await page.getByRole('button', { name: 'Let it set' }).click();
  await expect.poll(() => valueOf(slider(TIME).element()), PATIENCE).toBe(1800);
  await expect.element(page.getByRole('button', { name: 'Let it set' })).toBeVisible();
  await page.getByRole('button', { name: 'Let it set' }).click();
  await expect.poll(() => valueOf(slider(TIME).element()), PATIENCE).toBeLessThan(600);
  await page.getByRole('button', { name: 'Pause' }).click();
});

test('pegs whose holes would meet get a smaller gap, with a sentence', async () => {
  await render(Bench, { initial: { pegCount: 5, pegDiameter: 8, fitError: 2 } });
  await expect.element(page.getByText(/before their holes meet/)).toBeVisible();
  const error = await valueOf(slider('Fit error, on every side').element());
  expect(error).toBeLessThan(2);
  slider('Pegs').element().focus();
  await userEvent.keyboard('{ArrowLeft}');
  await expect.element(page.getByText(/before their holes meet/)).not.toBeInTheDocument();
});

test('what was measured is laid beside it, with its source', async () => {
  const published = {
    weight: { label: 'put in', value: 5, low: 3, high: 8, source: 'Someone 2004.' },
    peaks: [{ label: 'by camera', value: 64, low: 48, high: 77, source: 'Another 2010.' }],
  };
  await render(Bench, { published });
  await expect
    .element(page.getByText(/by camera: 64\.0 \(48\.0 to 77\.0\).°C\. Another 2010\./))
    .toBeVisible();
  expect(lettering()).toContain('weighed');
});

test('on its own page it takes its setting from the link, and says in one line what it did not take', async () => {
  const { search, pathname } = window.location;
  const given = `${search}${search === '' ? '?' : '&'}gap=9&in=pegs&at=600`;
  window.history.replaceState(null, '', pathname + given);
  await render(Bench, { page: true });
  window.history.replaceState(null, '', pathname + search);
  await expect
    .element(page.getByText(/Not taken from the link: gap planned, all round “9”/))
    .toBeVisible();
  expect(await valueOf(slider(TIME).element())).toBe(600);
  await expect.element(page.getByRole('radio', { name: 'Round a peg' })).toBeChecked();
});
