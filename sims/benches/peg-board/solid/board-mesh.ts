import type { OutlineCurve } from '../../../geometry/outline.ts';
import { bands, type MeshArrays, type Spot } from '../../round-the-rim/solid/bands.ts';
import { reachOfBack, reachOfFace } from '../outline.ts';
import { riseOf } from '../back.ts';
import { BACK } from '../seat.ts';
import { hollowHeight } from '../section-figure.ts';
import type { KeelPlace, PegPlace } from '../settings.ts';
import type { Stand } from '../stand.ts';
import { gapAt, type Tilt } from '../tilt.ts';

/** How a socket has moved, drawn `times` as large. */
export interface Move extends Pick<Stand, 'displacement' | 'rotation'> {
  readonly times: number;
}

const RAYS = 72;
const RINGS = 10;
const ROUND = 28;
const BONE_MARGIN = 3.5;

/** A place of the socket, mm, carried along by its movement: u + θ × p, drawn larger. */
export function carriedSpot({ displacement: u, rotation: r, times }: Move, [x, y, z]: Spot): Spot {
  return [
    x + times * (u[0] + r[1] * z - r[2] * y),
    y + times * (u[1] + r[2] * x - r[0] * z),
    z + times * (u[2] + r[0] * y - r[1] * x),
  ];
}

const turnOf = (i: number): number => (2 * Math.PI * i) / RAYS;
const degreesOf = (i: number): number => (360 * i) / RAYS;
const onRay = (i: number, away: number, z: number): Spot => [
  away * Math.cos(turnOf(i)),
  away * Math.sin(turnOf(i)),
  z,
];
const rays = <Each>(make: (i: number) => Each): readonly Each[] =>
  Array.from({ length: RAYS }, (_, i) => make(i));
/** On the back, where it has its rise. */
const onBack = (i: number, away: number, radius: number): Spot =>
  onRay(i, away, BACK + riseOf(radius, { x: away, y: 0 }));
const shares = Array.from({ length: RINGS + 1 }, (_, j) => j / RINGS);

/** Face, rim and side of the socket, moved; without its back, which is coloured. */
export function socketMesh(curve: OutlineCurve, move: Move, backRadius = Infinity): MeshArrays {
  return bands(
    rays((i) => {
      const edge = reachOfBack(curve, degreesOf(i));
      const face = reachOfFace(curve, degreesOf(i));
      const top = hollowHeight(face);
      return [
        ...shares.map((share) => onRay(i, share * face, hollowHeight(share * face))),
        onRay(i, edge, top),
        onBack(i, edge, backRadius),
      ].map((spot) => carriedSpot(move, spot));
    }),
  );
}

/** The back, moved, with a share from −1 (greatest press-in) over 0 to 1 (greatest gap) at each corner. */
export function backMesh(
  curve: OutlineCurve,
  move: Move,
  tilt: Tilt,
  greatest: { readonly pressIn: number; readonly liftOff: number },
): MeshArrays {
  const spots = rays((i) => {
    const edge = reachOfBack(curve, degreesOf(i));
    return shares.map((share) => onBack(i, share * edge, tilt.radius ?? Infinity));
  });
  const mesh = bands(spots.map((row) => row.map((spot) => carriedSpot(move, spot))));
  const shareOf = ([x, y]: Spot): number => {
    const gap = gapAt(tilt, { x, y });
    const whole = gap < 0 ? greatest.pressIn : greatest.liftOff;
    return whole > 0 ? Math.max(-1, Math.min(1, gap / whole)) : 0;
  };
  return { ...mesh, shares: spots.flat().map(shareOf) };
}

/** The bone’s surface, unmoved: under the back it has its shape, beside it it goes on level. */
export function boneMesh(
  curve: OutlineCurve,
  backRadius = Infinity,
  margin = BONE_MARGIN,
): MeshArrays {
  return bands(
    rays((i) => {
      const edge = reachOfBack(curve, degreesOf(i));
      const under = shares.map((share) => onBack(i, share * edge, backRadius));
      const [, , level] = onBack(i, edge, backRadius);
      return [...under, onRay(i, edge + margin, level)];
    }),
  );
}

/** The edge of the back where it was before it moved, or a line a margin beside it, closed. */
export function edgeSpots(curve: OutlineCurve, backRadius = Infinity, margin = 0): readonly Spot[] {
  const spots = rays((i) => {
    const edge = reachOfBack(curve, degreesOf(i));
    const [, , level] = onBack(i, edge, backRadius);
    return onRay(i, edge + margin, level);
  });
  const [first] = spots;
  return first === undefined ? spots : [...spots, first];
}

export const boneEdge = (curve: OutlineCurve, backRadius = Infinity): readonly Spot[] =>
  edgeSpots(curve, backRadius, BONE_MARGIN);

/** A peg, moved. */
export function pegMesh(
  { x, y, diameter, length }: PegPlace,
  move: Move,
  backRadius = Infinity,
): MeshArrays {
  const around = Array.from({ length: ROUND }, (_, i): readonly [number, number] => {
    const turn = (2 * Math.PI * i) / ROUND;
    return [(diameter / 2) * Math.cos(turn), (diameter / 2) * Math.sin(turn)];
  });
  return prism({ x, y, depth: length }, around, move, backRadius);
}

/** The keel, moved; its corners doubled so that its faces are flat. */
export function keelMesh(
  { x, y, span, depth, thickness }: KeelPlace,
  move: Move,
  backRadius = Infinity,
): MeshArrays {
  const [a, b] = [thickness / 2, span / 2];
  const corners: readonly (readonly [number, number])[] = [
    [a, b],
    [-a, b],
    [-a, -b],
    [a, -b],
  ];
  const around = corners.flatMap(([from, to]) => [[from, to] as const, [from, to] as const]);
  return prism({ x, y, depth }, around, move, backRadius);
}

function prism(
  { x, y, depth }: { readonly x: number; readonly y: number; readonly depth: number },
  around: readonly (readonly [number, number])[],
  move: Move,
  backRadius: number,
): MeshArrays {
  const root = BACK + riseOf(backRadius, { x, y });
  const foot = root - depth;
  const row = ([right, up]: readonly [number, number]): readonly Spot[] => {
    const side = [
      [x + right, y + up, root],
      [x + right, y + up, foot],
      [x + right, y + up, foot],
      [x, y, foot],
    ] as const;
    return side.map((spot) => carriedSpot(move, spot));
  };
  return bands(around.map(row));
}

/** Foot of a peg or the keel, in the middle, moved. */
export function footSpot(
  { x, y, depth }: { readonly x: number; readonly y: number; readonly depth: number },
  move: Move,
  backRadius = Infinity,
): Spot {
  return carriedSpot(move, [x, y, BACK + riseOf(backRadius, { x, y }) - depth]);
}
