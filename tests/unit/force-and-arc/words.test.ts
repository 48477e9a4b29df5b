import fc from 'fast-check';
import { describe as group, expect, test } from 'vitest';
import { describe, outcome, trial } from '../../../sims/benches/force-and-arc/describe.ts';
import { readForce } from '../../../sims/benches/force-and-arc/reading.ts';
import { readingsOf } from '../../../sims/benches/force-and-arc/readings.ts';
import { defaultSetting, type ForceSetting } from '../../../sims/benches/force-and-arc/settings.ts';
import { marginTable, READABLE_ROWS } from '../../../sims/benches/force-and-arc/table.ts';
import { csvText } from '../../../sims/figures/csv.ts';

const words = (change: Partial<ForceSetting>): string =>
  describe(readForce({ ...defaultSetting, ...change }), null).replaceAll('\u00a0', ' ');

group('the bench in words', () => {
  test('says what is set, what the force does and where the ball rests', () => {
    expect(words({})).toBe(
      'A right shoulder seen from above: a ball of 48.0 mm diameter in a socket 28.0 mm wide and 4.0 mm deep, turned back 15.0°. ' +
        'Pulls: front cuff 200 N 30° to the back, back cuff 200 N 30° to the front, deltoid and others 80 N straight in; ' +
        'together a net force of 426 N, straight in. ' +
        'The net force lies 15.0° to the back of the socket’s centre line, inside the arc of 31.9° to either side with a margin of 16.9°. ' +
        'The ball rests off-centre, 0.6 mm to the back, 0.7 mm and 16.9° from the rim.',
    );
  });

  test.each([
    [{ version: 0 }, 'The ball rests centred'],
    [{ backCuffSize: 20 }, 'the ball goes over the back rim and has no place of rest'],
    [{ version: -25, frontCuffSize: 20 }, 'the ball goes over the front rim'],
    [{ plane: 'front', inclination: 33 }, 'the ball goes over the upper rim'],
    [{ version: 33, friction: 0.1 }, 'The ball rests at the rim, held there by friction alone.'],
    [{ friction: 0.1 }, 'Friction can hold it anywhere from 0.4 mm to 0.9 mm.'],
    [{ depth: 0 }, 'a flat socket 28.0 mm wide'],
    [{ frontCuffSize: 0, backCuffSize: 0, othersSize: 0 }, 'No force acts on the ball.'],
    [
      { frontCuffTurn: 80, backCuffSize: 0, othersSize: 0, version: 35 },
      'it draws the ball off the socket',
    ],
  ] as const)('%o: %s', (change, part) => {
    expect(words(change)).toContain(part);
  });

  test('the simulation speaks only when asked, and measures against the inner end of the range', () => {
    const reading = readForce({ ...defaultSetting, friction: 0.1 });
    const settled = { outcome: 'held', translation: 0.43, climb: 0, time: 1 } as const;
    const said = (measured: Parameters<typeof trial>[1], of = reading): string =>
      trial(of, measured).replaceAll('\u00a0', ' ');
    expect(said(null)).toBe('');
    expect(said(settled)).toBe(
      'The simulated ball came to rest at 0.43 mm; theory says 0.40 mm, a difference of +0.03 mm.',
    );
    expect(said({ ...settled, outcome: 'over the rim' })).toContain('theory says it is held');
    const over = readForce({ ...defaultSetting, version: 33 });
    expect(said({ ...settled, outcome: 'over the rim' }, over)).toContain('as theory says');
    expect(said(settled, over)).toContain('theory says it goes over');
  });

  test('never says NaN, undefined or infinite, whatever is set', () => {
    fc.assert(
      fc.property(
        fc.record({
          plane: fc.constantFrom('above' as const, 'front' as const),
          version: fc.integer({ min: -25, max: 35 }),
          frontCuffSize: fc.constantFrom(0, 5, 400),
          frontCuffTurn: fc.constantFrom(-80, 0, 80),
          backCuffSize: fc.constantFrom(0, 400),
          othersSize: fc.constantFrom(0, 5),
          lowerCuffSize: fc.constantFrom(0, 400),
          depth: fc.constantFrom(0, 0.1, 4, 14),
          friction: fc.constantFrom(0, 0.3),
        }),
        (change) => {
          const reading = readForce({ ...defaultSetting, ...change });
          const strip = readingsOf(reading).map(({ name, value, note }) => [name, value, note]);
          const said = [describe(reading, null), outcome(reading), JSON.stringify(strip)].join(' ');
          expect(said).not.toMatch(/NaN|undefined|Infinity|no limit|null/);
        },
      ),
    );
  });
});

group('the strip of readings', () => {
  test('shows state, margin, rest, gap and the moment it goes over', () => {
    const shown = readingsOf(readForce(defaultSetting)).map(({ name, value }) => [
      name,
      value.replaceAll('\u00a0', ' '),
    ]);
    expect(shown).toEqual([
      ['State', 'off-centre'],
      ['Margin', '16.9°'],
      ['Rest position', '0.6 mm'],
      ['Gap left to the rim', '0.7 mm'],
      ['Goes over at version', '31.9°'],
    ]);
  });
});

group('the table', () => {
  test('has a unit in every head, a row every half degree, and makes a file', () => {
    const table = marginTable(readForce(defaultSetting));
    expect(table.rows).toHaveLength(121);
    expect(table.rows[0]?.slice(0, 3)).toEqual([-25, -25, 6.8908]);
    expect(table.rows[80]).toEqual([15, 15, 16.8908, 0.647, 'off-centre']);
    expect(table.rows.at(-1)).toEqual([35, 35, -3.1092, '', 'over the rim']);
    expect(csvText(table).split('\r\n')[0]).toBe(
      'version (°),"force angle (°, + to the back, - to the front)",margin (°),rest position (mm),state',
    );
  });

  test('to read has a row every five degrees, and stands without a force too', () => {
    const none = { frontCuffSize: 0, backCuffSize: 0, othersSize: 0 };
    const table = marginTable(readForce({ ...defaultSetting, ...none }), READABLE_ROWS);
    expect(table.rows.map(([tilt]) => tilt)).toEqual(
      Array.from({ length: 13 }, (_, i) => -25 + 5 * i),
    );
    expect(table.rows.every((row) => row[4] === 'no force')).toBe(true);
    expect(() => csvText(table)).not.toThrow();
  });
});
