import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bandsOf, linesOf, roundStep } from '../../../sims/benches/peg-board/bands.ts';
import { describe as inWords } from '../../../sims/benches/peg-board/describe.ts';
import { readBoardLink, writeBoardLink } from '../../../sims/benches/peg-board/link.ts';
import { presets } from '../../../sims/benches/peg-board/presets.ts';
import { liftRose } from '../../../sims/benches/peg-board/rose.ts';
import { backLine, bodyLine } from '../../../sims/benches/peg-board/section-figure.ts';
import { loadOf, seatOf } from '../../../sims/benches/peg-board/seat.ts';
import {
  defaultBoard,
  groundRanges,
  loadRanges,
  type BallLoad,
  type BedKind,
} from '../../../sims/benches/peg-board/settings.ts';
import {
  backMesh,
  boneMesh,
  pegMesh,
  socketMesh,
} from '../../../sims/benches/peg-board/solid/board-mesh.ts';
import { standOf } from '../../../sims/benches/peg-board/stand.ts';
import { extremeOf, gapAt } from '../../../sims/benches/peg-board/tilt.ts';
import { createView } from '../../../sims/figures/view.ts';
import { solveSeat } from '../../../sims/mechanics/index.ts';
import { expectClose } from '../geometry/close.ts';

const { design, load } = defaultBoard;
const round = { ...defaultBoard.ground, back: 'round' as const };
const designs = presets.map((preset) => preset.design);
const beds: fc.Arbitrary<BedKind> = fc.constantFrom('pressed', 'rough', 'bonded');
const loads: fc.Arbitrary<BallLoad> = fc.record({
  press: fc.integer(loadRanges.press),
  shear: fc.integer(loadRanges.shear),
  bearing: fc.integer(loadRanges.bearing),
  share: fc.integer(loadRanges.share),
});

const away = (a: { readonly x: number; readonly y: number }, b: typeof a): number =>
  Math.hypot(a.x - b.x, a.y - b.y);

function areaOf(line: readonly { readonly x: number; readonly y: number }[]): number {
  const twice = line.reduce((sum, { x, y }, i) => {
    const next = line[(i + 1) % line.length] ?? { x, y };
    return sum + x * next.y - next.x * y;
  }, 0);
  return Math.abs(twice) / 2;
}

describe('a socket with a round back', () => {
  test('has the gaps of the solver’s own elements, straight off its back', () => {
    fc.assert(
      fc.property(fc.constantFrom(...designs), beds, loads, (of, bed, by) => {
        const seat = seatOf(of, { ...round, bed });
        const stand = standOf(seat, by);
        const solution = solveSeat({ elements: seat.elements, load: loadOf(seat.curve, by) });
        const size = Math.max(...solution.displacement.map(Math.abs), 1e-6);
        solution.elements.forEach(({ gap }, i) => {
          const element = seat.elements[i];
          if (element === undefined || element.tension === 'limited') return;
          const [x, y] = element.position;
          if (Math.abs(element.normal[2]) < 0.5) return;
          expectClose(gapAt(stand.tilt, { x, y }), gap, { absolute: 1e-9 * size });
        });
      }),
      { seed: 21, numRuns: 25 },
    );
  });

  test('comes to that of a flat back as its radius grows', () => {
    const flat = standOf(seatOf(design, defaultBoard.ground), load);
    const nearly = standOf(seatOf(design, { ...round, backRadius: 1e6 }), load);
    expectClose(nearly.liftOff, flat.liftOff, { relative: 1e-3 });
    expectClose(nearly.pressIn, flat.pressIn, { relative: 1e-3 });
    nearly.pegs.forEach(({ pull }, i) => {
      expectClose(pull, flat.pegs[i]?.pull ?? NaN, { relative: 1e-3, absolute: 1e-2 });
    });
  });

  test('lifts and presses no less anywhere than it says', () => {
    fc.assert(
      fc.property(fc.constantFrom(...designs), beds, loads, (of, bed, by) => {
        const seat = seatOf(of, { ...round, bed });
        const { outcome, tilt, liftOff, pressIn } = standOf(seat, by);
        if (outcome !== 'balanced') return;
        for (const { x, y } of seat.edge) {
          for (const share of [0, 0.3, 0.7, 1]) {
            const gap = gapAt(tilt, { x: share * x, y: share * y });
            expect(gap).toBeLessThanOrEqual(liftOff + 1e-12);
            expect(gap).toBeGreaterThanOrEqual(-pressIn - 1e-12);
          }
        }
      }),
      { seed: 23, numRuns: 40 },
    );
  });

  test('turns in its hollow where bone can only press and nothing else holds it', () => {
    const bare = { pegs: [], keel: null };
    expect(standOf(seatOf(bare, round), load).outcome).toBe('sliding');
    expect(standOf(seatOf(bare, { ...round, bed: 'bonded' }), load).outcome).toBe('balanced');
  });

  test('fits every outline the board can take', () => {
    for (const backRadius of [groundRanges.backRadius.min, groundRanges.backRadius.max]) {
      for (const width of [groundRanges.width.min, groundRanges.width.max]) {
        const ground = { ...round, width, height: groundRanges.height.max, backRadius };
        const rose = liftRose(seatOf(design, ground), load);
        expect(rose.every(({ outcome }) => outcome === 'balanced')).toBe(true);
      }
    }
  });
});

describe('the map of a round back', () => {
  test('covers the back once, each band within its separations', () => {
    fc.assert(
      fc.property(fc.constantFrom(...designs.slice(0, 6)), beds, loads, (of, bed, by) => {
        const seat = seatOf(of, { ...round, bed });
        const { outcome, tilt, liftOff, pressIn } = standOf(seat, by);
        if (outcome !== 'balanced') return;
        const bands = [
          ...bandsOf(seat.edge, tilt, 'pressed', roundStep(pressIn)),
          ...bandsOf(seat.edge, tilt, 'open', roundStep(liftOff)),
        ];
        expectClose(
          bands.reduce((sum, { line }) => sum + areaOf(line), 0),
          areaOf(seat.edge),
          { relative: 0.01 },
        );
        for (const { from, to, line } of bands) {
          const slack = 1e-4 * (liftOff + pressIn);
          // Along the edge, and at the extreme, a band may run out to nothing.
          const ends = [...seat.edge, extremeOf(seat.edge, tilt)];
          const inside = line.filter((at) => ends.every((end) => away(at, end) > 1.5));
          for (const at of inside) {
            expect(gapAt(tilt, at)).toBeGreaterThanOrEqual(Math.min(from, to) - slack);
            expect(gapAt(tilt, at)).toBeLessThanOrEqual(Math.max(from, to) + slack);
          }
        }
      }),
      { seed: 29, numRuns: 25 },
    );
  });

  test('a press in the middle is rings round its deepest place', () => {
    const seat = seatOf({ pegs: [], keel: null }, { ...round, bed: 'bonded' });
    const { tilt, pressIn } = standOf(seat, { ...load, shear: 0, share: 0 });
    const deepest = extremeOf(seat.edge, tilt);
    expectClose(gapAt(tilt, deepest), -pressIn, { relative: 1e-12 });
    const [ring, ...more] = linesOf(seat.edge, tilt, [-0.97 * pressIn]);
    expect(more).toHaveLength(0);
    expect(ring?.line[0]).toEqual(ring?.line.at(-1));
    for (const at of ring?.line ?? []) {
      expectClose(gapAt(tilt, at), -0.97 * pressIn, { relative: 1e-6 });
    }
    expect(linesOf(seat.edge, tilt, [-2 * pressIn])).toEqual([]);
  });
});

describe('drawn', () => {
  const seat = seatOf(design, round);
  const still = { displacement: [0, 0, 0], rotation: [0, 0, 0], times: 1 } as const;
  const onSphere = (away: number, z: number): void =>
    expectClose(Math.hypot(away, z + 5 - round.backRadius), round.backRadius, { relative: 1e-9 });
  const corners = ({ positions }: { readonly positions: readonly number[] }) =>
    Array.from({ length: positions.length / 3 }, (_, i) =>
      [0, 1, 2].map((k) => positions[3 * i + k] ?? NaN),
    );

  test('its back is an arc of its radius, in the section and in three dimensions', () => {
    for (const { x, z } of backLine(-12, 14, round.backRadius)) onSphere(x, z);
    for (const [x = NaN, y = NaN, z = NaN] of corners(
      backMesh(
        seat.curve,
        still,
        { a: 0, b: 0, c: 0, radius: round.backRadius },
        standOf(seat, load),
      ),
    ))
      onSphere(Math.hypot(x, y), z);
    const view = createView({ width: 400, height: 300, scale: 5, origin: { x: 200, y: 150 } });
    const flat = bodyLine(seat.curve, 30, view);
    expect(bodyLine(seat.curve, 30, view, Infinity)).toBe(flat);
    expect(bodyLine(seat.curve, 30, view, round.backRadius).length).toBeGreaterThan(flat.length);
  });

  test('the socket has thickness left at its edge, and pegs stand on its back', () => {
    const wide = { ...round, height: 44, width: 34, backRadius: groundRanges.backRadius.min };
    const { curve } = seatOf(design, wide);
    const spots = corners(socketMesh(curve, still, wide.backRadius));
    const rays = spots.length / 13;
    for (let i = 0; i < rays; i++) {
      const [over, under] = [spots[13 * i + 11], spots[13 * i + 12]];
      expect((over?.[2] ?? NaN) - (under?.[2] ?? NaN)).toBeGreaterThan(1.5);
    }
    const [peg] = design.pegs;
    if (peg === undefined) throw new Error('no peg');
    const tops = corners(pegMesh(peg, still, round.backRadius)).map(([, , z = NaN]) => z);
    onSphere(Math.hypot(peg.x, peg.y), Math.max(...tops));
    for (const [x = NaN, y = NaN, z = NaN] of corners(boneMesh(seat.curve, round.backRadius)))
      expect(z).toBeLessThanOrEqual(-5 + Math.hypot(x, y) ** 2 / round.backRadius);
  });
});

test('is told in words and kept in the link; a radius that is none is not taken', () => {
  const setting = { ...defaultBoard, ground: { ...round, backRadius: 45 } };
  const query = writeBoardLink(setting);
  expect(query).toBe('back=round&radius=45');
  expect(readBoardLink(query)).toEqual({ state: setting, problem: '' });
  const seat = seatOf(design, setting.ground);
  const words = inWords({ ...setting, stand: standOf(seat, load), rose: [] });
  expect(words.replaceAll('\u00a0', ' ')).toContain(
    'by 27.0 mm, round with a radius of 45.0 mm, on',
  );
  for (const wrong of ['radius=3', 'radius=Infinity', 'back=square']) {
    const { state, problem } = readBoardLink(`${wrong}&press=900`);
    expect(problem).toMatch(/^Not taken from the link: (radius|shape) of the back “/);
    expect(state.ground).toEqual(defaultBoard.ground);
  }
});
