import { degrees, ratio } from '../../shared/format.ts';
import { hundredths, megapascals, tenths } from './lettering.ts';
import type { Pair } from './pair.ts';
import type { PressureRow, ShapeRow } from './sweep.ts';

/** A number under the drawing: its name, itself, and what it means. */
export interface Reading {
  readonly name: string;
  readonly value: string;
  readonly note?: string;
  readonly tone?: 'force' | 'motion' | 'ink';
}

/** The strip of numbers under the drawing. */
export function readingsOf(
  { socket, mismatch }: Pair,
  { play, peakRatio }: ShapeRow,
  pressure: PressureRow,
): readonly Reading[] {
  return [
    {
      name: 'Radial mismatch',
      value: tenths(mismatch),
      note: `diametral: ${tenths(2 * mismatch)}`,
      tone: 'motion',
    },
    {
      name: 'Play before the rim',
      value: hundredths(play),
      note: mismatch === 0 ? 'none: the rim bears at once' : 'each way from the middle',
      tone: 'motion',
    },
    {
      name: 'Peak stability ratio',
      value: ratio(peakRatio),
      note: `holds a force up to ${degrees(socket.halfArc)} off`,
      tone: 'force',
    },
    {
      name: 'Depth',
      value: hundredths(socket.depth),
      note: `under the rim, over ${tenths(socket.width)} of width`,
    },
    pressureReading(pressure),
  ];
}

function pressureReading({ layer, hertz }: PressureRow): Reading {
  const name = 'Peak pressure';
  if (layer === null) {
    return { name, value: 'none', note: 'the ball would go through the plastic', tone: 'force' };
  }
  return {
    name,
    value: hertz === null ? megapascals(layer) : `${hertz.toFixed(0)}–${layer.toFixed(0)}\u00a0MPa`,
    note: hertz === null ? 'thin layer, ball centred' : 'Hertz to thin layer, ball centred',
    tone: 'force',
  };
}
