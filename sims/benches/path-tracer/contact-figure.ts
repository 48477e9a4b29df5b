import { contactPoint } from '../../figures/section.ts';
import type { Point, View } from '../../figures/view.ts';
import type { Cup } from '../shared/cup-setting.ts';
import type { TracerReading } from './reading.ts';

/** Lengths drawn at the contact, mm; none of them means anything. */
const HALF_TANGENT = 11;
const HALF_CONTACT_TANGENT = 9;
const CORNER = 1.1;
const ARC_SHARE = 0.5;
const VERTICAL_SHARE = 0.72;

/** What is drawn where the ball touches the cup, on the screen. */
export interface ContactFigure {
  /** Which way the ball has gone: 1 to the right, −1 to the left. */
  readonly side: 1 | -1;
  readonly centre: Point;
  readonly contact: Point;
  readonly tangent: readonly [Point, Point];
  readonly contactTangent: readonly [Point, Point];
  /** The mark of a right angle between tangent and normal. */
  readonly corner: readonly Point[];
  /** Where the vertical from the centre ends, to measure the normal's tilt from. */
  readonly vertical: Point;
  readonly arc: { readonly from: Point; readonly to: Point; readonly radius: number };
  /** Where the climb is measured: from the resting height to the present one. */
  readonly climb: readonly [Point, Point];
}

/** Places the contact's normal and tangents, and what measures them, for a ball at a reading's translation. */
export function contactFigure(
  { socket, ballRadius: r }: Cup,
  reading: TracerReading,
  view: View,
): ContactFigure {
  const { translation: x, angle } = reading;
  const side = x < 0 ? -1 : 1;
  const sin = side * Math.sin(angle);
  const cos = Math.cos(angle);
  const z = r + reading.climb;
  const at = (mm: number, height: number): Point => ({ x: view.x(mm), y: view.y(height) });
  const along = (mm: number, height: number, half: number): readonly [Point, Point] => [
    at(mm - half * cos, height - half * sin),
    at(mm + half * cos, height + half * sin),
  ];
  const touch = contactPoint(socket, r, Math.abs(x));
  const outward = { x: side * cos, z: Math.abs(sin) };
  const inward = { x: sin, z: -cos };
  const arc = ARC_SHARE * r;
  const climbX = x + side * (HALF_TANGENT + 2);
  return {
    side,
    centre: at(x, z),
    contact: at(side * touch.x, touch.z),
    tangent: along(x, z, HALF_TANGENT),
    contactTangent: along(side * touch.x, touch.z, HALF_CONTACT_TANGENT),
    corner: [
      at(x + CORNER * outward.x, z + CORNER * outward.z),
      at(x + CORNER * (outward.x + inward.x), z + CORNER * (outward.z + inward.z)),
      at(x + CORNER * inward.x, z + CORNER * inward.z),
    ],
    vertical: at(x, z - VERTICAL_SHARE * r),
    arc: { from: at(x, z - arc), to: at(x + arc * sin, z - arc * cos), radius: arc * view.scale },
    climb: [at(climbX, r), at(climbX, z)],
  };
}
