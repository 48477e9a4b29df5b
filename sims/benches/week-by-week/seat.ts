import { socketFromDepth } from '../../geometry/index.ts';
import { BODY, surfaceHeight } from '../../figures/section.ts';
import { boneOf, flatBed, peg, type SeatElement, type SeatLoad } from '../../mechanics/index.ts';
import type { WeekSetting } from './settings.ts';

/** The socket drawn and computed, mm. Its sizes are teaching values. */
export const socket = socketFromDepth({ depth: 4, width: 28 });
export const BACK = -BODY.thickness;
export const HEIGHT = socket.width + 2 * BODY.rimLedge;
const WIDTH = 26;
const LAYER = 10;
const BED_ELEMENTS = 120;

/** The fluted peg: its discs and the spaces between them, mm. */
export const FLUTED = { core: 4, diameter: 8, length: 14, spaces: 6, disc: 0.9 } as const;
export const SMALL = { diameter: 4, length: 7 } as const;
/** Where the small pegs stand: across, and along the section. */
export const SMALL_PLACES = [
  [0, 11],
  [-6, -9],
  [6, -9],
] as const;

/** A space between two discs, on one side of the section. */
export interface Space {
  /** 1 up, −1 down the face */
  readonly side: 1 | -1;
  /** z of its two ends, mm */
  readonly top: number;
  readonly bottom: number;
}

/** The spaces, from the back down, both sides of each. */
export const spaces: readonly Space[] = Array.from({ length: FLUTED.spaces }, (_, i) => {
  const pitch = FLUTED.length / FLUTED.spaces;
  const top = BACK - i * pitch;
  const bottom = top - (pitch - FLUTED.disc);
  return ([1, -1] as const).map((side) => ({ side, top, bottom }));
}).flat();

export interface WeekSeat {
  readonly elements: readonly SeatElement[];
  /** The spaces' places among them */
  readonly growing: readonly number[];
}

/** The socket on its bone: a rough bed, the fluted peg with a grip in every space, small pegs in cement or none. */
export function seatOf({ bone: name, pegs }: Pick<WeekSetting, 'bone' | 'pegs'>): WeekSeat {
  const bone = boneOf(name);
  const bed = flatBed(
    { kind: 'ellipse', width: WIDTH, height: HEIGHT },
    { layer: { ...bone, thickness: LAYER }, level: BACK, elements: BED_ELEMENTS, isRough: true },
  );
  const [grip, ...flanks] = peg({
    x: 0,
    y: 0,
    diameter: FLUTED.diameter,
    length: FLUTED.length,
    kind: 'fluted press-fit',
    bone,
    level: BACK,
  });
  const grips = grip === undefined ? [] : spaces.map((space) => gripIn(space, grip));
  const small =
    pegs === 'none'
      ? []
      : SMALL_PLACES.flatMap(([x, y]) =>
          peg({ x, y, ...SMALL, kind: 'smooth cemented', bone, level: BACK }),
        );
  return {
    elements: [...grips, ...bed, ...flanks, ...small],
    growing: grips.map((_, i) => i),
  };
}

/** A space's share of the peg's grip, where the space is. */
function gripIn({ side, top, bottom }: Space, grip: SeatElement): SeatElement {
  return {
    ...grip,
    position: [0, (side * FLUTED.diameter) / 2, (top + bottom) / 2],
    normalStiffness: grip.normalStiffness / spaces.length,
    strength: (grip.strength ?? 0) / spaces.length,
  };
}

/** Where the ball presses: mm from the middle, and height of the surface there. */
export function contactOf(place: number): { readonly y: number; readonly z: number } {
  const y = (place / 100) * (socket.width / 2);
  return { y, z: surfaceHeight(socket, y) };
}

/** The ball's push: square to the surface, its part straight in as large as the press. */
export function loadOf({ press, place }: Pick<WeekSetting, 'press' | 'place'>): SeatLoad {
  const { y, z } = contactOf(place);
  const slope = y / Math.sqrt(socket.curvatureRadius ** 2 - y ** 2);
  return { force: [0, press * slope, -press], point: [0, y, z] };
}
