import type * as Run from './run.ts';
import type { RockingScene } from '../../physics/rocking-scene.ts';
import type { SeatLoad } from '../../mechanics/index.ts';
import type { RimReading, RockingReading } from '../../physics/rocking-reading.ts';
import { createFrameLoop, wantsStillness } from '../../shared/frame-loop.ts';
import { nearestAllowed } from '../../shared/range.ts';
import { measuredLoad, posedBySim, posedByTheory, type Posed } from './posed.ts';
import { seatOf, type Seat } from './seat.ts';
import {
  defaultSetting,
  designNames,
  ranges,
  spacingRange,
  type Design,
  type DesignName,
  type RockingSetting,
} from './settings.ts';

export type Both<Value> = Readonly<Record<DesignName, Value>>;

/** What was measured of one rocking, and what the solver has beside it: gaps at each rim load, mm. */
export interface Rocked {
  readonly theory: Both<readonly number[]>;
}

const FAST = 4;
/** After a change of design the simulation starts when changes pause, ms. */
const PAUSE = 150;
/** A rocking needs a place off the middle, per cent. */
const LEAST_PLACE = 10;
const USUAL_PLACE = 90;
const SLIPPED = 1e-7;

/** Rocking Bench: what the visitor set, the two sockets under their balls, and what was last read of them. */
export class RockingBench {
  setting = $state.raw<RockingSetting>(defaultSetting);
  message = $state('');
  isFast = $state(false);
  /** What the simulation shows; null until it has run for this setting. */
  readings = $state.raw<Both<RockingReading> | null>(null);
  /** The last rocking; null where the sockets have not been rocked since the last change. */
  rocked = $state.raw<Rocked | null>(null);
  isRocking = $state(false);
  /** Something had slipped, or was crushed, before the ball went where it is now: the solver starts afresh and knows nothing of it. */
  remembers = $state(false);

  /** What the sockets are made of, as text: they need not be made again for a ball that moves. */
  readonly #made = $derived(JSON.stringify({ ...this.setting, place: 0, press: 0 }));
  readonly seats = $derived(seatsOf(this.#made));
  readonly #loadA = $derived(this.#measured('a'));
  readonly #loadB = $derived(this.#measured('b'));
  /** The solver’s rest: under the load measured where the simulation is at rest, else under what the shape asks for. */
  readonly theory = $derived<Both<Posed>>({
    a: posedByTheory(this.setting, this.seats.a, this.#loadA),
    b: posedByTheory(this.setting, this.seats.b, this.#loadB),
  });
  /** What is drawn: the simulation, or before it has run the solver’s rest. */
  readonly shown = $derived(
    this.readings === null
      ? this.theory
      : {
          a: posedBySim(this.readings.a, this.seats.a),
          b: posedBySim(this.readings.b, this.seats.b),
        },
  );

  readonly rims = $derived<Both<readonly RimReading[]>>({
    a: this.readings?.a.rims ?? [],
    b: this.readings?.b.rims ?? [],
  });
  readonly #farthest = $derived(Math.max(USUAL_PLACE, Math.abs(this.setting.place)));
  readonly #press = $derived(this.setting.press);
  /** Both with the ball far out: what the drawing’s magnification must leave room for. */
  readonly expected = $derived(farOut(this.#made, this.seats, this.#farthest, this.#press));

  #scenes: Both<RockingScene> | null = null;
  #run: typeof Run | null = null;
  #waiting: ReturnType<typeof setTimeout> | undefined;
  #isAwake = false;
  readonly #loop = createFrameLoop((seconds) => this.#frame(seconds));

  constructor(initial: Partial<RockingSetting> = {}) {
    this.setting = { ...defaultSetting, ...initial };
  }

  /** A change of anything but the ball’s place and the press starts new sockets, nothing slipped. */
  change(change: Partial<RockingSetting>): void {
    this.setting = { ...this.setting, ...change };
    this.#restart();
  }

  changeDesign(of: DesignName, change: Partial<Design>): void {
    const next = withItsHold({ ...this.setting[of], ...change }, change);
    const spacing = nearestAllowed(next.spacing, spacingRange(this.setting, next));
    this.change({ [of]: { ...next, spacing } });
  }

  /** Carries the ball, per cent of the way to the rim. */
  place(place: number): void {
    this.#moveOn({ place: nearestAllowed(place, ranges.place) });
  }

  press(press: number): void {
    this.#moveOn({ press: nearestAllowed(press, ranges.press) });
  }

  /** Rim to rim, as often as set; at once where the visitor asked for stillness. */
  async rock(): Promise<void> {
    this.#restart();
    const asked = this.setting;
    const run = await this.#fetch();
    if (asked !== this.setting) return;
    clearTimeout(this.#waiting);
    if (Math.abs(this.setting.place) < LEAST_PLACE)
      this.setting = { ...this.setting, place: USUAL_PLACE };
    const { cycles, place } = this.setting;
    const scenes = this.#ready(run);
    this.rocked = { theory: { a: [], b: [] } };
    this.isRocking = true;
    for (const name of designNames) scenes[name].rock(cycles, place / 100);
    this.#read();
    if (wantsStillness()) this.#finish();
    else this.#loop.wake();
  }

  /** New sockets, the ball where it was. */
  putBack(): void {
    this.#restart();
  }

  /** Stops a rocking where it is and goes on from there. */
  stop(): void {
    this.isRocking = false;
    this.#loop.sleep();
    if (this.#scenes === null) return;
    for (const name of designNames) this.#scenes[name].setPlace(this.setting.place / 100);
    this.remembers = this.#hasSlipped();
    this.#solveRocking();
    this.#loop.wake();
  }

  /** In view: the simulation may run. */
  wake(): void {
    this.#isAwake = true;
    if (this.#scenes === null) this.#start();
    else if (!this.#isDone()) this.#loop.wake();
  }

  sleep(): void {
    this.#isAwake = false;
    clearTimeout(this.#waiting);
    this.#loop.sleep();
  }

  /** Runs the simulation of this setting to its rest, from new sockets. */
  async settle(): Promise<void> {
    clearTimeout(this.#waiting);
    const asked = this.setting;
    const run = await this.#fetch();
    if (asked !== this.setting || this.isRocking || this.#scenes !== null) return;
    const scenes = this.#ready(run);
    for (const name of designNames) run.runToEnd(scenes[name]);
    this.#read();
  }

  #measured(name: DesignName): SeatLoad | undefined {
    const reading = this.readings?.[name];
    return reading?.state === 'at rest' ? measuredLoad(this.setting, reading) : undefined;
  }

  #restart(): void {
    this.#loop.sleep();
    this.#scenes = null;
    this.readings = null;
    this.rocked = null;
    this.isRocking = false;
    this.remembers = false;
    if (this.#isAwake) this.#start();
  }

  #start(): void {
    clearTimeout(this.#waiting);
    this.#waiting = setTimeout(() => void this.settle(), PAUSE);
  }

  #moveOn(change: Partial<RockingSetting>): void {
    const isLost = this.#scenes === null || this.#isLost();
    this.setting = { ...this.setting, ...change };
    if (this.isRocking || isLost || this.rocked !== null) {
      this.#restart();
      return;
    }
    const { place, press } = this.setting;
    for (const name of designNames) {
      this.#scenes?.[name].setCompressiveLoad(press);
      this.#scenes?.[name].setPlace(place / 100);
    }
    this.remembers ||= this.#hasSlipped();
    if (wantsStillness()) this.#finish();
    else this.#loop.wake();
  }

  async #fetch(): Promise<typeof Run> {
    return (this.#run ??= await import('./run.ts'));
  }

  #ready(run: typeof Run): Both<RockingScene> {
    this.#scenes ??= {
      a: run.startScene(this.setting, this.seats.a),
      b: run.startScene(this.setting, this.seats.b),
    };
    return this.#scenes;
  }

  #frame(seconds: number): boolean {
    if (this.#scenes === null) return false;
    const pace = this.isFast ? FAST : 1;
    for (const name of designNames)
      for (let i = 0; i < pace; i += 1) this.#scenes[name].advance(seconds);
    this.#read();
    return !this.#isDone();
  }

  #finish(): void {
    for (const name of designNames)
      if (this.#scenes !== null) this.#run?.runToEnd(this.#scenes[name], this.setting.cycles);
    this.#read();
  }

  #read(): void {
    if (this.#scenes === null) return;
    this.readings = { a: this.#scenes.a.read(), b: this.#scenes.b.read() };
    if (!this.isRocking || !this.#isDone()) return;
    this.isRocking = false;
    this.remembers = this.#hasSlipped();
    this.#solveRocking();
  }

  #solveRocking(): void {
    const [run, { readings, setting, seats }] = [this.#run, this];
    if (run === null || readings === null) return;
    const theory = {
      a: run.theoryOfRocking(setting, seats.a, readings.a),
      b: run.theoryOfRocking(setting, seats.b, readings.b),
    };
    this.rocked = { theory };
  }

  #isDone(): boolean {
    const { readings } = this;
    return readings !== null && designNames.every((name) => this.#run?.isDone(readings[name]));
  }

  #isLost(): boolean {
    const { readings } = this;
    return designNames.some((name) => {
      const state = readings?.[name].state;
      return state === 'overturned' || state === 'sliding';
    });
  }

  #hasSlipped(): boolean {
    const { readings } = this;
    return designNames.some((name) => {
      const { slips = [], crushed = [] } = readings?.[name] ?? {};
      return [...slips, ...crushed].some((way) => way > SLIPPED);
    });
  }
}

/** A keel comes cemented as a keel, and a peg as a peg, until the visitor says otherwise. */
function withItsHold(design: Design, { layout }: Partial<Design>): Design {
  if (layout === 'keel' && design.kind === 'smooth cemented')
    return { ...design, kind: 'keel cemented' };
  if (layout !== undefined && layout !== 'keel' && design.kind === 'keel cemented')
    return { ...design, kind: 'smooth cemented' };
  return design;
}

function seatsOf(made: string): Both<Seat> {
  const setting = JSON.parse(made) as RockingSetting;
  return { a: seatOf(setting, setting.a), b: seatOf(setting, setting.b) };
}

function farOut(made: string, seats: Both<Seat>, place: number, press: number): readonly Posed[] {
  const setting = { ...(JSON.parse(made) as RockingSetting), place, press };
  return designNames.map((name) => posedByTheory(setting, seats[name]));
}
