import { describe, expect, test } from 'vitest';
import { seatOf } from '../../../sims/benches/peg-board/seat.ts';
import { defaultBoard } from '../../../sims/benches/peg-board/settings.ts';
import {
  edges,
  everySentence,
  holdings,
  outcomeOf,
  pictureWords,
  pressedAt,
} from '../../../sims/benches/peg-board/simple-words.ts';
import { gapAt, isRest, standOf } from '../../../sims/benches/peg-board/stand.ts';
import { expectEasy, expectShortAndWhole } from './plain-text.ts';

const trials = holdings.flatMap(({ name: hold }) =>
  edges.map(({ name: edge, bearing }) => ({ hold, edge, bearing })),
);

describe('what the plain bench does', () => {
  test.each(trials)('$hold, pressed at the $edge: it rests where the board says', (trial) => {
    const { design, stand } = pressedAt(trial.hold, trial.edge);
    const load = { ...defaultBoard.load, bearing: trial.bearing };
    expect(isRest(stand)).toBe(true);
    expect(stand.liftOff).toBe(standOf(seatOf(design, defaultBoard.ground), load).liftOff);
    expect(stand.pegs.every(({ isSlipping }) => !isSlipping)).toBe(true);
  });

  test.each(trials)('$hold, pressed at the $edge: it is the edge across that lifts', (trial) => {
    const { seat, stand } = pressedAt(trial.hold, trial.edge);
    const turn = (trial.bearing * Math.PI) / 180;
    const highest = seat.edge.reduce((most, at) =>
      gapAt(stand.tilt, at) > gapAt(stand.tilt, most) ? at : most,
    );
    const along = highest.x * Math.cos(turn) + highest.y * Math.sin(turn);
    expect(along).toBeLessThan(-10);
  });

  test('the three lift differently, and in the order the card tells', () => {
    for (const { name: edge } of edges) {
      const said = holdings.map(({ name }) => outcomeOf(edge, pressedAt(name, edge)));
      expect(new Set(said).size).toBe(3);
      const [one = 0, apart = 0, fin = 0] = holdings.map(
        ({ name }) => pressedAt(name, edge).stand.liftOff,
      );
      expect(one).toBeGreaterThan(fin);
      expect(fin).toBeGreaterThan(apart);
    }
  });
});

describe('what it says', () => {
  test('an outcome names the edge pressed and the one across', () => {
    expect(outcomeOf('front', pressedAt('one', 'front'))).toBe(
      'You press the front. The back edge lifts a lot.',
    );
    expect(outcomeOf('top', pressedAt('apart', 'top'))).toBe(
      'You press the top. The bottom edge lifts just a little.',
    );
    expect(pictureWords('fin', 'top')).toMatch(/bottom to top.*fin/);
  });

  test('no sentence is over fifteen words, and none has a number', () => {
    expectShortAndWhole(everySentence);
  });

  test('grade at most 6 by Flesch–Kincaid and 8 by SMOG', () => {
    expectEasy(everySentence, 20);
  });
});
