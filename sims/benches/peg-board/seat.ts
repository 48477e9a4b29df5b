import { BODY } from '../../figures/section.ts';
import type { Point } from '../../figures/view.ts';
import type { OutlineCurve } from '../../geometry/outline.ts';
import {
  flatBed,
  foundationModulus,
  keel as keelElements,
  peg as pegElements,
  sphericalBed,
  type Bed,
  type SeatElement,
  type SeatLoad,
} from '../../mechanics/index.ts';
import { radiusOf, riseOf } from './back.ts';
import { curveOf, outlineLine, outlineOf, reachOfFace } from './outline.ts';
import type { BallLoad, Design, Ground } from './settings.ts';

/** Bone as it is commonly taken; a teaching value. */
export const POISSON = 0.3;
/** With more, the numbers change by less than a hundredth. */
export const BED_ELEMENTS = 600;
/** While something is moved: the rose then differs by a few hundredths. */
export const FEWER_ELEMENTS = 160;
/** Radius of the hollow in which the contact lies, mm: a ball of 48 mm with 6 mm of diametral mismatch, teaching values. */
export const HOLLOW_RADIUS = 27;
/** Height of the back over the deepest point of the face, mm. */
export const BACK = -BODY.thickness;
const DEGREE = Math.PI / 180;

/** Which elements stand for a peg or the keel. */
export interface HoldElements {
  /** Those along its axis, which alone can slip */
  readonly grips: readonly number[];
  readonly sides: readonly number[];
  /** N, of all its grips */
  readonly strength: number;
}

/** A design on its bone as springs. */
export interface Seat {
  readonly elements: readonly SeatElement[];
  readonly pegs: readonly HoldElements[];
  readonly keel: HoldElements | null;
  readonly curve: OutlineCurve;
  /** Of the back, mm; Infinity where it is flat */
  readonly backRadius: number;
  /** The edge of the back, mm */
  readonly edge: readonly Point[];
  /** Pressure for a press-in, N/mm³ */
  readonly bedStiffness: number;
  readonly isBonded: boolean;
}

export function seatOf({ pegs, keel }: Design, ground: Ground, count: number = BED_ELEMENTS): Seat {
  const { modulus, bed } = ground;
  const layer = { thickness: ground.layer, modulus, poisson: POISSON };
  const backRadius = radiusOf(ground);
  const under: Bed = {
    layer,
    level: BACK,
    elements: count,
    bond: bed === 'bonded' ? Infinity : undefined,
    isRough: bed !== 'pressed',
  };
  const outline = outlineOf(ground);
  const elements: SeatElement[] = [
    ...(backRadius === Infinity
      ? flatBed(outline, under)
      : sphericalBed(outline, backRadius, under)),
  ];
  const bone = { modulus, poisson: POISSON };
  const rooted = <Place extends Point>(place: Place) => ({
    ...place,
    bone,
    level: BACK + riseOf(backRadius, place),
  });
  const added = (more: readonly SeatElement[]): HoldElements => {
    const first = elements.length;
    elements.push(...more);
    const places = more.map((_, i) => first + i);
    const isGrip = (i: number): boolean => elements[i]?.tension === 'limited';
    return {
      grips: places.filter(isGrip),
      sides: places.filter((i) => !isGrip(i)),
      strength: more.reduce((sum, { strength = 0 }) => sum + strength, 0),
    };
  };
  const curve = curveOf(ground);
  return {
    pegs: pegs.map((peg) => added(pegElements(rooted(peg)))),
    keel:
      keel === null
        ? null
        : added(keelElements({ ...rooted(keel), length: keel.span, height: keel.depth })),
    elements,
    curve,
    backRadius,
    edge: outlineLine(curve),
    bedStiffness: foundationModulus(layer),
    isBonded: bed === 'bonded',
  };
}

/** Where the ball touches the face, mm. */
export function contactOf(
  curve: OutlineCurve,
  { bearing, share }: Pick<BallLoad, 'bearing' | 'share'>,
): { readonly x: number; readonly y: number; readonly z: number } {
  const away = (reachOfFace(curve, bearing) * share) / 100;
  return {
    x: away * Math.cos(bearing * DEGREE),
    y: away * Math.sin(bearing * DEGREE),
    z: away ** 2 / (HOLLOW_RADIUS + Math.sqrt(HOLLOW_RADIUS ** 2 - away ** 2)),
  };
}

/** Press toward the bone and shear away from the middle, at the contact. */
export function loadOf(curve: OutlineCurve, load: BallLoad): SeatLoad {
  const { x, y, z } = contactOf(curve, load);
  const { press, shear, bearing } = load;
  return {
    force: [shear * Math.cos(bearing * DEGREE), shear * Math.sin(bearing * DEGREE), -press],
    point: [x, y, z],
  };
}
