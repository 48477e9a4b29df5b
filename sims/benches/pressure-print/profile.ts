import { line } from 'd3-shape';
import { pressureOnLine } from './field.ts';
import type { Print } from './print.ts';

export type ProfilePoint = readonly [x: number, pressure: number];

/** Pressures along the line of the translation, mm from the middle and MPa. */
export interface Profile {
  readonly map: readonly ProfilePoint[];
  /** The closed forms about the contact; empty where the rim or a close fit leaves them nothing to say. */
  readonly hertz: readonly ProfilePoint[];
  readonly thinLayer: readonly ProfilePoint[];
}

const POINTS = 120;

export function profileOf(
  { field, contact, closed, pair }: Print,
  from: number,
  to: number,
): Profile {
  const reach = pair.socket.width / 2;
  const [start, end] = [Math.max(from, -reach), Math.min(to, reach)];
  const along = Array.from({ length: POINTS + 1 }, (_, i) => start + ((end - start) * i) / POINTS);
  const form = (contactRadius: number, shape: (part: number) => number): readonly ProfilePoint[] =>
    Array.from({ length: POINTS + 1 }, (_, i) => {
      const part = -Math.cos((Math.PI * i) / POINTS);
      const turn = field.tilt + (part * contactRadius) / field.curvatureRadius;
      return [field.curvatureRadius * Math.sin(turn), shape(part)] as const;
    });
  const { hertz, thinLayer } = closed;
  const areTold = contact.state === 'on the face' && hertz !== null && thinLayer !== null;
  return {
    map: along.map((x) => [x, pressureOnLine(field, x) ?? 0]),
    hertz: areTold
      ? form(hertz.contactRadius, (part) => hertz.peakPressure * Math.sqrt(1 - part ** 2))
      : [],
    thinLayer: areTold
      ? form(thinLayer.contactRadius, (part) => thinLayer.peakPressure * (1 - part ** 2))
      : [],
  };
}

export function profileLine(
  x: (mm: number) => number,
  y: (pressure: number) => number,
  points: readonly ProfilePoint[],
): string {
  return (
    line<ProfilePoint>(
      ([at]) => x(at),
      ([, pressure]) => y(pressure),
    ).digits(2)(points) ?? ''
  );
}
