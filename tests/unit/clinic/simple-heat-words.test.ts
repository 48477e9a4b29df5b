import { describe, expect, test } from 'vitest';
import { boneAt, BODY_TEMPERATURE, heatOf } from '../../../sims/benches/gap-and-heat/heat.ts';
import {
  everySentence,
  fits,
  marks,
  outcomeOf,
  pictureWords,
  settingOf,
  waiting,
} from '../../../sims/benches/gap-and-heat/simple-words.ts';
import { runSpan } from '../../../sims/benches/gap-and-heat/stage-times.ts';
import {
  countText,
  fleschKincaidGrade,
  sentencesOf,
  smogGrade,
  wordsOf,
} from '../../../site/clinic/reading-grade.ts';

const heated = fits.map(({ name }) => {
  const setting = settingOf(name);
  return { name, setting, heat: heatOf(setting, setting.measured) };
});

describe('what the plain bench says of heat', () => {
  test.each(heated)('$name: the bone warms above the body, and then it cools', ({ heat }) => {
    expect(heat.peakAtBone).toBeGreaterThan(BODY_TEMPERATURE + 1);
    expect(heat.peakTime).toBeLessThan(runSpan / 2);
    const rise = heat.peakAtBone - BODY_TEMPERATURE;
    expect(boneAt(heat, runSpan) - BODY_TEMPERATURE).toBeLessThan(0.6 * rise);
  });

  test('a loose fit warms it more, past the mark that is called hot; a snug one does not', () => {
    const [snug = NaN, loose = NaN] = heated.map(({ heat }) => heat.peakAtBone);
    const [body, hot] = marks;
    expect(body.at).toBe(BODY_TEMPERATURE);
    expect(snug).toBeLessThan(hot.at);
    expect(loose).toBeGreaterThan(hot.at);
    expect(outcomeOf('snug')).toBe('With a thin layer, the bone warms a bit. Then it cools.');
    expect(outcomeOf('loose')).toBe('With a thick layer, the bone warms a lot. Then it cools.');
  });

  test('each fit is told by its layer', () => {
    expect(waiting('snug')).toContain('thin layer');
    expect(waiting('loose')).toContain('thick layer');
    expect(pictureWords('loose')).toContain('thick layer');
  });
});

describe('how it says it', () => {
  test('no sentence is over fifteen words, and none has a number', () => {
    for (const block of everySentence) {
      expect(block).toMatch(/[.?!]$/);
      expect(block).not.toMatch(/\d/);
      for (const sentence of sentencesOf(block)) {
        expect(wordsOf(sentence).length, sentence).toBeLessThanOrEqual(15);
      }
    }
  });

  test('grade at most 6 by Flesch–Kincaid and 8 by SMOG', () => {
    const counts = countText(everySentence);
    expect(counts.sentences).toBeGreaterThan(12);
    expect(fleschKincaidGrade(counts)).toBeLessThanOrEqual(6);
    expect(smogGrade(counts)).toBeLessThanOrEqual(8);
  });
});
