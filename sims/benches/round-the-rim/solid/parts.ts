import {
  BufferGeometry,
  Color,
  ConeGeometry,
  CylinderGeometry,
  DoubleSide,
  Float32BufferAttribute,
  Group,
  Mesh,
  MeshBasicMaterial,
  MeshLambertMaterial,
  Quaternion,
  SphereGeometry,
  SRGBColorSpace,
  Vector3,
  type Material,
  type Object3D,
} from 'three';
import type { MeshArrays, Spot } from './bands.ts';
import { between, type Rgb, type SolidColours } from './colours.ts';
import { tubeMesh } from './tube-mesh.ts';

export function colourOf([r, g, b]: Rgb): Color {
  return new Color().setRGB(r, g, b, SRGBColorSpace);
}

/** A surface of one colour. */
export function surface(arrays: MeshArrays, colour: Rgb, opacity = 1): Mesh {
  return new Mesh(shapeOf(arrays), matter(colour, opacity));
}

/** A surface coloured by the share of the greatest climb at each of its corners. */
export function climbSurface(arrays: MeshArrays, { low, high }: SolidColours): Mesh {
  const mesh = surface(arrays, [1, 1, 1]);
  const colours = arrays.shares.flatMap((share) => colourOf(between(low, high, share)).toArray());
  mesh.geometry.setAttribute('color', new Float32BufferAttribute(colours, 3));
  (mesh.material as MeshLambertMaterial).vertexColors = true;
  return mesh;
}

/** A line as a tube, in a colour that no lamp changes. */
export function tube(spots: readonly Spot[], radius: number, colour: Rgb): Mesh {
  const material = new MeshBasicMaterial({ color: colourOf(colour), side: DoubleSide });
  return new Mesh(shapeOf(tubeMesh(spots, radius)), material);
}

export function ball(radius: number, colour: Rgb, opacity = 1): Mesh {
  return new Mesh(new SphereGeometry(radius, 64, 40), matter(colour, opacity));
}

export function dot(radius: number, colour: Rgb): Mesh {
  const mesh = new Mesh(new SphereGeometry(radius, 20, 14), onTop(colour));
  mesh.renderOrder = 2;
  return mesh;
}

/** An arrow from the origin along +y, to be placed by {@link pointAlong}. */
export function arrow(length: number, colour: Rgb): Group {
  const head = Math.min(length, 3.6);
  const shaft = new CylinderGeometry(0.38, 0.38, length - head, 14);
  shaft.translate(0, (length - head) / 2, 0);
  const tip = new ConeGeometry(1.25, head, 22);
  tip.translate(0, length - head / 2, 0);
  const group = new Group();
  for (const geometry of [shaft, tip]) {
    const mesh = new Mesh(geometry, onTop(colour));
    mesh.renderOrder = 1;
    group.add(mesh);
  }
  return group;
}

const UP = new Vector3(0, 1, 0);

/** Puts an arrow at a place and turns it along a unit vector. */
export function pointAlong(group: Group, from: Spot, along: Spot): void {
  group.position.set(...from);
  group.quaternion.copy(new Quaternion().setFromUnitVectors(UP, new Vector3(...along)));
}

/** Frees what an object and everything in it holds, and takes it out of its parent. */
export function discard(object: Object3D): void {
  object.traverse((part) => {
    const { geometry, material } = part as { geometry?: BufferGeometry; material?: Material };
    geometry?.dispose();
    material?.dispose();
  });
  object.removeFromParent();
}

/** Seen through whatever lies before it. */
function onTop(colour: Rgb): MeshBasicMaterial {
  return new MeshBasicMaterial({ color: colourOf(colour), depthTest: false, transparent: true });
}

function shapeOf({ positions, indices }: MeshArrays): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new Float32BufferAttribute(positions, 3));
  geometry.setIndex([...indices]);
  geometry.computeVertexNormals();
  return geometry;
}

function matter(colour: Rgb, opacity: number): MeshLambertMaterial {
  const isClear = opacity < 1;
  return new MeshLambertMaterial({
    color: colourOf(colour),
    side: DoubleSide,
    transparent: isClear,
    opacity,
    depthWrite: !isClear,
  });
}
