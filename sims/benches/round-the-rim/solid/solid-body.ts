import { Group, type Mesh } from 'three';
import type { SoundShape } from '../sound-shape.ts';
import type { BallPlace, Way } from '../way.ts';
import type { climbField } from './climb-field.ts';
import type { SolidColours } from './colours.ts';
import type { OrbitView } from './orbit.ts';
import { arrow, ball, climbSurface, dot, pointAlong, surface, tube } from './parts.ts';
import { hollowMesh, isolineSpots, lipMesh, lostMesh, rimSpots, wallMesh } from './solid-mesh.ts';

/** What is shown. */
export interface SolidSubject {
  readonly sound: SoundShape;
  readonly way: Way;
  readonly ball: BallPlace;
  readonly view: OrbitView;
  readonly colours: SolidColours;
  readonly showsBall: boolean;
}

const TRAVEL_ARROW = 13;
const PRESS_ARROW = 12;

/** Everything of the face. */
export function bodyOf(
  sound: SoundShape,
  field: ReturnType<typeof climbField>,
  lineStep: number,
  colours: SolidColours,
): Group {
  const group = new Group();
  group.add(
    climbSurface(hollowMesh(sound, field), colours),
    surface(lipMesh(sound), colours.lip),
    surface(wallMesh(sound), colours.bone),
    surface(lostMesh(sound), colours.bone, 0.45),
    ...isolineSpots(sound, field, lineStep).map((spots) => tube(spots, 0.1, colours.ink)),
    tube(rimSpots(sound), 0.2, colours.ink),
  );
  return group;
}

/** The parts that move with the ball. */
export interface Mover {
  readonly group: Group;
  readonly sphere: Mesh;
  readonly centre: Mesh;
  readonly contact: Mesh;
  readonly travel: Group;
  readonly press: Group;
}

export function moverOf({ sound, way, ball: place, colours }: SolidSubject): Mover {
  const { ballRadius } = sound;
  const rest = place.seat.centre.z - place.climb;
  const ux = Math.cos(way.direction);
  const uy = Math.sin(way.direction);
  const path = [...way.back, ...way.out.slice(1)].map(
    ({ translation, climb }) => [translation * ux, translation * uy, rest + climb] as const,
  );
  const mover = {
    sphere: ball(ballRadius, colours.ball, 0.26),
    centre: dot(0.9, colours.motion),
    contact: dot(0.75, colours.ink),
    travel: arrow(TRAVEL_ARROW, colours.motion),
    press: arrow(PRESS_ARROW, colours.force),
  };
  const group = new Group();
  group.add(tube(path, 0.22, colours.motion), ...Object.values(mover));
  return { group, ...mover };
}

/** Puts the ball and what goes with it where it stands. */
export function place(mover: Mover, { way, ball: at, showsBall }: SolidSubject): void {
  const { centre, contact } = at.seat;
  mover.sphere.visible = showsBall;
  mover.sphere.position.set(centre.x, centre.y, centre.z);
  mover.centre.position.set(centre.x, centre.y, centre.z);
  mover.contact.position.set(contact.x, contact.y, contact.z);
  const side = at.translation < 0 ? -1 : 1;
  pointAlong(
    mover.travel,
    [centre.x, centre.y, centre.z],
    [side * Math.cos(way.direction), side * Math.sin(way.direction), 0],
  );
  pointAlong(mover.press, [centre.x, centre.y, centre.z + PRESS_ARROW], [0, 0, -1]);
}
