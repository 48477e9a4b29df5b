import { BODY } from '../../figures/section.ts';
import type { SphericalSocket } from '../../geometry/index.ts';
import type { PlaneName } from './planes.ts';
import { turned, type Place } from './layout.ts';

/*
 * The neck of the scapula and the start of its blade. Seen from above all of it is cut; seen from the front the blade
 * lies behind the cut, which opens the neck. Shapes after the course's own drawings
 * of a shoulder; they are there to be recognised, and nothing is computed from them. mm.
 */

const at = (aside: number, out: number): Place => ({ aside, out });

interface Blade {
  /** From the neck to the break, on the positive and on the negative side. */
  readonly positive: readonly Place[];
  readonly negative: readonly Place[];
  /** Deep end of the cut vault, from the negative to the positive side; empty where the whole blade is cut. */
  readonly vault: readonly Place[];
  /** From the end of the positive side to that of the negative. */
  readonly broken: readonly Place[];
}

const blades: Readonly<Record<PlaneName, Blade>> = {
  above: {
    positive: [at(7.6, -19), at(3.6, -27), at(1.4, -36), at(0.6, -50)],
    negative: [at(-8.4, -17), at(-6, -25), at(-4.4, -35), at(-4, -50)],
    broken: [at(-0.4, -51.4), at(-1.8, -49.6), at(-3, -51.2)],
    vault: [],
  },
  front: {
    positive: [at(12.8, -17), at(11.2, -24), at(12.2, -33), at(16.4, -44)],
    negative: [at(-29, -10.5), at(-35, -15), at(-42, -21.5)],
    broken: [at(8, -45.4), at(-1, -43.6), at(-10, -45), at(-20, -42), at(-29, -37), at(-37, -30)],
    vault: [at(-22, -12), at(-13, -19), at(-6, -27), at(-1, -31), at(4, -29), at(9, -21)],
  },
};

/** How far the bone stands out beside the back of the component, mm. */
const LEDGE = 1.6;
/** The foot of the component's sides slopes inward by so much, as it is drawn in `section.ts`. */
const TAPER = 0.8;

/** Outline of the bone in smooth runs that meet in corners, each going on from the one before. */
export interface BoneOutline {
  readonly positiveEdge: readonly Place[];
  readonly brokenEdge: readonly Place[];
  readonly negativeEdge: readonly Place[];
  /** The cut the component stands on. */
  readonly cut: readonly [Place, Place];
  /** What the cut opens of spongy bone: a closed line within the outline; null where the whole of it is cut. */
  readonly vault: readonly Place[] | null;
}

/** The bone under a socket turned by `tilt`, rad: the neck leads from the turned cut to the blade, which stays. */
export function boneOutline(plane: PlaneName, socket: SphericalSocket, tilt: number): BoneOutline {
  const half = socket.width / 2 + BODY.rimLedge - TAPER + LEDGE;
  const [positive, negative] = [half, -half].map((aside) =>
    turned({ aside, out: -BODY.thickness }, tilt),
  ) as [Place, Place];
  const blade = blades[plane];
  const endOf = (edge: readonly Place[]): Place => edge.at(-1) ?? at(0, 0);
  return {
    positiveEdge: [positive, ...blade.positive],
    brokenEdge: [endOf(blade.positive), ...blade.broken, endOf(blade.negative)],
    negativeEdge: [...blade.negative].reverse().concat(negative),
    cut: [negative, positive],
    vault: blade.vault.length === 0 ? null : [...vaultTop(half, tilt), ...blade.vault],
  };
}

/** The near end of the vault: along the cut, a shell's thickness inside the outline. */
function vaultTop(half: number, tilt: number): readonly Place[] {
  return [0.88, 0.45, 0, -0.45, -0.88].map((share) =>
    turned({ aside: share * half, out: -BODY.thickness - 1.2 }, tilt),
  );
}
