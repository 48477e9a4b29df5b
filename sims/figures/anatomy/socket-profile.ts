import type { Point } from './path.ts';

/** What shapes the natural socket in one section, mm. */
export interface SocketSection {
  /** Of the surface the head runs on. */
  readonly surfaceRadius: number;
  /** From bony rim to bony rim. */
  readonly faceWidth: number;
  readonly boneDepth: number;
  /** From the tips of the labrum to the deepest point of the surface. */
  readonly labralDepth: number;
  /** Of the cartilage in the middle, where it is thinnest. */
  readonly cartilage: number;
}

/** Lines of the natural socket in its own axes: u out of the socket from its deepest point, v along the face. */
export interface SocketProfile {
  readonly surface: readonly Point[];
  readonly bone: readonly Point[];
  readonly cartilage: readonly (readonly Point[])[];
  /** At +v and at −v, each as runs of a closed outline. */
  readonly labrum: readonly [readonly (readonly Point[])[], readonly (readonly Point[])[]];
}

const STEPS = 9;

/**
 * The natural socket in section. Its bone is flatter than its surface: cartilage thickens towards the rim and the
 * labrum rides on the edge, so the head is held by a deeper cup than the bone alone.
 */
export function socketProfile(section: SocketSection): SocketProfile {
  const halfFace = section.faceWidth / 2;
  const boneRadius = (halfFace ** 2 + section.boneDepth ** 2) / (2 * section.boneDepth);
  const tip = Math.sqrt(
    section.surfaceRadius ** 2 - (section.surfaceRadius - section.labralDepth) ** 2,
  );
  const base = 0.74 * tip;
  const onSurface = (v: number): Point => [sagitta(section.surfaceRadius, v), v];
  const onBone = (v: number): Point => [sagitta(boneRadius, v) - section.cartilage, v];
  const along = (at: (v: number) => Point, from: number, to: number): readonly Point[] =>
    Array.from({ length: STEPS }, (_, i) => at(from + ((to - from) * i) / (STEPS - 1)));

  const lip = (side: 1 | -1): readonly (readonly Point[])[] => {
    const [rimDepth] = onBone(halfFace);
    const outer = (by: number): number => side * (halfFace + by);
    return [
      along(onSurface, side * base, side * tip),
      [
        onSurface(side * tip),
        [section.labralDepth - 1, outer(0.5)],
        [rimDepth + 0.8, outer(1.1)],
        [rimDepth - 1.4, outer(0.5)],
      ],
      [[rimDepth - 1.4, outer(0.5)], onBone(side * halfFace)],
      along(onBone, side * halfFace, side * base),
    ];
  };
  return {
    surface: along(onSurface, -tip, tip),
    bone: along(onBone, -halfFace, halfFace),
    cartilage: [along(onSurface, -base, base), along(onBone, base, -base)],
    labrum: [lip(1), lip(-1)],
  };
}

function sagitta(radius: number, halfChord: number): number {
  return radius - Math.sqrt(radius ** 2 - halfChord ** 2);
}
