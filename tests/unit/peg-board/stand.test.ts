import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bandsOf, crossing, roundStep } from '../../../sims/benches/peg-board/bands.ts';
import { reachOfBack, reachOfFace } from '../../../sims/benches/peg-board/outline.ts';
import { presets, triangleApart } from '../../../sims/benches/peg-board/presets.ts';
import { liftRose, roseEnds } from '../../../sims/benches/peg-board/rose.ts';
import { contactOf, FEWER_ELEMENTS, loadOf, seatOf } from '../../../sims/benches/peg-board/seat.ts';
import {
  defaultBoard,
  loadRanges,
  type BallLoad,
  type Design,
} from '../../../sims/benches/peg-board/settings.ts';
import { gapAt, poseIn, standOf } from '../../../sims/benches/peg-board/stand.ts';
import { solveSeat } from '../../../sims/mechanics/index.ts';
import { expectClose } from '../geometry/close.ts';

const { ground, load } = defaultBoard;
const designs = presets.map(({ design }) => design);
const loads: fc.Arbitrary<BallLoad> = fc.record({
  press: fc.integer(loadRanges.press),
  shear: fc.integer(loadRanges.shear),
  bearing: fc.integer(loadRanges.bearing),
  share: fc.integer(loadRanges.share),
});
const triangle = defaultBoard.design;

describe('a socket under its load', () => {
  test('has the gaps and pressures of the solver’s own elements, and at its edge no less', () => {
    const seat = seatOf(triangle, ground);
    const stand = standOf(seat, load);
    const solution = solveSeat({ elements: seat.elements, load: loadOf(seat.curve, load) });
    expect(stand.outcome).toBe('balanced');
    const area = solution.elements.flatMap(({ gap, normalForce }, i) => {
      const element = seat.elements[i];
      if (element?.tension !== 'none') return [];
      const [x, y] = element.position;
      expectClose(gapAt(stand.tilt, { x, y }), gap, { absolute: 1e-12 });
      const pressure = normalForce / (element.normalStiffness / seat.bedStiffness);
      expectClose(pressure, Math.max(0, -gap) * seat.bedStiffness, { absolute: 1e-9 });
      return [element.normalStiffness / seat.bedStiffness];
    });
    expect(area.length).toBeGreaterThan(400);
    expect(stand.liftOff).toBeGreaterThan(solution.liftOff);
    expect(stand.liftOff).toBeLessThan(1.06 * solution.liftOff);
    expect(stand.pressIn).toBeGreaterThanOrEqual(solution.pressIn);
  });

  test('has the pulls and margins of the solver', () => {
    const seat = seatOf(triangle, ground);
    const stand = standOf(seat, load);
    const { pegMargins } = solveSeat({
      elements: seat.elements,
      load: loadOf(seat.curve, load),
    });
    expect(stand.pegs.map(({ margin }) => margin)).toEqual(pegMargins);
    for (const { pull, margin, strength } of stand.pegs) {
      if (pull > 0) expectClose(margin * pull, strength, { relative: 1e-9 });
      else expect(margin).toBe(Infinity);
    }
    expect(stand.pegs.some(({ pull }) => pull > 50)).toBe(true);
  });

  test('never claims a number that is none, whatever is set', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...designs),
        fc.constantFrom('pressed' as const, 'rough' as const, 'bonded' as const),
        loads,
        (design: Design, bed, by) => {
          const stand = standOf(seatOf(design, { ...ground, bed }), by);
          if (stand.outcome !== 'balanced') return;
          for (const value of [stand.liftOff, stand.pressIn, stand.peakPressure]) {
            expect(Number.isFinite(value)).toBe(true);
            expect(value).toBeGreaterThanOrEqual(0);
          }
          for (const { pull, margin, strength } of stand.pegs) {
            expect(pull).toBeLessThanOrEqual(strength * (1 + 1e-9));
            expect(margin).toBeGreaterThanOrEqual(1 - 1e-9);
          }
        },
      ),
      { seed: 11, numRuns: 60 },
    );
  });

  test('slides on slippery bone where nothing holds it, and overturns on bone that grips', () => {
    const none: Design = { pegs: [], keel: null };
    expect(standOf(seatOf(none, ground), load).outcome).toBe('sliding');
    const steep = { ...load, shear: 600 };
    expect(standOf(seatOf(none, { ...ground, bed: 'rough' }), steep).outcome).toBe('overturned');
    expect(standOf(seatOf(none, { ...ground, bed: 'bonded' }), steep).outcome).toBe('balanced');
  });

  test('is cut along the load as the solver has it moved', () => {
    const seat = seatOf(triangle, ground);
    const stand = standOf(seat, load);
    const pose = poseIn(stand, load.bearing);
    const turn = (load.bearing * Math.PI) / 180;
    for (const along of [-10, 0, 10]) {
      const gap = gapAt(stand.tilt, { x: along * Math.cos(turn), y: along * Math.sin(turn) });
      expectClose(pose.z + pose.turn * along, gap, { absolute: 1e-12 });
    }
    // The loaded side goes down.
    expect(pose.turn).toBeLessThan(0);
  });
});

test('the ball touches within the face, and at its rim at the end of the way', () => {
  const { curve } = seatOf(triangle, ground);
  for (const bearing of [0, 47, 90, 200, 270]) {
    const { x, y, z } = contactOf(curve, { bearing, share: 100 });
    expectClose(Math.hypot(x, y), reachOfFace(curve, bearing), { relative: 1e-9 });
    expectClose((27 - z) ** 2 + x ** 2 + y ** 2, 27 ** 2, { relative: 1e-9 });
  }
  expectClose(reachOfBack(curve, 90), ground.height / 2, { relative: 1e-9 });
});

describe('the rose', () => {
  test('of a design alike in front and behind is alike there', () => {
    const rows = liftRose(seatOf(triangle, ground), load);
    expect(rows).toHaveLength(24);
    for (const row of rows) {
      const mirror = rows.find(({ bearing }) => bearing === (540 - row.bearing) % 360);
      expectClose(mirror?.liftOff ?? NaN, row.liftOff, { relative: 1e-6 });
    }
  });

  test('has the socket’s own lift-off where the load stands', () => {
    const seat = seatOf(triangle, ground);
    const row = liftRose(seat, load).find(({ bearing }) => bearing === load.bearing);
    expectClose(row?.liftOff ?? NaN, standOf(seat, load).liftOff, { relative: 1e-12 });
  });

  test('shrinks in front and behind as pegs are set farther apart from front to back', () => {
    const forward = (spacing: number): number =>
      liftRose(seatOf(triangleApart(spacing), ground), load)[0]?.liftOff ?? NaN;
    expect(forward(16)).toBeLessThan(0.95 * forward(8));
    expect(forward(8)).toBeGreaterThan(0);
  });

  test('of fewer elements, as while something is moved, is the same to three in a hundred', () => {
    for (const design of designs.filter(({ pegs, keel }) => pegs.length > 0 || keel !== null)) {
      const coarse = liftRose(seatOf(design, ground, FEWER_ELEMENTS), load);
      liftRose(seatOf(design, ground), load).forEach(({ liftOff, outcome }, i) => {
        expect(coarse[i]?.outcome).toBe(outcome);
        if (outcome === 'balanced')
          expectClose(coarse[i]?.liftOff ?? NaN, liftOff, { relative: 0.03 });
      });
    }
  });

  test('counts no place without rest among its ends', () => {
    const none: Design = { pegs: [], keel: null };
    expect(roseEnds(liftRose(seatOf(none, ground), load))).toBeNull();
    const held = liftRose(seatOf(triangle, ground), load);
    const ends = roseEnds(held);
    const all = held.map(({ liftOff }) => liftOff);
    expect(ends?.least.liftOff).toBe(Math.min(...all));
    expect(ends?.most.liftOff).toBe(Math.max(...all));
  });

  test('moves by less than two in a hundred with a finer bed', async () => {
    const { flatBed } = await import('../../../sims/mechanics/index.ts');
    const seat = seatOf(triangle, ground);
    const bed = flatBed(
      { kind: 'pear', width: ground.width, height: ground.height },
      {
        layer: { thickness: ground.layer, modulus: ground.modulus, poisson: 0.3 },
        level: -5,
        elements: 4000,
      },
    );
    const rest = seat.elements.filter(({ tension }) => tension !== 'none');
    const fine = standOf({ ...seat, elements: [...rest, ...bed], pegs: [], keel: null }, load);
    expectClose(standOf(seat, load).liftOff, fine.liftOff, { relative: 0.02 });
  });
});

describe('the map', () => {
  test('steps are round and five bands hold all', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (range) => {
        const step = roundStep(range);
        expect(range / step).toBeLessThanOrEqual(5 + 1e-6);
        expect(range / step).toBeGreaterThan(1.9);
        expect([1, 2, 5]).toContain(Number(step.toExponential().split('e')[0]));
      }),
    );
  });

  test('bands cover the back once: their areas add up to that of the pressed and of the open part', () => {
    const seat = seatOf(triangle, ground);
    const { tilt, liftOff, pressIn } = standOf(seat, load);
    const area = (line: readonly { x: number; y: number }[]): number =>
      Math.abs(
        line.reduce((sum, { x, y }, i) => {
          const next = line[(i + 1) % line.length] ?? { x, y };
          return sum + (x * next.y - next.x * y) / 2;
        }, 0),
      );
    const bands = [
      ...bandsOf(seat.edge, tilt, 'pressed', roundStep(pressIn)),
      ...bandsOf(seat.edge, tilt, 'open', roundStep(liftOff)),
    ];
    expect(bands.length).toBeGreaterThan(4);
    expectClose(
      bands.reduce((sum, { line }) => sum + area(line), 0),
      area(seat.edge),
      { relative: 1e-9 },
    );
    for (const { from, to, line } of bands) {
      for (const at of line) {
        const gap = gapAt(tilt, at);
        expect(gap).toBeGreaterThanOrEqual(Math.min(from, to) - 1e-9);
        expect(gap).toBeLessThanOrEqual(Math.max(from, to) + 1e-9);
      }
    }
  });

  test('lines of one gap are where the gap is that', () => {
    const seat = seatOf(triangle, ground);
    const { tilt, liftOff } = standOf(seat, load);
    for (const at of crossing(seat.edge, tilt, liftOff / 2) ?? []) {
      expectClose(gapAt(tilt, at), liftOff / 2, { absolute: 1e-12 });
    }
    expect(crossing(seat.edge, tilt, 2 * liftOff)).toBeNull();
  });
});
