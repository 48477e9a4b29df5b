import { scaleLinear, type ScaleLinear } from 'd3-scale';
import { createView, type View } from '../../figures/view.ts';
import type { Print } from './print.ts';
import { detailWindow, type Window } from './window.ts';

/** A rectangle of the picture. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The three quantities drawn against translation. */
export const CURVES = ['ratio', 'pressure', 'rimShare'] as const;
export type CurveName = (typeof CURVES)[number];

/** Where everything stands, in CSS pixels of the picture. */
export interface Layout {
  readonly isWide: boolean;
  readonly width: number;
  readonly height: number;
  readonly size: number;
  /** The section along the translation, x and z in mm from the deepest point; and where its strip ends. */
  readonly section: { readonly view: View; readonly box: Box };
  /** The face seen along the centre line, x along the translation. */
  readonly plan: { readonly view: View; readonly box: Box };
  /** A part of the face, larger. */
  readonly detail: { readonly view: View; readonly box: Box; readonly window: Window };
  /** Pressure along the line of the translation, under the detail's millimetres. */
  readonly profile: Box;
  readonly curves: Readonly<Record<CurveName, Box>>;
  /** Translation, mm, in each of the curves' boxes. */
  readonly translation: Readonly<Record<CurveName, ScaleLinear<number, number>>>;
}

/** A layout but for the detail, which follows the print; it stays while the ball slides. */
export type Frame = Omit<Layout, 'detail'> & { readonly detailBox: Box };

/** All that a frame depends on, in CSS pixels and mm. */
export interface FrameMeasures {
  readonly width: number;
  /** Half of what a section shows. */
  readonly half: number;
  readonly depth: number;
  readonly thickness: number;
  /** Greatest translation. */
  readonly reach: number;
}

/** What a place of the detail is drawn on, as a token: the face, or the paper beyond its rim. */
export function groundOf(
  { detail }: Layout,
  rim: number,
  x: number,
  y: number,
): 'plastic' | 'slip' {
  const place = detail.view.toMm(x, y);
  return Math.hypot(place.x, place.z) < rim ? 'plastic' : 'slip';
}

export const LEAST_WIDTH = 280;
const WIDE = 620;
const NARROW = 420;
/** Paper beside the rim, room for the backing under the plastic, and for the ball over the deepest point, mm. */
const BESIDE = 5;
const BACKING = 3;
const LEAST_ABOVE = 11;
/** Room for the load's arrow over the rim, in sizes of the lettering. */
const ARROW_ROOM = 5;
const GUTTER = 1.6;

/** Room is given out in such steps, mm, so that a frame stays while a socket changes a little. */
const STEP = 2;
const inSteps = (value: number): number => Math.ceil(value / STEP) * STEP;

/** What the frame for a print depends on, in a place so wide. */
export function measuresOf({ pair, layer }: Print, width: number): FrameMeasures {
  const { socket } = pair;
  const { thickness } = layer;
  const spread = (socket.curvatureRadius + thickness) * Math.sin(socket.halfArc);
  return {
    width,
    half: inSteps(Math.max(socket.width / 2 + BESIDE, spread + BACKING)),
    depth: inSteps(socket.depth),
    thickness,
    reach: socket.width / 2,
  };
}

export function layoutFor(print: Print, width: number): Layout {
  return withDetail(frameFor(measuresOf(print, width)), print);
}

/** A frame with the detail where the print is. */
export function withDetail(frame: Frame, print: Print): Layout {
  const { detailBox: box } = frame;
  const window = detailWindow(print, box);
  return {
    ...frame,
    detail: {
      box,
      window,
      view: createView({
        width: box.right - box.left,
        height: box.bottom - box.top,
        scale: window.scale,
        origin: {
          x: (box.left + box.right) / 2 - window.x * window.scale,
          y: (box.top + box.bottom) / 2,
        },
      }),
    },
  };
}

export function frameFor({ width, half, depth, thickness, reach }: FrameMeasures): Frame {
  const size = width < NARROW ? 13 : 15;
  const isWide = width >= WIDE;
  const column = isWide ? Math.round((width - size * GUTTER) / 2) : width;
  const second = isWide ? width - column : 0;
  const scale = column / 2 / half;
  const thick = thickness + BACKING;
  const above = Math.max(LEAST_ABOVE, depth + (ARROW_ROOM * size) / scale);
  const title = size * 1.9;

  const sectionBox = box(0, column, title, (above + thick) * scale);
  const planBox = box(0, column, sectionBox.bottom + title, Math.min(column, 2 * half * scale));
  const left = planBox.bottom;
  const detailTop = (isWide ? 0 : left + size * 0.6) + title;
  const profileHeight = isWide ? Math.max(size * 9, (left - title) * 0.3) : size * 9;
  const axis = size * 3;
  const detailHeight = isWide ? left - detailTop - title - profileHeight - axis : column * 0.78;
  const detailBox = box(second, second + column, detailTop, detailHeight);
  const profileTop = detailBox.bottom + title;
  const profile = {
    ...box(second, second + column, profileTop, profileHeight),
    left: second + size * 2.8,
  };
  const curvesTop = (isWide ? left : profile.bottom + axis) + size * 0.8 + title;
  const curves = curveBoxes(width, curvesTop, size, isWide);
  const scaleOf = (name: CurveName): ScaleLinear<number, number> =>
    scaleLinear([0, reach], [curves[name].left, curves[name].right]);
  return {
    isWide,
    width,
    height: Math.round(curves.rimShare.bottom + axis),
    size,
    section: {
      box: sectionBox,
      view: createView({
        width: column,
        height: sectionBox.bottom - sectionBox.top,
        scale,
        origin: { x: column / 2, y: sectionBox.bottom - thick * scale },
      }),
    },
    plan: {
      box: planBox,
      view: createView({
        width: column,
        height: planBox.bottom - planBox.top,
        scale,
        origin: { x: column / 2, y: (planBox.top + planBox.bottom) / 2 },
      }),
    },
    detailBox,
    profile,
    curves,
    translation: {
      ratio: scaleOf('ratio'),
      pressure: scaleOf('pressure'),
      rimShare: scaleOf('rimShare'),
    },
  };
}

/** Translation under a screen position in one of the curves' boxes, mm. */
export function plottedTranslation(layout: Layout, name: CurveName, x: number): number {
  return layout.translation[name].invert(x);
}

function curveBoxes(
  width: number,
  top: number,
  size: number,
  isWide: boolean,
): Readonly<Record<CurveName, Box>> {
  const height = isWide ? size * 10 : size * 7;
  const numbers = size * 2.8;
  const each = isWide ? width / CURVES.length : width;
  const at = (i: number): Box =>
    isWide
      ? box(i * each + numbers, (i + 1) * each - size * 0.9, top, height)
      : box(numbers, width - size * 0.9, top + i * (height + size * 2.4), height);
  return { ratio: at(0), pressure: at(1), rimShare: at(2) };
}

function box(left: number, right: number, top: number, height: number): Box {
  return {
    left: Math.round(left),
    right: Math.round(right),
    top: Math.round(top),
    bottom: Math.round(top + height),
  };
}
