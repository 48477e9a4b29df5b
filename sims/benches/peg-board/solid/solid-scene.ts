import { Float32BufferAttribute, Group, type Mesh, type MeshLambertMaterial } from 'three';
import type { MeshArrays, Spot } from '../../round-the-rim/solid/bands.ts';
import { between, type SolidColours } from '../../round-the-rim/solid/colours.ts';
import type { OrbitView } from '../../round-the-rim/solid/orbit.ts';
import {
  arrow,
  colourOf,
  discard,
  dot,
  pointAlong,
  surface,
  tube,
} from '../../round-the-rim/solid/parts.ts';
import {
  openStage,
  webgl,
  type Renderer,
  type Stage,
  type StageFrame,
} from '../../round-the-rim/solid/solid-stage.ts';
import { contactOf, loadOf, type Seat } from '../seat.ts';
import { lostPose, magnification } from '../section-figure.ts';
import type { BallLoad, Design } from '../settings.ts';
import { isRest, type Stand } from '../stand.ts';
import { openHatches, strips, zeroLines } from './back-lines.ts';
import {
  backMesh,
  boneEdge,
  boneMesh,
  carriedSpot,
  edgeSpots,
  footSpot,
  keelMesh,
  pegMesh,
  socketMesh,
  type Move,
} from './board-mesh.ts';

/** What is shown. */
export interface BoardSubject {
  readonly design: Design;
  readonly seat: Seat;
  readonly stand: Stand;
  readonly load: BallLoad;
  readonly showsBone: boolean;
  readonly view: OrbitView;
  readonly colours: SolidColours;
}

export interface BoardFrame extends StageFrame {
  /** How many times the movement is drawn. */
  readonly times: number;
  /** Length of an arrow for a force, mm for each N. */
  readonly perNewton: number;
}

export type BoardScene = Stage<BoardSubject, BoardFrame>;

const MARGIN = 7;
/** Length given to the load’s arrow, mm. */
const LOAD_ARROW = 16;
/** Strips on the back, mm; and how far its tones go toward their colours, so that the strips stand out from both. */
const ZERO_WIDTH = 0.5;
const HATCH_WIDTH = 0.24;
const TONE = 0.62;
const LEAST_PULL = 1;
const LEAST_ARROW = 1.5;

/**
 * A socket with what stands on its back in three dimensions, its movement drawn larger.
 *
 * @throws Error where the browser gives no graphics context
 */
export function openBoard(
  canvas: HTMLCanvasElement,
  makeRenderer: (canvas: HTMLCanvasElement) => Renderer = webgl,
): BoardScene {
  let group: Group | null = null;
  let last: BoardSubject | null = null;
  let told = { times: 1, perNewton: 0 };
  return openStage(canvas, makeRenderer, {
    halfHeight: 29,
    target: [0, 0, -5],
    words: ({ seat: { curve } }: BoardSubject) => ({
      across: curve.breadth + MARGIN,
      up: curve.halfHeight + MARGIN,
      height: -5,
    }),
    update: (scene, subject) => {
      const isSame =
        last?.stand === subject.stand &&
        last.design === subject.design &&
        last.colours === subject.colours &&
        last.showsBone === subject.showsBone;
      if (!isSame) {
        if (group !== null) discard(group);
        const move = moveOf(subject);
        const perNewton =
          LOAD_ARROW / Math.hypot(...loadOf(subject.seat.curve, subject.load).force);
        told = { times: move.times, perNewton };
        group = boardGroup(subject, move, perNewton);
        scene.add(group);
      }
      last = subject;
      return told;
    },
  });
}

/** The movement drawn; of a socket without rest a sign for it, toward the load. */
export function moveOf({ seat, stand, load }: Pick<BoardSubject, 'seat' | 'stand' | 'load'>): Move {
  if (isRest(stand)) return { ...stand, times: magnification(stand) };
  const { x, z, turn } = lostPose(stand, seat.backRadius);
  const bearing = (load.bearing * Math.PI) / 180;
  const [along, up] = [Math.cos(bearing), Math.sin(bearing)];
  return {
    displacement: [x * along, x * up, z],
    rotation: [turn * up, -turn * along, 0],
    times: 1,
  };
}

function boardGroup(subject: BoardSubject, move: Move, perNewton: number): Group {
  const { design, seat, stand, showsBone, colours } = subject;
  const { curve, backRadius } = seat;
  const group = new Group();
  const { keel, pegs } = design;
  group.add(
    surface(socketMesh(curve, move, backRadius), colours.plastic),
    tintedBack(backMesh(curve, move, stand.tilt, stand), isRest(stand), colours),
    ...pegs.map((peg) => surface(pegMesh(peg, move, backRadius), colours.plastic)),
    ...(keel === null ? [] : [surface(keelMesh(keel, move, backRadius), colours.plastic)]),
    tube(
      edgeSpots(curve, backRadius).map((spot) => carriedSpot(move, spot)),
      0.18,
      colours.ink,
    ),
    tube(edgeSpots(curve, backRadius), 0.12, colours.boneLine),
    tube(boneEdge(curve, backRadius), 0.12, colours.boneLine),
  );
  if (showsBone) group.add(surface(boneMesh(curve, backRadius), colours.bone, 0.45));
  group.add(...loadArrow(subject, move, perNewton));
  if (!isRest(stand)) return group;
  group.add(...backLines(subject, move));
  const feet = [
    ...pegs.map((peg, i) => ({ at: { ...peg, depth: peg.length }, hold: stand.pegs[i] })),
    ...(keel === null ? [] : [{ at: keel, hold: stand.keel }]),
  ];
  for (const { at, hold } of feet) {
    const pull = hold?.pull ?? 0;
    if (pull < LEAST_PULL) continue;
    const pulled = arrow(Math.max(LEAST_ARROW, pull * perNewton), colours.force);
    pointAlong(pulled, footSpot(at, move, backRadius), [0, 0, -1]);
    group.add(pulled);
  }
  return group;
}

/** What tells pressed from open without their colours: the open part is hatched, and a line parts the two. */
function backLines({ seat: { edge }, stand, colours }: BoardSubject, move: Move): readonly Mesh[] {
  const { tilt, liftOff } = stand;
  return [
    { lines: openHatches(edge, tilt, liftOff), width: HATCH_WIDTH },
    { lines: zeroLines(edge, tilt), width: ZERO_WIDTH },
  ]
    .filter(({ lines }) => lines.length > 0)
    .map(({ lines, width }) => surface(strips(lines, width, move, tilt), colours.ink));
}

function loadArrow({ seat, load, colours }: BoardSubject, move: Move, perNewton: number) {
  const { x, y, z } = contactOf(seat.curve, load);
  const { force } = loadOf(seat.curve, load);
  const size = Math.hypot(...force);
  const along: Spot = [force[0] / size, force[1] / size, force[2] / size];
  const tip = carriedSpot(move, [x, y, z]);
  const length = size * perNewton;
  const shaft = arrow(length, colours.force);
  pointAlong(
    shaft,
    [tip[0] - length * along[0], tip[1] - length * along[1], tip[2] - length * along[2]],
    along,
  );
  const contact = dot(0.8, colours.ink);
  contact.position.set(...tip);
  return [shaft, contact];
}

/** The back: toward the colour of force where it is pressed, toward that of motion where it gapes. */
function tintedBack(arrays: MeshArrays, isKnown: boolean, colours: SolidColours): Mesh {
  const mesh = surface(arrays, [1, 1, 1]);
  const tints = arrays.shares.flatMap((share) => {
    const to = share < 0 ? colours.force : colours.motion;
    return colourOf(between(colours.slip, to, isKnown ? TONE * Math.abs(share) : 0)).toArray();
  });
  mesh.geometry.setAttribute('color', new Float32BufferAttribute(tints, 3));
  (mesh.material as MeshLambertMaterial).vertexColors = true;
  return mesh;
}
