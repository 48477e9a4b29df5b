import { mm, newtons } from '../../shared/format.ts';
import type { LayerSetting } from './layer.ts';
import type { Pair } from './pair.ts';
import { valueText } from './pair-words.ts';

export const tenths = (value: number): string => mm(value, 1);
export const hundredths = (value: number): string => mm(value, 2);
export const megapascals = (value: number): string => `${value.toFixed(1)}\u00a0MPa`;

/** A pair in one line: "ball 48.0 mm, radial mismatch 3.0 mm (diametral 6.0 mm), width held at 28.0 mm". */
export function pairLine({ setting, ballRadius, socket, mismatch, shape }: Pair): string {
  const { change, held } = setting;
  const stays =
    change === 'socket'
      ? `ball ${tenths(2 * ballRadius)}`
      : `socket’s radius ${tenths(socket.curvatureRadius)}`;
  return `${stays}, ${mismatchText(mismatch)}, ${held} held at ${valueText(held, shape[held])}`;
}

/** Never one number without the other: "radial mismatch 3.0 mm (diametral 6.0 mm)". */
export function mismatchText(mismatch: number): string {
  return `radial mismatch ${tenths(mismatch)} (diametral ${tenths(2 * mismatch)})`;
}

/** The same for a picture's legend, where room is short. */
export function legendLine({ setting, ballRadius, socket, mismatch, shape }: Pair): string {
  const { change, held } = setting;
  const stays =
    change === 'socket' ? `r ${ballRadius.toFixed(1)}` : `R ${socket.curvatureRadius.toFixed(1)}`;
  return `${stays}, m ${tenths(mismatch)}, ${held} ${valueText(held, shape[held])}`;
}

export function layerLine({ load, thickness, modulus, poisson }: LayerSetting): string {
  return `${newtons(load)} on ${tenths(thickness)} of plastic, E ${modulus.toFixed(0)} MPa, ν ${poisson.toFixed(2)}`;
}
