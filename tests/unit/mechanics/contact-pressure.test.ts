import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rimContactTranslation, socketFromDepth } from '../../../sims/geometry/index.ts';
import { contactPressure, type CarriedContact } from '../../../sims/mechanics/index.ts';
import { mismatchedPairOf, ordinarySocket, real } from '../geometry/arbitraries.ts';
import { expectClose } from '../geometry/close.ts';
import { denseSums } from './contact-oracle.ts';
import { bed, carriedBy, component, layer, usual } from './polyethylene.ts';

const rim = rimContactTranslation(component, 24);
const conforming = { ...usual, ballRadius: 27 };
const places = [
  ['on the face', { ...usual, translation: 0.7 }],
  ['cut by the rim', { ...usual, translation: 1.5 }],
  ['on the rim edge', { ...usual, translation: 4 }],
  ['cut by the rim', conforming],
  ['on the rim edge', { ...conforming, translation: 2 }],
] as const;

/** What the patches and the edge bear together, each patch along the normal of the sphere. */
function mapForces(
  contact: CarriedContact,
  curvatureRadius: number,
): readonly [number, number, number] {
  let [side, cross, compressive] = [
    contact.edgeForce.side,
    contact.edgeForce.cross,
    contact.edgeForce.compressive,
  ];
  for (const { x, y, area, pressure } of contact.patches) {
    side += (pressure * area * x) / curvatureRadius;
    cross += (pressure * area * y) / curvatureRadius;
    compressive += pressure * area * Math.sqrt(1 - (x ** 2 + y ** 2) / curvatureRadius ** 2);
  }
  return [side, cross, compressive];
}

describe('contactPressure: the thin layer’s closed form', () => {
  test('contactPressure: a small patch has p₀ = kδ, F = πkReδ², A = 2πReδ', () => {
    const load = 20;
    const contact = carriedBy({ ...usual, compressiveLoad: load });
    const effective = (24 * 27) / 3;
    const delta = Math.sqrt(load / (Math.PI * bed * effective));
    expectClose(contact.penetration, delta, { relative: 2e-3 });
    expectClose(contact.peakPressure, bed * delta, { relative: 2e-3 });
    expectClose(contact.contactArea, 2 * Math.PI * effective * delta, { relative: 2e-3 });
    expectClose(contact.meanPressure, (bed * delta) / 2, { relative: 2e-3 });
    expect(contact.state).toBe('on the face');
    expect(contact.rimShare).toBe(0);
  });

  test('contactPressure: within 1 % for every pair while the patch is a sixth of the ball', () => {
    const pair = mismatchedPairOf(ordinarySocket);
    fc.assert(
      fc.property(
        pair,
        real(0.01, 0.17),
        real(0, 0.49),
        ({ socket, ballRadius }, part, poisson) => {
          const R = socket.curvatureRadius;
          const effective = (ballRadius * R) / (R - ballRadius);
          const patch = part * Math.min(ballRadius, socket.width / 2);
          const delta = patch ** 2 / (2 * effective);
          const k = (500 * (1 - poisson)) / ((1 + poisson) * (1 - 2 * poisson) * 3);
          fc.pre(delta < 1);
          const contact = carriedBy({
            socket,
            ballRadius,
            thickness: 3,
            modulus: 500,
            poisson,
            compressiveLoad: Math.PI * k * effective * delta ** 2,
            translation: 0,
          });
          expectClose(contact.peakPressure, k * delta, { relative: 0.01 });
          expectClose(contact.contactArea, Math.PI * patch ** 2, { relative: 0.02 });
        },
      ),
    );
  });

  test('contactPressure: a fitting ball presses evenly, F = kδ · 2πR²(1 − cos³β)/3', () => {
    const contact = carriedBy(conforming);
    const cubes = 1 - Math.cos(component.halfArc) ** 3;
    const delta = 500 / (bed * ((2 * Math.PI * 27 ** 2 * cubes) / 3));
    // The edge and the curvature of the layer weigh δ/R.
    expectClose(contact.penetration, delta, { relative: 1e-4 });
    expectClose(contact.contactArea, 2 * Math.PI * 27 * component.depth, { relative: 1e-9 });
  });

  test('contactPressure: a flat layer is Re = r', () => {
    const flat = socketFromDepth({ depth: 0, width: 40 });
    const contact = carriedBy({ ...usual, socket: flat, translation: 8, compressiveLoad: 100 });
    const delta = Math.sqrt(100 / (Math.PI * bed * 24));
    expectClose(contact.peakPressure, bed * delta, { relative: 2e-3 });
    expectClose(contact.contactArea, 2 * Math.PI * 24 * delta, { relative: 2e-3 });
    expectClose(contact.sideForce, 0, { absolute: 1e-3 });
    expectClose(contact.centreOfPressure[0], 8, { absolute: 1e-5 });
  });
});

describe('contactPressure: against place by place', () => {
  test.each(places)('contactPressure: %s', (state, question) => {
    const contact = carriedBy(question);
    const { socket, ballRadius } = question;
    const [x, , z] = contact.ballCentre;
    const dense = denseSums(socket, ballRadius, [x, z], bed);
    expect(contact.state).toBe(state);
    // The dense sums are blunt at the border of the patch.
    const blunt = { relative: 5e-3 };
    expectClose(dense.up + contact.edgeForce.compressive, 500, blunt);
    expectClose(dense.inward + contact.edgeForce.side, contact.sideForce, {
      ...blunt,
      absolute: 1e-9,
    });
    expectClose(contact.contactArea, dense.area, blunt);
    expectClose(contact.meanPressure, dense.total / dense.area, blunt);
    expectClose(contact.penetration, dense.deepest, { relative: 0.02 });
    const edge = contact.edgeForce.compressive;
    expectClose(contact.rimShare, (dense.upNearRim + edge) / (dense.up + edge), {
      absolute: 0.01,
    });
  });

  test.each(places)(
    'contactPressure: the forces are the slope of the stored energy: %s',
    (_, question) => {
      const contact = carriedBy(question);
      const { socket, ballRadius } = question;
      const [x, , z] = contact.ballCentre;
      const step = contact.penetration / 50;
      const energy = (dx: number, dz: number): number =>
        denseSums(socket, ballRadius, [x + dx, z + dz], bed, 900).energy;
      const up = (energy(0, -step) - energy(0, step)) / (2 * step);
      const out = (energy(step, 0) - energy(-step, 0)) / (2 * step);
      // What is left out is penetration over radius of curvature, and the bluntness of the dense sums.
      expectClose(up, 500, { relative: 0.01 });
      expectClose(out, contact.sideForce, { absolute: 5 });
    },
  );
});

describe('contactPressure: the map', () => {
  const loads = [1, 50, 500, 2000];
  const translations = [0, 0.3, 1, 1.4, rim, 2, 6, 12];
  test.each(loads)('contactPressure: patches and edge balance %d N to 0.1 per cent', (load) => {
    for (const ballRadius of [20, 24, 26.5, 27]) {
      for (const translation of translations) {
        const question = { ...usual, ballRadius, translation, compressiveLoad: load };
        const contact = carriedBy(question);
        const [side, cross, compressive] = mapForces(contact, 27);
        // A cell is flat, the socket is not: 2e-4 where the cells are largest.
        expectClose(compressive, load, { relative: 3e-4 });
        expectClose(side, contact.sideForce, { absolute: 3e-4 * load });
        expectClose(cross, 0, { absolute: 1e-9 * load });
      }
    }
  });

  test('contactPressure: on the face the edge bears nothing, and patches alone are in equilibrium', () => {
    const contact = carriedBy({ ...usual, translation: 0.7 });
    expect(contact.edgeForce).toStrictEqual({ compressive: 0, side: 0, cross: 0 });
  });

  test('contactPressure: area, mean and centre of pressure are those of the patches', () => {
    for (const [, question] of places) {
      const contact = carriedBy(question);
      let [area, total, x, y] = [0, 0, 0, 0];
      for (const patch of contact.patches) {
        const force = patch.area * patch.pressure;
        area += patch.area;
        total += force;
        x += force * patch.x;
        y += force * patch.y;
        expect(patch.pressure).toBeLessThanOrEqual(contact.peakPressure);
        expect(patch.pressure).toBeGreaterThan(0);
        expect(Math.hypot(patch.x, patch.y)).toBeLessThan(component.width / 2);
      }
      expectClose(area, contact.contactArea, { relative: 1e-9 });
      expectClose(total / area, contact.meanPressure, { relative: 1e-9 });
      expectClose(x / total, contact.centreOfPressure[0], { absolute: 1e-6 });
      expectClose(y / total, 0, { absolute: 1e-9 });
    }
  });

  test('contactPressure: the finest patch pressure comes near the peak', () => {
    const contact = carriedBy(usual);
    const finest = Math.max(...contact.patches.map(({ pressure }) => pressure));
    expectClose(finest, contact.peakPressure, { relative: 0.005 });
    expect(contact.patches.length).toBeGreaterThanOrEqual(900);
  });

  test('contactPressure: turning the direction turns the map', () => {
    const straight = carriedBy({ ...usual, translation: 1.5 });
    for (const direction of [Math.PI / 2, Math.PI, -1.1, 7]) {
      const turned = carriedBy({ ...usual, translation: 1.5, direction });
      const [cosine, sine] = [Math.cos(direction), Math.sin(direction)];
      expect(turned.sideForce).toBe(straight.sideForce);
      expect(turned.peakPressure).toBe(straight.peakPressure);
      expectClose(turned.ballCentre[0], 1.5 * cosine, { absolute: 1e-12 });
      expectClose(turned.ballCentre[1], 1.5 * sine, { absolute: 1e-12 });
      straight.patches.forEach(({ x, y }, i) => {
        expectClose(turned.patches[i]?.x ?? NaN, x * cosine - y * sine, { absolute: 1e-12 });
        expectClose(turned.patches[i]?.y ?? NaN, x * sine + y * cosine, { absolute: 1e-12 });
      });
    }
  });

  test('contactPressure: a centred ball is pressed alike all round', () => {
    const contact = carriedBy(usual);
    expect(contact.sideForce).toBe(0);
    expectClose(contact.centreOfPressure[0], 0, { absolute: 1e-9 });
    for (const patch of contact.patches) {
      const mirror = contact.patches.some(
        ({ x, y }) => Math.hypot(x + patch.x, y + patch.y) < 1e-9,
      );
      expect(mirror).toBe(true);
    }
  });
});

describe('contactPressure: what grows with what', () => {
  test('contactPressure: more load, more of everything', () => {
    fc.assert(
      fc.property(
        mismatchedPairOf(ordinarySocket),
        real(0, 1),
        real(1, 300),
        real(1.05, 4),
        ({ socket, ballRadius }, part, load, times) => {
          const translation = (part * socket.width) / 2;
          const question = { socket, ballRadius, ...layer, translation };
          const less = contactPressure({ ...question, compressiveLoad: load });
          const more = contactPressure({ ...question, compressiveLoad: times * load });
          if (less.penetration === null) {
            expect(more.penetration).toBeNull();
            return;
          }
          if (more.penetration === null) return;
          expect(more.penetration).toBeGreaterThan(less.penetration);
          expect(more.contactArea).toBeGreaterThanOrEqual(less.contactArea * (1 - 1e-12));
          expect(more.peakPressure).toBeGreaterThan(less.peakPressure);
        },
      ),
    );
  });

  test('contactPressure: the nearer the fit, the lower the pressure', () => {
    const peaks = [18, 20, 22, 24, 25, 26, 26.5, 27].map(
      (ballRadius) => carriedBy({ ...usual, ballRadius }).peakPressure,
    );
    peaks.slice(1).forEach((peak, i) => {
      expect(peak).toBeLessThan(peaks[i] ?? NaN);
    });
  });

  test('contactPressure: sliding to the rim shifts the load there', () => {
    const shares = [0.5, 1, 1.3, 1.5, rim, 2, 3].map(
      (translation) => carriedBy({ ...usual, translation }).rimShare,
    );
    expect(shares[0]).toBe(0);
    expect(shares.at(-1)).toBeGreaterThan(0.7);
    shares.slice(1).forEach((share, i) => {
      expect(share).toBeGreaterThanOrEqual(shares[i] ?? NaN);
    });
  });

  test('contactPressure: nothing jumps at first rim contact', () => {
    const before = carriedBy({ ...usual, translation: rim * (1 - 1e-9) });
    const after = carriedBy({ ...usual, translation: rim });
    expectClose(after.peakPressure, before.peakPressure, { relative: 1e-6 });
    expectClose(after.sideForce, before.sideForce, { relative: 1e-6 });
    expectClose(after.contactArea, before.contactArea, { relative: 1e-6 });
    expectClose(after.rimShare, before.rimShare, { relative: 1e-6 });
  });
});
