import { describe, expect, test } from 'vitest';
import { plainRest } from '../../../sims/benches/rocking-bench/plain-rest.ts';
import {
  everySentence,
  holdNames,
  outcomeOf,
  pressNames,
  TIMES,
  type HoldName,
  type PressName,
} from '../../../sims/benches/rocking-bench/simple-words.ts';
import {
  countText,
  fleschKincaidGrade,
  sentencesOf,
  smogGrade,
} from '../../../site/clinic/reading-grade.ts';

const MOST_WORDS = 15;
/** mm: a lift drawn longer than this would leave the picture. */
const ROOM = 8;

const choices = holdNames.flatMap((hold) =>
  pressNames.map((press) => ({
    name: `${hold.text}, ${press.text}`,
    hold: hold.name,
    press: press.name,
    rest: plainRest(hold.name, press.name),
  })),
);
function restOf(hold: HoldName, press: PressName) {
  const found = choices.find((choice) => choice.hold === hold && choice.press === press);
  if (found === undefined) throw new Error(`no choice ${hold}, ${press}`);
  return found.rest;
}

describe('what the plain bench says of what the simulation does', () => {
  test.each(choices)('$name: borne to the end, and drawn inside the picture', ({ rest }) => {
    expect(rest.posed.state).toBe('at rest');
    expect(Math.max(...rest.lifts) * TIMES).toBeLessThan(ROOM);
  });

  test('in the middle no edge lifts, whatever the hold', () => {
    for (const hold of ['firm', 'weak'] as const) {
      expect(restOf(hold, 'middle').lifts).toEqual([0]);
      expect(outcomeOf([0])).toContain('No edge lifts.');
    }
  });

  test('on one edge the far edge lifts, the more the weaker the hold', () => {
    const [firm, weak] = [restOf('firm', 'edge').lifts, restOf('weak', 'edge').lifts];
    expect(weak[0]).toBeGreaterThan(1.2 * (firm[0] ?? NaN));
    expect(outcomeOf(firm)).toContain('a tiny bit');
    expect(outcomeOf(weak)).toContain('a bit more');
  });

  test('rocked, a firm hold lifts as it did at first', () => {
    const { lifts } = restOf('firm', 'again');
    for (const lift of lifts) expect(Math.abs(lift / (lifts[0] ?? NaN) - 1)).toBeLessThan(1e-3);
    expect(outcomeOf(lifts)).toBe('The cup rocks. Each lift is as small as the first.');
  });

  test('rocked, a weak hold wears, and lifts more at the end of every cycle', () => {
    const { lifts } = restOf('weak', 'again');
    const ends = lifts.filter((_, i) => i % 2 === 1);
    expect(ends).toEqual(ends.toSorted((a, b) => a - b));
    expect((lifts.at(-1) ?? NaN) / (lifts[0] ?? NaN)).toBeGreaterThan(2);
    expect(outcomeOf(lifts)).toBe('The cup rocks. The hold wears, so the lift grows.');
  });

  test('the two holds differ in strength alone', () => {
    const [firm, weak] = [restOf('firm', 'edge').seat, restOf('weak', 'edge').seat];
    const without = (seat: typeof firm) =>
      seat.elements.map((element) => ({ ...element, strength: undefined }));
    expect(without(weak)).toEqual(without(firm));
    const share = (weak.holds[0]?.strength ?? NaN) / (firm.holds[0]?.strength ?? NaN);
    expect(Math.abs(share - 0.5), 'about half').toBeLessThan(0.1);
  });
});

describe('what it says', () => {
  test('is known, short and whole, without figures', () => {
    const listed = new Set(everySentence.flatMap(sentencesOf));
    for (const { rest } of choices) {
      for (const sentence of sentencesOf(outcomeOf(rest.lifts))) {
        expect(listed).toContain(sentence);
      }
    }
    for (const text of everySentence) {
      expect(text).toMatch(/[.?!]$/);
      expect(text).not.toMatch(/\d/);
      for (const sentence of sentencesOf(text)) {
        expect(sentence.split(' ').length).toBeLessThanOrEqual(MOST_WORDS);
      }
    }
  });

  test('grade at most 6 by Flesch–Kincaid and 8 by SMOG', () => {
    const counts = countText(everySentence);
    expect(fleschKincaidGrade(counts)).toBeLessThanOrEqual(6);
    expect(smogGrade(counts)).toBeLessThanOrEqual(8);
  });
});
