import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layOut } from '../../../lessons/07-holding-fast/answers.ts';
import {
  breadthOf,
  gradeLayout,
  measure,
  settablePegs,
} from '../../../sims/benches/peg-board/question-grade.ts';
import {
  readPlaces,
  wallLine,
  wallOf,
  writePlaces,
  type PegPlaces,
} from '../../../sims/benches/peg-board/question-task.ts';
import { curveOf, isInside } from '../../../sims/benches/peg-board/outline.ts';
import { seatOf } from '../../../sims/benches/peg-board/seat.ts';
import { standOf } from '../../../sims/benches/peg-board/stand.ts';

const { task } = layOut();
const at = (...places: readonly (readonly [number, number])[]): PegPlaces =>
  places.map(([x, y]) => ({ x, y }));
const grade = (places: PegPlaces) => gradeLayout(task, places);

describe('the layout that the lesson asks for', () => {
  test.each([
    ['one above, two below', task.way],
    ['two above, one below', at([5, 5], [-5, 5], [0, -11])],
    ['a slanting triangle', at([5, -9], [2, 9], [-7.5, -4.5])],
    ['its mirror image', at([-5, -9], [-2, 9], [7.5, -4.5])],
  ])('can be met by %s', (_, places) => {
    const { isMet, requirements, outcomes } = grade(places);
    expect(requirements.filter((each) => !each.isMet)).toEqual([]);
    expect(isMet).toBe(true);
    expect(outcomes).toEqual([]);
  });

  test.each([
    ['the start, on one upright line', task.start, ['one-line']],
    ['a slanting line', at([5, 6], [0, 0], [-5, -6]), ['one-line']],
    ['two too near from front to back', at([0, 9], [3, -7], [-3, -7]), ['near-across']],
    ['all near the middle of the height', at([0, 4], [4, -3], [-4, -3]), ['near-along']],
    ['one alone below, on a short lever', at([5, 5], [-5, 5], [0, -9]), ['pulled']],
    ['a triangle that leaves too little wall', at([0, 13.5], [8.5, -7], [-8.5, -7]), ['outside']],
    ['two faults at once', at([3, 9], [7, -8], [-1, -8]), ['near-across', 'outside']],
  ])('is not met by %s', (_, places, outcomes) => {
    expect(grade(places)).toMatchObject({ isMet: false, outcomes });
  });

  test('its numbers are those of the seat with the load carried round', () => {
    const seat = seatOf(
      { pegs: task.way.map((place) => ({ ...task.peg, ...place })), keel: null },
      task.ground,
    );
    const round = Array.from({ length: 24 }, (_, i) =>
      standOf(seat, { ...task.load, bearing: 15 * i }),
    );
    const most = Math.max(...round.map(({ liftOff }) => liftOff));
    const least = Math.min(...round.flatMap(({ pegs }) => pegs.map(({ margin }) => margin)));
    const [lift, margin] = grade(task.way).requirements;
    expect(lift?.found).toContain(`${(1000 * most).toFixed(0)}\u00a0µm`);
    expect(margin?.found).toContain(least.toFixed(2));
  });

  test('is kept as a text and read back; anything else is no layout', () => {
    for (const places of [task.start, task.way, at([5, -9], [2, 9], [-7.5, -4.5])]) {
      expect(readPlaces(task, writePlaces(places))).toEqual(places);
    }
    for (const text of [
      '',
      'nonsense',
      '0*9_0*0',
      '0*9_0*0_0*-9_4*4',
      '0*9_0*0_99*0',
      '0*9_0*8_0*-9',
      '0*17_0*0_0*-9',
    ]) {
      expect(readPlaces(task, text)).toBeNull();
    }
    expect(settablePegs.words(task, task.way)).toContain(
      'Peg 2 stands 5.5\u00a0mm to the front, 7.0\u00a0mm down.',
    );
  });
});

describe('the wall beside a peg', () => {
  test('on the line of the wall a peg of no thickness has that wall', () => {
    for (const place of wallLine(task.ground, task.limits.wall)) {
      expect(wallOf(task.ground, { ...task.peg, ...place, diameter: 0 })).toBeCloseTo(
        task.limits.wall,
        1,
      );
      expect(isInside(curveOf(task.ground), place)).toBe(true);
    }
  });
});

test('pegs on a line have no breadth, those of an equal-sided triangle its height', () => {
  expect(breadthOf(at([1, 2], [3, 4], [7, 8]))).toBeCloseTo(0, 9);
  expect(breadthOf(at([0, 0], [10, 0], [5, 5 * Math.sqrt(3)]))).toBeCloseTo(5 * Math.sqrt(3), 2);
});

test('a layout and its mirror image, front for back, are kept alike and come to the same', () => {
  const tenths = (most: number) =>
    fc.integer({ min: -10 * most, max: 10 * most }).map((n) => n / 10);
  const place = fc.record({ x: tenths(8), y: tenths(12) });
  const layout = fc
    .array(place, { minLength: 3, maxLength: 3 })
    .filter((places) => readPlaces(task, writePlaces(places)) !== null);
  fc.assert(
    fc.property(layout, (places) => {
      expect(readPlaces(task, writePlaces(places))).toEqual(
        places.map(({ x, y }) => ({ x: x || 0, y: y || 0 })),
      );
      const mirrored = places.map(({ x, y }) => ({ x: 0 - x, y }));
      const [one, other] = [measure(task, places), measure(task, mirrored)];
      expect(other.round.worst.stand.liftOff).toBeCloseTo(one.round.worst.stand.liftOff, 7);
      expect(other.pulled.margin).toBeCloseTo(one.pulled.margin, 5);
      expect(other.outmost.wall).toBeCloseTo(one.outmost.wall, 9);
    }),
    { numRuns: 12 },
  );
});
