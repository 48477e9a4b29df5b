import { describe, expect, test } from 'vitest';
import { seatOf } from '../../../sims/benches/peg-board/seat.ts';
import { magnification, stemsOf } from '../../../sims/benches/peg-board/section-figure.ts';
import { defaultBoard, newKeel } from '../../../sims/benches/peg-board/settings.ts';
import {
  backMesh,
  boneMesh,
  keelMesh,
  pegMesh,
  socketMesh,
} from '../../../sims/benches/peg-board/solid/board-mesh.ts';
import {
  openHatches,
  strips,
  zeroLines,
} from '../../../sims/benches/peg-board/solid/back-lines.ts';
import { standOf } from '../../../sims/benches/peg-board/stand.ts';
import { gapAt, isInside } from '../../../sims/benches/peg-board/tilt.ts';
import { expectClose } from '../geometry/close.ts';

const { design, ground, load } = defaultBoard;
const seat = seatOf(design, ground);
const stand = standOf(seat, load);
const times = magnification(stand);
const move = { ...stand, times };
const still = { displacement: [0, 0, 0], rotation: [0, 0, 0], times: 1 } as const;

function corners({ positions }: { readonly positions: readonly number[] }) {
  return Array.from({ length: positions.length / 3 }, (_, i) => ({
    x: positions[3 * i] ?? NaN,
    y: positions[3 * i + 1] ?? NaN,
    z: positions[3 * i + 2] ?? NaN,
  }));
}

describe('in three dimensions', () => {
  test('the back stands off the bone by its gaps, drawn as many times as large as is said', () => {
    const before = corners(backMesh(seat.curve, still, stand.tilt, stand));
    const mesh = backMesh(seat.curve, move, stand.tilt, stand);
    corners(mesh).forEach(({ z }, i) => {
      const at = before[i] ?? { x: NaN, y: NaN, z: NaN };
      expectClose(z - at.z, times * gapAt(stand.tilt, at), { absolute: 1e-9 });
      const share = mesh.shares[i] ?? NaN;
      expect(Math.abs(share)).toBeLessThanOrEqual(1);
      if (Math.abs(gapAt(stand.tilt, at)) > 1e-9)
        expect(Math.sign(share)).toBe(Math.sign(gapAt(stand.tilt, at)));
    });
    expect(Math.max(...mesh.shares)).toBeGreaterThan(0.95);
    expect(Math.min(...mesh.shares)).toBeLessThan(-0.95);
  });

  test('unmoved, everything has its size', () => {
    const socket = corners(socketMesh(seat.curve, still));
    expectClose(Math.max(...socket.map(({ y }) => y)), ground.height / 2, { relative: 1e-9 });
    expectClose(Math.min(...socket.map(({ z }) => z)), -5, { relative: 1e-9 });
    expect(corners(boneMesh(seat.curve)).every(({ z }) => z === -5)).toBe(true);
    const [peg] = design.pegs;
    if (peg === undefined) throw new Error('no peg');
    const round = corners(pegMesh(peg, still));
    expectClose(Math.min(...round.map(({ z }) => z)), -5 - peg.length, { relative: 1e-9 });
    expectClose(Math.max(...round.map(({ x }) => x)) - peg.x, peg.diameter / 2, { relative: 1e-9 });
    const plate = corners(keelMesh(newKeel, still));
    expectClose(Math.max(...plate.map(({ y }) => y)), newKeel.y + newKeel.span / 2, {
      relative: 1e-9,
    });
    expectClose(Math.max(...plate.map(({ x }) => x)), newKeel.thickness / 2, { relative: 1e-9 });
  });

  test('the movement drawn stays in bounds', () => {
    expect(times * Math.max(stand.liftOff, stand.pressIn)).toBeLessThanOrEqual(4.2);
    expect(times).toBeGreaterThan(1);
  });
});

describe('the section', () => {
  test('cuts the pegs it goes through along their chord, and shows the others whole', () => {
    const [above, front, back] = stemsOf(design, 90);
    expect(above).toMatchObject({ isCut: true, from: 9 - 2.5, to: 9 + 2.5 });
    expect([front?.isCut, back?.isCut]).toEqual([false, false]);
    const off = { ...design, pegs: [{ kind: 'in-grown', x: 1.5, y: 4, diameter: 5, length: 8 }] };
    const [chord] = stemsOf(off as typeof design, 90);
    expectClose(((chord?.to ?? NaN) - (chord?.from ?? NaN)) / 2, 2, { relative: 1e-9 });
  });

  test('cuts a keel as wide as it is on that line', () => {
    const bare = { pegs: [], keel: { ...newKeel, y: 0 } };
    const width = (bearing: number): number => {
      const [stem] = stemsOf(bare, bearing);
      expect(stem?.isCut).toBe(true);
      return (stem?.to ?? NaN) - (stem?.from ?? NaN);
    };
    expectClose(width(0), newKeel.thickness, { relative: 1e-9 });
    expectClose(width(90), newKeel.span, { relative: 1e-9 });
    expectClose(width(30), newKeel.thickness / Math.cos(Math.PI / 6), { relative: 1e-9 });
    const aside = { pegs: [], keel: { ...newKeel, x: 5 } };
    expect(stemsOf(aside, 90)[0]?.isCut).toBe(false);
  });
});

describe('the hatching of the back', () => {
  const tilts = [
    { name: 'flat', of: seat, stand },
    ...(['pressed', 'bonded'] as const).map((bed) => {
      const of = seatOf(design, { ...ground, bed, back: 'round' });
      return { name: `round, ${bed}`, of, stand: standOf(of, load) };
    }),
  ];

  test.each(tilts)('lies where it gapes and nowhere else ($name)', ({ of, stand: now }) => {
    const lines = openHatches(of.edge, now.tilt, now.liftOff);
    expect(lines.length).toBeGreaterThan(3);
    for (const at of lines.flat()) {
      expect(gapAt(now.tilt, at)).toBeGreaterThan(0);
      expect(Math.abs(at.y)).toBeLessThanOrEqual(ground.height / 2);
    }
    for (const at of zeroLines(of.edge, now.tilt).flat()) {
      expectClose(gapAt(now.tilt, at), 0, { absolute: 1e-6 * (now.liftOff + now.pressIn) });
    }
    const drawn = { ...now, times: magnification(now) };
    const { positions, indices } = strips(lines, 0.3, drawn, now.tilt);
    expect(positions.every(Number.isFinite)).toBe(true);
    expect(Math.max(...indices)).toBeLessThan(positions.length / 3);
  });

  test('is denser where the gap is wider', () => {
    const { tilt, liftOff } = stand;
    const places = openHatches(seat.edge, tilt, liftOff).flat();
    const wide = places.filter((at) => gapAt(tilt, at) > liftOff / 2).length;
    const area = (least: number): number => {
      const edge = Array.from({ length: 60 }, (_, i) => -19 + 0.63 * i);
      return edge
        .flatMap((x) => edge.map((y) => ({ x, y })))
        .filter((at) => isInside(seat.edge, at) && gapAt(tilt, at) > least).length;
    };
    const [whole, half] = [area(0), area(liftOff / 2)];
    expect(wide / half).toBeGreaterThan((1.6 * (places.length - wide)) / (whole - half));
  });

  test('is left out where nothing gapes', () => {
    expect(openHatches(seat.edge, { a: -0.1, b: 0, c: 0 }, 0)).toEqual([]);
  });
});
