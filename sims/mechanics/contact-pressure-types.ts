import type { Face, SphericalSocket } from '../geometry/index.ts';
import type { ElasticLayer } from './foundation.ts';

/** Where the pressure lies, in words. */
export type ContactState =
  /** The pressed patch ends on the face all round. */
  | 'on the face'
  /** The rim cuts the patch, yet the deepest place is inside it. */
  | 'cut by the rim'
  /** The deepest place is on the rim: its edge carries, which a foundation tells about only roughly. */
  | 'on the rim edge'
  /** The load would press the ball through the whole thickness: there is no answer. */
  | 'too much for the layer';

/** A ball pressed into a layer of plastic. */
export type ContactQuestion = ElasticLayer & {
  /** mm, above 0 */
  readonly ballRadius: number;
  /** N along the centre line, above 0 */
  readonly compressiveLoad: number;
  /** Of the ball's centre from the centre line, mm, from 0 to where the rigid ball would leave the socket. */
  readonly translation: number;
  /** Of the translation, rad from anterior toward superior; 0 where it is left out. */
  readonly direction?: number | undefined;
} & ContactSurface;

/** A spherical socket, or a face in its place. */
export type ContactSurface =
  | { readonly socket: SphericalSocket; readonly face?: undefined }
  | { readonly face: Face; readonly socket?: undefined };

/** A bit of the pressed area. */
export interface Patch {
  /** Its centre of pressure, seen en face, mm: x anterior, y superior. */
  readonly x: number;
  readonly y: number;
  /** On the curved surface, mm². */
  readonly area: number;
  /** Mean over its area, MPa, along the surface's normal. */
  readonly pressure: number;
}

/** A force in parts: pressing along the centre line, against the translation, and across it, N. */
export interface ForceParts {
  readonly compressive: number;
  readonly side: number;
  readonly cross: number;
}

/** Where the layer carries the ball. */
export interface CarriedContact {
  readonly state: Exclude<ContactState, 'too much for the layer'>;
  /** MPa, at the deepest place. */
  readonly peakPressure: number;
  /** MPa, over the pressed area. */
  readonly meanPressure: number;
  /** On the curved surface, mm². */
  readonly contactArea: number;
  /** [x, y], seen en face, mm. */
  readonly centreOfPressure: readonly [x: number, y: number];
  /** Share of the compressive load that is borne within 1 mm of the rim, measured along the surface, 0 … 1. */
  readonly rimShare: number;
  /** Deepest, along the surface's normal, mm. */
  readonly penetration: number;
  /** Push along the translation that holds the ball there, N; negative where it must be held back instead. */
  readonly sideForce: number;
  /** Push square to the translation, toward direction + 90°, that keeps it on its line, N; 0 for a spherical socket. */
  readonly crossForce: number;
  /**
   * What the edge of the layer bears beside the pressure of the patches, as parts of the reaction on the ball; zero for
   * a patch that ends on the face.
   */
  readonly edgeForce: ForceParts;
  /** [x, y, z], mm from the deepest point of the surface. */
  readonly ballCentre: readonly [x: number, y: number, z: number];
  readonly patches: readonly Patch[];
}

/** Where it does not. */
export interface UncarriedContact {
  readonly state: 'too much for the layer';
  /** The load at which the ball would have gone through the whole thickness, N. */
  readonly greatestLoad: number;
  readonly peakPressure: null;
  readonly meanPressure: null;
  readonly contactArea: null;
  readonly centreOfPressure: null;
  readonly rimShare: null;
  readonly penetration: null;
  readonly sideForce: null;
  readonly crossForce: null;
  readonly edgeForce: null;
  readonly ballCentre: null;
  readonly patches: readonly [];
}

export type ContactPressure = CarriedContact | UncarriedContact;

/** What the pressure at a drop adds up to, for a bed modulus of 1 N/mm³. Side and cross act on the ball inward. */
export interface ContactSums {
  readonly state: CarriedContact['state'];
  /** Pressure times area, N. */
  readonly total: number;
  /** All of the reaction on the ball, the edge's part among it, N. */
  readonly reaction: ForceParts;
  readonly edge: ForceParts;
  /** Compressive part borne within the rim's margin, N. */
  readonly nearRim: number;
  readonly area: number;
  readonly deepest: number;
  /** Centre of pressure in the frame of the translation: along it and across it, mm. */
  readonly centre: readonly [along: number, across: number];
}

/** A ball over a surface at a translation and direction, as a function of its drop below first touch (mm). */
export interface PressedBall {
  /** Drop at which the penetration reaches the layer's thickness, mm. */
  readonly dropLimit: number;
  /** Height of the ball's centre at first touch, mm. */
  readonly touchHeight: number;
  /** Compressive reaction alone, N for a bed modulus of 1 N/mm³. */
  readonly compressiveAt: (drop: number) => number;
  readonly sumsAt: (drop: number) => ContactSums;
  readonly patchesAt: (drop: number, bed: number) => readonly Patch[];
}
