import type { RockingContact } from './rocking-world.ts';
import type { PlanePose } from './rocking-springs.ts';
import type { Vector } from './vector.ts';

/** What the socket does: still, under way, turned over, or slid away along its bed. */
export type RockingState = 'at rest' | 'moving' | 'overturned' | 'sliding';

/** One load at a rim, held until all was at rest. */
export interface RimReading {
  /** Counted from 1; two to a cycle */
  readonly load: number;
  /** Where the ball pressed, as a share of the way to the rim: −1 to 1 */
  readonly place: number;
  /** What the ball put on the socket, N, and where on the unmoved socket, mm */
  readonly force: Vector;
  readonly at: Vector;
  /** Greatest gap and press-in of the bed, mm */
  readonly liftOff: number;
  readonly pressIn: number;
  /** The furthest that a spring has slipped, mm */
  readonly slip: number;
}

/** All that the scene can tell at one moment. Lengths mm, forces N, times s, turns rad. */
export interface RockingReading {
  readonly time: number;
  readonly state: RockingState;
  readonly pose: PlanePose;
  /** Of the ball’s centre */
  readonly ball: Vector;
  /** Angle of the contact from the socket’s own centre line, rad; positive toward +x */
  readonly contactAngle: number;
  readonly contact: RockingContact | null;
  /** What the ball puts on the socket, N, and where on the unmoved socket, mm; nothing while it does not touch */
  readonly loadOnSocket: { readonly force: Vector; readonly at: Vector };
  readonly compressiveLoad: number;
  /** N, along +x: what holds the ball where it is */
  readonly sideForce: number;
  /** Greatest gap among the elements that bear from below, and greatest press-in, mm, 0 and up */
  readonly liftOff: number;
  readonly pressIn: number;
  /** For each element: its force, N, compression positive, its gap and its slip, mm */
  readonly forces: readonly number[];
  readonly gaps: readonly number[];
  readonly slips: readonly number[];
  /** For each element: how far what stands behind it has been crushed for good, mm */
  readonly crushed: readonly number[];
  /** Rim loads borne since the start of the rocking, or none */
  readonly rims: readonly RimReading[];
  /** Whether the ball is being rocked from rim to rim. */
  readonly isRocking: boolean;
}
