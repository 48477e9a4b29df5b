import { beforeEach, expect, test, vi } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import OnStage from '../../sims/benches/peg-board/OnStage.svelte';
import Simple from '../../sims/benches/peg-board/Simple.svelte';
import { boardAct, cellsOf } from '../../sims/benches/peg-board/acts.ts';
import { presets } from '../../sims/benches/peg-board/presets.ts';
import { outcomeOf, pressedAt, waiting } from '../../sims/benches/peg-board/simple-words.ts';
import '../../site/styles/tokens.css';
import '../../site/styles/base.css';

const RESET = 'test:reset';
const words = () => page.getByRole('status');
const press = (name: string) => page.getByRole('button', { name }).click();

beforeEach(async () => {
  await page.viewport(1200, 820);
});

test('an edge is pressed, another hold is tried, and the words are those of the board', async () => {
  await render(Simple, { resetOn: RESET });
  await expect.element(words()).toHaveTextContent(waiting);
  await press('Press the front');
  await expect.element(words()).toHaveTextContent(outcomeOf('front', pressedAt('one', 'front')));
  await page.getByRole('radio', { name: 'Pegs far apart' }).click();
  await expect.element(words()).toHaveTextContent(outcomeOf('front', pressedAt('apart', 'front')));
  await press('Press the top');
  await page.getByRole('radio', { name: 'A fin' }).click();
  await expect.element(words()).toHaveTextContent(outcomeOf('top', pressedAt('fin', 'top')));
});

test('the edge across rises, and more with one peg than with pegs far apart', async () => {
  await render(Simple);
  const risen = () => {
    const [, x, y, top] =
      /^M([\d.]+) ([\d.]+)V([\d.]+)/.exec(
        document.querySelector('path[fill="var(--motion)"]')?.getAttribute('d') ?? '',
      ) ?? [];
    return x === undefined ? 0 : Number(y) - Number(top);
  };
  expect(risen()).toBe(0);
  await press('Press the front');
  await expect.poll(risen).toBeGreaterThan(25);
  const one = risen();
  await page.getByRole('radio', { name: 'Pegs far apart' }).click();
  await expect.poll(risen).toBeLessThan(one / 2);
  await expect.poll(risen).toBeGreaterThan(3);
});

test('it goes back to how it began when the page asks', async () => {
  await render(Simple, { resetOn: RESET });
  await page.getByRole('radio', { name: 'A fin' }).click();
  await press('Press the top');
  window.dispatchEvent(new Event(RESET));
  await expect.element(words()).toHaveTextContent(waiting);
  await expect.element(page.getByRole('radio', { name: 'One peg' })).toBeChecked();
  await expect.element(page.getByRole('button', { pressed: true })).not.toBeInTheDocument();
});

test('every button is large enough for a thumb', async () => {
  await render(Simple);
  const targets = [...document.querySelectorAll('button, label')];
  expect(targets.length).toBe(5);
  for (const target of targets) {
    const { width, height } = target.getBoundingClientRect();
    expect(Math.min(width, height), target.textContent).toBeGreaterThanOrEqual(44);
  }
});

const acts = [
  boardAct('two in line', presets[1]?.design ?? { pegs: [], keel: null }),
  boardAct('keel', presets[4]?.design ?? { pegs: [], keel: null }),
] as const;
const shown = () => [...document.querySelectorAll('.now td')].map(({ textContent }) => textContent);

test('on stage the rose waits for the first act, and each act brings its own back', async () => {
  await render(OnStage, { acts });
  const rows = [...document.querySelectorAll<HTMLElement>('.build')];
  expect(rows).toHaveLength(2);
  await vi.waitFor(() => expect(shown()).toEqual(['?', '?', '?']));
  const figure = document.querySelector('.picture svg');
  expect(figure?.textContent).not.toContain('µm');
  for (const [i, { ends }] of acts.entries()) {
    rows[i]?.setAttribute('data-shown', '');
    await vi.waitFor(() => expect(shown()).toEqual(cellsOf(ends)));
    expect(figure?.textContent).toContain(cellsOf(ends)[0]);
  }
  rows[1]?.removeAttribute('data-shown');
  await vi.waitFor(() => expect(shown()).toEqual(cellsOf(acts[0].ends)));
  rows[0]?.removeAttribute('data-shown');
  await vi.waitFor(() => expect(shown()).toEqual(['?', '?', '?']));
});

test('by hand the load is carried round, and a harder shove lifts more', async () => {
  await render(OnStage, { acts });
  await vi.waitFor(() => expect(shown()).toEqual(['?', '?', '?']));
  const lift = () =>
    Number.parseFloat(
      document.querySelector('.picture svg')?.textContent.match(/([\d.]+)\s*µm/)?.[1] ?? 'NaN',
    );
  await page.getByRole('slider', { name: 'Load at' }).fill('90');
  await expect.poll(lift).toBe(Number(cellsOf(acts[0].ends)[1]));
  await page.getByRole('slider', { name: 'Shove' }).fill('400');
  await expect.poll(lift).toBeGreaterThan(Number(cellsOf(acts[0].ends)[1]) + 20);
});
