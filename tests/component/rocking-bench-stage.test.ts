import { beforeEach, expect, test, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { oneCells, pairCells } from '../../sims/benches/rocking-bench/acts.ts';
import { measuredAct } from '../../sims/benches/rocking-bench/measured-act.ts';
import OnStage from '../../sims/benches/rocking-bench/OnStage.svelte';
import Simple from '../../sims/benches/rocking-bench/Simple.svelte';
import { outcomeOf, underWay } from '../../sims/benches/rocking-bench/simple-words.ts';
import { defaultSetting } from '../../sims/benches/rocking-bench/settings.ts';
import '../../site/styles/tokens.css';
import '../../site/styles/base.css';

const LONG = { timeout: 20_000 };
const RESET = 'test:reset';
const said = () => page.getByRole('status');
const radio = (name: string) => page.getByRole('radio', { name });

beforeEach(async () => {
  await page.viewport(1200, 820);
});

test('plain: the middle lifts nothing, an edge a tiny bit, a weak hold more', async () => {
  await render(Simple, { resetOn: RESET });
  await expect.element(said()).toHaveTextContent(outcomeOf([0]));
  await radio('On one edge').click();
  await expect.element(said(), LONG).toHaveTextContent(outcomeOf([0.15]));
  await radio('Weak hold').click();
  await expect.element(said(), LONG).toHaveTextContent(outcomeOf([0.21]));
  await radio('In the middle').click();
  await expect.element(said(), LONG).toHaveTextContent(outcomeOf([0]));
});

test('plain: rocked, a firm hold stays and a weak one wears', async () => {
  await render(Simple, { resetOn: RESET });
  await radio('Again and again').click();
  await expect.element(said()).toHaveTextContent(underWay);
  await expect.element(said(), LONG).toHaveTextContent(outcomeOf([0.15, 0.15]));
  await radio('Weak hold').click();
  await expect.element(said()).toHaveTextContent(underWay);
  await expect.element(said(), LONG).toHaveTextContent(outcomeOf([0.2, 0.5]));
});

test('plain: it goes back to how it began when the page asks, rocking or not', async () => {
  await render(Simple, { resetOn: RESET });
  await radio('Weak hold').click();
  await radio('Again and again').click();
  await expect.element(said()).toHaveTextContent(underWay);
  window.dispatchEvent(new Event(RESET));
  await expect.element(said()).toHaveTextContent(outcomeOf([0]));
  await expect.element(radio('Firm hold')).toBeChecked();
  await expect.element(radio('In the middle')).toBeChecked();
});

test.each([
  [1200, 820],
  [390, 844],
])('plain: every button is large enough for a thumb at %i × %i', async (width, height) => {
  await page.viewport(width, height);
  await render(Simple);
  const targets = [...document.querySelectorAll('label')];
  expect(targets).toHaveLength(5);
  for (const target of targets) {
    const box = target.getBoundingClientRect();
    expect(Math.min(box.width, box.height), target.textContent).toBeGreaterThanOrEqual(56);
  }
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
});

const onePeg = { ...defaultSetting.a, bed: 'rough' } as const;
const twoPegs = { ...defaultSetting.b, bed: 'rough' } as const;
const rows = (): readonly HTMLElement[] => [...document.querySelectorAll<HTMLElement>('.build')];
const cells = (row: Element | null | undefined): readonly string[] =>
  [...(row?.querySelectorAll('td') ?? [])].map((cell) => cell.textContent);
const now = () => cells(document.querySelector('.now'));
const drawn = (): string => document.querySelector('figure svg')?.textContent ?? '';

test('on stage each press carries the ball on, and the row waits for it', async () => {
  const acts = [
    measuredAct('beyond', { place: 60 }),
    measuredAct('rim', { place: 100 }),
    measuredAct('one peg', { place: 100, a: onePeg, b: onePeg }),
  ];
  await render(OnStage, { acts, times: 50 });
  expect(rows().map((row) => row.querySelector('th')?.textContent)).toEqual(
    acts.map(({ text }) => text),
  );
  expect(now()[0]).toBe('0\u00a0µm');
  for (const [i, { measured }] of acts.entries()) {
    rows()[i]?.setAttribute('data-shown', '');
    await vi.waitFor(() => expect(cells(rows()[i])).toEqual(['…', '…']));
    await vi.waitFor(() => expect(cells(rows()[i])).toEqual(oneCells(measured.a)), LONG);
    expect(now()).toEqual(oneCells(measured.a));
  }
  expect(drawn()).toContain(`gap ${oneCells(acts[2]?.measured.a ?? expect.fail())[0]}`);
  expect(drawn()).not.toContain('middle quarter');
  rows()[2]?.removeAttribute('data-shown');
  await vi.waitFor(() => expect(drawn()).toContain('it tips over'), LONG);
  expect(drawn()).toContain('middle quarter');
});

test('on stage two are rocked, their gaps plotted press by press; a press back ends it', async () => {
  const change = { place: 100, press: 500, cycles: 3, a: onePeg, b: twoPegs };
  const acts = [measuredAct('pressed', change), measuredAct('rocked', change, true)];
  await render(OnStage, { acts, pair: true, names: { a: 'one', b: 'two' }, times: 5 });
  const points = (): number => document.querySelectorAll('figure svg circle[r="6"]').length;
  rows()[0]?.setAttribute('data-shown', '');
  await vi.waitFor(() => expect(points()).toBe(2), LONG);
  expect(now()).toEqual(pairCells(acts[0]?.measured ?? expect.fail()));
  rows()[1]?.setAttribute('data-shown', '');
  await vi.waitFor(() => expect(cells(rows()[1])).toEqual(['…', '…']));
  await vi.waitFor(() => expect(points()).toBeGreaterThan(2), LONG);
  await vi.waitFor(() => expect(cells(rows()[1])[0]).not.toBe('…'), LONG);
  expect(points()).toBe(2 * 2 * change.cycles);
  expect(document.querySelector('figcaption')?.textContent).toMatch(/A, rocked 3 times/);
  await page.getByRole('button', { name: 'Rock them' }).click();
  await vi.waitFor(() => expect(points()).toBeLessThan(12));
  rows()[1]?.removeAttribute('data-shown');
  await vi.waitFor(() => expect(points()).toBe(2), LONG);
});

test('on stage the knobs answer by hand', async () => {
  const acts = [measuredAct('middle', {})];
  const expected = measuredAct('by hand', { place: 60 }).measured.a;
  await render(OnStage, { acts, times: 50 });
  await vi.waitFor(() => expect(now()[0]).toBe('0\u00a0µm'));
  const place = page.getByRole('slider', { name: 'Toward the rim' });
  place.element().focus();
  for (let i = 0; i < 12; i += 1) await userEvent.keyboard('{ArrowRight}');
  await expect.element(place).toHaveValue('60');
  await vi.waitFor(() => expect(now()).toEqual(oneCells(expected)), LONG);
});
