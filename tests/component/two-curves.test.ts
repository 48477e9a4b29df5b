import { beforeEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import Bench from '../../sims/benches/two-curves/Bench.svelte';
import OnStage from '../../sims/benches/two-curves/OnStage.svelte';
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

const mismatch = () => page.getByRole('slider', { name: 'Radial mismatch, R − r' });
const typed = (name: string) => page.getByRole('textbox', { name: new RegExp(`^${name}, typed`) });

beforeEach(async () => {
  await page.viewport(1000, 900);
});

const points = () => pointsOf(5.5);
const value = (): Promise<number> => valueOf(mismatch().element());
const pixelsPerMillimetre = (): Promise<number> =>
  pixelsPerUnit(
    mismatch().element(),
    () => userEvent.keyboard('{PageUp}'),
    () => points()[0]?.x,
  );

test('four panels share one line of the mismatch, which the keyboard moves', async () => {
  await render(Bench);
  mismatch().element().focus();
  for (const [key, expected] of [
    ['{ArrowRight}', 3.1],
    ['{ArrowLeft}{ArrowLeft}', 2.9],
    ['{End}', 10],
    ['{Home}', 0],
  ] as const) {
    await userEvent.keyboard(key);
    expect(await value()).toBeCloseTo(expected, 9);
    const across = points().map(({ x }) => x);
    expect(across).toHaveLength(4);
    for (const x of across) expect(x).toBeCloseTo(across[0] ?? NaN, 1);
  }
});

test('never says one mismatch without the other', async () => {
  await render(Bench);
  expect(lettering()).toContain('R − r = 3.0 mm');
  expect(lettering()).toContain('2R − 2r = 6.0 mm');
  await expect
    .element(mismatch())
    .toHaveAttribute(
      'aria-valuetext',
      expect.stringMatching(/^radial 3\.0.mm, diametral 6\.0.mm; play 1\.6/),
    );
  const flags = [...drawing().querySelectorAll('text[fill="var(--slip)"]')].map(
    ({ textContent }) => textContent,
  );
  expect(flags).toEqual(['3.0', '6.0']);
});

describe('a pointer on the panels', () => {
  test('brings the line to it and takes it along', async () => {
    await render(Bench);
    const scale = await pixelsPerMillimetre();
    const start = await value();
    const { x, y } = points()[1] ?? { x: NaN, y: NaN };
    send('pointerdown', x + scale, y);
    expect(await value()).toBeCloseTo(start + 1, 1);
    send('pointermove', x - 2 * scale, y + 200);
    expect(await value()).toBeCloseTo(start - 2, 1);
    send('pointermove', x + 100 * scale, y);
    expect(await value()).toBe(10);
    send('pointerup', x + 100 * scale, y);
    send('pointermove', x, y);
    expect(await value()).toBe(10);
  });

  test('that turns out to scroll the page puts it back', async () => {
    await render(Bench);
    const { x, y } = points()[3] ?? { x: NaN, y: NaN };
    send('pointerdown', x + 60, y);
    expect(await value()).toBeGreaterThan(3);
    send('pointercancel', x + 60, y + 8);
    expect(await value()).toBe(3);
  });

  test('moves nothing beside them', async () => {
    await render(Bench);
    const { left, top, height } = drawing().getBoundingClientRect();
    send('pointerdown', left + 80, top + height / 2);
    send('pointermove', left + 160, top + height / 2);
    expect(await value()).toBe(3);
  });
});

test('another measure is held without a change of the pair, and then costs another thing', async () => {
  await render(Bench);
  const ratio = (): string =>
    [...document.querySelectorAll('dl > div')]
      .find((cell) => cell.textContent.includes('Peak stability ratio'))
      ?.querySelector('dd')?.textContent ?? '';
  const before = ratio();
  await page.getByRole('radio', { name: 'Arc', exact: true }).click();
  expect(ratio()).toBe(before);
  expect(lettering()).toMatch(/arc 62\.5°, held/);
  mismatch().element().focus();
  await userEvent.keyboard('{End}');
  expect(await value()).toBe(10);
  expect(ratio()).toBe(before);
  await page.getByRole('radio', { name: 'Width', exact: true }).click();
  mismatch().element().focus();
  await userEvent.keyboard('{Home}');
  await expect.poll(ratio).not.toBe(before);
});

test('kept curves are drawn dashed and named; put away, they are gone', async () => {
  await render(Bench);
  await page.getByRole('button', { name: 'Keep these curves to compare' }).click();
  await page.getByRole('radio', { name: 'Arc', exact: true }).click();
  expect(lettering()).toContain('kept: r 24.0, m 3.0 mm, width 28.0 mm');
  await page.getByRole('button', { name: 'Put the kept curves away' }).click();
  await expect.poll(lettering).not.toContain('kept:');
});

test.each([
  ['Thickness of the plastic', '0', '2.0', 'Allowed: 2 to 10 mm'],
  ['Radial mismatch, R − r', '-4', '0.0', 'Allowed: 0 to 10 mm'],
  ['Poisson’s ratio', '0.5', '0.49', 'Allowed: 0.3 to 0.49'],
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

test('a cup that would go round too much of its ball stops with its reason', async () => {
  await render(Bench);
  await typed('Ball diameter').fill('40');
  await userEvent.keyboard('{Enter}');
  const width = page.getByRole('slider', { name: 'Width', exact: true });
  width.element().focus();
  await userEvent.keyboard('{End}');
  await expect
    .element(
      page.getByText(
        /^Stops here\. Beyond, it would take more than 120° of the curve of a .* ball\.$/,
      ),
    )
    .toBeVisible();
});

test('the table has both mismatches in its head', async () => {
  await render(Bench);
  await page.getByText('Read the curves as a table').click();
  for (const name of [
    'radial mismatch (mm)',
    'diametral mismatch (mm)',
    'play before the rim (mm)',
  ]) {
    await expect.element(page.getByRole('columnheader', { name })).toBeVisible();
  }
});

test('on its own page it takes its setting from the link, and says in one line what it did not take', async () => {
  const { search, pathname } = window.location;
  const given = `${search}${search === '' ? '?' : '&'}mismatch=99&hold=arc&arc=70`;
  window.history.replaceState(null, '', pathname + given);
  await render(Bench, { page: true });
  window.history.replaceState(null, '', pathname + search);
  await expect
    .element(
      page.getByText(
        'Not taken from the link: radial mismatch “99” (allowed: 0 to 10 mm). Its default stands instead.',
      ),
    )
    .toBeVisible();
  expect(await value()).toBe(3);
  expect(lettering()).toContain('arc 70.0°, held');
});

test('on the stage an act comes at each press, and by hand it works between them', async () => {
  const acts = [
    { text: 'close', change: { mismatch: 1 } },
    { text: 'loose', change: { mismatch: 6 } },
  ];
  await render(OnStage, { acts });
  const now = (): string => document.querySelector('tr.now')?.textContent ?? '';
  const rows = [...document.querySelectorAll<HTMLElement>('tr.build')];
  expect(rows.map((row) => row.querySelector('th')?.textContent)).toEqual(['close', 'loose']);
  const cells = (row: HTMLElement | undefined): string =>
    [...(row?.querySelectorAll('td') ?? [])].map((cell) => cell.textContent).join('');
  rows[0]?.setAttribute('data-shown', '');
  await expect.poll(now).toContain(cells(rows[0]));
  rows[1]?.setAttribute('data-shown', '');
  await expect.poll(now).toContain(cells(rows[1]));
  const slider = page.getByRole('slider', { name: 'Radial mismatch' });
  slider.element().focus();
  await userEvent.keyboard('{Home}');
  await expect.poll(now).not.toContain(cells(rows[1]));
  rows[1]?.removeAttribute('data-shown');
  await expect.poll(now).toContain(cells(rows[0]));
});
