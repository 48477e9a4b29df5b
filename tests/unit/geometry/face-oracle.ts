/**
 * A face as a cloud of points, and a ball let down on it by trying every one of them. It is built from the definitions in
 * words (outline, surface, lip, defect), and shares no formula and no search with the module.
 */
export interface OracleInput {
  readonly outline: {
    readonly kind: 'circle' | 'ellipse' | 'pear';
    readonly width: number;
    readonly height: number;
    readonly upperWidth?: number | undefined;
  };
  readonly curvatureRadiusAP: number;
  readonly curvatureRadiusSI: number;
  readonly labrum?: { readonly height: number; readonly width: number } | undefined;
  readonly defect?:
    | {
        readonly direction: number;
        readonly depth: number;
        readonly kind: 'cut' | 'segment';
        readonly span?: number | undefined;
      }
    | undefined;
}

export interface OracleFace {
  /** Height of the surface. */
  readonly z: (x: number, y: number) => number;
  /** Distance from the middle to the rim that is left. */
  readonly rim: (angle: number) => number;
  readonly cloud: Cloud;
}

interface Cloud {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  readonly angle: Float64Array;
  readonly share: Float64Array;
}

/** Chord of the outline at height y: a circle or ellipse has what its equation says, a pear what its definition says. */
export function chord(outline: OracleInput['outline'], y: number): number {
  const eta = (2 * y) / outline.height;
  if (Math.abs(eta) >= 1) return 0;
  const round = Math.sqrt(1 - eta ** 2);
  if (outline.kind !== 'pear') return outline.width * round;
  const share = (outline.upperWidth ?? 0.8 * outline.width) / outline.width;
  if (share >= Math.sqrt(0.75)) {
    const fullness = 4 * (share / Math.sqrt(0.75) - 1);
    return outline.width * round * (1 + fullness * eta ** 2);
  }
  const k = skewOf(share);
  return (outline.width * round * (1 - k * eta)) / broadest(k);
}

const skews = new Map<number, number>();

/** By trying: the skew for which the chord halfway up is the given share of the widest. */
function skewOf(share: number): number {
  const known = skews.get(share);
  if (known !== undefined) return known;
  let best = 0;
  for (const step of [1e-2, 1e-4, 1e-6, 1e-8]) {
    const from = Math.max(0, best - 100 * step);
    let least = Infinity;
    let found = best;
    for (let i = 0; i <= 200; i++) {
      const k = from + i * step;
      const off = Math.abs((Math.sqrt(0.75) * (1 - k / 2)) / broadest(k) - share);
      if (off < least) {
        least = off;
        found = k;
      }
    }
    best = found;
  }
  skews.set(share, best);
  return best;
}

function broadest(k: number): number {
  let low = -1;
  let high = 0;
  const width = (eta: number): number => Math.sqrt(1 - eta ** 2) * (1 - k * eta);
  for (let i = 0; i < 200; i++) {
    const third = (high - low) / 3;
    if (width(low + third) < width(high - third)) low += third;
    else high -= third;
  }
  return width((low + high) / 2);
}

/** Distance to the outline in a direction, by halving between inside and outside. */
function outlineAt(outline: OracleInput['outline'], angle: number): number {
  let low = 0;
  let high = outline.width + outline.height;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    const isInside =
      2 * Math.abs(middle * Math.cos(angle)) < chord(outline, middle * Math.sin(angle));
    if (isInside) low = middle;
    else high = middle;
  }
  return low;
}

export function oracleFace(input: OracleInput, rays = 360, radii = 60): OracleFace {
  const { outline, labrum, defect, curvatureRadiusAP: a, curvatureRadiusSI: b } = input;
  const z = (x: number, y: number): number => {
    const s = (x / a) ** 2 + (y / b) ** 2;
    const surface = (x ** 2 / a + y ** 2 / b) / (1 + Math.sqrt(Math.max(0, 1 - s)));
    if (labrum === undefined) return surface;
    const toOutline = outlineAt(outline, Math.atan2(y, x)) - Math.sqrt(x * x + y * y);
    const share = Math.min(1, Math.max(0, 1 - toOutline / labrum.width));
    return surface + share * labrum.height;
  };
  const cutAt =
    defect?.kind === 'cut' ? outlineAt(outline, defect.direction) - defect.depth : Infinity;
  const rim = (angle: number): number => {
    const whole = outlineAt(outline, angle);
    if (defect === undefined) return whole;
    const cosine = Math.cos(angle - defect.direction);
    if (defect.kind === 'cut') return cosine > 0 ? Math.min(whole, cutAt / cosine) : whole;
    const isWorn = cosine >= Math.cos((defect.span ?? Math.PI / 3) / 2);
    return isWorn ? whole - defect.depth : whole;
  };
  const total = rays * radii;
  const fresh = (): Float64Array => new Float64Array(total);
  const cloud = { x: fresh(), y: fresh(), z: fresh(), angle: fresh(), share: fresh() };
  for (let i = 0; i < rays; i++) {
    const angle = (2 * Math.PI * i) / rays;
    const edge = rim(angle);
    for (let j = 0; j < radii; j++) {
      const n = i * radii + j;
      const share = (j + 1) / radii;
      cloud.angle[n] = angle;
      cloud.share[n] = share;
      const x = edge * share * Math.cos(angle);
      const y = edge * share * Math.sin(angle);
      cloud.x[n] = x;
      cloud.y[n] = y;
      cloud.z[n] = z(x, y);
    }
  }
  return { z, rim, cloud };
}

export interface OracleContact {
  /** Height of the ball's centre. */
  readonly height: number;
  /** Slope by which it climbs along (ux, uy), from the contact. */
  readonly ratio: number;
  readonly x: number;
  readonly y: number;
  readonly share: number;
}

/** The highest z + √(r² − d²) of all points of the cloud. */
export function denseMaximum(face: OracleFace, r: number, cx: number, cy: number): number {
  const { x, y, z } = face.cloud;
  let best = -1;
  let highest = -Infinity;
  for (let n = 0; n < x.length; n++) {
    const dx = (x[n] as number) - cx;
    const dy = (y[n] as number) - cy;
    const under = r * r - dx * dx - dy * dy;
    if (under < 0) continue;
    const height = (z[n] as number) + Math.sqrt(under);
    if (height > highest) {
      highest = height;
      best = n;
    }
  }
  return best;
}

/**
 * The contact: the best point of the cloud, then the best of finer and finer clouds about it.
 */
export function denseContact(
  face: OracleFace,
  r: number,
  translation: number,
  direction: number,
  zooms = 10,
): OracleContact {
  const ux = Math.cos(direction);
  const uy = Math.sin(direction);
  const cx = translation * ux;
  const cy = translation * uy;
  const n = denseMaximum(face, r, cx, cy);
  if (n < 0) return { height: -Infinity, ratio: NaN, x: NaN, y: NaN, share: NaN };
  let best = { angle: face.cloud.angle[n] as number, share: face.cloud.share[n] as number };
  let contact: OracleContact = { height: -Infinity, ratio: 0, x: 0, y: 0, share: 0 };
  // Near the middle a wide angle is a short way.
  let turn = Math.min(Math.PI, 0.02 / best.share);
  let span = 0.02;
  for (let zoom = 0; zoom < zooms; zoom++) {
    const centre = best;
    for (let i = -8; i <= 8; i++) {
      const angle = centre.angle + (turn * i) / 8;
      const edge = face.rim(angle);
      for (let j = -8; j <= 8; j++) {
        const share = Math.min(1, Math.max(0, centre.share + (span * j) / 8));
        const x = edge * share * Math.cos(angle);
        const y = edge * share * Math.sin(angle);
        const dx = x - cx;
        const dy = y - cy;
        const under = r * r - dx * dx - dy * dy;
        if (under < 0) continue;
        const height = face.z(x, y) + Math.sqrt(under);
        if (height > contact.height) {
          contact = { height, ratio: (dx * ux + dy * uy) / Math.sqrt(under), x, y, share };
          best = { angle, share };
        }
      }
    }
    turn /= 2.5;
    span /= 2.5;
  }
  return contact;
}
