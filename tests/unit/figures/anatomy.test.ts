import { expect, test } from 'vitest';
import * as ball from '../../../sims/figures/anatomy/ball-and-neck.ts';
import * as above from '../../../sims/figures/anatomy/from-above.ts';
import * as humerus from '../../../sims/figures/anatomy/humerus-front.ts';
import type { Point } from '../../../sims/figures/anatomy/path.ts';
import * as scapula from '../../../sims/figures/anatomy/scapula-front.ts';
import { componentSocket, pearRuns } from '../../../sims/figures/anatomy/socket-component.ts';

/*
 * The drawings are measured like a film, from their points alone, against the sizes they claim to be drawn to:
 * head radius 24, height 19, face 39 × 29, mismatch 2.3 (Iannotti 1992), bone depth 4.0, with labrum 7.1, inclination
 * 7.1° (PMC12925909). Acromiohumeral distance 7–14 mm and critical shoulder angle 30–35°: common practice.
 */
const distance = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]);
const middle = (a: Point, b: Point): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
const ends = (line: readonly Point[]): readonly [Point, Point, Point] => {
  const [first, halfway, last] = [line[0], line[(line.length - 1) / 2], line.at(-1)];
  if (!first || !halfway || !last) throw new Error('a line with an odd number of points is needed');
  return [first, halfway, last];
};
/** Radius of the circle through the ends and the middle of a line. */
function radiusOf(line: readonly Point[]): number {
  const [a, b, c] = ends(line);
  const area = Math.abs((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) / 2;
  return (distance(a, b) * distance(b, c) * distance(a, c)) / (4 * area);
}
/** Height of a line's middle over the straight line between its ends. */
function rise(line: readonly Point[]): number {
  const [a, b, c] = ends(line);
  return distance(b, middle(a, c));
}

test.each([
  ['natural head', humerus.jointSurface],
  ['metal ball', ball.ballSurface],
])('%s: part of a sphere of radius 24 mm, 19 mm high, facing 45° up and in', (_, surface) => {
  const [a, b, c] = ends(surface);
  expect(radiusOf(surface)).toBeCloseTo(24, 6);
  expect(rise(surface)).toBeCloseTo(19, 6);
  const foot = middle(a, c);
  expect(Math.atan2(b[1] - foot[1], b[0] - foot[0])).toBeCloseTo(Math.PI / 4, 6);
});

test('front section: socket surface 2.3 mm flatter than the head, 7.1 mm deep with its labrum', () => {
  expect(radiusOf(scapula.socketSurface) - radiusOf(humerus.jointSurface)).toBeCloseTo(2.3, 6);
  expect(rise(scapula.socketSurface)).toBeCloseTo(7.1, 6);
});

test('front section: bony face 39 mm high, 4 mm deep, tilted up 7°', () => {
  const [top, , bottom] = ends(scapula.socketBone);
  expect(distance(top, bottom)).toBeCloseTo(39, 6);
  expect(rise(scapula.socketBone)).toBeCloseTo(4, 6);
  expect((Math.atan2(top[0] - bottom[0], top[1] - bottom[1]) * 180) / Math.PI).toBeCloseTo(7, 6);
});

test('front section: the joint gap is thin and widens towards the rim', () => {
  const gaps = scapula.socketSurface.map((point) => distance(point, [0, 0]) - 24);
  const [top, deepest, bottom] = [gaps[0], gaps[(gaps.length - 1) / 2], gaps.at(-1)];
  expect(Math.min(...gaps)).toBe(deepest);
  expect(deepest).toBeGreaterThan(0.3);
  expect(Math.max(top ?? NaN, bottom ?? NaN)).toBeLessThan(1.5);
});

test('front section: acromion over the head at a normal distance and reach', () => {
  const [top, , bottom] = ends(scapula.socketBone);
  const space = Math.min(...scapula.acromion.map((point) => distance(point, [0, 0]))) - 24;
  expect(space).toBeGreaterThan(7);
  expect(space).toBeLessThan(14);
  const tip = scapula.acromion.reduce((a, b) => (b[0] < a[0] ? b : a));
  const lean = ([x, y]: Point) => (Math.atan2(x - bottom[0], y - bottom[1]) * 180) / Math.PI;
  const criticalShoulderAngle = lean(top) - lean(tip);
  expect(criticalShoulderAngle).toBeGreaterThan(30);
  expect(criticalShoulderAngle).toBeLessThan(35);
});

test('front section: the greater tuberosity stays 5 to 9 mm below the top of the head', () => {
  const tuberosity = humerus.humerusRuns[3].filter(([x]) => x < -16);
  const drop = 24 - Math.max(...tuberosity.map(([, y]) => y));
  expect(drop).toBeGreaterThan(5);
  expect(drop).toBeLessThan(9);
});

test('section from above: head radius 22 mm, face 29 mm wide, blade running backwards', () => {
  expect(radiusOf(above.jointSurface)).toBeCloseTo(22, 6);
  const [first, , last] = ends(above.scapulaRuns[0]);
  expect(distance(first, last)).toBeCloseTo(29, 6);
  const [bladeX, bladeY] = above.place([-50, 2]);
  expect(bladeX).toBeGreaterThan(50);
  expect(bladeY).toBeGreaterThan(25);
});

test('component: a pear 39 mm by 29 mm whose hollow is 3 mm flatter than its ball', () => {
  const points = pearRuns().flat();
  const extent = (axis: 0 | 1) =>
    Math.max(...points.map((p) => p[axis])) - Math.min(...points.map((p) => p[axis]));
  expect(extent(1)).toBeCloseTo(39, 6);
  expect(Math.abs(extent(0) - 29)).toBeLessThan(0.15);
  expect(componentSocket().curvatureRadius - radiusOf(ball.ballSurface)).toBeCloseTo(3, 6);
});
