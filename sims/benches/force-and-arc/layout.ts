import type { Point } from '../../figures/view.ts';
import type { Plane } from './planes.ts';

/** A part of the picture, in its drawing units. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Where everything stands: the joint on top, under it the gauge and the margin plot, side by side where there is room. */
export interface Layout {
  readonly width: number;
  readonly height: number;
  /** Size of the lettering. */
  readonly size: number;
  readonly isWide: boolean;
  readonly joint: Box;
  readonly gauge: Box;
  readonly plot: Box;
}

/** Nothing is drawn narrower than this; a narrower place shrinks the drawing. */
export const LEAST_WIDTH = 300;
const WIDE = 560;
const GAUGE_SHARE = 0.44;

export function layoutFor(width: number): Layout {
  const isWide = width >= WIDE;
  const size = isWide ? 15 : 13;
  const joint = {
    left: 0,
    top: 0,
    width,
    height: Math.round(width * (isWide ? 0.72 : 0.98)),
  };
  if (isWide) {
    const top = joint.height + size;
    const height = Math.round(Math.min(310, width * 0.42));
    const gaugeWidth = Math.round(width * GAUGE_SHARE);
    const gauge = { left: 0, top, width: gaugeWidth, height };
    const plot = { left: gaugeWidth, top, width: width - gaugeWidth, height };
    return { width, height: top + height, size, isWide, joint, gauge, plot };
  }
  const gauge = { left: 0, top: joint.height + size, width, height: Math.round(width * 0.62) };
  const plot = {
    left: 0,
    top: gauge.top + gauge.height + size,
    width,
    height: Math.round(width * 0.72),
  };
  return { width, height: plot.top + plot.height, size, isWide, joint, gauge, plot };
}

/** A place on the scapula, mm: towards the plane's positive side, and out of an unturned socket. */
export interface Place {
  readonly aside: number;
  readonly out: number;
}

/** The scapula on the sheet. The socket turns about the deepest point of its hollow, which stands at the origin. */
export interface ScapulaView {
  /** Drawing units per mm. */
  readonly scale: number;
  readonly origin: Point;
  /** Screen direction of the plane's positive side, and of straight out, each of length 1. */
  readonly aside: Point;
  readonly out: Point;
  /** Turn of the socket's own drawing (aside to the right, out upward), degrees clockwise, before its tilt. */
  readonly turn: number;
  readonly toScreen: (place: Place) => Point;
  readonly toPlace: (point: Point) => Place;
}

/** Reach of the picture from the deepest point of the hollow, mm, for a ball of the usual radius. */
const USUAL_RADIUS = 24;
const REACH = {
  version: { left: 62, right: 46, above: 50, below: 52 },
  inclination: { left: 62, right: 46, above: 57, below: 48 },
} as const;

/** A view that holds the ball wherever the socket may turn; a larger ball is drawn smaller. */
export function scapulaView(box: Box, plane: Plane, ballRadius: number): ScapulaView {
  const growth = Math.max(1, ballRadius / USUAL_RADIUS);
  const { left, right, above, below } = REACH[plane.tilt];
  const scale = Math.min(box.width / (left + right), box.height / (above + below)) / growth;
  const spare = box.width - (left + right) * scale * growth;
  const origin = {
    x: box.left + spare / 2 + left * scale * growth,
    y: box.top + above * scale * growth,
  };
  const angle = (plane.outward * Math.PI) / 180;
  const out = { x: Math.cos(angle), y: -Math.sin(angle) };
  // A quarter turn clockwise from the way out.
  const aside = { x: -out.y, y: out.x };
  return {
    scale,
    origin,
    aside,
    out,
    turn: 90 - plane.outward,
    toScreen: (place) => ({
      x: origin.x + scale * (place.aside * aside.x + place.out * out.x),
      y: origin.y + scale * (place.aside * aside.y + place.out * out.y),
    }),
    toPlace: (point) => {
      const [x, y] = [(point.x - origin.x) / scale, (point.y - origin.y) / scale];
      return { aside: x * aside.x + y * aside.y, out: x * out.x + y * out.y };
    },
  };
}

/** A place on the turned socket, carried onto the scapula; `tilt` rad towards the positive side. */
export function turned({ aside, out }: Place, tilt: number): Place {
  const [sin, cos] = [Math.sin(tilt), Math.cos(tilt)];
  return { aside: aside * cos + out * sin, out: out * cos - aside * sin };
}
