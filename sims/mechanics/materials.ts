import { BONE_POISSON, bones, corticalModulus } from './bone.ts';
import type { Material, MaterialName, Quantity, WayRead } from './materials-types.ts';

type Extra = Pick<Quantity, 'low' | 'high' | 'note'>;

const inUnit =
  (unit: Quantity['unit']) =>
  (value: number, sources: readonly string[], howRead: WayRead, extra: Extra = {}): Quantity => ({
    value,
    unit,
    sources,
    howRead,
    ...extra,
  });
const mpa = inUnit('MPa');
const ratio = inUnit('');
const conductivity = inUnit('W/(mm·K)');
const heat = inUnit('J/(mm³·K)');

/** The middle of a range, where print gives no single number. */
function middle(low: number, high: number, source: string, note?: string): Quantity {
  const said = note === undefined ? 'The middle of the range.' : `The middle of the range. ${note}`;
  return mpa((low + high) / 2, [source], 'excerpt', { low, high, note: said });
}

/** ρc from a specific heat in J/(kg·K) and a density in g/cm³. */
const heatOf = (specific: number, density: number): number => specific * density * 1e-6;

const OFTEN_COMPILED = 'bone-repair-materials-table';

/**
 * The one table of materials: everything the course computes with, with its range and its source. Stiffness of real
 * bone depends on place, direction, age and how fast it is loaded; the table takes one number for each.
 *
 * Bone of the socket in its two directions, and the foams that stand for it, are in `bones`; what is here of them is taken
 * from there.
 */
export const materials: Readonly<Record<MaterialName, Material>> = {
  polyethylene: {
    what: 'ultra-high-molecular-weight polyethylene',
    youngsModulus: mpa(690, [OFTEN_COMPILED], 'teaching value', {
      low: 600,
      high: 2200,
      note: 'The range is that of the table cited; 690 was seen on the web and its address not kept.',
    }),
    poissonRatio: ratio(0.46, ['tibial-slope-2018'], 'excerpt', {
      note: 'As a computer model of a knee took it.',
    }),
    yieldStrength: middle(21, 28, OFTEN_COMPILED),
    tensileStrength: middle(23, 48, OFTEN_COMPILED),
    compressiveStrength: mpa(20, [OFTEN_COMPILED], 'excerpt'),
    conductivity: conductivity(0.43e-3, ['polyethylene-thermal'], 'excerpt', {
      low: 0.33e-3,
      high: 0.53e-3,
      note: 'The middle of the range. Of high-density polyethylene, its shorter-chained relative.',
    }),
    volumetricHeat: heat(heatOf(2250, 0.95), ['polyethylene-thermal'], 'excerpt', {
      low: heatOf(1800, 0.94),
      high: heatOf(2700, 0.96),
      note: 'The middle of specific heat times that of density. Of high-density polyethylene.',
    }),
  },
  'bone cement': {
    what: 'bone cement (polymethyl methacrylate)',
    youngsModulus: mpa(2500, ['cement-formulation-2011'], 'teaching value', {
      low: 1800,
      high: 3300,
      note: 'From the least a standard asks for to the stiffest measured in bending.',
    }),
    poissonRatio: ratio(0.36, ['williams-johnson-1989', 'augmented-screws-2020'], 'abstract', {
      low: 0.36,
      high: 0.4,
      note: 'From Young’s modulus 4.9 GPa and shear modulus 1.8 GPa, by ultrasound; a computer model took 0.4.',
    }),
    tensileStrength: middle(35, 80, OFTEN_COMPILED),
    compressiveStrength: mpa(80, [OFTEN_COMPILED], 'excerpt'),
    conductivity: conductivity(0.19e-3, ['acrylic-data-sheet'], 'excerpt', {
      note: 'Of acrylic glass, the same polymer without pores and contrast powder.',
    }),
    volumetricHeat: heat(heatOf(1260, 1.2), ['acrylic-data-sheet'], 'excerpt', {
      note: 'Of acrylic glass.',
    }),
  },
  'cobalt-chromium': {
    what: 'cobalt–chromium–molybdenum alloy (Co-28Cr-6Mo)',
    youngsModulus: mpa(220_000, ['cobalt-data-sheet', OFTEN_COMPILED], 'excerpt', {
      low: 210_000,
      high: 250_000,
    }),
    poissonRatio: ratio(0.29, ['cobalt-data-sheet'], 'excerpt'),
    yieldStrength: middle(590, 940, 'cobalt-data-sheet', 'It depends on how the bar was worked.'),
    tensileStrength: middle(1000, 1340, 'cobalt-data-sheet'),
    conductivity: conductivity(13e-3, ['cobalt-data-sheet'], 'excerpt'),
    volumetricHeat: heat(heatOf(450, 8.4), ['cobalt-data-sheet'], 'excerpt'),
  },
  'titanium alloy': {
    what: 'titanium–aluminium–vanadium alloy (Ti-6Al-4V)',
    youngsModulus: mpa(114_000, ['titanium-data-sheet', OFTEN_COMPILED], 'excerpt', {
      low: 110_000,
      high: 120_000,
    }),
    poissonRatio: ratio(0.33, ['titanium-data-sheet', 'titanium-thermal'], 'excerpt', {
      low: 0.32,
      high: 0.33,
    }),
    yieldStrength: mpa(830, ['titanium-data-sheet'], 'excerpt'),
    tensileStrength: mpa(900, ['titanium-data-sheet'], 'excerpt'),
    compressiveStrength: mpa(860, ['titanium-data-sheet'], 'excerpt', {
      note: 'Stress at which it begins to stay deformed when pressed.',
    }),
    conductivity: conductivity(7.1e-3, ['titanium-thermal'], 'excerpt'),
    volumetricHeat: heat(heatOf(560, 4.5), ['titanium-thermal'], 'excerpt'),
  },
  'cancellous bone': {
    what: 'cancellous bone of the socket',
    youngsModulus: mpa(230, ['seliktar-2003'], 'abstract', {
      low: bones['bone, along the face'].modulus.value,
      high: bones['bone, across the face'].modulus.value,
      note: 'From computed tomography. The range is along the surface and across it, measured on cadaver bone.',
    }),
    poissonRatio: ratio(
      BONE_POISSON,
      ['shoulder-model-2022', 'augmented-screws-2020'],
      'teaching value',
      { low: 0.2, high: BONE_POISSON, note: 'Two computer models took 0.2.' },
    ),
    tensileStrength: middle(10, 20, OFTEN_COMPILED, 'Of cancellous bone at large.'),
    compressiveStrength: mpa(
      bones['bone, across the face'].strength.value,
      ['anglin-1999', OFTEN_COMPILED],
      'from memory',
      {
        low: bones['bone, across the face'].strength.value,
        high: 23,
        note: 'By pressing on the socket’s surface; the upper number is of cancellous bone at large.',
      },
    ),
    conductivity: conductivity(0.293e-3, ['cancellous-thermal'], 'abstract', {
      note: 'Of cattle: 7 × 10⁻⁴ cal/(cm·s·K).',
    }),
    volumetricHeat: heat(3.05e-3, ['cancellous-thermal'], 'abstract', {
      note: 'Of cattle: 0.73 cal/(cm³·K).',
    }),
  },
  'cortical bone': {
    what: 'cortical bone',
    youngsModulus: mpa(17_600, ['bone-phantom-2016', OFTEN_COMPILED], 'excerpt', {
      low: corticalModulus.low,
      high: corticalModulus.high,
    }),
    poissonRatio: ratio(0.3, ['shoulder-model-2022'], 'excerpt', {
      note: 'As a computer model of the shoulder took it.',
    }),
    yieldStrength: middle(30, 70, OFTEN_COMPILED),
    tensileStrength: mpa(124, ['bone-phantom-2016', OFTEN_COMPILED], 'excerpt', {
      low: 50,
      high: 150,
    }),
    compressiveStrength: middle(160, 250, OFTEN_COMPILED),
    conductivity: conductivity(
      0.31e-3,
      ['bone-phantom-2016', 'lee-cortical-conductivity', 'moses-1995'],
      'excerpt',
      {
        low: 0.31e-3,
        high: 0.8e-3,
        note: '0.55 of cattle and 0.80 of horses, wet, were also measured.',
      },
    ),
    volumetricHeat: heat(heatOf(1250, 1.81), ['bone-phantom-2016'], 'excerpt', {
      note: 'The table prints 1.25 J/(kg·K), which must mean J/(g·K).',
    }),
  },
};
