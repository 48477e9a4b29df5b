import fc from 'fast-check';
import { expect, test } from 'vitest';
import { csvText } from '../../../sims/figures/csv.ts';

/** A strict reader of RFC 4180: every record ends in CRLF, quotes only where the grammar has them. */
function readCsv(text: string): string[][] {
  const records: string[][] = [];
  let at = 0;
  while (at < text.length) {
    const cells: string[] = [];
    for (;;) {
      let cell = '';
      if (text[at] === '"') {
        at += 1;
        for (;;) {
          if (at >= text.length) throw new Error('quote left open');
          if (text.startsWith('""', at)) {
            cell += '"';
            at += 2;
          } else if (text[at] === '"') {
            at += 1;
            break;
          } else {
            cell += text.charAt(at);
            at += 1;
          }
        }
      } else {
        while (at < text.length && !',\r\n"'.includes(text.charAt(at))) {
          cell += text.charAt(at);
          at += 1;
        }
      }
      cells.push(cell);
      if (text[at] === ',') {
        at += 1;
        continue;
      }
      if (!text.startsWith('\r\n', at)) throw new Error(`no CRLF at ${at}`);
      at += 2;
      break;
    }
    records.push(cells);
  }
  return records;
}

test('a table reads back cell for cell, whatever stands in it', () => {
  const cell = fc.oneof(
    fc.string({ unit: fc.constantFrom('a', ' ', ',', '"', '\r', '\n', 'φ', '=') }),
    fc.double({ noNaN: true }),
  );
  const table = fc.integer({ min: 1, max: 5 }).chain((width) =>
    fc.record({
      header: fc.array(fc.string(), { minLength: width, maxLength: width }),
      rows: fc.array(fc.array(cell, { minLength: width, maxLength: width }), { maxLength: 6 }),
    }),
  );
  fc.assert(
    fc.property(table, ({ header, rows }) => {
      const asText = rows.map((row) => row.map((value) => String(value === 0 ? 0 : value)));
      expect(readCsv(csvText({ header, rows }))).toEqual([header, ...asText]);
    }),
  );
});

test('the form is that of the standard, byte for byte', () => {
  const text = csvText({
    header: ['translation (mm)', 'a "quoted", word'],
    rows: [
      [0.5, 'plain'],
      [-0, 'two\nlines'],
    ],
  });
  expect(text).toBe('translation (mm),"a ""quoted"", word"\r\n0.5,plain\r\n0,"two\nlines"\r\n');
});

test('a row of the wrong length and a number that is none are refused', () => {
  expect(() => csvText({ header: ['a', 'b'], rows: [[1]] })).toThrow(/row 1 has 1 cells/);
  expect(() => csvText({ header: ['a'], rows: [[NaN]] })).toThrow(/NaN/);
});
