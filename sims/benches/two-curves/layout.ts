import { scaleLinear, type ScaleLinear } from 'd3-scale';
import { BODY } from '../../figures/section.ts';
import { createView, type View } from '../../figures/view.ts';
import type { Pair } from './pair.ts';
import { pairRanges } from './pair-ranges.ts';

/** The four quantities drawn against mismatch, from the top. */
export const PANELS = ['play', 'ratio', 'depth', 'pressure'] as const;
export type PanelName = (typeof PANELS)[number];

/** Room of one panel, CSS pixels: its title's baseline, and its plot. */
export interface PanelRoom {
  readonly title: number;
  readonly top: number;
  readonly bottom: number;
}

/** Where everything stands, in CSS pixels of the picture. */
export interface Layout {
  readonly isBeside: boolean;
  readonly width: number;
  readonly height: number;
  readonly size: number;
  /** The two curves, in mm from the deepest point of the socket. */
  readonly view: View;
  readonly panels: Readonly<Record<PanelName, PanelRoom>>;
  readonly plots: { readonly left: number; readonly right: number };
  /** Radial mismatch, mm. */
  readonly x: ScaleLinear<number, number>;
  /** Where the two scales of the mismatch stand. */
  readonly axes: { readonly radial: number; readonly diametral: number };
}

/** Nothing is drawn narrower than this; a narrower place shrinks the drawing. */
export const LEAST_WIDTH = 280;
const BESIDE = 620;
const BESIDE_HEIGHT = 660;
const NARROW = 420;
/** More mismatch than this (mm) is drawn at a smaller scale, so that less does not shrink as it is made. */
const USUAL_MISMATCH = 5;
/** Plastic and bone under the socket, and paper beside its circle, mm. */
const BELOW = BODY.thickness + BODY.bone + 1;
const BESIDE_ROOM = 1;
/** Room for lettering, in its size: over the circle, under the bone, under that, and beside the rim. */
const OVER = 3.1;
const UNDER = 2.4;
const LEGEND = 1.8;
const DEPTH_LABEL = 4.2;

/** All that a layout depends on but the room it has, mm. */
export interface PairMeasures {
  /** Of the larger circle. */
  readonly radius: number;
  /** Half of what the picture shows across. */
  readonly half: number;
  /** From the middle to the depth's dimension. */
  readonly beside: number;
  /** Whether kept curves are named under it. */
  readonly hasLegend: boolean;
}

export function measuresOf(pairs: readonly Pair[]): PairMeasures {
  const radius = Math.max(...pairs.map(drawnRadius));
  return {
    radius,
    half: Math.max(radius + BESIDE_ROOM, ...pairs.map(halfWidth)),
    beside: Math.max(...pairs.map(({ socket }) => besideRim(socket.width))),
    hasLegend: pairs.length > 1,
  };
}

export function layoutFor(pairs: readonly Pair[], width: number): Layout {
  return layoutOf(measuresOf(pairs), width);
}

export function layoutOf({ radius, half, beside, hasLegend }: PairMeasures, width: number): Layout {
  const size = width < NARROW ? 13 : 15;
  const isBeside = width >= BESIDE;
  const pictureWidth = isBeside ? Math.round(width * 0.5) : width;
  const lettered = size * (OVER + UNDER + (hasLegend ? LEGEND : 0));
  const tall = 2 * radius + BELOW;
  const across = Math.min(
    pictureWidth / (2 * half),
    (pictureWidth / 2 - DEPTH_LABEL * size) / beside,
  );
  const pictureHeight = isBeside ? BESIDE_HEIGHT : Math.round(tall * across + lettered);
  const scale = Math.min((pictureHeight - lettered) / tall, across);
  const slack = pictureHeight - lettered - tall * scale;
  const view = createView({
    width: pictureWidth,
    height: pictureHeight,
    scale,
    origin: {
      x: pictureWidth / 2,
      y: slack / 2 + OVER * size + 2 * radius * scale,
    },
  });
  const plots = {
    left: (isBeside ? pictureWidth + size * 1.2 : 0) + size * 2.8,
    right: width - size * 1.5,
  };
  const first = isBeside ? 0 : pictureHeight + size;
  const axis = size * 6.6;
  const each = isBeside ? (BESIDE_HEIGHT - axis) / PANELS.length : size * 7.6;
  const room = (i: number): PanelRoom => {
    const top = Math.round(first + i * each);
    return {
      title: top + Math.round(size * 1.2),
      top: top + Math.round(size * 2),
      bottom: Math.round(top + each - size * 0.4),
    };
  };
  const bottom = room(PANELS.length - 1).bottom;
  return {
    isBeside,
    width,
    height: isBeside ? BESIDE_HEIGHT : Math.round(bottom + axis),
    size,
    view,
    panels: { play: room(0), ratio: room(1), depth: room(2), pressure: room(3) },
    plots,
    x: scaleLinear([pairRanges.mismatch.min, pairRanges.mismatch.max], [plots.left, plots.right]),
    axes: { radial: bottom, diametral: Math.round(bottom + size * 3.2) },
  };
}

function drawnRadius({ socket, ballRadius, setting }: Pair): number {
  const { curvatureRadius } = socket;
  return setting.change === 'ball'
    ? curvatureRadius
    : Math.max(curvatureRadius, ballRadius + USUAL_MISMATCH);
}

/** From the middle to where the depth is dimensioned, mm. */
export function besideRim(width: number): number {
  return width / 2 + BODY.rimLedge + 2.5;
}

function halfWidth({ socket }: Pair): number {
  return socket.width / 2 + BODY.rimLedge + BODY.boneMargin;
}
