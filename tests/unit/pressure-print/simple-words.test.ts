import { describe, expect, test } from 'vitest';
import {
  everySentence,
  fits,
  outcomeOf,
  printAt,
  slides,
  spotWords,
} from '../../../sims/benches/pressure-print/simple-words.ts';
import { sentencesOf } from '../../../site/clinic/reading-grade.ts';

const EDGE = 'It presses on the edge of the cup.';
const places = slides.map((_, place) => place);

describe('what the plain bench says of what is computed', () => {
  test('in the middle the closer fit presses on the larger spot, and the words tell the three apart', () => {
    const areas = fits.map(({ name }) => printAt(name, 0).contact.contactArea);
    expect(areas).toEqual(areas.toSorted((a, b) => b - a));
    expect(fits.map(({ name }) => spotWords(printAt(name, 0).contact))).toEqual([
      'It presses on a big spot.',
      'It presses on a spot of middle size.',
      'It presses on a small spot.',
    ]);
  });

  test('the closer the fit, the sooner it presses on the edge; the loosest gets there, too', () => {
    const first = fits.map(({ name }) =>
      places.findIndex((at) => outcomeOf(name, at).includes(EDGE)),
    );
    expect(Math.min(...first)).toBeGreaterThan(0);
    for (const [i, place] of first.entries())
      if (i > 0) expect(place).toBeGreaterThan(first[i - 1] ?? NaN);
  });

  test('once on the edge, a fit stays there as the ball slides on', () => {
    for (const { name } of fits) {
      const onEdge = places.map((at) => outcomeOf(name, at).includes(EDGE));
      expect(onEdge).toEqual(onEdge.toSorted((a, b) => Number(a) - Number(b)));
    }
  });
});

test('everything it can say is in the list, and is short, whole sentences without figures', () => {
  const said = fits.flatMap(({ name }) => places.flatMap((at) => sentencesOf(outcomeOf(name, at))));
  const listed = new Set(everySentence.flatMap(sentencesOf));
  expect(said.filter((sentence) => !listed.has(sentence))).toEqual([]);
  for (const text of everySentence) {
    expect(text).toMatch(/[.?!]$/);
    expect(text).not.toMatch(/\d/);
    for (const sentence of sentencesOf(text))
      expect(sentence.split(' ').length).toBeLessThanOrEqual(15);
  }
});
