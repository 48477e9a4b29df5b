import { describe } from 'vitest';
import {
  cementHeat,
  cementVolume,
  materials,
  type CementDesign,
} from '../../sims/mechanics/index.ts';
import { fact, runChecks, type PublishedCheck } from './check.ts';

/** Of the polymer with a tenth of contrast powder, g/mm³; teaching value. */
const DENSITY = 1.19e-3;
const ROOM = 20;
const BODY = 37;

const pegs = (gap: number): CementDesign => ({
  pegs: (
    [
      [0, 9],
      [-5, -6],
      [5, -6],
    ] as const
  ).map(([x, y]) => ({ x, y, diameter: 5, length: 10, tip: 'flat', gap })),
});
const keel = (gap: number): CementDesign => ({
  keel: { x: 0, y: 0, length: 20, thickness: 4, tipLength: 14, tipThickness: 3, height: 11, gap },
});

/** Under the whole back of a face of 26 × 35 mm lies this much more, mm; teaching value. */
const UNDER_BACK = 1;
const FACE_AREA = (Math.PI / 4) * 26 * 35;

const grams = (design: CementDesign): number =>
  (cementVolume(design).total + UNDER_BACK * FACE_AREA) * DENSITY;

const heatOf = (name: keyof typeof materials) => ({
  conductivity: materials[name].conductivity.value,
  volumetricHeat: materials[name].volumetricHeat.value,
});

/** Warmest the bone’s surface gets, °C, with the heats of setting between which print lies (J/mm³, from memory). */
function peaks(shape: 'flat' | 'round', cementThickness: number): readonly number[] {
  return [0.1, 0.15, 0.19].map(
    (totalHeat) =>
      cementHeat({
        cementThickness,
        polymerThickness: shape === 'flat' ? 2 : 2.5,
        boneDepth: 25,
        initialTemperatures: { polymer: ROOM, cement: ROOM, bone: BODY },
        kinetics: { totalHeat, peakTime: 300 },
        properties: {
          polymer: heatOf('polyethylene'),
          cement: heatOf('bone cement'),
          bone: heatOf('cancellous bone'),
        },
        shape,
      }).peakAtBone,
  );
}

const usualHeat = (values: readonly number[]): number => values[1] ?? NaN;

/** The middle of a printed range and half its width. */
function printed(id: string): { readonly expected: number; readonly tolerance: number } {
  const [low, high] = [fact(id, 'low'), fact(id, 'high')];
  return { expected: (low + high) / 2, tolerance: (high - low) / 2 };
}

const measured: readonly PublishedCheck[] = [
  {
    kind: 'band',
    what: 'cement of a keel and of pegs under the usual measured mantles, and 1 mm under the back, g',
    sources: ['churchill-2004', 'cement-pressuriser'],
    compute: () => [grams(keel(fact('keel-mantle'))), grams(pegs(fact('peg-mantle', 'high')))],
    ...printed('cement-in-sockets'),
    why: 'Other components than these, and nobody says how much cement lay under their backs.',
  },
  {
    kind: 'band',
    what: 'peak at the bone round a keel under the thick mantles of pressed-in cement, °C',
    sources: ['churchill-2004', 'cement-pressuriser'],
    compute: () => usualHeat(peaks('flat', fact('keel-mantle-pressed'))),
    ...printed('bone-surface-heat'),
    why: 'Measured by infrared camera on open bone; only mantles of several mm come there.',
  },
  {
    kind: 'disagreement',
    theory: 'above',
    what: 'warming of the bone round a peg under 0.9 mm, the least mean mantle measured, above 37 °C',
    sources: ['raiss-2010', 'cement-pressuriser'],
    compute: () => usualHeat(peaks('round', fact('peg-mantle', 'low'))) - BODY,
    expected: fact('peg-warming'),
    tolerance: fact('peg-warming', 'high') - fact('peg-warming'),
    why: 'Heat leaves along the peg and past its tip as well, and the mantle measured is full of cool bone.',
  },
  {
    kind: 'band',
    what: 'the same with the least heat of setting in print',
    sources: ['raiss-2010', 'cement-pressuriser'],
    compute: () => (peaks('round', fact('peg-mantle', 'low'))[0] ?? NaN) - BODY,
    ...printed('peg-warming'),
    why: 'The abstract says neither the mantle nor how warm the bone was.',
  },
  {
    kind: 'band',
    what: 'warming of the bone round a keel under 1 mm, above 37 °C',
    sources: ['raiss-2010'],
    compute: () => usualHeat(peaks('flat', 1)) - BODY,
    ...printed('keel-warming'),
    why: 'The abstract says neither the mantle nor how warm the bone was.',
  },
  {
    kind: 'disagreement',
    theory: 'above',
    what: 'warming of the bone round a keel under the usual measured mantle, above 37 °C',
    sources: ['raiss-2010', 'cement-pressuriser'],
    compute: () => usualHeat(peaks('flat', fact('keel-mantle'))) - BODY,
    expected: fact('keel-warming'),
    tolerance: fact('keel-warming', 'high') - fact('keel-warming'),
    why: 'A flat layer without end keeps more heat than a keel in a socket, and the mantle measured is full of cool bone.',
  },
];

describe('cement: amounts and heat', () => runChecks(measured));
