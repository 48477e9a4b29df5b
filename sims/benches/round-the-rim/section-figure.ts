import { polyline, type Point, type View } from '../../figures/view.ts';
import { rimPoint, surfaceHeight, type Face } from '../../geometry/index.ts';
import type { SoundShape } from './sound-shape.ts';

/** Sizes of the body drawn under the surface, mm: for looks, nothing is computed from them. */
const SURFACE = 1.8;
const BODY = 6.5;
const FLARE = 1.6;
const POINTS = 96;
/** Places this near the rim (share of the way) are inside it in spite of rounding. */
const INSIDE = 1 - 1e-9;

/** A section through the middle of a face, drawn; '' for what is not there. */
export interface SectionFigure {
  readonly surface: string;
  readonly layer: string;
  readonly bone: string;
  /** The lip, at either end. */
  readonly lips: readonly string[];
  /** What a defect has taken, at either end. */
  readonly lost: readonly string[];
}

interface Spot {
  /** mm along the section, from the middle. */
  readonly at: number;
  readonly z: number;
}

/** The section of a face in a direction; its positive side is to the right. */
export function sectionFigure(sound: SoundShape, direction: number, view: View): SectionFigure {
  const lipWidth = sound.input.labrum?.width ?? 0;
  const right = profile(sound, direction, lipWidth);
  const left = profile(sound, direction + Math.PI, lipWidth);
  const across = (side: Profile['lipped']): readonly Spot[] =>
    side.map(({ at, z }) => ({ at: -at, z })).reverse();
  const place = ({ at, z }: Spot): Point => ({ x: view.x(at), y: view.y(z) });
  const hollow = [...across(left.bare), ...right.bare.slice(1)];
  const lipped = [...across(left.lipped), ...right.lipped.slice(1)];
  const closed = (spots: readonly Spot[]): string => `${polyline(spots.map(place))}Z`;
  const lowered = hollow.map(({ at, z }) => ({ at, z: z - SURFACE }));
  const first = hollow[0]?.at ?? 0;
  const last = hollow.at(-1)?.at ?? 0;
  return {
    surface: polyline(lipped.map(place)),
    layer: closed([...hollow, ...[...lowered].reverse()]),
    bone: closed([
      ...lowered,
      { at: last + (right.lost.length > 0 ? 0 : FLARE), z: -BODY },
      { at: first - (left.lost.length > 0 ? 0 : FLARE), z: -BODY },
    ]),
    lips: [left, right].map((side, i) => {
      if (lipWidth === 0 || side.lip.length === 0) return '';
      const spots = i === 0 ? across(side.lip) : side.lip;
      return closed(spots);
    }),
    lost: [left, right].map((side, i) => {
      if (side.lost.length === 0) return '';
      const spots = i === 0 ? side.lost.map(({ at, z }) => ({ at: -at, z })) : side.lost;
      const edge = spots[0]?.at ?? 0;
      const end = spots.at(-1)?.at ?? 0;
      return closed([
        ...spots,
        { at: end + (i === 0 ? -FLARE : FLARE), z: -BODY },
        { at: edge, z: -BODY },
      ]);
    }),
  };
}

interface Profile {
  /** From the middle to what is left of the rim: without the lip, and with it. */
  readonly bare: readonly Spot[];
  readonly lipped: readonly Spot[];
  /** Round the lip. */
  readonly lip: readonly Spot[];
  /** The surface lost, from what is left of the rim outward. */
  readonly lost: readonly Spot[];
}

function profile({ face, whole, bare }: SoundShape, direction: number, lipWidth: number): Profile {
  const end = reach(face, direction);
  const brim = reach(whole, direction);
  const lipFrom = brim - lipWidth;
  const steps = Array.from({ length: POINTS / 2 + 1 }, (_, i) => (end * i) / (POINTS / 2));
  const hasLip = lipWidth > 0 && lipFrom < end;
  const places = hasLip ? [...steps, lipFrom].sort((a, b) => a - b) : steps;
  const bareSpots = places.map((at) => ({ at, z: heightAt(bare, direction, at, brim) }));
  const lipped = places.map((at) => ({ at, z: heightAt(whole, direction, at, brim) }));
  const isLip = ({ at }: Spot): boolean => at >= lipFrom;
  const lost = Array.from({ length: 13 }, (_, i) => end + ((brim - end) * i) / 12);
  return {
    bare: bareSpots,
    lipped,
    lip: hasLip ? [...lipped.filter(isLip), ...bareSpots.filter(isLip).reverse()] : [],
    lost:
      brim - end > 1e-6 ? lost.map((at) => ({ at, z: heightAt(bare, direction, at, brim) })) : [],
  };
}

function reach(onFace: Face, direction: number): number {
  const { x, y } = rimPoint(onFace, direction);
  return Math.hypot(x, y);
}

function heightAt(onFace: Face, direction: number, at: number, end: number): number {
  if (at >= end * INSIDE) return rimPoint(onFace, direction).z;
  return surfaceHeight(onFace, at * Math.cos(direction), at * Math.sin(direction));
}
