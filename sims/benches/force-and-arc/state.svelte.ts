import { BODY } from '../../figures/section.ts';
import { createFrameLoop, wantsStillness } from '../../shared/frame-loop.ts';
import { nearestAllowed } from '../../shared/range.ts';
import { cupRanges, switchShapeBy, type CupField, type ShapeBy } from '../shared/cup-setting.ts';
import type { PlaneName, PullId } from './planes.ts';
import { readForce } from './reading.ts';
import { defaultSetting, sizeRange, tiltRange, turnRange, type ForceSetting } from './settings.ts';
import type { Situation } from './situations.ts';
import type { Settled, Settling } from './settle.ts';

/** Force and Arc: what the visitor set, what follows from it, and what the simulation measured of it. */
export class ForceBench {
  setting = $state.raw<ForceSetting>(defaultSetting);
  message = $state('');
  /** What the simulation shows; null where it has not been asked since the last change. */
  measured = $state.raw<Settled | null>(null);
  /** Why the trial asked for was not run, or ''. */
  refusal = $state('');
  /** N that the arrows are drawn to; held while one of them is dragged, so that it stays under the pointer. */
  forceCeiling = $state<number | null>(null);

  readonly reading = $derived(readForce(this.setting));
  readonly isSettling = $derived(this.measured?.outcome === 'moving');

  #settling: Settling | null = null;
  /** Counts the trials, so that one that was overtaken while it was fetched does not start. */
  #trial = 0;
  readonly #loop = createFrameLoop((seconds) => this.#frame(seconds));

  constructor(initial: Partial<ForceSetting> = {}) {
    this.setting = { ...defaultSetting, ...initial };
  }

  change(change: Partial<ForceSetting>): void {
    this.setting = { ...this.setting, ...change };
    this.message = this.reading.cup.message;
    this.putBack();
  }

  changeCup(field: CupField, value: number): void {
    this.change({ [field]: nearestAllowed(value, cupRanges[field]) });
  }

  shapeBy(to: ShapeBy): void {
    const { setting, message } = switchShapeBy(this.setting, to);
    this.change(setting);
    if (message !== '') this.message = message;
  }

  look(plane: PlaneName): void {
    this.change({ plane });
  }

  /** Turns the socket, degrees; no further than the control goes. */
  turn(tilt: number): void {
    this.change({ [this.reading.plane.tilt]: nearestAllowed(tilt, tiltRange) });
  }

  /** Sets a pull: N, and degrees from straight medial. */
  pull(id: PullId, size: number, turn: number): void {
    this.change({
      [`${id}Size`]: nearestAllowed(size, sizeRange),
      [`${id}Turn`]: nearestAllowed(turn, turnRange),
    });
  }

  take({ change }: Situation): void {
    this.change(change);
  }

  /** The physics comes when it is first asked for. Where the visitor asked for stillness it goes to its end at once. */
  async letItSettle(): Promise<void> {
    const { rest, cup, friction } = this.reading;
    this.putBack();
    const trial = this.#trial;
    const { canSettle, startSettling } = await import('./settle.ts');
    if (trial !== this.#trial) return;
    if (rest === null || !canSettle(rest.force)) {
      this.refusal =
        'Nothing presses the ball into the cup, so there is no trial to run: turn the force inward.';
      return;
    }
    const { socket, ballRadius } = cup;
    this.#settling = startSettling({ socket, ballRadius, force: rest.force, friction });
    this.measured = this.#settling.read();
    if (wantsStillness()) while (this.#frame(1 / 60));
    else this.#loop.wake();
  }

  /** Ends the trial and shows what theory gives. */
  putBack(): void {
    this.#trial += 1;
    this.#loop.sleep();
    this.#settling = null;
    this.measured = null;
    this.refusal = '';
  }

  /** Goes on after the figure came back into view. */
  wake(): void {
    if (this.#settling !== null && this.#isUnderWay()) this.#loop.wake();
  }

  sleep(): void {
    this.#loop.sleep();
  }

  #frame(seconds: number): boolean {
    if (this.#settling === null) return false;
    this.#settling.advance(seconds);
    this.measured = this.#settling.read();
    return this.#isUnderWay();
  }

  /** A ball that has gone over is watched until it is well past the rim. */
  #isUnderWay(): boolean {
    if (this.measured === null) return false;
    const { outcome, translation } = this.measured;
    const seen = this.reading.cup.socket.width / 2 + BODY.rimLedge;
    return outcome === 'moving' || (outcome === 'over the rim' && translation < seen);
  }
}
