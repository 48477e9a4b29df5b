import { isFlat, type SphericalSocket } from '../geometry/index.ts';
import { differentiateSurface } from '../geometry/two-radius-surface.ts';
import { ballOver, goTo, penetrationAtSpot, rayAt, type Spot } from './contact-pressure-spot.ts';
import type { CarriedContact, ContactSurface } from './contact-pressure-types.ts';
import { foundationModulus, type ElasticLayer } from './foundation.ts';

/** A contact that has been solved, to be asked for its pressure anywhere. */
export type FieldQuestion = ElasticLayer &
  ContactSurface & {
    readonly ballRadius: number;
    /** Of the solved contact. */
    readonly ballCentre: CarriedContact['ballCentre'];
  };

/**
 * The pressure of a solved contact as a function of place, for drawing it on any grid.
 *
 * @returns a function of (x, y), mm anterior and superior of the middle of the face, that gives MPa; 0 beside the pressed
 *   patch and off the face
 * @throws RangeError as `contactPressure` for the layer
 */
export function pressureField(question: FieldQuestion): (x: number, y: number) => number {
  const { ballRadius, ballCentre } = question;
  const bed = foundationModulus(question);
  const [cx, cy, height] = ballCentre;
  if (question.face === undefined) {
    const onSocket = spotOn(question.socket);
    return (x, y) => {
      const spot = onSocket(x, y);
      return spot === undefined ? 0 : bed * penetrationAtSpot({ ballRadius, cx, cy, spot }, height);
    };
  }
  const { face } = question;
  const ball = ballOver(face, ballRadius, cx, cy);
  return (x, y) => {
    const ray = rayAt(face, Math.atan2(y, x));
    const distance = Math.sqrt(x * x + y * y);
    if (distance > ray.end) return 0;
    goTo(ball, ray, distance, distance > ray.lip);
    return bed * penetrationAtSpot(ball, height);
  };
}

/** Takes one spot to any place of a spherical socket; undefined off it. */
function spotOn(socket: SphericalSocket): (x: number, y: number) => Spot | undefined {
  const spot: Spot = { x: 0, y: 0, z: 0, zx: 0, zy: 0, zxx: 0, zxy: 0, zyy: 0 };
  const curvature = isFlat(socket) ? 0 : 1 / socket.curvatureRadius;
  const square = (socket.width / 2) ** 2;
  return (x, y) => {
    if (x * x + y * y > square) return undefined;
    spot.x = x;
    spot.y = y;
    differentiateSurface(spot, curvature, curvature, x, y);
    return spot;
  };
}
