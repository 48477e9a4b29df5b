import { createView, type Point, type View } from '../../figures/view.ts';
import type { RimMap } from './way.ts';
import type { SoundShape } from './sound-shape.ts';

/** The rose: face in the middle, ratios from the base circle outward, a ring of words round it. */
export interface Rose {
  readonly centre: Point;
  /** Outer edge of the ring of words, and its inner edge, where the ratio's scale ends. */
  readonly outer: number;
  readonly inner: number;
  /** Where the ratio is 0. */
  readonly base: number;
  /** Millimetres of the face, anterior to the right and superior up. */
  readonly view: View;
  /** Ratio at the inner edge of the ring of words, and from one scale ring to the next. */
  readonly top: number;
  readonly step: number;
}

/** A rectangle of the picture. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Where everything stands, in CSS pixels of the picture. */
export interface Layout {
  /** The profile stands beside the rose, or under it. */
  readonly arrangement: 'beside' | 'under';
  readonly width: number;
  readonly height: number;
  /** Size of the lettering, and of numbers and asides. */
  readonly size: number;
  readonly small: number;
  readonly rose: Rose;
  readonly section: Box & { readonly view: View };
  /** The plot of the ratio; its translations stand under the same millimetres of the section. */
  readonly ratio: Box;
  /** Translation at the right end of the plot, mm. */
  readonly reach: number;
}

/** Nothing is drawn narrower than this; a narrower place shrinks the drawing. */
export const LEAST_WIDTH = 280;
const BESIDE = 640;
/** Lettering keeps off the picture's edge, which is a frame once it leaves the page. */
export const EDGE = 6;
/** Room for the handle outside the ring of words. */
export const HANDLE = 20;
const SMALL = 420;
const ROSE_SHARE = 0.635;
const WIDEST_ROSE = 620;
/** As shares of the rose: where the ratio's scale begins. */
const BASE_SHARE = 0.6;
/** The usual face, half its height in mm: smaller ones are drawn at the same scale. */
const USUAL_FACE = 19.5;
/** Margin of the section beside the face, and room below its deepest point, mm. */
const BESIDE_FACE = 3.5;
const BELOW = 6;
/** Of the height beside the rose, the section's part. */
const SECTION_SHARE = 0.63;
const LEAST_TOP = 0.8;
/** Scale rings: at most this many, this far apart. */
const MOST_RINGS = 5;
const STEPS = [0.2, 0.5, 1, 2] as const;
/** The rose goes no further; a rim that stands nearly upright runs off it. */
const HIGHEST_TOP = 4;

export function layoutFor(sound: SoundShape, map: RimMap, width: number): Layout {
  const size = width < SMALL ? 13 : 14.5;
  const isBeside = width >= BESIDE;
  const line = Math.round(size * 1.9);
  const side = Math.round(
    isBeside ? Math.min(width * ROSE_SHARE, WIDEST_ROSE) : Math.min(width, WIDEST_ROSE),
  );
  const centre = { x: isBeside ? side / 2 : width / 2, y: line + side / 2 };
  const rose = roseFor(sound, map, centre, side / 2 - HANDLE, size);
  const { half, rise } = extent(sound);
  const panel = isBeside
    ? { left: side + size * 1.2, right: width - EDGE, top: line }
    : { left: EDGE, right: width - EDGE, top: line + side + size * 3.4 };
  const axis = size * 2.4;
  const room = panel.right - panel.left - axis - size * 0.8;
  const under = size * 3.1;
  const over = size * 2.6;
  const wanted = isBeside ? side - under - over : Math.min(room * 1.15, 520);
  const above = size * 2.6;
  const scale = Math.min(room / (2 * half), (wanted * SECTION_SHARE - above) / (BELOW + rise));
  const sectionHeight = isBeside ? wanted * SECTION_SHARE : (BELOW + rise) * scale + above;
  const middle = panel.left + axis + room / 2;
  const section = {
    left: panel.left,
    right: panel.right,
    top: panel.top,
    bottom: panel.top + Math.round(sectionHeight),
  };
  const ratioTop = section.bottom + over;
  const ratio = {
    left: middle - half * scale,
    right: middle + half * scale,
    top: ratioTop,
    bottom: Math.round(isBeside ? line + side - under : ratioTop + Math.max(110, room * 0.34)),
  };
  const height = Math.ceil(ratio.bottom + under);
  return {
    arrangement: isBeside ? 'beside' : 'under',
    width,
    height,
    size,
    small: smallSize(size),
    rose,
    section: {
      ...section,
      view: createView({
        width,
        height,
        scale,
        origin: { x: middle, y: section.bottom - BELOW * scale },
      }),
    },
    ratio,
    reach: half,
  };
}

/** Nothing is lettered smaller than can be read on a phone. */
export function smallSize(size: number): number {
  return Math.max(12, size * 0.9);
}

function roseFor(
  { face }: SoundShape,
  { rows }: RimMap,
  centre: Point,
  outer: number,
  size: number,
): Rose {
  const inner = outer - size * 1.75;
  const base = inner * BASE_SHARE;
  const { halfHeight } = face.curve;
  const extent = Math.max(USUAL_FACE, halfHeight, face.outline.width / 2);
  const scale = (base - size * 1.5) / extent;
  const { top, step } = ratioScale(Math.max(...rows.map((row) => row.peakStabilityRatio)));
  return {
    centre,
    outer,
    inner,
    base,
    top,
    step,
    view: createView({ width: 2 * outer, height: 2 * outer, scale, origin: centre }),
  };
}

/** End of the rose's scale and the distance of its rings, for the greatest ratio to be drawn. */
export function ratioScale(greatest: number): { readonly top: number; readonly step: number } {
  const wanted = Math.min(HIGHEST_TOP, Math.max(LEAST_TOP, greatest * 1.04));
  const step = STEPS.find((each) => Math.ceil(wanted / each - 1e-9) <= MOST_RINGS) ?? 2;
  return { top: Number((Math.ceil(wanted / step - 1e-9) * step).toFixed(6)), step };
}

/** Half of what a section shows across, and how high the ball's centre may come, mm: the same in every direction. */
function extent({ bare, face, ballRadius }: SoundShape): {
  readonly half: number;
  readonly rise: number;
} {
  const { x, y } = bare.rim;
  let reach = 0;
  for (let i = 0; i < x.length; i++) reach = Math.max(reach, Math.hypot(x[i] ?? 0, y[i] ?? 0));
  const depth = Math.max(...face.rim.z);
  return { half: reach + BESIDE_FACE, rise: ballRadius + Math.min(depth, 9) };
}
