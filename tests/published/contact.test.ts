import { describe } from 'vitest';
import { face, sphericalSocket, type Face } from '../../sims/geometry/index.ts';
import { contactPressure, foundationModulus, hertzContact } from '../../sims/mechanics/index.ts';
import { fact, runChecks, type PublishedCheck } from './check.ts';
import { spread } from './sockets.ts';

const plastic = { modulus: fact('polyethylene-modulus'), poisson: fact('polyethylene-poisson') };
const layer = { ...plastic, thickness: fact('drawn-component-thickness') };
const socketRadius = 30;
const ballRadius = socketRadius - fact('drawn-component-radial-mismatch');
const effective = (ballRadius * socketRadius) / (socketRadius - ballRadius);
const socket = sphericalSocket({ curvatureRadius: socketRadius, width: 34 });

/** What the map gives over what the closed form gives, for patches of 0.3 to 3 mm. */
function againstClosedForm(
  what: 'peakPressure' | 'contactArea' | 'penetration',
): readonly number[] {
  const bed = foundationModulus(layer);
  return spread(0.3, 3, 7).map((radius) => {
    const delta = radius ** 2 / (2 * effective);
    const contact = contactPressure({
      socket,
      ballRadius,
      ...layer,
      compressiveLoad: Math.PI * bed * effective * delta ** 2,
      translation: 0,
    });
    const closed = {
      peakPressure: bed * delta,
      contactArea: Math.PI * radius ** 2,
      penetration: delta,
    };
    return (contact[what] ?? NaN) / closed[what];
  });
}

/*
 * Johnson, Contact Mechanics, ch. 4 (from memory). Elastic foundation: F = πkReδ², p₀ = kδ, a² = 2Reδ. Hertz: pressure goes
 * with the cube root of the load and with (1/Re)^⅔.
 */
const closedForms: readonly PublishedCheck[] = [
  ...(['peakPressure', 'contactArea', 'penetration'] as const).map((what): PublishedCheck => ({
    kind: 'hard',
    what: `${what} of a small patch over the elastic foundation’s closed form`,
    sources: ['johnson-1985'],
    compute: () => againstClosedForm(what),
    expected: 1,
    tolerance: 0.01,
    why: 'The closed form takes ball and hollow as parabolas; patches up to a ninth of the ball’s radius.',
  })),
  {
    kind: 'hard',
    what: 'power of the load in Hertz’s peak pressure',
    sources: ['johnson-1985'],
    compute: () =>
      [5, 50, 500].map((load) =>
        Math.log2(
          (peak({ load: 2 * load, mismatch: 3 }) ?? NaN) / (peak({ load, mismatch: 3 }) ?? NaN),
        ),
      ),
    expected: 1 / 3,
    tolerance: 1e-12,
    why: 'An identity.',
  },
  {
    kind: 'hard',
    what: 'power of 1/Re in Hertz’s peak pressure',
    sources: ['johnson-1985'],
    compute: () =>
      [0.5, 2, 6].map((mismatch) => {
        const curvature = (m: number): number => 1 / ballRadius - 1 / (ballRadius + m);
        const grown =
          (peak({ load: 500, mismatch }) ?? NaN) / (peak({ load: 500, mismatch: 1 }) ?? NaN);
        return mismatch === 1
          ? 2 / 3
          : Math.log(grown) / Math.log(curvature(mismatch) / curvature(1));
      }),
    expected: 2 / 3,
    tolerance: 1e-12,
    why: 'An identity.',
  },
  {
    kind: 'hard',
    what: 'power of the mismatch itself, while it is small',
    sources: ['johnson-1985'],
    compute: () =>
      Math.log2(
        (peak({ load: 500, mismatch: 0.002 }) ?? NaN) /
          (peak({ load: 500, mismatch: 0.001 }) ?? NaN),
      ),
    expected: 2 / 3,
    tolerance: 1e-4,
    why: '1/Re = m/rR, so it is the power of the mismatch only as far as R stays r.',
  },
];

function peak({
  load,
  mismatch,
}: {
  readonly load: number;
  readonly mismatch: number;
}): number | null {
  return hertzContact({ ...plastic, ballRadius, socketRadius: ballRadius + mismatch, load })
    .peakPressure;
}

/** A round face that fits its ball, with a cut at its front lower edge. */
function roundFace(depth: number): Face {
  return face({
    outline: { kind: 'circle', width: 30, height: 30 },
    curvatureRadiusAP: 25,
    curvatureRadiusSI: 25,
    defect: { kind: 'cut', direction: -Math.PI / 4, depth },
  });
}

function pressedBy(onFace: Face): { readonly area: number; readonly mean: number } {
  const contact = contactPressure({
    face: onFace,
    ballRadius: 25,
    // As of cartilage; neither area nor the ratio of means depends on it.
    thickness: 2,
    modulus: 5,
    poisson: 0.4,
    compressiveLoad: 440,
    translation: 0,
  });
  return { area: contact.contactArea ?? NaN, mean: contact.meanPressure ?? NaN };
}

/** Gain of mean pressure, %, where a cut takes this many per cent of the contact area. */
function gainOfPressure(loss: number): number {
  const whole = pressedBy(roundFace(0));
  let low = 0;
  let high = 14;
  for (let i = 0; i < 30; i++) {
    const depth = (low + high) / 2;
    if (pressedBy(roundFace(depth)).area > whole.area * (1 - loss / 100)) low = depth;
    else high = depth;
  }
  return 100 * (pressedBy(roundFace(low)).mean / whole.mean - 1);
}

/*
 * Greis 2002, J Shoulder Elbow Surg 11:442–451, abstract: with the front lower labrum cut away the contact area fell by 7
 * to 15 % and the mean pressure rose by 8 to 20 %. The same load on less area: the two must go together.
 */
const lostArea: readonly PublishedCheck[] = (['low', 'high'] as const).map((end) => ({
  kind: 'band',
  what: `gain of mean pressure where ${fact('contact-area-loss-without-labrum', end)} % of the contact area is lost, %`,
  sources: ['greis-2002'],
  compute: () => gainOfPressure(fact('contact-area-loss-without-labrum', end)),
  expected: fact('contact-pressure-gain-without-labrum', end),
  tolerance: 5,
  why: 'Eight shoulders, and the scatter is not in the abstract. Real cartilage does not fit its ball all over.',
}));

describe('closed forms of contact', () => runChecks(closedForms));
describe('contact area and pressure', () => runChecks(lostArea));
