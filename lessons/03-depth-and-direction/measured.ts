import { factValue } from '../fact-value.ts';

/** A measured forward ratio, and how much of the front rim was gone, mm. */
export interface CutMeasurement {
  readonly study: 'bone' | 'cartilage';
  readonly cut: number;
  readonly value: number;
  readonly sd: number;
}

const at = (study: CutMeasurement['study'], cut: number, id: string): CutMeasurement => ({
  study,
  cut,
  value: factValue(id),
  sd: factValue(id, 'sd'),
});

/** Forward ratios of cadaver shoulders before and after a part of the front rim was taken. */
export const cutMeasurements: readonly CutMeasurement[] = [
  at('bone', 0, 'stability-ratio-anterior-intact'),
  at('bone', factValue('anterior-defect-width'), 'stability-ratio-anterior-defect'),
  at('cartilage', 0, 'stability-ratio-anterior-cartilage-intact'),
  at('cartilage', factValue('cartilage-defect-width'), 'stability-ratio-anterior-cartilage-defect'),
];
