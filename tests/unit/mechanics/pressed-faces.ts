import type { OracleInput } from '../geometry/face-oracle.ts';

export const pear: OracleInput = {
  outline: { kind: 'pear', width: 28, height: 36, upperWidth: 20 },
  curvatureRadiusAP: 32,
  curvatureRadiusSI: 28,
};
export const lipped: OracleInput = { ...pear, labrum: { height: 1.5, width: 4 } };
export const cut: OracleInput = { ...lipped, defect: { kind: 'cut', direction: 0, depth: 4 } };
export const worn: OracleInput = {
  ...pear,
  defect: { kind: 'segment', direction: -0.8, depth: 3, span: 1.2 },
};
