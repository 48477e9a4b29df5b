import { expect, test, vi } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { pngFile, svgFile } from '../../sims/figures/export.ts';
import TitleBlock from '../../sims/figures/TitleBlock.svelte';
import '../../site/styles/tokens.css';

const caption = {
  title: 'Climb & ratio, φ < β',
  units: 'lengths in mm',
  model: 'rigid ball, closed form',
  sources: ['First source', 'Second source'],
};

/** A drawing on the page as the benches make them: colours by token, parts that serve only the page. */
function placeDrawing(): SVGSVGElement {
  const host = document.createElement('div');
  host.innerHTML = `<svg viewBox="0 0 400 200" class="s-abc" role="img">
    <!-- note -->
    <rect class="s-abc" width="400" height="200" fill="var(--motion-wash)"/>
    <text x="20" y="40" font-family="var(--font-drawing)" fill="var(--ink)">φ 12°</text>
    <rect data-page-only width="9" height="9" fill="var(--force)"/>
  </svg>`;
  document.body.append(host);
  return host.firstElementChild as SVGSVGElement;
}

function hex(channels: string): string {
  const parts = channels.match(/\d+/g) ?? [];
  return `#${parts.map((part) => Number(part).toString(16).padStart(2, '0')).join('')}`;
}

test.each([
  ['paper', '#d4e3ec', '#1a2a38'],
  ['night', '#1b3a52', '#ece6d6'],
])('the %s picture is whole XML in that theme’s colours, font inside', async (theme, wash, ink) => {
  document.documentElement.setAttribute('data-theme', theme);
  const text = await (await svgFile(placeDrawing(), caption)).text();
  const read = new DOMParser().parseFromString(text, 'image/svg+xml');
  expect(read.querySelector('parsererror')).toBeNull();
  expect(read.querySelector('title')?.textContent).toBe(caption.title);
  const lettering = [...read.querySelectorAll('text')].map((line) => line.textContent).join(' ');
  for (const part of [caption.units, caption.model, ...caption.sources, 'For education only']) {
    expect(lettering).toContain(part);
  }
  const inner = read.querySelector('svg svg');
  expect(inner?.querySelectorAll('rect')).toHaveLength(1);
  expect(hex(inner?.querySelector('rect')?.getAttribute('fill') ?? '')).toBe(wash);
  expect(hex(inner?.querySelector('text')?.getAttribute('fill') ?? '')).toBe(ink);
  expect(text).not.toMatch(/var\(|light-dark|class="|data-page-only/);
  expect(text.match(/src:url\(data:font\/woff2;base64,[\w+/=]{10000,}\)/g)).toHaveLength(2);
  document.documentElement.removeAttribute('data-theme');
});

/** How many pixels of a part of a picture are not as its first pixel, and the colours among all. */
function pixelsIn(bitmap: ImageBitmap, x: number, y: number, width: number, height: number) {
  const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('no canvas');
  context.drawImage(bitmap, 0, 0);
  const { data } = context.getImageData(2 * x, 2 * y, 2 * width, 2 * height);
  const colours = new Map<string, number>();
  for (let i = 0; i < data.length; i += 4) {
    const colour = hex(data.slice(i, i + 3).join(' '));
    colours.set(colour, (colours.get(colour) ?? 0) + 1);
  }
  const ground = hex(data.slice(0, 3).join(' '));
  return { colours, marked: data.length / 4 - (colours.get(ground) ?? 0) };
}

test('the PNG has two pixels to each of the picture’s, its colours and its lettering', async () => {
  const drawing = placeDrawing();
  const svgText = await (await svgFile(drawing, caption)).text();
  const root = new DOMParser().parseFromString(svgText, 'image/svg+xml').documentElement;
  const [width, height] = ['width', 'height'].map((name) => Number(root.getAttribute(name)));
  const bitmap = await createImageBitmap(await pngFile(drawing, caption));
  expect([bitmap.width, bitmap.height]).toEqual(
    [2 * Number(width), 2 * Number(height)].map(Math.round),
  );
  const inner = root.querySelector('svg');
  const top = Number(inner?.getAttribute('y'));
  const foot = top + Number(inner?.getAttribute('height'));
  const drawn = pixelsIn(bitmap, 20, top + 5, 200, 100);
  expect(drawn.colours.get('#d4e3ec')).toBeGreaterThan(1000);
  expect(drawn.marked).toBeGreaterThan(300);
  expect(pixelsIn(bitmap, 20, 16, 300, top - 20).marked).toBeGreaterThan(1000);
  expect(pixelsIn(bitmap, 20, foot + 4, 600, 60).marked).toBeGreaterThan(1000);
});

async function renderBlock() {
  await render(TitleBlock, {
    name: 'sample',
    ...caption,
    svg: () => null,
    rows: () => ({ header: ['climb (mm)'], rows: [[1]] }),
    link: () => 'https://example.org/bench/sample/?depth=3',
  });
}

test('the link is copied and the visitor is told', async () => {
  const write = vi.spyOn(navigator.clipboard, 'writeText').mockResolvedValue();
  await renderBlock();
  await page.getByRole('button', { name: 'Link to this setting' }).click();
  expect(write).toHaveBeenCalledExactlyOnceWith('https://example.org/bench/sample/?depth=3');
  await expect.element(page.getByRole('status')).toHaveTextContent('Copied.');
  write.mockRestore();
});

test('where the clipboard is refused the link is shown to take by hand', async () => {
  const write = vi.spyOn(navigator.clipboard, 'writeText').mockRejectedValue(new Error('no'));
  await renderBlock();
  await page.getByRole('button', { name: 'Link to this setting' }).click();
  await expect
    .element(page.getByRole('textbox', { name: 'Link to this setting' }))
    .toHaveValue('https://example.org/bench/sample/?depth=3');
  write.mockRestore();
});
