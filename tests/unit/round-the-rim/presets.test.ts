import { describe, expect, test } from 'vitest';
import { factValue } from '../../../lessons/fact-value.ts';
import { directionMap } from '../../../sims/geometry/index.ts';
import { presets } from '../../../sims/benches/round-the-rim/presets.ts';
import { soundShape } from '../../../sims/benches/round-the-rim/sound-shape.ts';

const shapeOf = (id: string) => {
  const preset = presets.find((each) => each.id === id);
  if (preset === undefined) throw new Error(`no preset ${id}`);
  return preset.shape;
};

describe('the presets are the facts they say they are', () => {
  test('bone', () => {
    const { height, width, upperWidth, radiusSI, ballDiameter } = shapeOf('bone');
    expect(height).toBe(factValue('bony-face-height'));
    expect(width).toBe(factValue('bony-face-lower-width'));
    expect(upperWidth).toBe(factValue('bony-face-upper-width'));
    expect(radiusSI).toBe(factValue('bony-socket-radius'));
    expect(ballDiameter).toBe(2 * factValue('head-radius-mri'));
  });

  test('lip: as much wider as measured, and as deep from top to bottom', () => {
    const lip = shapeOf('lip');
    const wider = factValue('width-with-labrum') - factValue('bony-width-without-labrum');
    for (const field of ['height', 'width', 'upperWidth'] as const) {
      expect(lip[field] - shapeOf('bone')[field]).toBeCloseTo(wider, 9);
    }
    const { face, ballRadius } = soundShape(lip);
    const [up] = directionMap(face, ballRadius, { directions: [Math.PI / 2], translations: 60 });
    expect(up?.depth).toBeCloseTo(factValue('labral-socket-depth'), 1);
  });

  test('worn: as much off the front rim as in the experiment', () => {
    expect(shapeOf('worn').defectDepth).toBe(factValue('anterior-defect-width'));
    expect(shapeOf('worn').clock).toBe(3);
  });

  test('round: the usual mismatch', () => {
    const { radiusSI, ballDiameter } = shapeOf('round');
    expect(radiusSI - ballDiameter / 2).toBe(factValue('drawn-component-radial-mismatch'));
    expect(ballDiameter).toBe(factValue('default-ball-diameter'));
  });
});

describe('the mean bone beside cadaver shoulders, within two standard deviations', () => {
  const ratioAt = (id: string, bearing: number): number => {
    const { face, ballRadius } = soundShape(shapeOf(id));
    const directions = [(bearing * Math.PI) / 180];
    const [row] = directionMap(face, ballRadius, { directions, translations: 60 });
    return row?.peakStabilityRatio ?? NaN;
  };
  // The scatter is between shoulders; a mean face of other shoulders may lie anywhere in it.
  test.each([
    ['bone', 0, 'stability-ratio-anterior-intact', 0.12],
    ['bone', 0, 'stability-ratio-anterior-cartilage-intact', 0.14],
    ['bone', 315, 'stability-ratio-anteroinferior-cartilage-intact', 0.14],
    ['bone', 270, 'stability-ratio-inferior-with-labrum', 0.154],
    ['worn', 0, 'stability-ratio-anterior-defect', 0.1],
  ] as const)('%s at %i°: %s', (preset, bearing, fact, band) => {
    expect(Math.abs(ratioAt(preset, bearing) - factValue(fact))).toBeLessThan(band);
  });

  test('a rigid lip holds more than any shoulder measured: it is not a soft one', () => {
    expect(ratioAt('lip', 90)).toBeGreaterThan(factValue('stability-ratio-intact-greatest') * 1.3);
  });
});
