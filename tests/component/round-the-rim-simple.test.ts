import { beforeEach, expect, test, vi } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import OnStage from '../../sims/benches/round-the-rim/OnStage.svelte';
import Simple from '../../sims/benches/round-the-rim/Simple.svelte';
import { rimAct } from '../../sims/benches/round-the-rim/acts.ts';
import { outcomeOf, waiting } from '../../sims/benches/round-the-rim/simple-words.ts';
import '../../site/styles/tokens.css';
import '../../site/styles/base.css';

const RESET = 'test:reset';
const words = () => page.getByRole('status');

beforeEach(async () => {
  await page.viewport(1200, 820);
});

test('a worn edge lets the ball slip that way, and a whole one holds it', async () => {
  await render(Simple, { resetOn: RESET });
  await expect.element(words()).toHaveTextContent(waiting('gentle'));
  await page.getByRole('button', { name: 'Push the ball: Front' }).click();
  await expect.element(words()).toHaveTextContent(outcomeOf('front', 'nowhere', true));
  await page.getByRole('radio', { name: 'Worn front' }).click();
  await expect.element(words()).toHaveTextContent(waiting('gentle'));
  await page.getByRole('button', { name: 'Push the ball: Front' }).click();
  await expect.element(words()).toHaveTextContent(outcomeOf('front', 'front', false));
  await page.getByRole('button', { name: 'Push the ball: Back' }).click();
  await expect.element(words()).toHaveTextContent(outcomeOf('back', 'front', true));
});

test('it goes back to how it began when the page asks', async () => {
  await render(Simple, { resetOn: RESET });
  await page.getByRole('radio', { name: 'Worn top' }).click();
  await page.getByRole('radio', { name: 'Strong push' }).click();
  await page.getByRole('button', { name: 'Push the ball: Up' }).click();
  window.dispatchEvent(new Event(RESET));
  await expect.element(words()).toHaveTextContent(waiting('gentle'));
  await expect.element(page.getByRole('radio', { name: 'Whole' })).toBeChecked();
  await expect.element(page.getByRole('radio', { name: 'Gentle push' })).toBeChecked();
});

test('every button is large enough for a thumb', async () => {
  await render(Simple);
  const targets = [...document.querySelectorAll('button, label')];
  expect(targets.length).toBe(10);
  for (const target of targets) {
    const { width, height } = target.getBoundingClientRect();
    expect(Math.min(width, height), target.textContent).toBeGreaterThanOrEqual(44);
  }
});

test('on stage the rose waits for the first act, and each act brings its own face', async () => {
  const acts = [rimAct('whole bone', 'bone'), rimAct('front worn', 'worn')] as const;
  await render(OnStage, { acts });
  const shown = () => document.querySelector('.now td')?.textContent;
  const rows = [...document.querySelectorAll<HTMLElement>('.build')];
  expect(rows).toHaveLength(2);
  await vi.waitFor(() => expect(shown()).toBe('?'));
  rows[0]?.setAttribute('data-shown', '');
  await vi.waitFor(() => expect(shown()).toBe(acts[0].forward.toFixed(2)));
  rows[1]?.setAttribute('data-shown', '');
  await vi.waitFor(() => expect(shown()).toBe(acts[1].forward.toFixed(2)));
  rows[1]?.removeAttribute('data-shown');
  await vi.waitFor(() => expect(shown()).toBe(acts[0].forward.toFixed(2)));
  rows[0]?.removeAttribute('data-shown');
  await vi.waitFor(() => expect(shown()).toBe('?'));
});
