import { scaleLinear, scaleLog, type ScaleLinear, type ScaleLogarithmic } from 'd3-scale';
import { createView, type Box, type View } from '../../figures/view.ts';
import { BACK, FLUTED, HEIGHT } from './seat.ts';
import { WEEKS } from './settings.ts';

/** Where everything stands, in CSS pixels of the picture. */
export interface Layout {
  readonly width: number;
  readonly height: number;
  /** Size of the lettering */
  readonly size: number;
  /** The cut, mm from the deepest point of the face */
  readonly view: View;
  readonly cut: Box;
  readonly weeks: ScaleLinear<number, number>;
  readonly share: {
    readonly title: number;
    readonly box: Box;
    readonly y: ScaleLinear<number, number>;
  };
  /** µm, on a scale of factors */
  readonly motion: {
    readonly title: number;
    readonly box: Box;
    readonly y: ScaleLogarithmic<number, number>;
  };
}

/** Nothing is drawn narrower than this; a narrower place shrinks the drawing. */
export const LEAST_WIDTH = 300;
/** Ends of the motion scale, µm */
export const LEAST_MOTION = 1;
export const MOST_MOTION = 1000;
/** Bone drawn beside the socket and under the peg, room over the face for the arrow, mm */
export const BESIDE_SOCKET = 5;
export const UNDER_PEG = 4.5;
export const OVER_FACE = 17.5;
const BESIDE = 640;
const SMALL = 420;

export function layoutFor(width: number): Layout {
  const size = width < SMALL ? 13 : 14.5;
  const isBeside = width >= BESIDE;
  const cutWidth = isBeside ? Math.round(width * 0.5) : width;
  const across = HEIGHT + 2 * BESIDE_SOCKET;
  const scale = Math.min(cutWidth / across, 10.5);
  const line = size * 1.5;
  const top = line + size * 0.4;
  const deep = -BACK + FLUTED.length + UNDER_PEG;
  const cutBottom = top + (OVER_FACE + deep) * scale;
  const view = createView({
    width,
    height: cutBottom,
    scale,
    origin: { x: cutWidth / 2, y: top + OVER_FACE * scale },
  });
  const left = (isBeside ? cutWidth + size * 1.4 : 0) + size * 3.4;
  const right = width - size * 1.2;
  const first = isBeside ? 0 : cutBottom + size * 3.2;
  const tall = isBeside ? (cutBottom - size * 6.4) / 2 : size * 10.5;
  const boxFrom = (title: number): Box => ({
    left,
    right,
    top: title + size * 0.8,
    bottom: title + size * 0.8 + tall,
  });
  const shareTitle = first + line;
  const share = boxFrom(shareTitle);
  const motionTitle = share.bottom + size * 2.2 + line;
  const motion = boxFrom(motionTitle);
  const foot = motion.bottom + size * 3.2;
  return {
    width,
    height: Math.ceil(isBeside ? Math.max(cutBottom + size * 3, foot) : foot),
    size,
    view,
    cut: {
      left: view.x(-across / 2),
      right: view.x(across / 2),
      top,
      bottom: cutBottom,
    },
    weeks: scaleLinear([0, WEEKS], [left, right]),
    share: { title: shareTitle, box: share, y: scaleLinear([0, 100], [share.bottom, share.top]) },
    motion: {
      title: motionTitle,
      box: motion,
      y: scaleLog([LEAST_MOTION, MOST_MOTION], [motion.bottom, motion.top]).clamp(true),
    },
  };
}
