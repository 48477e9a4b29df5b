import { fixedText, mm } from '../../shared/format.ts';
import { clockText } from './bearing.ts';
import type { RimShape } from './setting.ts';

export const tenths = (value: number): string => mm(value, 1);

const outlines = { pear: 'pear', ellipse: 'ellipse', circle: 'circle' } as const;

/** A shape in one line, as it stands at the foot of a picture. */
export function shapeLine(shape: RimShape): string {
  const { outline, width, height, upperWidth, sameRadius, radiusAP, radiusSI, ballDiameter } =
    shape;
  const size = {
    circle: `${tenths(width)} across`,
    ellipse: `${fixedText(height, 1)} × ${tenths(width)}`,
    pear: `${fixedText(height, 1)} × ${tenths(width)}, ${tenths(upperWidth)} above`,
  }[outline];
  const radius = sameRadius
    ? `radius ${tenths(radiusSI)}`
    : `radius front to back ${tenths(radiusAP)}, top to bottom ${tenths(radiusSI)}`;
  return [
    `${outlines[outline]} ${size}`,
    radius,
    ...extras(shape),
    `ball ${tenths(ballDiameter)}`,
  ].join('; ');
}

/** Lip and defect in words; nothing where there is none. */
export function extras(shape: RimShape): readonly string[] {
  const { lip, lipHeight, lipWidth, defect, clock, defectDepth } = shape;
  return [
    ...(lip ? [`lip ${tenths(lipHeight)} high and ${tenths(lipWidth)} wide`] : []),
    ...(defect === 'none'
      ? []
      : [
          `${defect === 'cut' ? 'straight cut' : 'segment of two hours'} ${tenths(defectDepth)} deep at ${clockText(clock)}`,
        ]),
  ];
}
