import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bearingName,
  bearingOf,
  bearingText,
  clockText,
  directionOf,
  directionOfClock,
  wrapped,
} from '../../../sims/benches/round-the-rim/bearing.ts';
import {
  bearingWords,
  bridgeWords,
  describe as wordsFor,
  placeWords,
} from '../../../sims/benches/round-the-rim/describe.ts';
import { shapeLine } from '../../../sims/benches/round-the-rim/lettering.ts';
import { readRimLink, writeRimLink } from '../../../sims/benches/round-the-rim/link.ts';
import { defaultRim, presets } from '../../../sims/benches/round-the-rim/presets.ts';
import { letteredSources, markedRatios } from '../../../sims/benches/round-the-rim/published.ts';
import { readingsOf } from '../../../sims/benches/round-the-rim/readings.ts';
import { soundShape } from '../../../sims/benches/round-the-rim/sound-shape.ts';
import { mapOf, placeOn, wayIn } from '../../../sims/benches/round-the-rim/way.ts';
import { anyShape, plainly, shapeWith } from './shapes.ts';

describe('directions', () => {
  test('eight of them have names, the rest the nearest', () => {
    const names = [0, 45, 90, 135, 180, 225, 270, 315].map(bearingName);
    expect(names).toEqual([
      'forward',
      'forward and up',
      'up',
      'backward and up',
      'backward',
      'backward and down',
      'down',
      'forward and down',
    ]);
    expect(bearingName(340)).toBe('forward');
    expect(bearingText(-225)).toBe('135°, backward and up');
  });

  test('turn round and come back', () => {
    fc.assert(
      fc.property(fc.integer({ min: -2000, max: 2000 }), (bearing) => {
        expect(wrapped(bearing)).toBeGreaterThanOrEqual(0);
        expect(wrapped(bearing)).toBeLessThan(360);
        expect(bearingOf(directionOf(bearing))).toBe(wrapped(bearing));
      }),
    );
  });

  test.each([
    [3, 0, '3 o’clock'],
    [12, 90, '12 o’clock'],
    [9, 180, '9 o’clock'],
    [6, 270, '6 o’clock'],
    [4.5, 315, 'half past 4'],
    [12.5, 75, 'half past 12'],
  ])('%d by the clock lies at %d°', (hours, bearing, text) => {
    expect(bearingOf(directionOfClock(hours))).toBe(bearing);
    expect(clockText(hours)).toBe(text);
  });
});

describe('the words', () => {
  const all = (change: Parameters<typeof shapeWith>[0], bearing: number, translation: number) => {
    const sound = soundShape(shapeWith(change));
    const map = mapOf(sound);
    const way = wayIn(sound, bearing);
    return { sound, map, way, ball: placeOn(sound, way, translation) };
  };

  test('say the direction and its ratio as a screen reader needs them', () => {
    expect(bearingWords(all({}, 135, 0).way)).toMatch(/^135°, backward and up; ratio 0\.42$/);
  });

  test('say what is drawn, the chosen direction and the ball', () => {
    const { sound, map, way, ball } = all({ defect: 'cut' }, 0, -4);
    const text = plainly(wordsFor(sound, map, way, ball, []));
    expect(text).toContain('pear 35.1 × 26.0 mm, 19.5 mm above');
    expect(text).toContain('straight cut 6.0 mm deep at 3 o’clock');
    expect(text).toContain('least forward, 0.17, and greatest up and down, 0.62');
    expect(text).toContain(
      'In the chosen direction, 0°, forward, it is 0.17, a balance stability angle of 9.4°',
    );
    expect(text).toContain('The ball stands 4.0 mm backward');
    expect(plainly(placeWords(ball, way))).toMatch(
      /^4\.0 mm backward, climbed \d\.\d\d mm, ratio 0\.\d\d$/,
    );
  });

  test('say that a ball too large bridges, and that a round face is the same all round', () => {
    const { sound, map, way, ball } = all(
      { outline: 'circle', width: 30, sameRadius: true, radiusSI: 20 },
      0,
      0,
    );
    expect(plainly(bridgeWords(sound))).toContain(
      '24.1 mm, is more than that of the curve, 20.0 mm',
    );
    expect(wordsFor(sound, map, way, ball, [])).toContain('in every direction');
    expect(readingsOf(map, way).at(-1)?.note).toBe('the same in every direction');
    expect(bridgeWords(soundShape(shapeWith({})))).toBe('');
  });

  test('never hold a number that is none', () => {
    fc.assert(
      fc.property(
        anyShape,
        fc.integer({ min: 0, max: 359 }),
        fc.integer({ min: -20, max: 20 }),
        (shape, at, mm) => {
          const { sound, map, way, ball } = all(shape, at, mm);
          const texts = [
            wordsFor(sound, map, way, ball, []),
            bearingWords(way),
            placeWords(ball, way),
            ...readingsOf(map, way).flatMap(({ value, note }) => [value, note ?? '']),
          ];
          for (const text of texts) expect(text).not.toMatch(/NaN|undefined|Infinity|null/);
        },
      ),
      { numRuns: 40 },
    );
  });
});

describe('the link', () => {
  const setting = fc.record({
    shape: anyShape,
    bearing: fc.integer({ min: 0, max: 359 }),
    translation: fc.integer({ min: -300, max: 300 }).map((tenths) => tenths / 10),
    showsPublished: fc.boolean(),
  });

  test('carries all that counts', () => {
    fc.assert(
      fc.property(setting, ({ shape, ...place }) => {
        const sound = soundShape(shape);
        const { state, problem } = readRimLink(writeRimLink({ ...sound.shape, ...place }));
        expect(problem).toBe('');
        expect(soundShape(state).input).toEqual(sound.input);
        expect({ ...place }).toEqual({
          bearing: state.bearing,
          translation: state.translation,
          showsPublished: state.showsPublished,
        });
      }),
      { numRuns: 80 },
    );
  });

  test('is empty for the opening setting, and short for what does not count', () => {
    expect(writeRimLink(defaultRim)).toBe('');
    expect(writeRimLink({ ...defaultRim, lipHeight: 3, clock: 9, defectDepth: 2 })).toBe('');
  });

  test('names what it does not take', () => {
    const { state, problem } = readRimLink('?height=abc&defect=hole&width=28');
    expect(problem).toBe(
      'Not taken from the link: height “abc” (allowed: 20 to 48 mm); rim defect “hole” (allowed: none, cut, segment). ' +
        'Their defaults stand instead.',
    );
    expect(state).toEqual({ ...defaultRim, width: 28 });
  });
});

describe('a shape in one line', () => {
  test('leaves out what does not count', () => {
    expect(presets.map(({ shape }) => plainly(shapeLine(shape)))).toEqual([
      'pear 35.1 × 26.0 mm, 19.5 mm above; radius front to back 41.0 mm, top to bottom 33.4 mm; ball 48.2 mm',
      'pear 39.0 × 29.9 mm, 23.4 mm above; radius front to back 41.0 mm, top to bottom 33.4 mm; lip 0.8 mm high and 4.0 mm wide; ball 48.2 mm',
      'pear 35.1 × 26.0 mm, 19.5 mm above; radius front to back 41.0 mm, top to bottom 33.4 mm; straight cut 6.0 mm deep at 3 o’clock; ball 48.2 mm',
      'circle 30.0 mm across; radius 27.0 mm; ball 48.0 mm',
    ]);
  });
});

describe('published ratios', () => {
  const entry = (direction: number, source: string, isWorn = false) => ({
    direction,
    value: 0.3,
    label: 'x',
    source,
    isWorn,
  });
  const published = [
    entry(0, 'A'),
    entry(0, 'B'),
    entry(0, 'A'),
    entry(Math.PI / 2, 'B'),
    entry(0, 'A', true),
  ];

  test('are lettered in order, side by side, whole and worn apart', () => {
    const whole = markedRatios(published, false, 1);
    expect(whole.map(({ letter }) => letter).join('')).toBe('abcd');
    expect(whole.map(({ beside }) => beside)).toEqual([-1, 0, 1, 0]);
    expect(markedRatios(published, true, 1)).toHaveLength(1);
    expect(letteredSources(whole)).toEqual(['a, c A', 'b, d B']);
  });

  test('never stand on the ray', () => {
    for (const { direction, beside } of markedRatios(published, false, 2 * Math.PI)) {
      if (direction === 0) expect(Math.abs(beside)).toBeGreaterThan(0.5);
    }
  });
});
