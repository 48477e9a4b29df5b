import { beforeEach, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import Bench from '../../sims/benches/force-and-arc/Bench.svelte';
import '../../site/styles/tokens.css';
import '../../site/styles/base.css';

const version = () => page.getByRole('slider', { name: 'Version (+ turned back)' });
const slider = (name: string) => page.getByRole('slider', { name, exact: true });

beforeEach(async () => {
  await page.viewport(1000, 900);
});

function drawing(): SVGSVGElement {
  const found = document.querySelector<SVGSVGElement>('.picture svg');
  if (found === null) throw new Error('no drawing');
  return found;
}

function handle(name: string): Element {
  const found = drawing().querySelector(`[data-handle="${name}"]`);
  if (found === null) throw new Error(`no handle ${name}`);
  return found;
}

/** Middle of a handle on the screen. */
function middleOf(name: string): { readonly x: number; readonly y: number } {
  const { x, y, width, height } = handle(name).getBoundingClientRect();
  return { x: x + width / 2, y: y + height / 2 };
}

function send(type: string, target: Element, { x, y }: { x: number; y: number }): void {
  const given = { pointerId: 1, button: 0, clientX: x, clientY: y, bubbles: true };
  target.dispatchEvent(new PointerEvent(type, given));
}

async function valueOf(name: string): Promise<number> {
  await new Promise(requestAnimationFrame);
  return Number((slider(name).element() as HTMLInputElement).value);
}

const words = (): string =>
  (document.querySelector('figure .visually-hidden')?.textContent ?? '').replaceAll('\u00a0', ' ');
const shown = (): string => drawing().textContent.replaceAll('\u00a0', ' ');
const state = (): string | undefined => document.querySelector('dl dd')?.textContent;

test('the keyboard turns the socket until the force leaves the arc, and the words say so', async () => {
  await render(Bench);
  expect(state()).toBe('off-centre');
  version().element().focus();
  await userEvent.keyboard('{End}');
  await expect.poll(state).toBe('over the rim');
  expect(words()).toContain('the ball goes over the back rim and has no place of rest');
  expect(shown()).toContain('over the rim: it leaves');
  await expect.element(version()).toHaveAttribute('aria-valuetext', 'turned back 35.0°');
  await userEvent.keyboard('{Home}');
  await expect.poll(state).toBe('off-centre');
  expect(words()).toContain('to the front, ');
});

test('the end of the centre line turns the socket, and keeps its place under the pointer', async () => {
  await render(Bench);
  const start = middleOf('tilt');
  send('pointerdown', handle('tilt'), start);
  send('pointermove', drawing(), { x: start.x, y: start.y - 12 });
  const first = await valueOf('Version (+ turned back)');
  expect(first).toBeGreaterThan(15);
  send('pointermove', drawing(), { x: start.x, y: start.y - 30 });
  expect(await valueOf('Version (+ turned back)')).toBeGreaterThan(first);
  const moved = middleOf('tilt');
  expect(await valueOf('Version (+ turned back)')).toBeGreaterThan(18);
  expect(Math.abs(moved.y - (start.y - 30))).toBeLessThan(8);
  send('pointerup', drawing(), { x: start.x, y: start.y - 30 });
  const after = await valueOf('Version (+ turned back)');
  send('pointermove', drawing(), { x: start.x, y: start.y + 90 });
  expect(await valueOf('Version (+ turned back)')).toBe(after);
});

test('the head of a pull is dragged to another size and direction', async () => {
  await render(Bench);
  const start = middleOf('pull-0');
  const before = await valueOf('Front cuff, pull');
  const target = { x: start.x - 40, y: start.y - 40 };
  send('pointerdown', handle('pull-0'), start);
  send('pointermove', drawing(), target);
  expect(await valueOf('Front cuff, pull')).toBeGreaterThan(before);
  expect(await valueOf('Front cuff, direction')).toBeGreaterThan(30);
  send('pointerup', drawing(), target);
  expect(await valueOf('Back cuff, pull')).toBe(200);
});

test('the net force is dragged by the head it shares with the last pull', async () => {
  await render(Bench);
  const start = middleOf('pull-2');
  send('pointerdown', handle('pull-2'), start);
  send('pointermove', drawing(), { x: start.x + 30, y: start.y - 20 });
  expect(await valueOf('Deltoid and others, pull')).toBeGreaterThan(100);
  send('pointercancel', drawing(), start);
  expect(await valueOf('Deltoid and others, pull')).toBe(80);
});

test('the point on the margin plot comes to the pointer', async () => {
  await render(Bench);
  const { x, width, y, height } = handle('plot').getBoundingClientRect();
  send('pointerdown', handle('plot'), { x: x + width / 2, y: y + height / 2 });
  expect(await valueOf('Version (+ turned back)')).toBeCloseTo(5, 0);
  send('pointermove', drawing(), { x: x + 5 * width, y });
  expect(await valueOf('Version (+ turned back)')).toBe(35);
  send('pointerup', drawing(), { x: x + 5 * width, y });
});

test('what can be taken hold of is at least 24 px wide and high', async () => {
  await render(Bench);
  for (const name of ['tilt', 'pull-0', 'pull-1', 'pull-2']) {
    const { width, height } = handle(name).getBoundingClientRect();
    expect(Math.min(width, height)).toBeGreaterThanOrEqual(24);
  }
});

test('a situation sets the pulls and the tilt, and shows that it stands', async () => {
  await render(Bench);
  const both = page.getByRole('button', { name: 'Both', exact: true });
  await both.click();
  await expect.element(both).toHaveAttribute('aria-pressed', 'true');
  expect(await valueOf('Front cuff, pull')).toBe(20);
  expect(shown()).toContain('3.4° to the front');
  await page.getByRole('button', { name: 'Back cuff weak, turned back 15°' }).click();
  await expect.poll(state).toBe('over the rim');
});

test('from the front it is inclination, with pulls of its own', async () => {
  await render(Bench);
  await page.getByRole('radio', { name: 'From the front: inclination' }).click();
  await expect.element(slider('Inclination (+ turned up)')).toBeVisible();
  await expect.element(slider('Lower cuff, direction')).toBeVisible();
  expect(words()).toContain('seen from the front');
  await expect.poll(state).toBe('centred');
});

test('left to itself the simulated ball comes to the place theory gives', async () => {
  await render(Bench);
  const button = page.getByRole('button', { name: 'Let it find its place' });
  await button.click();
  const said = () =>
    (document.querySelector('.trial')?.textContent ?? '').replaceAll('\u00a0', ' ');
  await expect.poll(said, { timeout: 15_000 }).toMatch(/came to rest at/);
  const [, measured, theory] =
    /rest at (\d\.\d\d) mm; theory says (\d\.\d\d) mm/.exec(said()) ?? [];
  expect(Math.abs(Number(measured) - Number(theory))).toBeLessThanOrEqual(0.1);
  expect(words()).toContain('The simulated ball came to rest at');
  version().element().focus();
  await userEvent.keyboard('{ArrowRight}');
  await expect.poll(said).toContain('told no formula');
});

test('a simulated ball outside the arc goes over, and a force that does not press is refused', async () => {
  await render(Bench, { initial: { version: 35, backCuffSize: 20 } });
  const button = page.getByRole('button', { name: 'Let it find its place' });
  await button.click();
  await expect
    .poll(() => document.querySelector('.trial')?.textContent, { timeout: 15_000 })
    .toContain('went over the rim, as theory says');
  await page.getByRole('textbox', { name: 'Front cuff, direction, typed, in °' }).fill('80');
  await userEvent.keyboard('{Enter}');
  for (const name of ['Back cuff, pull', 'Deltoid and others, pull']) {
    slider(name).element().focus();
    await userEvent.keyboard('{Home}');
  }
  await expect.poll(state).toBe('pulled off the socket');
  await button.click();
  await expect
    .poll(() => document.querySelector('.trial')?.textContent)
    .toContain('no trial to run');
});

test('worn flat under a finger, it goes on answering', async () => {
  await render(Bench, { initial: { version: 0 } });
  const depth = slider('Depth').element();
  depth.focus();
  await userEvent.keyboard('{Home}');
  await expect.poll(() => valueOf('Depth')).toBe(0);
  expect(shown()).toContain('over at 0.0°');
  version().element().focus();
  await userEvent.keyboard('{ArrowRight}');
  await expect.poll(state).toBe('over the rim');
  depth.focus();
  await userEvent.keyboard('{End}');
  await expect.poll(state).toBe('off-centre');
});

test('without a pull it says so and draws no arrow', async () => {
  const none = { frontCuffSize: 0, backCuffSize: 0, othersSize: 0 };
  await render(Bench, { initial: none });
  expect(state()).toBe('no force');
  expect(words()).toContain('No force acts on the ball.');
  expect(shown()).not.toContain('net force');
});

test('on its own page it takes its setting from the link, and says what it did not take', async () => {
  const { search, pathname } = window.location;
  const given = `${search}${search === '' ? '?' : '&'}seen=front&inclination=12&lower-cuff=20&depth=x`;
  window.history.replaceState(null, '', pathname + given);
  await render(Bench, { page: true });
  window.history.replaceState(null, '', pathname + search);
  expect(await valueOf('Inclination (+ turned up)')).toBe(12);
  expect(await valueOf('Lower cuff, pull')).toBe(20);
  await expect
    .element(page.getByText('Not taken from the link: depth “x”', { exact: false }))
    .toBeVisible();
});

test('the table reads the margin every five degrees', async () => {
  await render(Bench);
  await page.getByText('Read the margin as a table').click();
  const cells = [...document.querySelectorAll('td')].map((cell) => cell.textContent);
  expect(cells.slice(0, 5)).toEqual(['−25', '−25.0', '6.9', '−1.06', 'off-centre']);
  expect(cells.slice(-5)).toEqual(['35', '35.0', '−3.1', 'none', 'over the rim']);
});

test.each([320, 390, 820])(
  'at %i px nothing is wider than the page, no letter below 12 px',
  async (width) => {
    await page.viewport(width, 800);
    await render(Bench);
    await new Promise(requestAnimationFrame);
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
    const scale = drawing().getBoundingClientRect().width / drawing().viewBox.baseVal.width;
    const sizes = [...drawing().querySelectorAll('text')].map(
      (text) => Number.parseFloat(getComputedStyle(text).fontSize) * scale,
    );
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(12);
  },
);
