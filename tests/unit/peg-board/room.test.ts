import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  added,
  moved,
  onGround,
  resizedKeel,
  resizedPeg,
  spreadOf,
  spreadTo,
  withKeel,
} from '../../../sims/benches/peg-board/edit.ts';
import { curveOf } from '../../../sims/benches/peg-board/outline.ts';
import { presets } from '../../../sims/benches/peg-board/presets.ts';
import {
  BETWEEN,
  clearance,
  fitted,
  isOnBack,
  others,
} from '../../../sims/benches/peg-board/room.ts';
import {
  defaultBoard,
  MOST_PEGS,
  newKeel,
  newPeg,
  pegRanges,
  type Design,
} from '../../../sims/benches/peg-board/settings.ts';

const curve = curveOf(defaultBoard.ground);
const bare: Design = { pegs: [], keel: null };
const anywhere = fc.record({
  x: fc.double({ min: -60, max: 60, noNaN: true }),
  y: fc.double({ min: -60, max: 60, noNaN: true }),
});

/** Everything on the back, clear of its edge and of each other. */
function expectSound(design: Design, on = curve): void {
  const feet = others(design, null);
  for (const { name, foot } of feet) {
    expect(isOnBack(on, foot), name).toBe(true);
    for (const other of feet) {
      if (other.name !== name)
        expect(clearance(foot, other.foot), `${name}, ${other.name}`).toBeGreaterThanOrEqual(
          BETWEEN - 1e-9,
        );
    }
  }
}

test.each(presets)('$id stands as it is told on the usual back', ({ design }) => {
  expect(fitted(curve, design)).toEqual(design);
  expectSound(design);
});

describe('a peg', () => {
  test('goes where it is put, if there is room', () => {
    const { design, problem } = moved(curve, defaultBoard.design, 0, { x: 1.5, y: 7 });
    expect(design.pegs[0]).toMatchObject({ x: 1.5, y: 7 });
    expect(problem).toBe('');
  });

  test('put anywhere comes to rest near by, on the back and clear of the others', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...presets.filter(({ design }) => design.pegs.length > 0)),
        anywhere,
        ({ design }, place) => {
          const next = moved(curve, design, 0, place);
          expectSound(next.design);
          expect(next.design.pegs.slice(1)).toEqual(design.pegs.slice(1));
        },
      ),
      { seed: 7, numRuns: 60 },
    );
  });

  test('put beyond the edge stops at it, and says so', () => {
    const { design, problem } = moved(curve, { ...bare, pegs: [{ ...newPeg, x: 0, y: 0 }] }, 0, {
      x: 30,
      y: 0,
    });
    const [peg] = design.pegs;
    expect(peg?.x).toBeGreaterThan(9);
    expect(Math.abs(peg?.y ?? 99)).toBeLessThan(3);
    expect(problem).toBe(
      'Peg 1 would reach the edge of the back. It stands at the nearest place with room.',
    );
  });

  test('put on another is set beside it, no further than it must be', () => {
    const pegs = [
      { ...newPeg, x: 0, y: 0 },
      { ...newPeg, x: 0, y: 9 },
    ];
    const { design, problem } = moved(curve, { ...bare, pegs }, 1, { x: 1, y: 0 });
    const [first, second] = design.pegs;
    if (first === undefined || second === undefined) throw new Error('no pegs');
    expect(clearance(first, second)).toBeGreaterThanOrEqual(BETWEEN - 1e-9);
    // The nearest place lies straight out from the other's middle: 6 mm away from it, 5 from where it was put.
    expect(Math.hypot(second.x - 1, second.y)).toBeLessThan(5.15);
    expect(problem).toContain('Peg 2 would reach peg 1.');
  });

  test('too thick for its place becomes as thick as there is room for', () => {
    const { design, problem } = resizedPeg(curve, defaultBoard.design, 1, 'diameter', 9);
    const thick = design.pegs[1]?.diameter ?? NaN;
    expect(thick).toBe(9);
    expect(problem).toBe('');
    const near = moved(curve, { ...bare, pegs: [{ ...newPeg, x: 0, y: 13 }] }, 0, { x: 0, y: 14 });
    const wide = resizedPeg(curve, near.design, 0, 'diameter', 9);
    expect(wide.design.pegs[0]?.diameter).toBeLessThan(9);
    expect(wide.problem).toMatch(
      /^Where peg 1 stands there is room for \d\.\d.mm\. It is set so\.$/,
    );
    expectSound(wide.design);
  });

  test('without length is given the least', () => {
    const { design } = resizedPeg(curve, defaultBoard.design, 0, 'length', 0);
    expect(design.pegs[0]?.length).toBe(pegRanges.length.min);
  });
});

test('pegs are added until there are enough, or no room', () => {
  let design = bare;
  for (let i = 0; i < MOST_PEGS; i++) design = added(curve, design).design;
  expect(design.pegs).toHaveLength(MOST_PEGS);
  expectSound(design);
  const more = added(curve, design);
  expect(more.design).toBe(design);
  expect(more.problem).toContain(`takes ${MOST_PEGS} pegs`);
});

test('a keel takes the room that pegs leave', () => {
  expect(withKeel(curve, bare)).toEqual({ design: { ...bare, keel: newKeel }, problem: '' });
  const both = withKeel(curve, defaultBoard.design);
  expectSound(both.design);
  expect(both.design.pegs).toEqual(defaultBoard.design.pegs);
  const high = { ...newKeel, y: 5 };
  const long = resizedKeel(curve, { ...bare, keel: high }, 'span', 99);
  expectSound(long.design);
  expect(long.problem).toMatch(/^Where the keel stands/);
});

describe('spacing from front to back', () => {
  test('is what it is set to where there is room, heights kept', () => {
    for (const spread of [7, 10, 14.5]) {
      const { design } = spreadTo(curve, defaultBoard.design, spread);
      expect(spreadOf(design)).toBeCloseTo(spread, 6);
      expect(design.pegs.map(({ y }) => y)).toEqual(defaultBoard.design.pegs.map(({ y }) => y));
      expectSound(design);
    }
  });

  test('never brings pegs into each other or over the edge', () => {
    for (const spread of [1, 3, 40]) {
      const { design, problem } = spreadTo(curve, defaultBoard.design, spread);
      expectSound(design);
      expect(problem).toMatch(/moved to the nearest place with room/);
    }
  });
});

test('a smaller back takes its pegs along, and says which it moved', () => {
  const ground = { ...defaultBoard.ground, width: 22, height: 30 };
  const wide = presets.find(({ id }) => id === 'fluted')?.design ?? bare;
  const next = onGround(wide, ground);
  if (next === null) throw new Error('no room');
  expectSound(next.design, curveOf(ground));
  expect(next.problem).toMatch(/^Peg 3 and peg 4 were moved to the nearest place with room\.$/);
});
