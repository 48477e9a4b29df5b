import { describe, expect, test } from 'vitest';
import { defaultShape } from '../../../sims/benches/round-the-rim/presets.ts';
import { pushBall, spotOn } from '../../../sims/benches/round-the-rim/simple-push.ts';
import {
  everySentence,
  outcomeOf,
  pushWays,
  pushes,
  wornPlaces,
  wornShape,
} from '../../../sims/benches/round-the-rim/simple-words.ts';
import { soundShape } from '../../../sims/benches/round-the-rim/sound-shape.ts';
import { directionMap, pathOverFace } from '../../../sims/geometry/index.ts';
import {
  countText,
  fleschKincaidGrade,
  sentencesOf,
  smogGrade,
  wordsOf,
} from '../../../site/clinic/reading-grade.ts';

const trials = wornPlaces.flatMap(({ name: worn }) =>
  pushWays.flatMap(({ name: way, bearing }) =>
    pushes.map(({ name: push, ratio }) => ({ worn, way, bearing, push, ratio })),
  ),
);
const faceWorn = (worn: (typeof trials)[number]['worn']) =>
  soundShape({ ...defaultShape, ...wornShape(worn) });

describe('what the plain bench does', () => {
  test.each(trials)('$worn worn, $push push to the $way: held as the map says', (trial) => {
    const sound = faceWorn(trial.worn);
    const [row] = directionMap(sound.face, sound.ballRadius, {
      directions: [(trial.bearing * Math.PI) / 180],
      translations: 60,
    });
    const { isHeld } = pushBall(sound, trial.bearing, trial.ratio);
    expect(isHeld).toBe((row?.peakStabilityRatio ?? NaN) > trial.ratio);
  });

  test.each(trials)(
    '$worn worn, $push push to the $way: a held ball rests where ratio is push',
    (trial) => {
      const sound = faceWorn(trial.worn);
      const { isHeld, path } = pushBall(sound, trial.bearing, trial.ratio);
      const end = path.at(-1);
      expect(path[0]).toEqual({ at: 0, z: sound.ballRadius });
      if (!isHeld || end === undefined) return;
      const [row] = pathOverFace(sound.face, sound.ballRadius, (trial.bearing * Math.PI) / 180, [
        end.at,
      ]);
      expect(Math.abs((row?.stabilityRatio ?? NaN) - trial.ratio)).toBeLessThan(0.01);
    },
  );

  test('the ball goes on all the way, and a slip ends beyond the edge, over it', () => {
    const sound = faceWorn('front');
    const { isHeld, path } = pushBall(sound, 0, 0.25);
    expect(isHeld).toBe(false);
    const places = Array.from({ length: 50 }, (_, i) => spotOn(path, i / 49));
    for (const [i, { at }] of places.entries()) {
      expect(at).toBeGreaterThanOrEqual(places[i - 1]?.at ?? 0);
    }
    expect(places.at(-1)).toEqual(path.at(-1));
    expect(places.at(-1)?.at).toBeGreaterThan(sound.face.outline.width / 2);
  });

  test('each worn place changes what one of the two pushes does that way, and no other way', () => {
    for (const { name: worn } of wornPlaces) {
      if (worn === 'nowhere') continue;
      const changed = trials.filter(
        ({ bearing, ratio, worn: place }) =>
          place === worn &&
          pushBall(faceWorn(worn), bearing, ratio).isHeld !==
            pushBall(faceWorn('nowhere'), bearing, ratio).isHeld,
      );
      expect(changed.map(({ way }) => way)).toEqual([worn]);
    }
  });
});

describe('what it says', () => {
  test('a slip is put down to the wear only where the edge is worn', () => {
    expect(outcomeOf('front', 'front', false)).toMatch(/worn front edge/);
    expect(outcomeOf('front', 'top', false)).not.toMatch(/worn/);
    expect(outcomeOf('top', 'top', true)).toMatch(/held/);
  });

  test('no sentence is over fifteen words, and none has a number', () => {
    for (const block of everySentence) {
      expect(block).toMatch(/[.?!]$/);
      for (const sentence of sentencesOf(block)) {
        expect(wordsOf(sentence).length, sentence).toBeLessThanOrEqual(15);
      }
    }
  });

  test('grade at most 6 by Flesch–Kincaid and 8 by SMOG', () => {
    const counts = countText(everySentence);
    expect(counts.sentences).toBeGreaterThanOrEqual(30);
    expect(fleschKincaidGrade(counts)).toBeLessThanOrEqual(6);
    expect(smogGrade(counts)).toBeLessThanOrEqual(8);
  });
});
