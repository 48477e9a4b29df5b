import type { SphericalSocket } from '../../geometry/index.ts';
import { BODY } from '../../figures/section.ts';
import { createView, type View } from '../../figures/view.ts';

/** Half of the width always in view, mm. */
const HALF_SPAN = 46;
/** Room above the usual ball and below the back of the component, mm. */
const USUAL_TOP = 62;
const FOOT = BODY.thickness + BODY.bone + 7;
const ASPECT = (USUAL_TOP + FOOT) / (2 * HALF_SPAN);
/** Arrow length given to the round force at or above the press, as a share of the picture's height. */
const ARROW_SHARE = 0.24;

/** The picture: the usual setting at one fixed scale; a larger ball is drawn smaller rather than cut off. */
export function frameFor(width: number, socket: SphericalSocket, ballRadius: number): View {
  const height = Math.round(width * ASPECT);
  const needed = Math.max(USUAL_TOP, 2 * ballRadius + socket.depth + 6) + FOOT;
  const scale = Math.min(width / (2 * HALF_SPAN), height / needed);
  return createView({
    width,
    height,
    scale,
    origin: { x: width / 2, y: height - FOOT * scale },
  });
}

/** Screen units per newton: the same for every arrow, stepping with the load so that arrows neither vanish nor leave. */
export function forceScale(compressiveLoad: number, sideForce: number, view: View): number {
  const largest = Math.max(compressiveLoad, sideForce / 1.6, 1);
  const decade = 10 ** Math.floor(Math.log10(largest));
  const ceiling = [1, 2, 5, 10].map((f) => f * decade).find((value) => value >= largest) ?? largest;
  return (view.height * ARROW_SHARE) / ceiling;
}
