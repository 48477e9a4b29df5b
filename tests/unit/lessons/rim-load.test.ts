import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roundWedge } from '../../../lessons/06-rim-load/round-wedge.ts';
import * as b from '../../../lessons/06-rim-load/blocks.ts';
import * as c from '../../../lessons/06-rim-load/curves.ts';
import * as r from '../../../lessons/06-rim-load/rocked.ts';
import * as n from '../../../lessons/06-rim-load/seats.ts';
import { wedgeUnder, wedgeWithPeg, type Block } from '../../../lessons/06-rim-load/wedge.ts';
import { FADING_WAY } from '../../../sims/benches/rocking-bench/run.ts';
import { flatBed, solveSeat, type SeatElement } from '../../../sims/mechanics/index.ts';
import { bentBack, stiffBack } from '../../../sims/mechanics/plank-on-bed.ts';

/** A block of the handbook: 750 N, 12 mm off the middle. */
const handbook: Block = { length: 35, width: 25, bed: 10 };

/** The same block as elements for the solver; its bed is a layer without a Poisson’s ratio, one mm thick. */
function solved(block: Block, load: number, foot: number, peg?: SeatElement) {
  const bed = flatBed(
    { kind: 'rectangle', width: block.width, height: block.length },
    {
      layer: { thickness: 1, modulus: block.bed, poisson: 0 },
      level: 0,
      isRough: true,
      elements: 8000,
    },
  );
  const elements = peg === undefined ? bed : [...bed, peg];
  return solveSeat({ elements, load: { force: [0, 0, -load], point: [0, foot, 0] } });
}

describe('the wedge under a rectangular back', () => {
  test('handbook: contact, peak and lift without a peg, and with one', () => {
    const bare = wedgeUnder(handbook, 750, 12);
    expect(bare.contact).toBeCloseTo(16.5, 9);
    expect(bare.peak).toBeCloseTo(3.636, 3);
    expect(bare.lift).toBeCloseTo(0.4077, 4);
    const held = wedgeWithPeg(handbook, 750, 12, { at: 30, stiffness: 5000 });
    expect(held.contact).toBeCloseTo(27.274, 3);
    expect(held.pull).toBeCloseTo(128.8, 1);
    expect(held.lift).toBeCloseTo(0.073, 4);
  });

  test('any block: forces and moments balance, and so they do with a peg', () => {
    fc.assert(
      fc.property(
        fc.record({
          length: fc.double({ min: 20, max: 50, noNaN: true }),
          width: fc.double({ min: 10, max: 40, noNaN: true }),
          bed: fc.double({ min: 1, max: 80, noNaN: true }),
        }),
        fc.double({ min: 10, max: 1000, noNaN: true }),
        fc.double({ min: 0, max: 0.48, noNaN: true }),
        (block, load, share) => {
          const foot = share * block.length;
          const { contact, peak, far } = wedgeUnder(block, load, foot);
          const carried = (block.width * contact * (peak + far)) / 2;
          expect(Math.abs(carried / load - 1)).toBeLessThan(1e-9);
          const fromEdge = (contact * (peak + 2 * far)) / (3 * (peak + far));
          expect(Math.abs(fromEdge - (block.length / 2 - foot))).toBeLessThan(1e-9 * block.length);
        },
      ),
    );
  });

  test('the solver in three dimensions has the same wedge, with and without the peg', () => {
    const { block, peg, PEG_FOOT } = b;
    const { press } = n;
    const bare = wedgeUnder(block, press, PEG_FOOT);
    const free = solved(block, press, PEG_FOOT);
    expect(free.contactShare * block.length).toBeCloseTo(bare.contact, 0);
    const turn = (solution: typeof free): number => Math.abs(solution.rotation[0]);
    expect(Math.abs(turn(free) / bare.tilt - 1)).toBeLessThan(5e-3);
    const held = solved(block, press, PEG_FOOT, {
      position: [0, block.length / 2 - peg.at, 0],
      normal: [0, 0, 1],
      normalStiffness: peg.stiffness,
      tangentialStiffness: 0,
      tension: 'elastic',
    });
    expect(Math.abs(turn(held) / b.pegged.tilt - 1)).toBeLessThan(5e-3);
    const pull = -(held.elements.at(-1)?.normalForce ?? 0);
    expect(Math.abs(pull / b.pegged.pull - 1)).toBeLessThan(5e-3);
  });

  test('loads that leave the block, and pegs that are not pulled, are refused', () => {
    expect(() => wedgeUnder(handbook, 750, 17.5)).toThrow(/eccentricity is 17.5/u);
    expect(() => wedgeWithPeg(handbook, 750, 1, { at: 30, stiffness: 50 })).toThrow(
      /eccentricity is 1/u,
    );
  });
});

describe('the wedge under a round back', () => {
  test.each([
    [0.25, 2],
    [0.35, 2.456],
    [0.45, 3.109],
    [0.5, 3.56],
    [(3 * Math.PI) / 16, (3 * Math.PI) / 2],
    [0.7, 7.428],
    [0.8, 13.44],
  ])('handbook: at %f of the radius the peak is %f times the mean', (share, peak) => {
    expect(Math.abs(roundWedge(share).peakShare / peak - 1)).toBeLessThan(1e-3);
  });

  test('at 3π/16 of the radius half of it is in contact', () => {
    expect(roundWedge((3 * Math.PI) / 16).contactShare).toBeCloseTo(0.5, 9);
  });

  test('the solver has the same contact under the bench’s elliptic back', () => {
    const { contactShare } = roundWedge(n.halfway.foot / (n.height / 2));
    expect(contactShare).toBeLessThan(1);
    const { pose } = n.middleway.bare;
    // The level line lies where the back has neither risen nor sunk.
    const level = -pose.z / pose.turn;
    expect(Math.abs(n.height / 2 - level - contactShare * n.height)).toBeLessThan(0.02 * n.height);
  });
});

describe('a back that bends', () => {
  test('so stiff that nothing bends, it is the plane of the rigid back', () => {
    const plank = { ...b.plank, modulus: 1e7 };
    const [first, last] = stiffBack(plank, n.press, b.BEND_FOOT);
    const stiff = bentBack(plank, n.press, b.BEND_FOOT);
    expect(Math.abs((stiff[0]?.rise ?? 0) / (first?.rise ?? 1) - 1)).toBeLessThan(2e-3);
    expect(Math.abs((stiff.at(-1)?.rise ?? 0) / (last?.rise ?? 1) - 1)).toBeLessThan(2e-3);
  });

  test('the bed carries the load', () => {
    const step = b.plank.length / (b.bent.length - 1);
    const sum = b.bent.reduce(
      (all, { rise }, i) => all + rise * (i === 0 || i === b.bent.length - 1 ? 0.5 : 1),
      0,
    );
    expect(Math.abs((-sum * step * b.plank.width * b.plank.bed) / n.press - 1)).toBeLessThan(1e-3);
  });
});

describe('what the lesson says', () => {
  test('first lift: at the edge of the kern; the solver agrees within its mesh', () => {
    const lifted = (place: number): number => n.rest(n.bare, { place }).liftOff;
    expect(lifted(n.firstLift.place * 0.98)).toBe(0);
    expect(lifted(n.firstLift.place * 1.1)).toBeGreaterThan(0);
    expect(n.firstLiftOutcome).toBe('part-way');
  });

  test('a bare back goes over before the rim, and a peg holds it', () => {
    expect(n.rest(n.bare, { place: n.goingOver.place - 4 }).state).toBe('at rest');
    expect(n.rest(n.bare, { place: n.goingOver.place + 1 }).state).toBe('overturned');
    expect(n.near.onePeg.state).toBe('at rest');
  });

  test('twice the press, twice the gap, until a peg slips; then more', () => {
    expect(n.doubledOutcome).toBe('doubles');
    const { points, slipsAt } = c.growthOf(n.onePeg);
    const gap = (press: number): number => points.find(([each]) => each === press)?.[1] ?? 0;
    expect(slipsAt).toBeGreaterThan(400);
    expect(gap(400) / gap(200)).toBeCloseTo(2, 6);
    expect(gap(1000) / gap(500)).toBeGreaterThan(2.2);
  });

  test('held, the gap stays; slipped, it settles larger; worn, it grows on', () => {
    const [held, slipped, worn] = [r.gapsOf(r.held), r.gapsOf(r.slipped), r.gapsOf(r.worn)];
    expect(Math.max(...held) / Math.min(...held)).toBeLessThan(1.0001);
    expect(slipped[3]).toBeGreaterThan(1.05 * (slipped[0] ?? 0));
    expect(Math.abs((slipped.at(-1) ?? 0) / (slipped[3] ?? 1) - 1)).toBeLessThan(1e-3);
    expect(worn[7]).toBeGreaterThan(1.5 * (worn[2] ?? 0));
  });

  test('a peg that has slipped stands out when nothing pulls it, and pulls again only from there', () => {
    const strength = n.strengthOf(n.twoPressFit);
    expect(Math.max(...c.loop.map(([, pull]) => pull))).toBeCloseTo(strength, 6);
    expect(c.keptSlip).toBeGreaterThan(0.05);
    const [outward, pulled] = c.loop.find(([, pull]) => pull > strength / 2) ?? [1, 0];
    const later = c.loop.slice(2 * n.nearRim.place).filter(([, pull]) => pull > 0);
    expect(later.length).toBeGreaterThan(5);
    for (const [out, pull] of later) {
      const elastic = (pulled / outward) * (out - c.keptSlip);
      expect(Math.abs(pull - Math.min(strength, elastic))).toBeLessThan(0.01 * strength);
    }
  });

  test('a peg in the middle props the back half-way out, and holds it near the rim', () => {
    expect(n.middleway.onePeg.liftOff).toBeGreaterThan(n.middleway.bare.liftOff);
    expect(n.near.bare.state).toBe('overturned');
    expect(n.near.twoPegs.liftOff).toBeLessThan(n.near.onePeg.liftOff);
  });

  test('its wear is the bench’s', () => {
    expect(r.WEARS_OVER).toBe(FADING_WAY);
  });

  test('a bonded back of polyethylene bends so much that its far edge is pressed in, where a rigid one is lifted', () => {
    expect(b.stiffFar).toBeGreaterThan(0.005);
    expect(b.bentFar).toBeLessThan(0);
    expect(b.bentMost.rise).toBeLessThan(b.stiffFar);
  });

  test('the deeper cup sends its force off the back, the shallow one does not', () => {
    expect(n.deepCup.foot).toBeGreaterThan(n.height / 2);
    expect(n.shallowCup.foot).toBeLessThan(n.height / 2);
  });
});
