import { BODY } from '../../figures/section.ts';
import { peakStabilityRatio } from '../../geometry/index.ts';
import type { PushReading } from '../../physics/push-reading.ts';
import { createPushScene, type PushScene } from '../../physics/push-scene.ts';
import { createFrameLoop, wantsStillness } from '../../shared/frame-loop.ts';
import { cupFrom, switchShapeBy, type CupField, type ShapeBy } from '../shared/cup-setting.ts';
import { defaultSetting, sideForceRange, type PushSetting } from './settings.ts';

/** One measured point of a push: where the ball stood and the ratio that held it there. */
export interface TracePoint {
  readonly translation: number;
  readonly ratio: number;
}

/** How a bench is doing, for its buttons. */
export type BenchMode = 'resting' | 'pushing' | 'held by hand' | 'paused';

const SLOW = 0.25;
/** Model seconds without any movement after which the loop may sleep. */
const SETTLED_AFTER = 0.6;
const SETTLED_MOVE = 1e-4;
/** Points kept of one push. */
const LONGEST_TRACE = 600;

/** Push Bench: the settings a visitor turns, the simulation they turn, and what it last read. */
export class PushBench {
  setting = $state.raw<PushSetting>(defaultSetting);
  isSlow = $state(false);
  isPaused = $state(false);
  isPushing = $state(false);
  isDragged = $state(false);
  message = $state('');
  reading = $state.raw<PushReading>(restingReading(defaultSetting));
  trace = $state.raw<readonly TracePoint[]>([]);

  readonly cup = $derived(cupFrom(this.setting));
  readonly theory = $derived(peakStabilityRatio(this.cup.socket, this.setting.friction));
  readonly mode = $derived<BenchMode>(
    this.isPaused
      ? 'paused'
      : this.isDragged
        ? 'held by hand'
        : this.isPushing
          ? 'pushing'
          : 'resting',
  );

  #scene: PushScene | null = null;
  #stillFor = 0;
  readonly #loop = createFrameLoop((seconds) => this.#frame(seconds));

  constructor(initial: Partial<PushSetting> = {}) {
    this.setting = { ...defaultSetting, ...initial };
    this.reading = restingReading(this.setting);
  }

  /** Changes what the visitor set. A new shape, press or friction starts a new trial; a new push goes on with this one. */
  change(change: Partial<PushSetting>): void {
    const isPushOnly = Object.keys(change).every((name) => name === 'sideForce');
    const { max } = sideForceRange(change.compressiveLoad ?? this.setting.compressiveLoad);
    const next = { ...this.setting, ...change };
    this.setting = { ...next, sideForce: Math.min(next.sideForce, max) };
    this.message = this.cup.message;
    if (isPushOnly) {
      if (this.reading.slipRatio !== null) this.#restart();
      this.isPushing = false;
      this.#applyByHand();
    } else {
      this.reset();
    }
  }

  changeCup(field: CupField, value: number): void {
    this.change({ [field]: value });
  }

  shapeBy(to: ShapeBy): void {
    const { setting, message } = switchShapeBy(this.setting, to);
    this.change(setting);
    if (message !== '') this.message = message;
  }

  /** Pushes slowly harder until the ball slips. Where the visitor asked for stillness it goes there at once. */
  pushUntilItSlips(): void {
    this.#restart();
    this.setting = { ...this.setting, sideForce: 0 };
    this.isPaused = false;
    this.isPushing = true;
    const scene = this.#ready();
    scene.startPush();
    if (wantsStillness()) this.#runToEnd(scene);
    else this.#loop.wake();
  }

  /** Holds the ball at a translation, mm; null lets go of it. */
  drag(translation: number | null): void {
    if (this.reading.state === 'slipped out' && translation !== null && !this.isDragged)
      this.#restart();
    this.isDragged = translation !== null;
    this.isPushing = false;
    this.isPaused = false;
    const scene = this.#ready();
    scene.setDrag(translation);
    if (translation === null) this.#applyByHand();
    this.#loop.wake();
  }

  togglePause(): void {
    this.isPaused = !this.isPaused;
    if (this.isPaused) this.#loop.sleep();
    else this.#wake();
  }

  step(): void {
    this.isPaused = true;
    this.#loop.sleep();
    this.#ready().step();
    this.#read();
  }

  reset(): void {
    this.#restart();
    this.isPushing = false;
    this.isDragged = false;
    this.isPaused = false;
    this.#applyByHand();
  }

  /** Goes on after the page was hidden or the figure scrolled away. */
  wake(): void {
    if (this.#scene !== null && !this.isPaused) this.#wake();
  }

  sleep(): void {
    this.#loop.sleep();
  }

  #applyByHand(): void {
    const { sideForce } = this.setting;
    if (sideForce === 0 && this.#scene === null) return;
    this.#ready().setSideForce(sideForce);
    this.isPaused = false;
    this.#wake();
  }

  #ready(): PushScene {
    const { socket, ballRadius } = this.cup;
    const { compressiveLoad, friction } = this.setting;
    this.#scene ??= createPushScene({ socket, ballRadius, compressiveLoad, friction });
    return this.#scene;
  }

  #restart(): void {
    this.#loop.sleep();
    this.#scene = null;
    this.trace = [];
    this.reading = restingReading(this.setting);
  }

  #wake(): void {
    this.#stillFor = 0;
    this.#loop.wake();
  }

  #frame(seconds: number): boolean {
    const scene = this.#ready();
    const before = this.reading.translation;
    scene.advance(seconds * (this.isSlow ? SLOW : 1));
    this.#read();
    if (this.#isFarOut()) return false;
    const isStill = Math.abs(this.reading.translation - before) < SETTLED_MOVE;
    this.#stillFor = isStill ? this.#stillFor + seconds : 0;
    return this.isPushing || this.isDragged || this.#stillFor < SETTLED_AFTER;
  }

  /** Well past the rim there is nothing more to see: the ball stays there, still in the picture. */
  #isFarOut(): boolean {
    const { state, translation } = this.reading;
    const shown = this.cup.socket.width / 2 + BODY.rimLedge;
    return state === 'slipped out' && !this.isDragged && Math.abs(translation) > shown;
  }

  #runToEnd(scene: PushScene): void {
    const MOST_STEPS = 200_000;
    for (let i = 0; i < MOST_STEPS && this.isPushing; i += 1) {
      scene.step();
      if (i % 8 === 0) this.#read();
    }
  }

  #read(): void {
    const reading = this.#ready().read();
    this.reading = reading;
    const isDone = reading.push !== 'pushing';
    const isTraced = this.isDragged || reading.push === 'pushing';
    if (isTraced && reading.translation >= 0 && this.trace.length < LONGEST_TRACE) {
      this.trace = [...this.trace, { translation: reading.translation, ratio: reading.ratio }];
    }
    if (this.isPushing && isDone) this.isPushing = false;
  }
}

/** What a bench shows before anything has been pushed: the ball at the bottom, under its load. */
function restingReading({ compressiveLoad }: PushSetting): PushReading {
  return {
    time: 0,
    translation: 0,
    climb: 0,
    speed: 0,
    sideForce: 0,
    compressiveLoad,
    ratio: 0,
    contacts: [{ angle: 0, x: 0, z: 0, normalForce: compressiveLoad, frictionForce: 0 }],
    contactAngle: 0,
    contactForce: { x: 0, z: compressiveLoad },
    springEnd: null,
    state: 'seated',
    push: 'idle',
    slipRatio: null,
    slipTranslation: null,
  };
}
