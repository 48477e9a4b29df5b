import { newKeel, newPeg, triangle, type Design, type PegPlace } from './settings.ts';

/** A design to start from, told in words. */
export interface Preset {
  readonly id: string;
  readonly name: string;
  readonly text: string;
  readonly design: Design;
}

const peg = (x: number, y: number, change: Partial<PegPlace> = {}): PegPlace => ({
  ...newPeg,
  x,
  y,
  ...change,
});

/** Front and back pegs of the triangle at a distance from each other, mm. */
export function triangleApart(spacing: number): Design {
  return {
    pegs: triangle.pegs.map((at) => ({ ...at, x: (Math.sign(at.x) * spacing) / 2 })),
    keel: null,
  };
}

export const presets: readonly Preset[] = [
  {
    id: 'one',
    name: 'Single centre peg',
    text: 'One cemented peg in the middle, 7 mm thick and 12 mm long.',
    design: { pegs: [peg(0, 0, { diameter: 7, length: 12 })], keel: null },
  },
  {
    id: 'line',
    name: 'Two in line',
    text: 'Two cemented pegs, one above the other, 16 mm apart.',
    design: { pegs: [peg(0, 8), peg(0, -8)], keel: null },
  },
  {
    id: 'near',
    name: 'Triangle, near',
    text: 'Three cemented pegs: one above, two below that stand 8 mm apart from front to back.',
    design: triangleApart(8),
  },
  {
    id: 'far',
    name: 'Triangle, far',
    text: 'The same three pegs, but the two below stand 16 mm apart from front to back.',
    design: triangleApart(16),
  },
  {
    id: 'keel',
    name: 'Keel',
    text: 'One cemented plate, upright: 18 mm long, 4 mm thick, 10 mm deep.',
    design: { pegs: [], keel: newKeel },
  },
  {
    id: 'fluted',
    name: 'Fluted centre, three outer',
    text: 'A fluted press-fit peg in the middle, 7 mm thick and 12 mm long, and three short cemented ones round it, 4 mm thick and 6 mm long.',
    design: {
      pegs: [
        peg(0, 0, { kind: 'fluted press-fit', diameter: 7, length: 12 }),
        peg(0, 11, { diameter: 4, length: 6 }),
        peg(7, -8, { diameter: 4, length: 6 }),
        peg(-7, -8, { diameter: 4, length: 6 }),
      ],
      keel: null,
    },
  },
  {
    id: 'none',
    name: 'Nothing',
    text: 'A bare back.',
    design: { pegs: [], keel: null },
  },
];

/** The preset a design is exactly, or undefined. */
export function presetOf(design: Design): Preset | undefined {
  const text = written(design);
  return presets.find((preset) => written(preset.design) === text);
}

/** All of a design, whatever the order its numbers came in. */
function written({ pegs, keel }: Design): string {
  return JSON.stringify([
    pegs.map(({ kind, x, y, diameter, length }) => [kind, x, y, diameter, length]),
    keel && [keel.kind, keel.x, keel.y, keel.span, keel.depth, keel.thickness],
  ]);
}
