import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  choiceField,
  numberField,
  readUrlState,
  switchField,
  writeUrlState,
  type UrlFields,
} from '../../../sims/shared/url-state.ts';

interface Sample {
  readonly ball: number;
  readonly tilt: number;
  readonly by: 'depth' | 'radius';
  readonly compare: boolean;
}
const ball = { min: 30, max: 60, step: 0.5, digits: 1, unit: 'mm' };
const tilt = { min: -20, max: 20, step: 1, digits: 0, unit: '' };
const fields: UrlFields<Sample> = {
  ball: numberField('ball', 'ball diameter', ball, 48),
  tilt: numberField('tilt', 'tilt', tilt, 0),
  by: choiceField('by', 'shape given by', ['depth', 'radius'], 'depth'),
  compare: switchField('compare', 'comparison', false),
};
const defaults: Sample = { ball: 48, tilt: 0, by: 'depth', compare: false };

describe('reading', () => {
  test('an empty query is the default state, without complaint', () => {
    expect(readUrlState(fields, '')).toEqual({ state: defaults, problem: '' });
  });

  test('keys it does not know are passed over', () => {
    expect(readUrlState(fields, '?utm=1&ball=50&constructor=x&__proto__=y')).toEqual({
      state: { ...defaults, ball: 50 },
      problem: '',
    });
  });

  test('a bad value falls back alone, and one line names it and what is allowed', () => {
    const { state, problem } = readUrlState(fields, 'ball=61&by=radius');
    expect(state).toEqual({ ...defaults, by: 'radius' });
    expect(problem).toBe(
      'Not taken from the link: ball diameter “61” (allowed: 30 to 60 mm). Its default stands instead.',
    );
  });

  test('several bad values share the line', () => {
    const { state, problem } = readUrlState(fields, 'ball=NaN&tilt=1e3&by=toString&compare=yes');
    expect(state).toEqual(defaults);
    expect(problem.split('\n')).toHaveLength(1);
    for (const name of ['ball diameter', 'tilt', 'shape given by', 'comparison']) {
      expect(problem).toContain(name);
    }
    expect(problem).toContain('Their defaults stand instead.');
  });

  test.each([
    '',
    ' ',
    '4 8',
    '0x30',
    '1e1',
    'Infinity',
    '-',
    '٣٣',
    '48mm',
    '<script>',
    '%00',
    '４８',
  ])('“%s” is no number', (text) => {
    const { state, problem } = readUrlState(fields, `ball=${text}`);
    expect(state.ball).toBe(48);
    expect(problem).not.toBe('');
  });

  test('a stranger’s text is shown short and without control or direction marks', () => {
    const hostile = `\u202e\u0007${'x'.repeat(5000)}`;
    const { problem } = readUrlState(fields, new URLSearchParams({ ball: hostile }).toString());
    expect(problem.length).toBeLessThan(160);
    expect(problem).not.toMatch(/\p{C}/u);
  });

  test('whatever the query, the state is whole and sane', () => {
    const value = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 60 }),
      fc.double().map(String),
      fc.constantFrom('-0', '1e400', '30.00000000000000000001', '60.0000000001', 'null', '[]'),
    );
    const query = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc
        .array(fc.tuple(fc.constantFrom('ball', 'tilt', 'by', 'compare', 'else'), value))
        .map((pairs) => new URLSearchParams(pairs).toString()),
    );
    fc.assert(
      fc.property(query, (text) => {
        const { state, problem } = readUrlState(fields, text);
        expect(state.ball).toBeGreaterThanOrEqual(30);
        expect(state.ball).toBeLessThanOrEqual(60);
        expect(Math.abs(state.tilt)).toBeLessThanOrEqual(20);
        expect(Object.is(state.tilt, -0)).toBe(false);
        expect(['depth', 'radius']).toContain(state.by);
        expect(typeof state.compare).toBe('boolean');
        expect(Object.keys(state)).toEqual(Object.keys(fields));
        expect(problem).not.toMatch(/[\r\n]/);
      }),
      { numRuns: 2000 },
    );
  });
});

describe('writing', () => {
  test('defaults are left out', () => {
    expect(writeUrlState(fields, defaults)).toBe('');
    expect(writeUrlState(fields, { ...defaults, compare: true })).toBe('compare=1');
  });

  test('what is written reads back the same, to the four decimals a link carries', () => {
    const states = fc.record({
      ball: fc.double({ min: 30, max: 60, noNaN: true }),
      tilt: fc.double({ min: -20, max: 20, noNaN: true }),
      by: fc.constantFrom('depth' as const, 'radius' as const),
      compare: fc.boolean(),
    });
    fc.assert(
      fc.property(states, (state) => {
        const { state: read, problem } = readUrlState(fields, writeUrlState(fields, state));
        expect(problem).toBe('');
        expect(Math.abs(read.ball - state.ball)).toBeLessThanOrEqual(5.1e-5);
        expect(Math.abs(read.tilt - state.tilt)).toBeLessThanOrEqual(5.1e-5);
        expect([read.by, read.compare]).toEqual([state.by, state.compare]);
        expect(readUrlState(fields, writeUrlState(fields, read)).state).toEqual(read);
      }),
    );
  });
});
