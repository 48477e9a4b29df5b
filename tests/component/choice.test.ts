import { expect, test, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import Choice from '../../sims/figures/Choice.svelte';

const options = [
  { value: 'depth', text: 'Depth' },
  { value: 'radius', text: 'Radius of curvature' },
] as const;

async function renderChoice() {
  const onchange = vi.fn<(value: string) => void>();
  await render(Choice, { label: 'Set the hollow by', options, value: 'depth', onchange });
  return onchange;
}

test('a choice is a named group of radio buttons with the present value chosen', async () => {
  await renderChoice();
  await expect.element(page.getByRole('group', { name: 'Set the hollow by' })).toBeVisible();
  await expect.element(page.getByRole('radio', { name: 'Depth' })).toBeChecked();
  await expect.element(page.getByRole('radio', { name: 'Radius of curvature' })).not.toBeChecked();
});

test('the other option is reported when it is clicked', async () => {
  const onchange = await renderChoice();
  await page.getByRole('radio', { name: 'Radius of curvature' }).click();
  expect(onchange).toHaveBeenCalledExactlyOnceWith('radius');
});

test('an arrow key moves to the other option', async () => {
  const onchange = await renderChoice();
  await userEvent.tab();
  await expect.element(page.getByRole('radio', { name: 'Depth' })).toHaveFocus();
  await userEvent.keyboard('{ArrowRight}');
  expect(onchange).toHaveBeenCalledExactlyOnceWith('radius');
});
