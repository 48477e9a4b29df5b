import { degrees, ratio } from '../../shared/format.ts';
import { hundredths, tenths } from './lettering.ts';
import type { TracerReading } from './reading.ts';
import type { Drawn } from './setting.ts';

interface Shown {
  readonly name: string;
  readonly value: string;
  readonly note?: string;
  readonly tone?: 'force' | 'motion' | 'ink';
}

/** The strip of numbers under the drawing. */
export function readingsOf(
  { cup }: Drawn,
  reading: TracerReading,
  friction: number,
): readonly Shown[] {
  const { shape } = cup;
  const isFlat = reading.depth === 0;
  return [
    {
      name: 'Climb so far',
      value: hundredths(reading.climb),
      note: `area under the ratio ${hundredths(reading.areaSoFar)}`,
      tone: 'motion',
    },
    {
      name: 'Ratio here',
      value: ratio(reading.stabilityRatio),
      note:
        friction > 0
          ? `with friction ${ratio(reading.ratioWithFriction)}`
          : `slope of the path; φ ${degrees(reading.angle)}`,
      tone: 'force',
    },
    {
      name: 'Greatest ratio',
      value: ratio(reading.peak),
      note: isFlat
        ? 'flat: held by nothing'
        : `at ${tenths(reading.rimContact)}, where it meets the rim`,
      tone: 'force',
    },
    {
      name: 'Socket’s curve',
      value: Number.isFinite(shape.radius) ? `R ${tenths(shape.radius)}` : 'flat',
      note: Number.isFinite(shape.mismatch)
        ? `depth ${tenths(shape.depth)}, diametral mismatch ${tenths(shape.mismatch)}`
        : 'depth 0.0 mm, no radius',
    },
  ];
}
