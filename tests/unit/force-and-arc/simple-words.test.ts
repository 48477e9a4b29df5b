import { describe, expect, test } from 'vitest';
import { settle } from '../../../sims/benches/force-and-arc/settle.ts';
import {
  everySentence,
  muscles,
  outcomeOf,
  plainReading,
  restWords,
  tilts,
  underWay,
} from '../../../sims/benches/force-and-arc/simple-words.ts';
import { sentencesOf } from '../../../site/clinic/reading-grade.ts';

/** How near a simulated ball must rest to theory, mm: the facets of the engine’s hollow. */
const NEAR = 0.1;
const MOST_WORDS = 15;

const choices = muscles.flatMap((muscle) =>
  tilts.map((tilt) => ({
    name: `${muscle.text}, ${tilt.text}`,
    reading: plainReading(muscle.name, tilt.name),
  })),
);
const saidOf = (name: string): string => {
  const found = choices.find((choice) => choice.name === name);
  if (found === undefined) throw new Error(`no choice ${name}`);
  return outcomeOf(found.reading, null);
};

describe('what the plain bench says of what the simulation does', () => {
  test.each(choices)('$name: the ball ends where its words say', ({ reading }) => {
    const { rest, cup, friction, angle } = reading;
    if (rest === null) throw new Error('no force');
    const { socket, ballRadius } = cup;
    const { outcome, translation } = settle({ socket, ballRadius, force: rest.force, friction });
    if (rest.translation === null) {
      expect(outcome).toBe('over the rim');
      return;
    }
    expect(outcome).toBe('held');
    expect(Math.abs(translation - rest.translation)).toBeLessThan(NEAR);
    const measured = { ...reading, translation: Math.sign(angle ?? 0) * translation };
    expect(restWords(measured)).toBe(restWords(reading));
  });

  test('the ball goes to the weak side, and to the side the cup is turned to', () => {
    expect(saidOf('Front weak, Straight cup')).toContain('to the front');
    expect(saidOf('Back weak, Straight cup')).toContain('to the back');
    expect(saidOf('Both strong, Straight cup')).toContain('near the middle');
    expect(saidOf('Both strong, Tilted cup')).toContain('to the back');
  });

  test('a weak muscle and a tilt cancel on one side and add up on the other', () => {
    expect(saidOf('Front weak, Tilted cup')).toContain('against each other');
    expect(saidOf('Back weak, Tilted cup')).toBe(
      'The ball slips out at the back. The weak muscle and the tilt add up.',
    );
  });

  test('while the ball is on its way nothing is given away', () => {
    const moving = { outcome: 'moving', translation: 0, climb: 0, time: 0 } as const;
    for (const { reading } of choices) expect(outcomeOf(reading, moving)).toBe(underWay);
  });
});

test('everything it can say is known, short and whole, without figures', () => {
  for (const { reading } of choices) {
    for (const sentence of sentencesOf(outcomeOf(reading, null))) {
      expect(everySentence).toContain(sentence);
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
