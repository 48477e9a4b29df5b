import type { Reading } from '../../figures/Readings.svelte';
import { allowedRange, cupRanges, type CupSetting } from '../shared/cup-setting.ts';
import type { PushBench } from './state.svelte.ts';

const ratioText = (value: number): string =>
  value === Infinity ? 'no limit' : value.toFixed(2).replace('-', '−');
const force = (value: number): string => `${Math.round(value)} N`;
const length = (value: number): string => `${value.toFixed(1).replace('-', '−')} mm`;

/** Measured against theory, in per cent of the theory; null where either has no finite value or the theory is 0. */
export function differenceOf(measured: number | null, theory: number): number | null {
  if (measured === null || !Number.isFinite(theory) || theory === 0) return null;
  return (measured / theory - 1) * 100;
}

/** The strip of readings under the drawing. The theory shows once the bench has been asked: first predict, then see. */
export function readingsOf(bench: PushBench): readonly Reading[] {
  const { reading, theory } = bench;
  const { slipRatio, push } = reading;
  const difference = differenceOf(slipRatio, theory);
  const isAnswered = push === 'slipped' || push === 'held';
  return [
    { name: 'Moved', value: length(reading.translation), tone: 'motion' },
    { name: 'Climbed', value: length(reading.climb), tone: 'motion' },
    {
      name: 'Ratio now',
      value: ratioText(reading.ratio),
      note: `${force(reading.sideForce)} ÷ ${force(reading.compressiveLoad)}`,
      tone: 'force',
    },
    {
      name: 'Slipped at',
      value: slipRatio === null ? (push === 'held' ? 'held' : '–') : ratioText(slipRatio),
      note:
        slipRatio === null
          ? 'measured in the push'
          : `measured: ${force(slipRatio * reading.compressiveLoad)}`,
      tone: 'force',
    },
    {
      name: 'Theory',
      value: isAnswered ? ratioText(theory) : '?',
      note: isAnswered ? 'tan(β + λ)' : 'shown after the push',
    },
    {
      name: 'Difference',
      value:
        difference === null
          ? '–'
          : `${difference < 0 ? '−' : '+'}${Math.abs(difference).toFixed(1)} %`,
      note: 'measured against theory',
    },
  ];
}

/** The bench in words: for a screen reader, and for whoever reads the page without pictures. */
export function describe(bench: PushBench): string {
  const { setting, cup, reading, theory } = bench;
  const { socket } = cup;
  const shape =
    socket.depth === 0
      ? `a flat ${length(socket.width)} wide`
      : `a cup ${length(socket.width)} wide and ${length(socket.depth)} deep`;
  const scene = `A ball of ${length(setting.ballDiameter)} diameter is pressed with ${force(setting.compressiveLoad)} into ${shape}.`;
  return `${scene} ${happening(bench)}${ending(reading.push, theory)}`;
}

function happening({ reading }: PushBench): string {
  const { slipRatio, push, state } = reading;
  if (slipRatio !== null) {
    return `Pushed sideways it slipped at ${force(slipRatio * reading.compressiveLoad)}, a stability ratio of ${ratioText(slipRatio)}.`;
  }
  if (push === 'held') return 'No side force the bench can give moves it out.';
  if (state === 'slipped out') return 'It is out of the cup.';
  if (reading.sideForce < 0.5) return 'Nothing pushes it sideways.';
  return `A side force of ${force(reading.sideForce)} has moved it ${length(reading.translation)} and lifted it ${length(reading.climb)}.`;
}

function ending(push: string, theory: number): string {
  return push === 'slipped' || push === 'held' ? ` Theory gives ${ratioText(theory)}.` : '';
}

/** Why the shape control ends where it ends, said only while it stands at that end. */
export function limitHint(setting: CupSetting): string | undefined {
  const { shapeBy } = setting;
  const allowed = allowedRange(setting, shapeBy);
  const value = setting[shapeBy];
  const isAtEnd =
    shapeBy === 'depth'
      ? allowed.max < cupRanges.depth.max && value > allowed.max - allowed.step
      : value < allowed.min + allowed.step && allowed.min > cupRanges[shapeBy].min;
  if (isAtEnd) return 'A tighter curve would not let this ball reach the bottom.';
  return shapeBy === 'depth' && value === 0 ? 'Flat: there is no curve.' : undefined;
}
