import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { peakStabilityRatio } from '../../../sims/geometry/index.ts';
import {
  axisTops,
  HIGHEST_RATIO,
  mirrored,
  rowsOf,
  rowsUpTo,
  withFriction,
} from '../../../sims/benches/path-tracer/curves.ts';
import { describe as wordsFor, positionWords } from '../../../sims/benches/path-tracer/describe.ts';
import { readTracer } from '../../../sims/benches/path-tracer/reading.ts';
import { readingsOf } from '../../../sims/benches/path-tracer/readings.ts';
import { defaultTracer, drawn } from '../../../sims/benches/path-tracer/setting.ts';
import { tracerTable } from '../../../sims/benches/path-tracer/table.ts';
import { defaultCup } from '../../../sims/benches/shared/cup-setting.ts';

const usual = drawn(defaultCup);
const flat = drawn({ ...defaultCup, depth: 0 });
const plainly = (text: string): string => text.replaceAll('\u00a0', ' ');
const inWords = (...given: Parameters<typeof wordsFor>): string => plainly(wordsFor(...given));

describe('the reading', () => {
  test('is the same on either side, and held at the rim', () => {
    fc.assert(
      fc.property(fc.double({ min: -20, max: 20, noNaN: true }), (position) => {
        const right = readTracer(usual.cup, 0.1, Math.abs(position));
        const left = readTracer(usual.cup, 0.1, -Math.abs(position));
        expect({ ...left, translation: 0 }).toEqual({ ...right, translation: 0 });
        expect(right.translation).toBe(Math.min(14, Math.abs(position)));
      }),
    );
  });

  test('at the rim contact is the peak; at the edge everything is spent', () => {
    const at = readTracer(usual.cup, 0, readTracer(usual.cup, 0, 0).rimContact);
    expect(at.stabilityRatio).toBeCloseTo(peakStabilityRatio(usual.cup.socket), 9);
    const edge = readTracer(usual.cup, 0, 14);
    expect(edge.stabilityRatio).toBeCloseTo(0, 9);
    expect(edge.climb).toBeCloseTo(4, 9);
    expect(edge.areaSoFar).toBeCloseTo(edge.wholeArea, 9);
  });
});

describe('the curves', () => {
  test('run rim to rim through the middle, mirrored', () => {
    const rows = mirrored(rowsOf(usual.cup));
    expect(rows).toHaveLength(193);
    expect([rows[0]?.translation, rows[96]?.translation, rows.at(-1)?.translation]).toEqual([
      -14, 0, 14,
    ]);
    rows.forEach((row, i) => {
      expect(row.climb).toBe(rows.at(-1 - i)?.climb);
    });
  });

  test('the part so far ends where the ball is, on the ball’s side', () => {
    const half = rowsOf(usual.cup);
    for (const position of [-6.2, 0.3, 14]) {
      const here = readTracer(usual.cup, 0, position);
      const part = rowsUpTo(half, here);
      expect(part.at(-1)?.translation).toBe(position);
      expect(part.every(({ translation }) => translation * position >= 0)).toBe(true);
      expect(Math.max(...part.map(({ translation }) => Math.abs(translation)))).toBe(
        Math.abs(position),
      );
    }
  });

  test('friction lifts the ratio everywhere and changes nothing else', () => {
    const rows = rowsOf(usual.cup);
    withFriction(rows, usual.cup, 0.2).forEach((row, i) => {
      expect(row.stabilityRatio).toBeGreaterThan(rows[i]?.stabilityRatio ?? Infinity);
      expect(row.climb).toBe(rows[i]?.climb);
    });
  });

  test('the axes hold every curve drawn, up to the ratio they are cut at', () => {
    const deep = drawn({ ...defaultCup, ballDiameter: 30, width: 30, depth: 14 });
    const { climb, ratio } = axisTops([usual.cup, deep.cup], 0);
    expect(climb).toBeGreaterThan(14);
    expect(ratio).toBe(HIGHEST_RATIO);
    expect(axisTops([usual.cup], 0).ratio).toBeGreaterThan(peakStabilityRatio(usual.cup.socket));
    expect(axisTops([flat.cup], 0)).toEqual({ climb: 1, ratio: 0.5 });
  });
});

describe('in words', () => {
  test('the default figure', () => {
    const reading = readTracer(usual.cup, 0, defaultTracer.position);
    expect(inWords(usual, reading, 0, null)).toBe(
      'A ball in a cup: ball 48.0 mm, width 28.0 mm, depth 4.0 mm. ' +
        'Its centre stands 5.00 mm to the right, on the rim, and has climbed 2.25 mm. ' +
        'The slope of its path there is the stability ratio, 0.40; the contact is tilted by 22.0°. ' +
        'The ratio is greatest, 0.62, at 1.3 mm. ' +
        'The area under the ratio so far is 2.25 mm, the climb 2.25 mm; ' +
        'the whole area is 4.00 mm, the depth 4.00 mm.',
    );
    expect(plainly(positionWords(reading))).toBe('5.00 mm right, climbed 2.25 mm, ratio 0.40');
  });

  test('a flat socket, a kept setting, friction', () => {
    const reading = readTracer(flat.cup, 0, -3);
    const text = inWords(flat, reading, 0, usual);
    expect(text).toContain('3.00 mm to the left');
    expect(text).toContain('The socket is flat: the ball does not climb, and nothing holds it.');
    expect(text).toContain('to compare: ball 48.0 mm, width 28.0 mm, depth 4.0 mm');
    expect(inWords(usual, readTracer(usual.cup, 0.1, 5), 0.1, null)).toContain(
      'With a friction of 0.10 the ratio there is 0.53.',
    );
  });

  test('no setting writes a number that is none', () => {
    const depth = fc.double({ min: 0, max: 14, noNaN: true });
    const at = fc.double({ min: -23, max: 23, noNaN: true });
    fc.assert(
      fc.property(depth, at, fc.constantFrom(0, 0.3), (deep, position, friction) => {
        const now = drawn({ ...defaultCup, ballDiameter: 30, width: 30, depth: deep });
        const reading = readTracer(now.cup, friction, position);
        const text =
          inWords(now, reading, friction, now) +
          JSON.stringify(readingsOf(now, reading, friction)) +
          positionWords(reading);
        expect(text).not.toMatch(/NaN|Infinity|undefined|-0\.0|−0\.00/);
      }),
    );
  });
});

describe('the table', () => {
  test('runs from the middle to the rim and holds the peak; friction adds a column', () => {
    const { header, rows } = tracerTable(usual, 0);
    expect(header).toEqual(['translation (mm)', 'climb (mm)', 'stability ratio (no unit)']);
    expect(rows).toHaveLength(121);
    expect(rows[0]).toEqual([0, 0, 0]);
    expect(rows.at(-1)).toEqual([14, 4, 0]);
    const greatest = Math.max(...rows.map((row) => Number(row[2])));
    expect(greatest).toBeCloseTo(peakStabilityRatio(usual.cup.socket), 4);
    expect(tracerTable(usual, 0.2).header).toHaveLength(4);
  });
});
