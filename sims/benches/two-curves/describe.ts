import { degrees, ratio } from '../../shared/format.ts';
import type { LayerSetting } from './layer.ts';
import { hundredths, layerLine, megapascals, mismatchText, pairLine, tenths } from './lettering.ts';
import type { Pair } from './pair.ts';
import { whyWords } from './reasons.ts';
import type { PressureRow, ShapeRow } from './sweep.ts';

/** What the bench shows, as far as words need it. */
export interface Shown {
  readonly pair: Pair;
  readonly layer: LayerSetting;
  readonly shape: ShapeRow;
  readonly pressure: PressureRow;
  readonly kept: Pair | null;
}

/** The figure in words, for whoever hears it instead of seeing it. */
export function describe({ pair, layer, shape, pressure, kept }: Shown): string {
  const { socket, ballRadius, mismatch } = pair;
  return [
    `A ball of ${tenths(ballRadius)} radius in a socket of ${tenths(socket.curvatureRadius)} radius of curvature, ` +
      `${tenths(socket.width)} wide and ${tenths(socket.depth)} deep, an arc of ${degrees(2 * socket.halfArc)}: ${mismatchText(mismatch)}.`,
    `Play before the rim is loaded: ${hundredths(shape.play)}. Peak stability ratio: ${ratio(shape.peakRatio)}.`,
    pressureWords(pressure, layer),
    whyWords(pair),
    kept === null ? '' : `Drawn dashed to compare: ${pairLine(kept)}.`,
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

/** The mismatch and what follows, short enough to be said at every step of a slider. */
export function mismatchWords(shape: ShapeRow, pressure: PressureRow): string {
  const peak = pressure.layer === null ? '' : `, pressure ${megapascals(pressure.layer)}`;
  return (
    `radial ${tenths(shape.mismatch)}, diametral ${tenths(2 * shape.mismatch)}; play ${tenths(shape.play)}, ` +
    `peak ratio ${ratio(shape.peakRatio)}, depth ${tenths(shape.depth)}${peak}`
  );
}

export function pressureWords({ layer, hertz }: PressureRow, setting: LayerSetting): string {
  if (layer === null) return 'The load would press the ball through the plastic.';
  const start = `Under ${layerLine(setting)}, the ball centred, the peak pressure on a thin elastic layer is ${megapascals(layer)}`;
  return hertz === null
    ? `${start}.`
    : `${start}; Hertz, for a thick block, gives ${megapascals(hertz)}.`;
}
