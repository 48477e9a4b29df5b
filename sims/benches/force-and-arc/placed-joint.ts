import type { Point } from '../../figures/view.ts';
import type { ScapulaView } from './layout.ts';

/** Where things stand in a small still of the joint, for whoever letters it; drawing units. */
export interface PlacedJoint {
  readonly view: ScapulaView;
  readonly centre: Point;
  /** Head of the net force. */
  readonly net: Point;
  readonly perNewton: number;
}
