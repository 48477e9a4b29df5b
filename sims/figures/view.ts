/** A window onto the drawing plane: millimetres in, screen units out. x runs right, z runs up. */
export interface View {
  readonly width: number;
  readonly height: number;
  /** Screen units per millimetre. */
  readonly scale: number;
  readonly x: (mm: number) => number;
  readonly y: (mm: number) => number;
  /** The millimetres under a screen position. */
  readonly toMm: (x: number, y: number) => { readonly x: number; readonly z: number };
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A rectangle of the picture, in screen units. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * A view of the given size in which the point (0, 0) mm stands at `origin`.
 *
 * @param frame.scale screen units per millimetre, above 0
 */
export function createView(frame: {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  readonly origin: Point;
}): View {
  const { width, height, scale, origin } = frame;
  return {
    width,
    height,
    scale,
    x: (mm) => origin.x + mm * scale,
    y: (mm) => origin.y - mm * scale,
    toMm: (x, y) => ({ x: (x - origin.x) / scale, z: (origin.y - y) / scale }),
  };
}

/** A coordinate for a path: two decimals are finer than any screen and keep the markup small. */
export function fixed(value: number): string {
  return String(Math.round(value * 100) / 100);
}

/** An open polyline as SVG path data. */
export function polyline(points: readonly Point[]): string {
  return points.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${fixed(x)} ${fixed(y)}`).join('');
}

/** The largest length from 1, 2, 5, 10, 20 … whose drawing is no longer than `room`. */
export function roundLength(unitsPerLength: number, room: number): number {
  const most = room / unitsPerLength;
  const decade = 10 ** Math.floor(Math.log10(most));
  const step = [5, 2, 1].find((factor) => factor * decade <= most) ?? 1;
  return step * decade;
}
