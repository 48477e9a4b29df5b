import { beforeEach, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import Bench from '../../sims/benches/round-the-rim/Bench.svelte';
import { RoundTheRim } from '../../sims/benches/round-the-rim/state.svelte.ts';
import '../../site/styles/tokens.css';
import '../../site/styles/base.css';

const direction = () => page.getByRole('slider', { name: 'Direction' });
const translation = () => page.getByRole('slider', { name: 'Translation of the ball' });

beforeEach(async () => {
  await page.viewport(1200, 900);
});

function drawing(): SVGSVGElement {
  const found = document.querySelector<SVGSVGElement>('.picture svg');
  if (found === null) throw new Error('no drawing');
  return found;
}

const plainly = (text: string | null | undefined): string => (text ?? '').replaceAll('\u00a0', ' ');

function send(type: string, { x, y }: { x: number; y: number }): void {
  const given = { pointerId: 1, button: 0, clientX: x, clientY: y, bubbles: true };
  drawing().dispatchEvent(new PointerEvent(type, given));
}

async function valueOf(slider: ReturnType<typeof direction>): Promise<number> {
  await new Promise(requestAnimationFrame);
  return Number((slider.element() as HTMLInputElement).value);
}

/** Where on the screen the clock's number stands: the rose is found by what is lettered on it. */
function lettered(text: string): DOMRect {
  const found = [...drawing().querySelectorAll('text')].find((one) => one.textContent === text);
  if (found === undefined) throw new Error(`no ${text}`);
  return found.getBoundingClientRect();
}

/** Middle of the rose: half way between the clock's 12 and its 6, 3 and 9. */
function middle(): { x: number; y: number; reach: number } {
  const [three, nine, twelve, six] = ['3', '9', '12', '6'].map(lettered);
  if (!three || !nine || !twelve || !six) throw new Error('no clock');
  const across = (box: DOMRect): number => box.x + box.width / 2;
  const down = (box: DOMRect): number => box.y + box.height / 2;
  return {
    x: (across(three) + across(nine)) / 2,
    y: (down(twelve) + down(six)) / 2,
    reach: (across(three) - across(nine)) / 2,
  };
}

function onRose(bearing: number, distance = 1.6): { x: number; y: number } {
  const { x, y, reach } = middle();
  const angle = (bearing * Math.PI) / 180;
  return { x: x + reach * distance * Math.cos(angle), y: y - reach * distance * Math.sin(angle) };
}

test('one slider turns the direction by keyboard, and says it with its ratio', async () => {
  await render(Bench);
  direction().element().focus();
  await userEvent.keyboard('{Home}');
  expect(await valueOf(direction())).toBe(0);
  for (const key of ['{ArrowRight}', '{ArrowRight}', '{Shift>}{ArrowLeft}{/Shift}']) {
    await userEvent.keyboard(key);
  }
  expect(await valueOf(direction())).toBe(9);
  await userEvent.keyboard('{PageUp}{PageUp}{PageUp}{ArrowUp}{Shift>}{ArrowUp}{/Shift}');
  expect(await valueOf(direction())).toBe(135);
  await expect
    .element(direction())
    .toHaveAttribute('aria-valuetext', '135°, backward and up; ratio 0.42');
});

test('the ray comes to the pointer and follows it round; a touch that scrolls puts it back', async () => {
  await render(Bench);
  expect(await valueOf(direction())).toBe(315);
  send('pointerdown', onRose(100));
  expect(await valueOf(direction())).toBeCloseTo(100, -0.5);
  send('pointermove', onRose(190, 0.4));
  expect(Math.abs((await valueOf(direction())) - 190)).toBeLessThan(3);
  send('pointerup', onRose(190, 0.4));
  send('pointermove', onRose(10));
  const left = await valueOf(direction());
  expect(Math.abs(left - 190)).toBeLessThan(3);
  send('pointerdown', onRose(20));
  expect(Math.abs((await valueOf(direction())) - 20)).toBeLessThan(3);
  send('pointercancel', onRose(20));
  expect(await valueOf(direction())).toBe(left);
});

test('what the pointer chose is said once it lets go', async () => {
  await render(Bench);
  send('pointerdown', onRose(90));
  send('pointerup', onRose(90));
  await expect
    .poll(() => document.getElementById('said-politely')?.textContent)
    .toMatch(/^(8\d|9\d)°, up; ratio 0\.6/);
});

test('the ball moves by the slider, in the section, and in the plot', async () => {
  await render(Bench, { initial: { bearing: 0, translation: 2 } });
  translation().element().focus();
  await userEvent.keyboard('{ArrowRight}{ArrowRight}');
  expect(await valueOf(translation())).toBeCloseTo(2.5, 9);
  await userEvent.keyboard('{End}');
  const end = await valueOf(translation());
  expect(end).toBeCloseTo(12.95, 1);
  await userEvent.keyboard('{Home}');
  expect(await valueOf(translation())).toBeCloseTo(-end, 1);

  const plot = lettered('Stability ratio');
  const box = drawing().getBoundingClientRect();
  const inPlot = { x: box.right - 40, y: plot.y + 60 };
  send('pointerdown', inPlot);
  expect(await valueOf(translation())).toBeGreaterThan(5);
  send('pointerup', inPlot);
  const before = await valueOf(translation());
  const inSection = { x: box.right - 150, y: plot.y - 150 };
  send('pointerdown', inSection);
  expect(await valueOf(translation())).toBe(before);
  send('pointermove', { ...inSection, x: inSection.x - 30 });
  expect(await valueOf(translation())).toBeLessThan(before - 2);
  send('pointerup', inSection);
});

test('presets set the face and say where their numbers come from', async () => {
  await render(Bench);
  const worn = page.getByRole('button', { name: 'Front rim worn' });
  await worn.click();
  await expect.element(worn).toHaveAttribute('aria-pressed', 'true');
  await expect.element(page.getByText(/outer 6 mm at 3 o’clock/)).toBeVisible();
  await expect
    .element(page.getByRole('slider', { name: 'Where, by the clock' }))
    .toHaveAttribute('aria-valuetext', '3 o’clock');
  direction().element().focus();
  await userEvent.keyboard('{Home}');
  expect(drawing().textContent).toContain('peak 0.17');
});

test('a face that cannot be had is the nearest one, and the bench says so', async () => {
  await render(Bench);
  await page.getByRole('radio', { name: 'Cut' }).click();
  const depth = page.getByRole('textbox', { name: 'Depth from the rim, typed, in mm' });
  await depth.fill('19');
  await userEvent.keyboard('{Enter}');
  await expect.element(depth).toHaveValue('10.6');
  await expect
    .element(page.getByText('Stops here: beyond, the defect would reach the middle of the face.'))
    .toBeVisible();
});

test('a ball larger than the curve bridges the hollow, in so many words', async () => {
  await render(Bench, { initial: { sameRadius: true, radiusSI: 22, height: 30, upperWidth: 19 } });
  await expect
    .element(page.getByText(/^The ball’s radius.*bridges the hollow from rim to rim/))
    .toBeVisible();
  await expect.element(page.getByText('on the rim from the start')).toBeVisible();
});

test('the table has units in its head, eight directions and the chosen one', async () => {
  await render(Bench, { initial: { bearing: 100 } });
  await page.getByText('Read the rose as a table').click();
  await expect.element(page.getByRole('columnheader', { name: 'Depth (mm)' })).toBeVisible();
  const rows = [...document.querySelectorAll('tbody tr')].map((row) => row.textContent.trim());
  expect(rows).toHaveLength(9);
  expect(rows[3]).toMatch(/^100°, up \(chosen\)/);
});

const published = [
  { direction: 0, value: 0.32, sd: 0.06, label: 'Forward, whole', source: 'Author 2009' },
  { direction: Math.PI / 2, value: 0.6, label: 'Up, the greatest', source: 'Other 1993' },
  {
    direction: 0,
    value: 0.17,
    sd: 0.05,
    label: 'Forward, worn',
    source: 'Author 2009',
    isWorn: true,
  },
];

test('published ratios stand as lettered points with their scatter, and can be put away', async () => {
  await render(Bench, { published });
  const dots = () => drawing().querySelectorAll('circle[r="3.4"]').length;
  const items = () =>
    [...document.querySelectorAll('.published li')].map((one) => plainly(one.textContent));
  await expect.poll(dots).toBe(2);
  expect(items()).toEqual([
    expect.stringMatching(/^a\s+Forward, whole: 0\.32 ± 0\.06\s+Author 2009$/),
    expect.stringMatching(/^b\s+Up, the greatest: 0\.60\s+Other 1993$/),
  ]);
  await expect.element(page.getByText(/soft lip that gives way/)).toBeVisible();
  await page.getByRole('radio', { name: 'Segment' }).click();
  await expect.poll(dots).toBe(1);
  expect(items()).toEqual([expect.stringContaining('Forward, worn')]);
  await page.getByRole('checkbox', { name: 'Ratios measured on shoulders' }).click();
  await expect.poll(dots).toBe(0);
});

test('a published point lies at its ratio: as far out as the computed curve where they agree', async () => {
  const bench = new RoundTheRim();
  const value = bench.map.rows[18]?.peakStabilityRatio ?? NaN;
  await render(Bench, { published: [{ direction: Math.PI / 2, value, label: 'x', source: 'y' }] });
  const box = drawing().querySelector('circle[r="3.4"]')?.getBoundingClientRect();
  if (box === undefined) throw new Error('no point');
  const at = middle();
  const away = Math.hypot(box.x + box.width / 2 - at.x, box.y + box.height / 2 - at.y);
  direction().element().focus();
  await userEvent.keyboard('{Home}{PageUp}{PageUp}{ArrowUp}{ArrowUp}');
  expect(await valueOf(direction())).toBe(90);
  const peak = drawing()
    .querySelector('circle[r="6"][fill="var(--force)"]')
    ?.getBoundingClientRect();
  if (peak === undefined) throw new Error('no peak');
  expect(at.y - (peak.y + peak.height / 2)).toBeCloseTo(away, 0);
});

test('on its own page it takes its setting from the link, and says in one line what it did not take', async () => {
  const { search, pathname } = window.location;
  const given = `${search}${search === '' ? '?' : '&'}ball=abc&direction=90&at=3`;
  window.history.replaceState(null, '', pathname + given);
  await render(Bench, { page: true });
  window.history.replaceState(null, '', pathname + search);
  expect(await valueOf(direction())).toBe(90);
  expect(await valueOf(translation())).toBeCloseTo(3, 9);
  await expect
    .element(
      page.getByText(
        'Not taken from the link: ball diameter “abc” (allowed: 30 to 60 mm). Its default stands instead.',
      ),
    )
    .toBeVisible();
});

test('turning the direction and moving the ball leave the map as it was computed', () => {
  const bench = new RoundTheRim();
  const { map, sound } = bench;
  bench.face(20);
  bench.moveTo(4);
  expect(bench.map).toBe(map);
  expect(bench.sound).toBe(sound);
  bench.turn('width', 28);
  expect(bench.map).not.toBe(map);
});

test('while a control is turned every third direction is computed, and all once it is let go of', () => {
  const bench = new RoundTheRim();
  bench.turn('width', 28);
  const { rows: some } = bench.map;
  expect(some).toHaveLength(24);
  bench.settle();
  const { rows: all } = bench.map;
  expect(all).toHaveLength(72);
  some.forEach((row, i) => {
    expect(row.direction).toBeCloseTo(all[3 * i]?.direction ?? NaN, 12);
    expect(row.peakStabilityRatio).toBeCloseTo(all[3 * i]?.peakStabilityRatio ?? NaN, 9);
  });
});

test('a slider let go of by keyboard leaves every direction drawn', async () => {
  await render(Bench);
  const spokes = (): number =>
    [...drawing().querySelectorAll('path[stroke-opacity="0.4"]')]
      .map((path) => (path.getAttribute('d') ?? '').split('M').length - 1)
      .reduce((most, count) => Math.max(most, count), 0);
  await expect.poll(spokes).toBe(72);
  page.getByRole('slider', { name: 'Width', exact: true }).element().focus();
  await userEvent.keyboard('{ArrowRight}');
  await expect.poll(spokes).toBe(72);
});

test('on a phone nothing is lettered smaller than 12 px and nothing runs over the edge', async () => {
  await page.viewport(390, 800);
  await render(Bench, { published });
  await expect.poll(() => drawing().getBoundingClientRect().width).toBeLessThan(391);
  const unit = drawing().getBoundingClientRect().width / drawing().viewBox.baseVal.width;
  const sizes = [...drawing().querySelectorAll('text')].map(
    (text) => Number.parseFloat(getComputedStyle(text).fontSize) * unit,
  );
  expect(Math.min(...sizes)).toBeGreaterThanOrEqual(12 * 0.99);
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(390);
});
