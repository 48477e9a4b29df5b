import { BODY } from '../../figures/section.ts';
import {
  BONE_POISSON,
  boneStrength,
  flatBed,
  holds,
  keel,
  peg,
  type SeatElement,
  type SeatLoad,
} from '../../mechanics/index.ts';
import type { Hollow } from '../../physics/rocking-hollow.ts';
import { loadInSpace, type RockingPlane } from '../../physics/rocking-plane.ts';
import { FOUR_ACROSS, spacingRange, type Design, type RockingSetting } from './settings.ts';

/** Enough that more change the results by less than a hundredth. */
const BED_ELEMENTS = 500;
/** Of a keel, mm: teaching values. Its length goes with the height of the back. */
const KEEL = { thickness: 4, share: 0.55 } as const;

/** Something that holds by its pull, as it is seen in the plane: one peg or several behind each other, a piece of keel. */
export interface Hold {
  /** Along the plane, mm */
  readonly along: number;
  /** Which elements pull along its axis */
  readonly elements: readonly number[];
  /** N, of all of them */
  readonly strength: number;
}

/** A peg or a keel in section, mm. */
export interface Stem {
  readonly from: number;
  readonly to: number;
  readonly length: number;
  /** How many stand behind each other */
  readonly count: number;
}

/** A design as elements, and what can be drawn of it. */
export interface Seat {
  readonly elements: readonly SeatElement[];
  readonly holds: readonly Hold[];
  readonly stems: readonly Stem[];
  readonly isCemented: boolean;
}

export const planeOf = ({ plane }: RockingSetting): RockingPlane =>
  plane === 'top-bottom' ? 'top–bottom' : 'front–back';

/** Size of the back in the plane, mm. */
export const backSize = (setting: RockingSetting): number =>
  setting.plane === 'top-bottom' ? setting.height : setting.width;

export function hollowOf(setting: RockingSetting): Hollow {
  const curvatureRadius = (setting.ballDiameter + setting.mismatch) / 2;
  const half = backSize(setting) / 2 - BODY.rimLedge;
  return { curvatureRadius, halfArc: Math.asin(half / curvatureRadius) };
}

/**
 * Half of the middle part of the back in the plane, mm: a press whose line meets a flat elliptic back inside it keeps all
 * of it in touch. A quarter of the half axis.
 */
export const kernOf = (setting: RockingSetting): number => backSize(setting) / 8;

/** Angle of the contact from the middle, rad, at a place in per cent of the way to the rim. */
export function angleAt(setting: RockingSetting, place: number = setting.place): number {
  return Math.asin((place / 100) * Math.sin(hollowOf(setting).halfArc));
}

/** The load of a ball that a guide holds where it is: along the normal at the contact, with the press along −z. */
export function loadAt(setting: RockingSetting, place: number = setting.place): SeatLoad {
  const angle = angleAt(setting, place);
  const { curvatureRadius } = hollowOf(setting);
  const at = {
    x: curvatureRadius * Math.sin(angle),
    z: curvatureRadius * (1 - Math.cos(angle)),
  };
  const force = { x: setting.press * Math.tan(angle), z: -setting.press };
  return loadInSpace(planeOf(setting), force, at);
}

/** Press at which the bone of the setting yields, MPa; undefined where it bears any. */
export const yieldsAt = ({ modulus, yields }: RockingSetting): number | undefined =>
  yields ? boneStrength(modulus) : undefined;

/** A design on the bone of the setting. */
export function seatOf(setting: RockingSetting, design: Design): Seat {
  const { modulus, layer: thickness } = setting;
  const strength = yieldsAt(setting);
  const bone = { modulus, poisson: BONE_POISSON, strength };
  const level = -BODY.thickness;
  const bed = flatBed(
    { kind: 'ellipse', width: setting.width, height: setting.height },
    {
      layer: { thickness, ...bone },
      level,
      elements: BED_ELEMENTS,
      strength,
      bond: design.bed === 'bonded' ? Infinity : undefined,
      isRough: design.bed !== 'pressed',
    },
  );
  const { kind, diameter, length } = design;
  const pegs = placesOf(setting, design).map(([x, y]) => ({
    x,
    y,
    elements: peg({ x, y, diameter, length, kind, bone, level }),
  }));
  const keelLength = KEEL.share * setting.height;
  const stem =
    design.layout === 'keel' ? keel({ ...keelSize(keelLength, length), kind, bone, level }) : [];
  const elements = [...bed, ...pegs.flatMap((one) => one.elements), ...stem];
  const at = setting.plane === 'top-bottom' ? 1 : 0;
  return {
    elements,
    holds: holdsOf(elements, at),
    stems:
      stem.length > 0
        ? [stemOf(0, at === 1 ? keelLength : KEEL.thickness, length, 1)]
        : stemsOf(
            pegs.map(({ x, y }) => (at === 1 ? y : x)),
            diameter,
            length,
          ),
    isCemented: kind.includes('cemented'),
  };
}

function keelSize(length: number, height: number) {
  return { x: 0, y: 0, length, height, thickness: KEEL.thickness };
}

/** Where pegs stand on the back, mm. */
export function placesOf(setting: RockingSetting, design: Design): readonly [number, number][] {
  const range = spacingRange(setting, design);
  const away = Math.max(range.min, Math.min(range.max, design.spacing)) / 2;
  switch (design.layout) {
    case 'one':
      return [[0, 0]];
    case 'upright':
      return [
        [0, away],
        [0, -away],
      ];
    case 'level':
      return [
        [away, 0],
        [-away, 0],
      ];
    case 'four':
      return [1, -1].flatMap((x) =>
        [1, -1].map((y): [number, number] => [x * away * FOUR_ACROSS, y * away]),
      );
    case 'none':
    case 'keel':
      return [];
  }
}

function holdsOf(elements: readonly SeatElement[], at: 0 | 1): readonly Hold[] {
  const byPlace = new Map<string, Hold>();
  elements.forEach(({ position, normal, tension, strength = 0 }, i) => {
    if (tension !== 'limited' || normal[2] !== 1) return;
    const key = position[at].toFixed(4);
    const { elements: before = [], strength: sum = 0 } = byPlace.get(key) ?? {};
    byPlace.set(key, { along: position[at], elements: [...before, i], strength: sum + strength });
  });
  return [...byPlace.values()];
}

function stemsOf(places: readonly number[], diameter: number, length: number): readonly Stem[] {
  return [...new Set(places)].map((along) =>
    stemOf(along, diameter, length, places.filter((other) => other === along).length),
  );
}

function stemOf(along: number, width: number, length: number, count: number): Stem {
  return { from: along - width / 2, to: along + width / 2, length, count };
}

/** Words for where the numbers of a kind of hold come from. */
export const provenanceOf = ({ kind }: Design): string => holds[kind].provenance;
