/** From where the face is looked at: turned round the upright axis (yaw), raised (pitch), rad; and how large it is drawn. */
export interface OrbitView {
  readonly yaw: number;
  readonly pitch: number;
  readonly zoom: number;
}

/** Straight over the poles up and down would change places. */
const STEEPEST = (85 * Math.PI) / 180;
const LEAST_ZOOM = 0.5;
const MOST_ZOOM = 4;

/** As a clinician sees it from the patient's side. */
export const enFace: OrbitView = { yaw: 0, pitch: 0, zoom: 1 };
/** From the front: of a right shoulder the outer side lies to the left. */
export const fromTheFront: OrbitView = { yaw: Math.PI / 2, pitch: 0, zoom: 1 };
/** From in front of it and above: how the view opens. */
export const aslant: OrbitView = { yaw: 0.62, pitch: 0.5, zoom: 1 };

export function turned({ yaw, pitch, zoom }: OrbitView, by: number, up: number): OrbitView {
  return {
    yaw: Math.atan2(Math.sin(yaw + by), Math.cos(yaw + by)),
    pitch: Math.max(-STEEPEST, Math.min(STEEPEST, pitch + up)),
    zoom,
  };
}

export function zoomed(view: OrbitView, factor: number): OrbitView {
  return { ...view, zoom: Math.max(LEAST_ZOOM, Math.min(MOST_ZOOM, view.zoom * factor)) };
}

/** Unit vector from the face to the eye; x anterior, y superior, z lateral. */
export function toEye({ yaw, pitch }: OrbitView): readonly [number, number, number] {
  return [Math.sin(yaw) * Math.cos(pitch), Math.sin(pitch), Math.cos(yaw) * Math.cos(pitch)];
}

/** The view in words: "from the side", "from in front and above". */
export function viewWords({ yaw, pitch }: OrbitView): string {
  const parts: string[] = [];
  const [x, y, z] = toEye({ yaw, pitch, zoom: 1 });
  const SEEN = 0.3;
  if (z > SEEN) parts.push('the side');
  if (z < -SEEN) parts.push('the middle of the body');
  if (x > SEEN) parts.push('the front');
  if (x < -SEEN) parts.push('the back');
  if (y > SEEN) parts.push('above');
  if (y < -SEEN) parts.push('below');
  return `Seen from ${parts.join(', ').replace(/, ([^,]*)$/, ' and $1')}.`;
}
