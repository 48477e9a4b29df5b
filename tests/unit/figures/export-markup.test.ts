import { parseFragment, type DefaultTreeAdapterMap } from 'parse5';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { breakLines, guessedWidth } from '../../../sims/figures/export-lines.ts';
import {
  CAUTION,
  escapeXml,
  figureMarkup,
  resolveVariables,
  type Caption,
} from '../../../sims/figures/export-markup.ts';

const drawing = {
  inner: '<path d="M0 0H10" stroke="#123456"/>',
  viewBox: { x: 0, y: 0, width: 400, height: 300 },
};
const caption: Caption = {
  title: 'Ball path: climb & ratio <now>',
  units: 'lengths in mm, ratio without unit',
  model: 'rigid ball in a rigid spherical socket, closed form',
  setting: 'ball 48 mm, width 28 mm, depth 4 mm',
  sources: ['Author "A" 1999', 'Author B & C 2001'],
};
const dress = {
  ground: '#ffffff',
  ink: '#000000',
  inkSoft: '#444444',
  fontFamily: "'Drawing Letter', sans-serif",
  fontFaces: "@font-face{font-family:'Drawing Letter';src:url(data:font/woff2;base64,AA==)}",
  measure: guessedWidth,
};

/** Every tag opened is closed in turn, every attribute quoted, no bare ampersand or angle bracket in text. */
function expectWellFormed(markup: string): void {
  const open: string[] = [];
  const tag = /<(\/?)([a-zA-Z][\w:-]*)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>/y;
  let at = 0;
  while (at < markup.length) {
    const next = markup.indexOf('<', at);
    const text = markup.slice(at, next < 0 ? undefined : next);
    expect(text.replace(/&(?:amp|lt|gt|quot|#\d+);/g, '')).not.toMatch(/[&>]/);
    if (next < 0) break;
    tag.lastIndex = next;
    const found = tag.exec(markup);
    if (found === null) throw new Error(`not a tag: ${markup.slice(next, next + 60)}`);
    const [whole, closes, name = '', , closesItself] = found;
    if (closes === '/') expect(open.pop()).toBe(name);
    else if (closesItself !== '/') open.push(name);
    at = next + whole.length;
  }
  expect(open).toEqual([]);
}

type Node = DefaultTreeAdapterMap['childNode'];

function textIn(nodes: readonly Node[]): string {
  return nodes
    .map((node) => {
      if ('value' in node) return node.value;
      return 'childNodes' in node ? textIn(node.childNodes) + ' ' : '';
    })
    .join('');
}

/** What a reader sees lettered in the picture, its line breaks undone. */
function lettering(markup: string): string {
  const body = markup.replace(/<(title|desc|style)>.*?<\/\1>/gs, '');
  return textIn(parseFragment(body).childNodes).replace(/\s+/g, ' ');
}

test('a picture is well-formed and holds title, setting, units, model, sources and the caution', () => {
  const { markup } = figureMarkup(drawing, caption, dress);
  expectWellFormed(markup);
  const read = lettering(markup);
  for (const part of [
    caption.title,
    caption.setting,
    caption.units,
    caption.model,
    ...caption.sources,
    CAUTION,
  ]) {
    expect(read).toContain(part);
  }
  expect(markup).toContain(drawing.inner);
  expect(markup).toContain('xmlns="http://www.w3.org/2000/svg"');
});

test('it stays well-formed whatever the caption says', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), fc.string({ unit: 'grapheme' }), (title, source) => {
      expectWellFormed(
        figureMarkup(drawing, { ...caption, title, sources: [source] }, dress).markup,
      );
    }),
  );
});

test('a narrow drawing is enlarged to a readable width and keeps its proportions', () => {
  const { markup, width } = figureMarkup(drawing, caption, dress);
  expect(width).toBe(744);
  expect(markup).toMatch(/width="720" height="540" viewBox="0 0 400 300"/);
});

test('longer words make a taller sheet, never a line beyond the frame', () => {
  const long = { ...caption, sources: Array.from({ length: 20 }, (_, i) => `Source number ${i}`) };
  const short = figureMarkup(drawing, caption, dress);
  const tall = figureMarkup(drawing, long, dress);
  expect(tall.height).toBeGreaterThan(short.height + 40);
  const lines = [...tall.markup.matchAll(/<text [^>]*font-size="(\d+)"[^>]*>([^<]*)</g)];
  expect(lines.length).toBeGreaterThan(8);
  for (const [, size, text = ''] of lines) {
    expect(guessedWidth(text, Number(size), 400)).toBeLessThanOrEqual(720);
  }
});

test('no variable of the page is left in the drawing', () => {
  const tokens: Record<string, string> = {
    '--ink': 'rgb(1, 2, 3)',
    '--font-drawing': '\'A "b"\', serif',
  };
  const markup = `<g fill="var(--ink)" stroke="var( --ink , red )"><text font-family="var(--font-drawing)"/></g>`;
  const resolved = resolveVariables(markup, (token) => tokens[token] ?? '');
  expect(resolved).toBe(
    `<g fill="rgb(1, 2, 3)" stroke="rgb(1, 2, 3)"><text font-family="'A &quot;b&quot;', serif"/></g>`,
  );
});

test('characters XML cannot hold are dropped, marks are written as entities', () => {
  expect(escapeXml('a\u0000<b> & "c"\u001f')).toBe('a&lt;b&gt; &amp; &quot;c&quot;');
});

test('lines break at spaces and keep every word', () => {
  const text = 'one two  three four five';
  const lines = breakLines(text, 9, (part) => part.length);
  expect(lines).toEqual(['one two', 'three', 'four five']);
  expect(breakLines('unbreakable', 3, (part) => part.length)).toEqual(['unbreakable']);
});
