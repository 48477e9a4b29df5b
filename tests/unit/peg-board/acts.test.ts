import { describe, expect, test } from 'vitest';
import { acts } from '../../../lessons/07-holding-fast/acts.ts';
import {
  farLift,
  leftByTurning,
  liftBySquare,
  line,
  lineSeated,
  nearLift,
  one,
  peeled,
  turned,
  turnedSeated,
} from '../../../lessons/07-holding-fast/stage-seats.ts';
import { FAR } from '../../../lessons/07-holding-fast/seats.ts';
import { boardAct, cellsOf, endsOfRose, stageLoad } from '../../../sims/benches/peg-board/acts.ts';
import { liftRose } from '../../../sims/benches/peg-board/rose.ts';
import { seatOf } from '../../../sims/benches/peg-board/seat.ts';
import { defaultBoard } from '../../../sims/benches/peg-board/settings.ts';
import { standOf } from '../../../sims/benches/peg-board/stand.ts';

const [single, upAndDown, frontAndBack, three, keel, fluted] = acts;

describe('the acts of the lecture on holding fast', () => {
  test.each(acts)('$text: its numbers are those of the board', ({ design, ends }) => {
    const seat = seatOf(design, defaultBoard.ground);
    expect(ends.front).toBe(standOf(seat, { ...stageLoad, bearing: 0 }).liftOff);
    expect(ends.up).toBe(standOf(seat, { ...stageLoad, bearing: 90 }).liftOff);
    expect(ends.lost).toBeNull();
    expect(ends.margin).toBeGreaterThanOrEqual(1 - 1e-9);
  });

  test('each says what its press is there to show', () => {
    expect(upAndDown.ends.up).toBeLessThan(upAndDown.ends.front);
    expect(frontAndBack.ends.front).toBeLessThan(frontAndBack.ends.up);
    expect(three.ends.front).toBeLessThan(frontAndBack.ends.front);
    expect(three.ends.up).toBeLessThan(upAndDown.ends.up);
    expect(keel.ends.up).toBeLessThan(keel.ends.front);
    for (const { ends } of acts.slice(1)) {
      expect(ends.front).toBeLessThan(single.ends.front);
      expect(ends.up).toBeLessThan(single.ends.up);
    }
    expect(cellsOf(fluted.ends)[2]).toBe('slips');
    expect(acts.filter(({ ends }) => cellsOf(ends)[2] === 'slips')).toEqual([fluted]);
  });

  test('the pair is the same pair turned, and C is the answer of the vote', () => {
    const sizes = ({ pegs }: typeof line) =>
      pegs.map(({ kind, diameter, length }) => ({ kind, diameter, length }));
    expect(sizes(turned)).toEqual(sizes(line));
    const apart = (axis: 'x' | 'y', { pegs }: typeof line) =>
      Math.abs((pegs[0]?.[axis] ?? NaN) - (pegs[1]?.[axis] ?? NaN));
    expect([apart('x', turned), apart('y', turned)]).toEqual([FAR, 0]);
    expect([apart('x', line), apart('y', line)]).toEqual([0, FAR]);
    expect(sizes(one)[0]).toEqual(sizes(line)[0]);
    expect(leftByTurning).toBeLessThan(0.5);
  });

  test('what lifts less is pulled harder, and bone keeps the lift above the square of the spacing', () => {
    expect(turnedSeated.stand.liftOff).toBeLessThan(lineSeated.stand.liftOff);
    expect(turnedSeated.hardest).toBeGreaterThan(lineSeated.hardest);
    expect(liftBySquare(FAR)).toBeCloseTo(nearLift / 4, 12);
    expect(farLift).toBeGreaterThan(1.5 * liftBySquare(FAR));
    expect(farLift).toBeLessThan(nearLift);
  });

  test('the unrolled outer peg is worth what the board takes for it', () => {
    const seat = seatOf(fluted.design, defaultBoard.ground);
    expect(peeled[0]?.pullOut).toBeCloseTo(seat.pegs[1]?.strength ?? NaN, 9);
  });
});

describe('what the room reads', () => {
  test('a layout without rest has a dash, never a number', () => {
    const bare = boardAct('nothing', { pegs: [], keel: null });
    expect(bare.ends.lost).toBe('sliding');
    expect(cellsOf(bare.ends)).toEqual(['–', '–', '–']);
  });

  test('front and above are read at their own places of the rose', () => {
    const rows = liftRose(seatOf(line, defaultBoard.ground), stageLoad);
    const turnedRound = rows.map((row, i) => ({ ...row, liftOff: i }));
    expect(endsOfRose(turnedRound)).toMatchObject({ front: 0, up: 6 });
  });
});
