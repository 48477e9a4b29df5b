import { nearestAllowed } from '../../shared/range.ts';
import {
  cupRanges,
  switchShapeBy,
  type CupField,
  type CupSetting,
  type ShapeBy,
} from '../shared/cup-setting.ts';
import { readTracer } from './reading.ts';
import { defaultTracer, drawn, type TracerSetting } from './setting.ts';

/** Path Tracer: what the visitor set, and what follows from it. One for each figure on a page. */
export class PathTracer {
  setting = $state.raw<TracerSetting>(defaultTracer);
  /** One sentence about the last change that was not taken as asked, or ''. */
  message = $state('');

  readonly now = $derived(drawn(this.setting));
  readonly kept = $derived(this.setting.kept === null ? null : drawn(this.setting.kept));
  readonly reading = $derived(
    readTracer(this.now.cup, this.setting.friction, this.setting.position),
  );

  constructor(initial: Partial<TracerSetting> = {}) {
    this.setting = { ...defaultTracer, ...initial };
  }

  change(change: Partial<TracerSetting>): void {
    this.setting = { ...this.setting, ...change };
    this.message = this.now.cup.message;
  }

  changeCup(field: CupField, value: number): void {
    this.change({ [field]: nearestAllowed(value, cupRanges[field]) });
  }

  shapeBy(to: ShapeBy): void {
    const { setting, message } = switchShapeBy(this.setting, to);
    this.change(setting);
    if (message !== '') this.message = message;
  }

  /** Moves the ball's centre, mm from the centre line; no further than the rim. */
  moveTo(position: number): void {
    const reach = this.now.cup.socket.width / 2;
    const held = Math.max(-reach, Math.min(reach, position));
    this.setting = { ...this.setting, position: Number(held.toFixed(2)) };
  }

  keep(): void {
    this.change({ kept: cupOnly(this.setting) });
  }

  drop(): void {
    this.change({ kept: null });
  }

  reset(): void {
    this.change(defaultTracer);
  }
}

function cupOnly({
  ballDiameter,
  width,
  shapeBy,
  depth,
  radius,
  mismatch,
}: CupSetting): CupSetting {
  return { ballDiameter, width, shapeBy, depth, radius, mismatch };
}
