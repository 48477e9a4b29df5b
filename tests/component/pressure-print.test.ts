import { beforeEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import Bench from '../../sims/benches/pressure-print/Bench.svelte';
import OnStage from '../../sims/benches/pressure-print/OnStage.svelte';
import Simple from '../../sims/benches/pressure-print/Simple.svelte';
import '../../site/styles/tokens.css';
import '../../site/styles/base.css';
import {
  drawing,
  lettering,
  pixelsPerUnit,
  points as pointsOf,
  send,
  valueOf,
} from './support/bench-drawing.ts';

const translation = () => page.getByRole('slider', { name: 'Translation of the ball' });
const typed = (name: string) => page.getByRole('textbox', { name: new RegExp(`^${name}, typed`) });

beforeEach(async () => {
  await page.viewport(1000, 900);
});

/** The ball's centre on the face and in the detail, then its place on the three curves. */
const points = () => pointsOf(5.5);
const value = (): Promise<number> => valueOf(translation().element());
const pixelsPerMillimetre = (place: number): Promise<number> =>
  pixelsPerUnit(
    translation().element(),
    () => userEvent.keyboard('{ArrowRight}{ArrowRight}'),
    () => points()[place]?.x,
  );

function reading(name: string): string {
  const cell = [...document.querySelectorAll('dl > div')].find(({ textContent }) =>
    textContent.includes(name),
  );
  return (cell?.querySelector('dd')?.textContent ?? '').replaceAll('\u00a0', ' ');
}

test('the keyboard slides the ball: arrows a quarter, with shift a step, end to the rim', async () => {
  await render(Bench);
  translation().element().focus();
  for (const [key, expected] of [
    ['{ArrowRight}', 1.25],
    ['{Shift>}{ArrowRight}{/Shift}', 1.3],
    ['{Home}', 0],
    ['{End}', 14],
  ] as const) {
    await userEvent.keyboard(key);
    expect(await value()).toBeCloseTo(expected, 9);
  }
});

test('near the middle the load lies on the face, near the rim on its edge, and the words say so', async () => {
  await render(Bench);
  expect(reading('Near the rim')).toBe('0 %');
  translation().element().focus();
  await userEvent.keyboard('{PageUp}');
  expect(await value()).toBe(3);
  await expect.poll(() => Number.parseFloat(reading('Near the rim'))).toBeGreaterThan(80);
  await expect
    .element(page.getByText(/^The edge of the rim carries the ball\. .* gives way at its edge\.$/))
    .toBeVisible();
});

describe('a pointer', () => {
  test('on the face keeps its place on the ball', async () => {
    await render(Bench);
    const scale = await pixelsPerMillimetre(0);
    const start = await value();
    const { x, y } = points()[0] ?? { x: NaN, y: NaN };
    send('pointerdown', x + 20, y + 30);
    expect(await value()).toBeCloseTo(start, 2);
    send('pointermove', x + 20 + 2 * scale, y + 30);
    expect(await value()).toBeCloseTo(start + 2, 1);
    send('pointermove', x - 100 * scale, y);
    expect(await value()).toBe(0);
    send('pointerup', x, y);
    send('pointermove', x + scale, y);
    expect(await value()).toBe(0);
  });

  test.each([2, 3, 4])('on curve %i brings the ball to it', async (place) => {
    await render(Bench);
    const scale = await pixelsPerMillimetre(place);
    const start = await value();
    const { x, y } = points()[place] ?? { x: NaN, y: NaN };
    send('pointerdown', x + 3 * scale, y);
    expect(await value()).toBeCloseTo(start + 3, 1);
    send('pointerup', x + 3 * scale, y);
  });

  test('that turns out to scroll the page puts the ball back', async () => {
    await render(Bench);
    const { x, y } = points()[2] ?? { x: NaN, y: NaN };
    send('pointerdown', x + 40, y);
    expect(await value()).toBeGreaterThan(1);
    send('pointercancel', x + 40, y + 8);
    expect(await value()).toBe(1);
  });
});

test('the print grows and its peak falls as the fit becomes closer', async () => {
  await render(Bench, { initial: { translation: 0 } });
  const area = (): number => Number.parseFloat(reading('Print'));
  const peak = (): number => Number.parseFloat(reading('Peak pressure'));
  const before = { area: area(), peak: peak() };
  await typed('Radial mismatch').fill('1');
  await userEvent.keyboard('{Enter}');
  await expect.poll(area).toBeGreaterThan(before.area);
  expect(peak()).toBeLessThan(before.peak);
});

test.each([
  ['Thickness of the plastic', '0', '2.0', 'Allowed: 2 to 10 mm'],
  ['Radial mismatch', '-3', '0.0', 'Allowed: 0 to 10 mm'],
  ['Translation of the ball', '99', '14.00', 'Allowed: 0 to 14 mm'],
])(
  '%s of %s cannot be set: the nearest stands, and a sentence says why',
  async (name, asked, stands, says) => {
    await render(Bench);
    await typed(name).fill(asked);
    await userEvent.keyboard('{Enter}');
    await expect.element(typed(name)).toHaveValue(stands);
    await expect.element(page.getByRole('alert')).toHaveTextContent(`${says}. Set to the nearest.`);
  },
);

test('a load that would go through the plastic is set to the greatest that does not, with a sentence', async () => {
  await render(Bench, {
    initial: {
      ...{ thickness: 2, modulus: 200, poisson: 0.3, mismatch: 0, ballDiameter: 30 },
      ...{ held: 'depth', depth: 7.5, translation: 12.99, load: 500 },
    },
  });
  await typed('Load, pressing in').fill('2000');
  await userEvent.keyboard('{Enter}');
  await expect
    .element(page.getByText(/^Under more than .* through this plastic: the load is set to that\.$/))
    .toBeVisible();
  await expect.element(typed('Load, pressing in')).not.toHaveValue('2000');
});

test('while the pair changes the curves are those of a moment ago, dimmed, and then follow', async () => {
  await render(Bench);
  const dimmed = () => drawing().querySelectorAll('g[opacity="0.45"]').length;
  const slider = page.getByRole('slider', { name: 'Radial mismatch' });
  slider.element().focus();
  await userEvent.keyboard('{ArrowRight}');
  await expect.poll(dimmed).toBe(0);
  const curve = (): string | null =>
    drawing().querySelector('g[opacity="1"] path[stroke="var(--force)"]')?.getAttribute('d') ??
    null;
  const before = curve();
  const input = slider.element() as HTMLInputElement;
  input.value = '8';
  input.dispatchEvent(new Event('input', { bubbles: true }));
  await new Promise(requestAnimationFrame);
  expect(dimmed()).toBe(3);
  await expect.poll(dimmed).toBe(0);
  expect(curve()).not.toBe(before);
});

test('the table runs from the middle to the rim', async () => {
  await render(Bench);
  await page.getByText('Read the curves as a table').click();
  await expect
    .element(page.getByRole('columnheader', { name: 'peak pressure (MPa)' }))
    .toBeVisible();
  const cells = [...document.querySelectorAll('tbody tr')].map((row) =>
    row.firstElementChild?.textContent.trim(),
  );
  expect([cells[0], cells.at(-1)]).toEqual(['0.0', '14.0']);
});

test('on its own page it takes its setting from the link, and says in one line what it did not take', async () => {
  const { search, pathname } = window.location;
  const given = `${search}${search === '' ? '?' : '&'}thickness=0&at=2.5`;
  window.history.replaceState(null, '', pathname + given);
  await render(Bench, { page: true });
  window.history.replaceState(null, '', pathname + search);
  await expect
    .element(
      page.getByText(
        'Not taken from the link: thickness “0” (allowed: 2 to 10 mm). Its default stands instead.',
      ),
    )
    .toBeVisible();
  expect(await value()).toBe(2.5);
  expect(lettering()).toContain('peak');
});

test('on the stage an act comes at each press; on the edge of the rim no stress is told', async () => {
  const acts = [
    { text: 'loose', change: { mismatch: 6, translation: 2 } },
    { text: 'close', change: { mismatch: 1, translation: 2 } },
  ];
  await render(OnStage, { acts });
  const now = (): string => document.querySelector('tr.now')?.textContent ?? '';
  const rows = [...document.querySelectorAll<HTMLElement>('tr.build')];
  rows[0]?.setAttribute('data-shown', '');
  await expect.poll(now).toMatch(/MPa/);
  rows[1]?.setAttribute('data-shown', '');
  await expect.poll(now).toMatch(/edge/);
  expect(now()).not.toMatch(/MPa/);
});

test('the plain bench speaks in words, and goes back to its beginning when asked to', async () => {
  await render(Simple, { resetOn: 'begin-anew' });
  const said = (): string => document.querySelector('.simple [role="status"]')?.textContent ?? '';
  const first = said();
  await page.getByRole('radio', { name: 'Close fit' }).click();
  await expect.poll(said).toContain('a big spot');
  await page.getByRole('button', { name: 'Slide it out' }).click();
  await expect.poll(said).toContain('on the edge of the cup');
  await page.getByRole('button', { name: 'Slide it back' }).click();
  await expect.poll(said).toContain('in the middle');
  window.dispatchEvent(new Event('begin-anew'));
  await expect.poll(said).toBe(first);
  expect(document.querySelector('svg')?.textContent).not.toMatch(/\d/);
});
