import { nearestAllowed } from '../../shared/range.ts';
import { wrapped } from './bearing.ts';
import { defaultRim, type Preset } from './presets.ts';
import type { RimField, RimSetting, RimShape } from './setting.ts';
import { soundShape } from './sound-shape.ts';
import { DIRECTIONS, FEWER_DIRECTIONS, heldOn, mapOf, placeOn, wayIn } from './way.ts';

/** Round the Rim: what the visitor set, and what follows from it. One for each figure on a page. */
export class RoundTheRim {
  /** Face and ball apart from where the ball stands: turning the direction leaves the map as it is. */
  asked = $state.raw<RimShape>(defaultRim);
  bearing = $state(defaultRim.bearing);
  wanted = $state(defaultRim.translation);
  showsPublished = $state(defaultRim.showsPublished);
  /** One sentence about the last change that was not taken as asked, or ''. */
  message = $state('');

  /** Whether a control of the shape is being turned and not let go of yet. */
  isTurning = $state(false);

  readonly sound = $derived(soundShape(this.asked));
  readonly map = $derived(mapOf(this.sound, this.isTurning ? FEWER_DIRECTIONS : DIRECTIONS));
  readonly way = $derived(wayIn(this.sound, this.bearing));
  readonly ball = $derived(placeOn(this.sound, this.way, this.wanted));

  constructor(initial: Partial<RimSetting> = {}) {
    this.load({ ...defaultRim, ...initial });
    this.message = '';
  }

  /** The whole setting as it stands: what a link carries. */
  get setting(): RimSetting {
    return {
      ...this.sound.shape,
      bearing: this.bearing,
      translation: this.ball.translation,
      showsPublished: this.showsPublished,
    };
  }

  load({ bearing, translation, showsPublished, ...shape }: RimSetting): void {
    this.bearing = wrapped(bearing);
    this.wanted = translation;
    this.showsPublished = showsPublished;
    this.reshape(shape);
  }

  reshape(change: Partial<RimShape>): void {
    this.asked = { ...this.sound.shape, ...change };
    this.message = this.sound.message;
  }

  /** Sets a number of the shape, no further than the others allow; {@link settle} is to follow. */
  turn(field: RimField, value: number): void {
    this.isTurning = true;
    this.reshape({ [field]: nearestAllowed(value, this.sound.ranges[field]) });
  }

  /** A control has been let go of. */
  settle(): void {
    this.isTurning = false;
  }

  start({ shape }: Preset): void {
    this.reshape(shape);
  }

  /** Chooses a direction, degrees; the ball keeps its distance from the middle as far as there is room. */
  face(bearing: number): void {
    this.bearing = wrapped(Math.round(bearing));
  }

  /** Moves the ball's centre, mm from the middle; no further than it stays in. */
  moveTo(translation: number): void {
    this.wanted = Number(heldOn(this.way, translation).toFixed(2));
  }

  reset(): void {
    this.load(defaultRim);
  }
}
