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
  readonly ray: (angle: number) => OracleRay;
  readonly cloud: Cloud;
}

/** The face along one ray from the middle. */
interface OracleRay {
  /** Distance of the rim that is left. */
  readonly edge: number;
  /** The place at a share of that distance. */
  readonly at: (share: number) => { readonly x: number; readonly y: number; readonly z: number };
}

interface Cloud {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  readonly angle: Float64Array;
  readonly share: Float64Array;
}

/** Chord of the outline at height y: a circle or ellipse has what its equation says, a pear what its definition says. */
export function chordOf(outline: OracleInput['outline']): (y: number) => number {
  const { kind, width, height } = outline;
  const round = (eta: number): number => Math.sqrt(Math.max(0, 1 - eta ** 2));
  if (kind !== 'pear') return (y) => width * round((2 * y) / height);
  const share = (outline.upperWidth ?? 0.8 * width) / width;
  if (share >= Math.sqrt(0.75)) {
    const fullness = 4 * (share / Math.sqrt(0.75) - 1);
    return (y) => width * round((2 * y) / height) * (1 + fullness * ((2 * y) / height) ** 2);
  }
  const k = skewOf(share);
  const scale = width / broadest(k);
  return (y) => scale * round((2 * y) / height) * (1 - (k * 2 * y) / height);
}

/** By trying: the skew for which the chord halfway up is the given share of the widest. */
function skewOf(share: number): number {
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
function outlineAt(chord: (y: number) => number, far: number, angle: number): number {
  let low = 0;
  let high = far;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    const isInside = 2 * Math.abs(middle * Math.cos(angle)) < chord(middle * Math.sin(angle));
    if (isInside) low = middle;
    else high = middle;
  }
  return low;
}

/** A face from its definition in words, as rays × radii points and what it takes to make more of them. */
export function oracleFace(input: OracleInput, rays = 240, radii = 40): OracleFace {
  const { outline, labrum, defect, curvatureRadiusAP: a, curvatureRadiusSI: b } = input;
  const chord = chordOf(outline);
  const far = outline.width + outline.height;
  const heightAt = (x: number, y: number, outlineDistance: number): number => {
    const s = (x / a) ** 2 + (y / b) ** 2;
    const surface = (x ** 2 / a + y ** 2 / b) / (1 + Math.sqrt(Math.max(0, 1 - s)));
    if (labrum === undefined) return surface;
    const inward = outlineDistance - Math.sqrt(x * x + y * y);
    return surface + labrum.height * Math.min(1, Math.max(0, 1 - inward / labrum.width));
  };
  const cutAt =
    defect?.kind === 'cut' ? outlineAt(chord, far, defect.direction) - defect.depth : Infinity;
  const rimOn = (angle: number, whole: number): number => {
    if (defect === undefined) return whole;
    const cosine = Math.cos(angle - defect.direction);
    if (defect.kind === 'cut') return cosine > 0 ? Math.min(whole, cutAt / cosine) : whole;
    const isWorn = cosine >= Math.cos((defect.span ?? Math.PI / 3) / 2);
    return isWorn ? whole - defect.depth : whole;
  };
  const ray = (angle: number): OracleRay => {
    const whole = outlineAt(chord, far, angle);
    const edge = rimOn(angle, whole);
    const ux = Math.cos(angle);
    const uy = Math.sin(angle);
    return {
      edge,
      at: (share) => {
        const x = edge * share * ux;
        const y = edge * share * uy;
        return { x, y, z: heightAt(x, y, whole) };
      },
    };
  };
  const total = rays * radii;
  const fresh = (): Float64Array => new Float64Array(total);
  const cloud = { x: fresh(), y: fresh(), z: fresh(), angle: fresh(), share: fresh() };
  for (let i = 0; i < rays; i++) {
    const angle = (2 * Math.PI * i) / rays;
    const { at } = ray(angle);
    for (let j = 0; j < radii; j++) {
      const n = i * radii + j;
      const share = (j + 1) / radii;
      const { x, y, z } = at(share);
      cloud.angle[n] = angle;
      cloud.share[n] = share;
      cloud.x[n] = x;
      cloud.y[n] = y;
      cloud.z[n] = z;
    }
  }
  return { ray, cloud };
}

export interface OracleContact {
  /** Height of the ball's centre. */
  readonly height: number;
  /** Slope by which it climbs in the direction of the translation, from the contact. */
  readonly ratio: number;
  /** Distance of the contact from the middle, as a share of the rim's. */
  readonly share: number;
}

/** Which point of the cloud has the highest z + √(r² − d²): all are tried. −1 where the ball reaches none. */
export function denseMaximum({ cloud }: OracleFace, r: number, cx: number, cy: number): number {
  const { x, y, z } = cloud;
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

/** The contact: the best point of the cloud, then the best of finer and finer clouds about it. */
export function denseContact(
  face: OracleFace,
  r: number,
  translation: number,
  direction: number,
): OracleContact {
  const ux = Math.cos(direction);
  const uy = Math.sin(direction);
  const cx = translation * ux;
  const cy = translation * uy;
  const n = denseMaximum(face, r, cx, cy);
  if (n < 0) return { height: -Infinity, ratio: NaN, share: NaN };
  let best = { angle: face.cloud.angle[n] as number, share: face.cloud.share[n] as number };
  let contact: OracleContact = { height: -Infinity, ratio: 0, share: 0 };
  // Near the middle a wide angle is a short way, and a share below 0 is on the other side of it.
  let turn = Math.min(Math.PI, 0.03 / best.share);
  let span = 0.03;
  for (let zoom = 0; zoom < 16; zoom++) {
    const centre = best;
    for (let i = -5; i <= 5; i++) {
      const angle = centre.angle + (turn * i) / 5;
      const { at } = face.ray(angle);
      for (let j = -5; j <= 5; j++) {
        const share = Math.min(1, Math.max(-0.2, centre.share + (span * j) / 5));
        const { x, y, z } = at(share);
        const dx = x - cx;
        const dy = y - cy;
        const under = r * r - dx * dx - dy * dy;
        if (under < 0) continue;
        const height = z + Math.sqrt(under);
        if (height > contact.height) {
          contact = { height, ratio: (dx * ux + dy * uy) / Math.sqrt(under), share };
          best = { angle, share };
        }
      }
    }
    turn /= 2.2;
    span /= 2.2;
  }
  return contact;
}
