import { polyline, type Point, type View } from '../../figures/view.ts';
import { rimLine, rimPoint, type Face } from '../../geometry/index.ts';

/** Directions in which a line is worked out. */
const RAYS = 120;
const DEGREE = Math.PI / 180;

/** A contour: the places of one height, and the hollow below it. */
export interface Contour {
  /** mm over the deepest point. */
  readonly height: number;
  /** What lies no higher, as a closed line. */
  readonly fill: string;
  /** The line itself where it lies on the face, in pieces. */
  readonly line: string;
}

const screen =
  (view: View) =>
  ({ x, y }: Point): Point => ({ x: view.x(x), y: view.y(y) });

const onRay = (direction: number, radius: number): Point => ({
  x: radius * Math.cos(direction),
  y: radius * Math.sin(direction),
});

/** Distance from the middle, mm, at which the surface without its lip reaches a height, in a direction. */
export function contourRadius(
  { curvatureRadiusAP, curvatureRadiusSI }: Face,
  height: number,
  direction: number,
): number {
  const along = Math.cos(direction) ** 2;
  const up = Math.sin(direction) ** 2;
  const a = along / curvatureRadiusAP + up / curvatureRadiusSI;
  const b = along / curvatureRadiusAP ** 2 + up / curvatureRadiusSI ** 2;
  // z = ρ²a / (1 + √(1 − ρ²b)) solved for ρ.
  return Math.sqrt(Math.max(0, height * (2 * a - b * height))) / a;
}

/** Whole millimetres between contours so that there are no more than eight. */
export function contourStep(deepest: number): number {
  return [0.5, 1, 2, 5].find((step) => deepest / step <= 8) ?? 10;
}

/** Contours of the hollow, lip apart, from the lowest. */
export function contours(onFace: Face, bare: Face, view: View): readonly Contour[] {
  const deepest = Math.max(...bare.rim.z);
  const step = contourStep(deepest);
  const rays = Array.from({ length: RAYS + 1 }, (_, i) => {
    const direction = (2 * Math.PI * i) / RAYS;
    return { direction, end: hollowEnd(onFace, bare, direction) };
  });
  const place = screen(view);
  return Array.from({ length: Math.ceil(deepest / step) - 1 }, (_, i) => {
    const height = (i + 1) * step;
    const radii = rays.map(({ direction, end }) => {
      const radius = contourRadius(onFace, height, direction);
      return { direction, radius, end };
    });
    const fill = radii.map(({ direction, radius, end }) =>
      place(onRay(direction, Math.min(radius, end))),
    );
    const runs: Point[][] = [[]];
    for (const { direction, radius, end } of radii) {
      if (radius < end) runs.at(-1)?.push(place(onRay(direction, radius)));
      else if ((runs.at(-1)?.length ?? 0) > 0) runs.push([]);
    }
    const line = runs.filter((run) => run.length > 1).map(polyline);
    return { height, fill: `${polyline(fill)}Z`, line: line.join('') };
  });
}

/** Where the hollow ends in a direction, mm: at its lip, or at what is left of the rim. */
function hollowEnd(onFace: Face, bare: Face, direction: number): number {
  const whole = lengthTo(bare, direction);
  return Math.min(lengthTo(onFace, direction), whole - (onFace.labrum?.width ?? 0));
}

function lengthTo(onFace: Face, direction: number): number {
  const { x, y } = rimPoint(onFace, direction);
  return Math.hypot(x, y);
}

/** What is left of the face, as a closed line. */
export function outlinePath(onFace: Face, view: View): string {
  return `${polyline(rimLine(onFace).map(screen(view)))}Z`;
}

/** The inner edge of the lip, as a closed line; it runs along the rim where a defect has taken the lip. */
export function lipEdge(onFace: Face, bare: Face, view: View): string {
  const place = screen(view);
  const points = finely(onFace).map((direction) =>
    place(onRay(direction, hollowEnd(onFace, bare, direction))),
  );
  return `${polyline(points)}Z`;
}

/** The bone that a defect has taken, as a closed line; '' where there is none. */
export function lostBone(onFace: Face, bare: Face, view: View): string {
  if (onFace.defect === undefined) return '';
  const { direction: middle } = onFace.defect;
  const isLost = (off: number): boolean =>
    lengthTo(bare, middle + off) - lengthTo(onFace, middle + off) > 1e-9;
  const [first, last] = [edge(isLost, -Math.PI), edge(isLost, Math.PI)];
  const directions = Array.from(
    { length: LOST_POINTS + 1 },
    (_, i) => middle + first + ((last - first) * i) / LOST_POINTS,
  );
  const place = screen(view);
  const outer = directions.map((direction) => place(onRay(direction, lengthTo(bare, direction))));
  const inner = directions.map((direction) => place(onRay(direction, lengthTo(onFace, direction))));
  return `${polyline([...outer, ...inner.reverse()])}Z`;
}

const LOST_POINTS = 48;

/** How far from the middle of a defect, toward `end`, bone is lost: by halving, as it is lost in one stretch. */
function edge(isLost: (off: number) => boolean, end: number): number {
  let inside = 0;
  let outside = end;
  for (let i = 0; i < 36; i++) {
    const half = (inside + outside) / 2;
    if (isLost(half)) inside = half;
    else outside = half;
  }
  return inside;
}

/** Every second degree, and a hair to either side of a segment's two ends. */
function finely({ defect }: Face): readonly number[] {
  const even = Array.from({ length: 180 }, (_, i) => 2 * i * DEGREE);
  if (defect?.kind !== 'segment') return even;
  const ends = [-1, 1].flatMap((side) =>
    [-1, 1].map((hair) => defect.direction + (side * defect.span) / 2 + hair * 1e-6),
  );
  const turn = 2 * Math.PI;
  return [...even, ...ends.map((end) => ((end % turn) + turn) % turn)].sort((a, b) => a - b);
}
