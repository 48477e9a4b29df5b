import type { Vector3 } from './version.ts';

/**
 * How an interface spring answers a pull: not at all, as it answers a press, or as a press up to its strength, where it
 * slips at that force.
 */
export type Tension = 'none' | 'elastic' | 'limited';

/** A spring between socket and bone. Area and length are already in its stiffness. */
export interface SeatElement {
  /** mm, in the frame of the socket: x anterior, y superior, z lateral */
  readonly position: Vector3;
  /** The direction in which the compressed element pushes the socket: +z for a bed under it. Any length above 0. */
  readonly normal: Vector3;
  /** N/mm, 0 and up */
  readonly normalStiffness: number;
  /** Across the normal, N/mm, 0 and up. An element without tension has it only while it is closed. */
  readonly tangentialStiffness: number;
  readonly tension: Tension;
  /** The pull at which a `limited` element slips, N, 0 and up. Read for these only. */
  readonly strength?: number | undefined;
  /**
   * The press at which what stands behind the element yields, N, 0 and up: it goes on pressing with that force, and comes
   * to rest deeper than before. Any press is borne where it is left out.
   */
  readonly crush?: number | undefined;
}

/** A force on the socket. */
export interface SeatLoad {
  /** N; pressing in is −z */
  readonly force: Vector3;
  /** A point on its line of action, mm */
  readonly point: Vector3;
}

export interface SeatQuestion {
  readonly elements: readonly SeatElement[];
  readonly load: SeatLoad;
}

/** What an element does, in words. */
export type SeatElementState = 'pressed' | 'pulled' | 'slipping' | 'yielding' | 'open';

export interface SeatElementAnswer {
  /** N, compression positive */
  readonly normalForce: number;
  /** Size of the force across the normal, N */
  readonly tangentialForce: number;
  /** Separation along the normal, mm; positive where open, negative where pressed in */
  readonly gap: number;
  /** How far a `limited` element has come out beyond what it can carry elastically, mm; 0 for the others */
  readonly slip: number;
  /** How far what stands behind it has been crushed for good, mm; 0 where nothing has */
  readonly crushed: number;
  readonly state: SeatElementState;
}

/**
 * How it ends, in words. `balanced`: at rest. `overturned`: no rest, the socket tips or lifts off. `sliding`: no rest,
 * nothing holds it against moving along its bed, as a slippery round back turns in its hollow. `unsettled`: the search
 * did not end; nothing is claimed.
 */
export type SeatOutcome = 'balanced' | 'overturned' | 'sliding' | 'unsettled';

/** Where a socket comes to rest on its interface. Unless `converged`, the numbers are where the search stopped. */
export interface SeatSolution {
  readonly converged: boolean;
  readonly overturned: boolean;
  readonly outcome: SeatOutcome;
  /** Of the socket's point at the origin of the frame, mm */
  readonly displacement: Vector3;
  /** Small turns about the three axes, rad */
  readonly rotation: Vector3;
  readonly elements: readonly SeatElementAnswer[];
  /** Greatest gap among the elements that bear the socket from below (normal toward +z), mm, 0 and up */
  readonly liftOff: number;
  /** Greatest press-in among these, mm, 0 and up */
  readonly pressIn: number;
  /**
   * Share of the bed that is in contact, by stiffness: of the bearing elements without tension, or of all bearing
   * elements where every one can be pulled.
   */
  readonly contactShare: number;
  /** Strength ÷ pull of each `limited` element, in their order; Infinity where it is not pulled */
  readonly pegMargins: readonly number[];
}
