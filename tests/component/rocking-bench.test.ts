import { beforeEach, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import Bench from '../../sims/benches/rocking-bench/Bench.svelte';
import '../../site/styles/tokens.css';
import '../../site/styles/base.css';

const LONG = { timeout: 20_000 };
const slider = (name: string) => page.getByRole('slider', { name, exact: true });
const place = () => slider('Ball, toward the rim');

beforeEach(async () => {
  await page.viewport(1200, 1000);
});

function drawing(): SVGSVGElement {
  const found = document.querySelector<SVGSVGElement>('.picture svg');
  if (found === null) throw new Error('no drawing');
  return found;
}

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const words = (): string =>
  plain(document.querySelector('figure .visually-hidden')?.textContent ?? '');
const shown = (): string => plain(drawing().textContent);

/** Value and note of a reading. */
function reading(name: string): readonly [string, string] {
  const cell = [...document.querySelectorAll('dl > div')].find(
    (one) => one.querySelector('dt')?.textContent === name,
  );
  const [value, note] = [...(cell?.querySelectorAll('dd') ?? [])].map((dd) =>
    plain(dd.textContent),
  );
  return [value ?? '', note ?? ''];
}

async function measured(): Promise<void> {
  await expect.poll(() => reading('B, gap')[1], LONG).toMatch(/^solver .*(%|none)$/);
}

/** As matrix parts: how the first socket is drawn. */
function matrix(): readonly number[] {
  const transform = drawing().querySelector('g[transform^="matrix"]')?.getAttribute('transform');
  return (transform ?? '').match(/-?[\d.]+/g)?.map(Number) ?? [];
}

function send(type: string, target: Element, x: number, y: number): void {
  const given = { pointerId: 1, button: 0, clientX: x, clientY: y, bubbles: true };
  target.dispatchEvent(new PointerEvent(type, given));
}

test('measures both sockets by itself, and says how far they lie from the solver', async () => {
  await render(Bench);
  await measured();
  expect(reading('A, gap')[0]).toMatch(/µm$/);
  expect(words()).toMatch(/The solver has \d+ µm, [+−]?0\.\d %\./);
  expect(shown()).toContain('movement drawn 10 times as large');
  expect(shown()).toContain('gap');
  expect(shown()).toContain('press-in');
});

test('the keyboard carries the ball to the other rim, and the socket tips the other way', async () => {
  await render(Bench);
  await measured();
  const before = matrix();
  place().element().focus();
  await userEvent.keyboard('{Home}');
  await expect
    .element(place())
    .toHaveAttribute('aria-valuetext', '100 % of the way to the bottom rim');
  await expect.poll(() => Math.sign(matrix()[1] ?? 0), LONG).toBe(-Math.sign(before[1] ?? 0));
  await expect.poll(words, LONG).toMatch(/100 % of the way to the bottom rim.*The solver has/);
});

test('a pointer takes the ball, and its contact follows', async () => {
  await render(Bench, { initial: { place: 0 } });
  await measured();
  const ball = drawing().querySelector('[data-handle="ball"]');
  if (ball === null) throw new Error('no ball');
  drawing().setPointerCapture = () => undefined;
  const box = ball.getBoundingClientRect();
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  send('pointerdown', ball, x, y);
  send('pointermove', ball, x + 60, y);
  await expect
    .poll(() => Number((place().element() as HTMLInputElement).value))
    .toBeGreaterThan(20);
  send('pointerup', ball, x + 60, y);
  await expect.poll(() => shown(), LONG).toContain('gap');
});

test('rocked, it plots a gap for each load and gives them as a table', async () => {
  await render(Bench, { initial: { cycles: 2 } });
  await measured();
  await page.getByRole('button', { name: 'Fast' }).click();
  await page.getByRole('button', { name: 'Rock them 2 times' }).click();
  await expect.element(page.getByRole('button', { name: 'Stop' })).toBeVisible();
  await expect.poll(() => shown(), LONG).toContain('crosses: the solver');
  await expect.element(page.getByRole('button', { name: 'Rock them 2 times' }), LONG).toBeVisible();
  expect(drawing().querySelectorAll('circle[r="3.6"]')).toHaveLength(8);
  await page.getByText('Read the loads as a table').click();
  expect(document.querySelectorAll('tbody tr')).toHaveLength(4);
});

test('says and draws a socket that nothing holds', async () => {
  const { defaultSetting } = await import('../../sims/benches/rocking-bench/settings.ts');
  await render(Bench, {
    initial: { b: { ...defaultSetting.b, layout: 'none', bed: 'rough' } },
  });
  await expect.poll(() => reading('B, gap')[0], LONG).toBe('over\u00adturned');
  expect(shown()).toContain('overturned');
  expect(shown()).toContain('movement drawn at its true size');
  expect(words()).toContain('has overturned: nothing balances this load.');
});

test('sleeps when nothing moves', async () => {
  await render(Bench);
  await measured();
  let frames = 0;
  const ask = window.requestAnimationFrame.bind(window);
  window.requestAnimationFrame = (callback) => {
    frames += 1;
    return ask(callback);
  };
  await new Promise((done) => setTimeout(done, 600));
  window.requestAnimationFrame = ask;
  expect(frames).toBe(0);
});

test.each([344, 700, 1100])('lettering stays inside the drawing, %i wide', async (width) => {
  await page.viewport(width, 900);
  await render(Bench);
  await measured();
  const box = drawing().getBoundingClientRect();
  for (const text of drawing().querySelectorAll('text')) {
    const { left, right } = text.getBoundingClientRect();
    expect(left, text.textContent).toBeGreaterThanOrEqual(box.left - 1);
    expect(right, text.textContent).toBeLessThanOrEqual(box.right + 1);
  }
});
