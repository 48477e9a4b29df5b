import { sphericalSocket, type SphericalSocket } from '../../../sims/geometry/index.ts';
import {
  contactPressure,
  type CarriedContact,
  type ContactPressure,
  type ContactQuestion,
} from '../../../sims/mechanics/index.ts';

/** A component of plastic as a bench starts with: 30 mm wide, 3 mm of radial mismatch, 4 mm thick, 500 N. */
export const component = sphericalSocket({ curvatureRadius: 27, width: 30 });
export const layer = { thickness: 4, modulus: 690, poisson: 0.46 } as const;

/** Its bed modulus by hand, N/mm³: 690 · 0.54 / (1.46 · 0.08 · 4). */
export const bed = 372.6 / 0.4672;

export type SocketQuestion = Extract<ContactQuestion, { readonly socket: SphericalSocket }>;

export const usual: SocketQuestion = {
  socket: component,
  ballRadius: 24,
  ...layer,
  compressiveLoad: 500,
  translation: 0,
};

/** The contact where the layer carries the load; fails where it does not. */
export function carriedBy(question: ContactQuestion): CarriedContact {
  return assertCarried(contactPressure(question));
}

export function assertCarried(contact: ContactPressure): CarriedContact {
  if (contact.state === 'too much for the layer') throw new Error('the layer does not carry it');
  return contact;
}
