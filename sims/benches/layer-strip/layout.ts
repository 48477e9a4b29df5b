import { scaleLinear, scaleLog, type ScaleLinear, type ScaleLogarithmic } from 'd3-scale';
import { createView, type Box, type View } from '../../figures/view.ts';
import { materialNames, ranges, type StripSetting } from './settings.ts';
import type { Strip } from './strip.ts';

/** Where everything stands, in CSS pixels of the picture. */
export interface Layout {
  readonly width: number;
  readonly height: number;
  /** Size of the lettering */
  readonly size: number;
  /** From the strip's left end rightward and from its joint upward, mm */
  readonly strip: { readonly title: number; readonly view: View; readonly bar: number };
  /** Length of every arrow for 1 N */
  readonly perNewton: number;
  readonly shear: {
    readonly title: number;
    readonly box: Box;
    readonly y: ScaleLinear<number, number>;
  };
  /** The bent strip: from where it is held, in the joint; movement is drawn `times` as large */
  readonly bent: {
    readonly title: number;
    readonly view: View;
    readonly times: number;
    readonly bottom: number;
  };
  /** Stress through the strip where it is held, beside it to the same height */
  readonly through: {
    readonly title: number;
    readonly box: Box;
    readonly x: ScaleLinear<number, number>;
    readonly y: ScaleLinear<number, number>;
  };
  readonly moduli: {
    readonly title: number;
    readonly box: Box;
    readonly row: number;
    readonly x: ScaleLogarithmic<number, number>;
  };
  readonly pair: {
    readonly title: number;
    readonly box: Box;
    readonly x: ScaleLinear<number, number>;
    readonly y: ScaleLinear<number, number>;
  };
}

/** Nothing is drawn narrower than this; a narrower place shrinks the drawing. */
export const LEAST_WIDTH = 300;
const BESIDE = 640;
const SMALL = 420;
const LEFT_SHARE = 0.58;
/** Room left and right of the strip for arrows and numbers, in the lettering's size */
const SIDE = 3.9;
const TALLEST_SCALE = 11;
/** The rim's way down is drawn no longer than this many mm of the strip. */
const LONGEST_SAG = 5;
const ROUND = [1000, 500, 200, 100, 50, 20, 10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01];

export function layoutFor(setting: StripSetting, strip: Strip, width: number): Layout {
  const size = width < SMALL ? 13 : 14.5;
  const isBeside = width >= BESIDE;
  const leftWidth = isBeside ? Math.round(width * LEFT_SHARE) : width;
  const left = SIDE * size;
  const right = leftWidth - SIDE * size;
  const scale = Math.min((right - left) / setting.length, TALLEST_SCALE);
  const start = (left + right - scale * setting.length) / 2;
  const line = size * 1.5;

  const stripTitle = line;
  const joint = stripTitle + size * 2.6 + setting.upperThickness * scale;
  // A short strip has no room for its scale beside its name.
  const isTight = scale * setting.length < size * 23;
  const bar = joint + setting.lowerThickness * scale + size * (isTight ? 2.6 : 1.05);
  const stripEnd = bar + size * 1.35;
  const view = (y: number, x: number): View =>
    createView({ width, height: y, scale, origin: { x, y } });

  const shearTitle = stripEnd + line;
  const shearBox = {
    left: start,
    right: start + scale * setting.length,
    top: shearTitle + size * 0.9,
    bottom: shearTitle + size * 9.4,
  };
  const most = niceTop(strip.peakShear);

  const bentTitle = shearBox.bottom + size * 3.4 + line;
  const times =
    ROUND.find((factor) => factor * strip.deflection <= LONGEST_SAG) ??
    LONGEST_SAG / strip.deflection;
  const bentJoint = bentTitle + size * 3.2 + setting.upperThickness * scale;
  const sag = times * strip.deflection;
  const bentBottom =
    bentJoint + Math.max(sag * scale + size * 2.2, size * 4) + setting.lowerThickness * scale;

  const sideLeft = isBeside ? leftWidth + size : 4;
  const sideRight = width - (isBeside ? 4 : size);
  const first = isBeside ? 0 : bentBottom + size;

  const throughTitle = first + line;
  const whole = setting.upperThickness + setting.lowerThickness;
  const throughTop = throughTitle + size * 1.1;
  const throughBottom = throughTop + Math.max(size * 6, Math.min(whole * scale, size * 11));
  const throughBox = {
    left: sideLeft + size * 0.4,
    right: sideRight - size * 0.6,
    top: throughTop,
    bottom: throughBottom,
  };
  const [lower, upper] = strip.bending.stresses;
  const widest = niceTop(
    Math.max(...[lower.top, lower.bottom, upper.top, upper.bottom].map(Math.abs)),
  );

  const moduliTitle = throughBottom + size * 3 + line;
  const row = Math.round(size * 1.55);
  const moduliTop = moduliTitle + size * 0.6;
  const moduliBox = {
    left: sideLeft + size * 8.2,
    right: sideRight - size,
    top: moduliTop,
    bottom: moduliTop + row * materialNames.length,
  };

  const pairTitle = moduliBox.bottom + size * 2.2 + line;
  const pairWidth = Math.min(sideRight - sideLeft - size * 4, size * 20);
  const pairLeft = sideLeft + size * 3.2;
  const pairTop = pairTitle + size * 0.9;
  const pairBox = {
    left: pairLeft,
    right: pairLeft + pairWidth,
    top: pairTop,
    bottom: pairTop + Math.round(pairWidth * 0.52),
  };
  const sideBottom = pairBox.bottom + size * 3;
  return {
    width,
    height: Math.ceil(isBeside ? Math.max(bentBottom, sideBottom) : sideBottom),
    size,
    strip: {
      title: stripTitle,
      view: view(joint, start),
      bar,
    },
    perNewton: (left - size * 0.6) / ranges.pull.max,
    shear: {
      title: shearTitle,
      box: shearBox,
      y: scaleLinear([0, most], [shearBox.bottom, shearBox.top]),
    },
    bent: {
      title: bentTitle,
      view: view(bentJoint, start + scale * strip.arm),
      times,
      bottom: bentBottom,
    },
    through: {
      title: throughTitle,
      box: throughBox,
      x: scaleLinear([-widest, widest], [throughBox.left, throughBox.right]),
      y: scaleLinear([0, whole], [throughBox.bottom, throughBox.top]),
    },
    moduli: {
      title: moduliTitle,
      box: moduliBox,
      row,
      x: scaleLog([100, 400_000], [moduliBox.left, moduliBox.right]),
    },
    pair: {
      title: pairTitle,
      box: pairBox,
      x: scaleLinear([-1, 1], [pairBox.left, pairBox.right]),
      y: scaleLinear([-0.5, 0.5], [pairBox.bottom, pairBox.top]),
    },
  };
}

/** A round end for a scale, a little over the value. */
export function niceTop(value: number): number {
  const wanted = value * 1.08;
  const decade = 10 ** Math.floor(Math.log10(wanted));
  const step = [1, 1.5, 2, 3, 4, 5, 6, 8, 10].find((factor) => factor * decade >= wanted) ?? 10;
  return step * decade;
}
