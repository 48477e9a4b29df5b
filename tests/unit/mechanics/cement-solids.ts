import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import type { CementDesign, CementedKeel, CementedPeg } from '../../../sims/mechanics/index.ts';

/** Sides of a cylinder of the kernel: its volume is then 0.04 % short, and so is the room between two. */
const SIDES = 128;
/** Edges of the quarter circle that makes half a ball. */
const EDGES = 32;
/** Depth of the block of bone, mm. */
const DEEP = 60;
const WIDE = 200;

/**
 * Volume of the cement of a design from solids of a geometry kernel: bone, out of it the holes, into them the pegs and the
 * keel; what is then neither bone nor component, below the level of the bone’s surface.
 */
export function cementOfSolids(
  { Manifold: Solid, CrossSection }: ManifoldToplevel,
  design: CementDesign,
): number {
  const { pegs = [], keel, fitError = 0 } = design;
  const pin = (radius: number, length: number, end: 'flat' | 'round'): Manifold => {
    const straight = end === 'round' ? length - radius : length;
    const tip = Array.from({ length: EDGES }, (_, i): [number, number] => {
      const turn = (Math.PI * (i + 1)) / (2 * EDGES);
      return [radius * Math.cos(turn), straight + radius * Math.sin(turn)];
    });
    const outline: [number, number][] = [
      [0, 0],
      [radius, 0],
      [radius, straight],
      ...(end === 'round' ? tip : [[0, straight] as [number, number]]),
    ];
    return new CrossSection([outline]).revolve(SIDES).mirror([0, 0, 1]);
  };
  const at = (solid: Manifold, { x, y }: { readonly x: number; readonly y: number }): Manifold =>
    solid.translate([x, y, 0]);
  const pegHole = (peg: CementedPeg): Manifold => {
    const { diameter, length, gap, tip, tipGap = gap, holeEnd = tip } = peg;
    return at(pin(diameter / 2 + gap + fitError, length + tipGap + fitError, holeEnd), peg);
  };
  const plate = (one: CementedKeel, room: number, beyond: number): Manifold => {
    const { length, thickness, height, tipLength = length, tipThickness = thickness } = one;
    const corners = (l: number, t: number, z: number): [number, number, number][] =>
      [1, -1].flatMap((a) =>
        [1, -1].map((b): [number, number, number] => [a * (t / 2 + room), b * (l / 2 + room), z]),
      );
    const tip = corners(tipLength, tipThickness, -height);
    const taper = Solid.hull([...corners(length, thickness, 0), ...tip]);
    if (beyond === 0) return at(taper, one);
    return at(
      taper.add(Solid.hull([...tip, ...corners(tipLength, tipThickness, -height - beyond)])),
      one,
    );
  };
  const holes = [
    ...pegs.map(pegHole),
    ...(keel === undefined
      ? []
      : [plate(keel, keel.gap + fitError, (keel.tipGap ?? keel.gap) + fitError)]),
  ];
  const component = [
    ...pegs.map((peg) => at(pin(peg.diameter / 2, peg.length, peg.tip), peg)),
    ...(keel === undefined ? [] : [plate(keel, 0, 0)]),
  ];
  const block = Solid.cube([WIDE, WIDE, DEEP], true).translate([0, 0, -DEEP / 2]);
  const bone = holes.reduce((solid, hole) => solid.subtract(hole), block);
  const left = component.reduce((solid, part) => solid.subtract(part), block.subtract(bone));
  return left.volume();
}
