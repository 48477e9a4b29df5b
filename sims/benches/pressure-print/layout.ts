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
  readonly translation: (name: CurveName) => ScaleLinear<number, number>;
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

export function layoutFor(print: Print, width: number): Layout {
  const size = width < NARROW ? 13 : 15;
  const isWide = width >= WIDE;
  const column = isWide ? Math.round((width - size * GUTTER) / 2) : width;
  const second = isWide ? width - column : 0;
  const { socket } = print.pair;
  const { thickness } = print.layer;
  const spread = (socket.curvatureRadius + thickness) * Math.sin(socket.halfArc);
  const half = Math.max(socket.width / 2 + BESIDE, spread + BACKING);
  const scale = column / 2 / half;
  const thick = thickness + BACKING;
  const above = Math.max(LEAST_ABOVE, socket.depth + (ARROW_ROOM * size) / scale);
  const title = size * 1.9;

  const sectionBox = box(0, column, title, (above + thick) * scale);
  const planBox = box(0, column, sectionBox.bottom + title, Math.min(column, 2 * half * scale));
  const left = planBox.bottom;
  const detailTop = (isWide ? 0 : left + size * 0.6) + title;
  const profileHeight = isWide ? Math.max(size * 9, (left - title) * 0.3) : size * 9;
  const axis = size * 3;
  const detailHeight = isWide ? left - detailTop - title - profileHeight - axis : column * 0.78;
  const detailBox = box(second, second + column, detailTop, detailHeight);
  const window = detailWindow(print, detailBox);
  const profileTop = detailBox.bottom + title;
  const profile = {
    ...box(second, second + column, profileTop, profileHeight),
    left: second + size * 2.8,
  };
  const curvesTop = (isWide ? left : profile.bottom + axis) + size * 0.8 + title;
  const curves = curveBoxes(width, curvesTop, size, isWide);
  const reach = socket.width / 2;
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
    detail: {
      box: detailBox,
      window,
      view: createView({
        width: column,
        height: detailHeight,
        scale: window.scale,
        origin: {
          x: (detailBox.left + detailBox.right) / 2 - window.x * window.scale,
          y: (detailBox.top + detailBox.bottom) / 2,
        },
      }),
    },
    profile,
    curves,
    translation: (name) => scaleLinear([0, reach], [curves[name].left, curves[name].right]),
  };
}

/** Translation under a screen position in one of the curves' boxes, mm. */
export function plottedTranslation(layout: Layout, name: CurveName, x: number): number {
  return layout.translation(name).invert(x);
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
