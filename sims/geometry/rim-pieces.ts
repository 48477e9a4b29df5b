import type { FaceShape } from './face-shape.ts';
import { polarRadius } from './polar-table.ts';

/**
 * A smooth piece of the rim that is left, run through against the clock: an arc of the outline, moved inward along its
 * rays, or a straight edge. It lies wholly on the labral lip or wholly inward of it.
 */
export interface RimPiece {
  readonly isArc: boolean;
  /** Whether its end is its beginning: a whole rim. */
  readonly closed: boolean;
  readonly onLip: boolean;
  /** Whether the lip lies inward of it on every ray: not of the steps at the ends of a segment. */
  readonly bearsLip: boolean;
  /** Of an arc: the direction it begins at and the angle it turns through, rad, and how far inward it lies, mm. */
  readonly from: number;
  readonly turn: number;
  readonly inward: number;
  /** Of an edge: where it begins and where it goes from there, mm. */
  readonly x: number;
  readonly y: number;
  readonly dx: number;
  readonly dy: number;
}

/** The rim that is left, in pieces: whole, or cut edge and outline, or steps, inner arc and outline. */
export function rimPieces(shape: FaceShape): readonly RimPiece[] {
  const { defect } = shape;
  if (defect === undefined) return [arc(shape, 0, 2 * Math.PI, 0, true)];
  if (defect.kind === 'segment') {
    const from = defect.direction - defect.span / 2;
    const to = defect.direction + defect.span / 2;
    const { depth } = defect;
    return [
      ...edges(shape, placeOn(shape, from, 0), placeOn(shape, from, depth)),
      arc(shape, from, defect.span, depth, false),
      ...edges(shape, placeOn(shape, to, depth), placeOn(shape, to, 0)),
      arc(shape, to, 2 * Math.PI - defect.span, 0, false),
    ];
  }
  const from = cutCorner(shape, -1);
  const to = cutCorner(shape, 1);
  return [
    ...edges(shape, placeOn(shape, from, 0), placeOn(shape, to, 0)),
    arc(shape, to, 2 * Math.PI - (to - from), 0, false),
  ];
}

function arc(
  { labrum }: FaceShape,
  from: number,
  turn: number,
  inward: number,
  closed: boolean,
): RimPiece {
  const onLip = labrum !== undefined && inward < labrum.width;
  return {
    isArc: true,
    closed,
    onLip,
    bearsLip: onLip,
    from,
    turn,
    inward,
    x: 0,
    y: 0,
    dx: 0,
    dy: 0,
  };
}

interface Point {
  readonly x: number;
  readonly y: number;
}

function placeOn(shape: FaceShape, angle: number, inward: number): Point {
  const distance = polarRadius(shape.curve, angle).radius - inward;
  return { x: distance * Math.cos(angle), y: distance * Math.sin(angle) };
}

/** A straight edge, parted where it crosses the inner edge of the labrum, as its height has a kink there. */
function edges(shape: FaceShape, from: Point, to: Point): readonly RimPiece[] {
  const isOnLip = (v: number): boolean => {
    const { x, y } = between(from, to, v);
    const { radius } = polarRadius(shape.curve, Math.atan2(y, x));
    return radius - Math.hypot(x, y) < (shape.labrum?.width ?? 0);
  };
  const ends = [0, ...(shape.labrum === undefined ? [] : changes(isOnLip)), 1];
  return ends.slice(1).map((end, i) => {
    const start = ends[i] ?? 0;
    const { x, y } = between(from, to, start);
    const dx = (to.x - from.x) * (end - start);
    const dy = (to.y - from.y) * (end - start);
    const onLip = isOnLip((start + end) / 2);
    const bearsLip = onLip && shape.defect?.kind === 'cut';
    return { ...none, isArc: false, closed: false, onLip, bearsLip, x, y, dx, dy };
  });
}

const none = { from: 0, turn: 0, inward: 0 };

const between = (from: Point, to: Point, v: number): Point => ({
  x: from.x + (to.x - from.x) * v,
  y: from.y + (to.y - from.y) * v,
});

/** Where a yes turns into a no and the other way about, between 0 and 1. */
function changes(is: (v: number) => boolean): readonly number[] {
  const looks = 64;
  return Array.from({ length: looks }, (_, i) => i / looks)
    .filter((start) => is(start) !== is(start + 1 / looks))
    .map((start) => change(is, start, start + 1 / looks));
}

/** Where a yes turns into a no or the other way about, by halving. */
function change(is: (v: number) => boolean, start: number, end: number): number {
  const first = is(start);
  let low = start;
  let high = end;
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (is(middle) === first) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The direction in which the edge of a cut meets the outline, on one side (−1 or 1) of the cut's own direction. */
function cutCorner(shape: FaceShape, side: number): number {
  const { defect, curve, cutAt } = shape;
  const direction = defect?.direction ?? 0;
  const isBeyond = (turn: number): boolean =>
    polarRadius(curve, direction + side * turn).radius * Math.cos(turn) > cutAt;
  return direction + side * change(isBeyond, 0, Math.PI / 2);
}
