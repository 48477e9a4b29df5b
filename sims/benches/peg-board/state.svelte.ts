import type { Point } from '../../figures/view.ts';
import { LateAnswer, type Solver } from '../../shared/late-answer.svelte.ts';
import { nearestAllowed } from '../../shared/range.ts';
import * as edit from './edit.ts';
import { curveOf, polarPlace } from './outline.ts';
import type { Preset } from './presets.ts';
import { answersRose, roseOf, type RoseQuestion, type RoseRow } from './rose.ts';
import { BED_ELEMENTS, FEWER_ELEMENTS, seatOf } from './seat.ts';
import {
  defaultBoard,
  loadRanges,
  type BallLoad,
  type BoardSetting,
  type Design,
  type Ground,
  type KeelField,
  type PegField,
} from './settings.ts';
import { standOf } from './stand.ts';

/** What the keyboard and the table have hold of: a peg by its place in the list, or the keel. */
export type Chosen = number | 'keel' | null;

const MOST_STEPS = 100;

/** Peg Board: what the visitor laid out, and what follows from it. One for each figure on a page. */
export class PegBoard {
  setting = $state.raw<BoardSetting>(defaultBoard);
  chosen = $state.raw<Chosen>(null);
  /** One sentence about the last change that was not taken as asked, or ''. */
  message = $state('');

  readonly design = $derived(this.setting.design);
  readonly ground = $derived(this.setting.ground);
  readonly load = $derived(this.setting.load);
  readonly curve = $derived(curveOf(this.ground));
  readonly seat = $derived(seatOf(this.design, this.ground));
  readonly stand = $derived(standOf(this.seat, this.load));
  readonly press = $derived(this.load.press);
  readonly shear = $derived(this.load.shear);
  readonly share = $derived(this.load.share);
  /** Whether a change is going on that is not finished. */
  isMoving = $state(false);
  /** What the rose is asked for: carrying the load round leaves it as it is, and it is rougher while something moves. */
  readonly #roseQuestion = $derived<RoseQuestion>({
    design: this.design,
    ground: this.ground,
    press: this.press,
    shear: this.shear,
    share: this.share,
    count: this.isMoving ? FEWER_ELEMENTS : BED_ELEMENTS,
  });
  #lateRose = $state.raw<LateAnswer<RoseQuestion, readonly RoseRow[]> | null>(null);
  /** Worked out at once, or the last that came from beside the page. */
  readonly rose = $derived(this.#lateRose?.answer ?? roseOf(this.#roseQuestion));
  /** Whether the rose is, in full, the one of what stands now. */
  readonly isRoseCurrent = $derived(
    this.#lateRose === null
      ? !this.isMoving
      : answersRose(this.#lateRose.question, { ...this.#roseQuestion, count: BED_ELEMENTS }),
  );

  /** Settings that were settled before, the last one first to come back, and those undone. */
  #past = $state.raw<readonly BoardSetting[]>([]);
  #future = $state.raw<readonly BoardSetting[]>([]);
  /** The setting before the change that is going on. */
  #settled: BoardSetting = defaultBoard;

  readonly canUndo = $derived(this.#past.length > 0);
  readonly canRedo = $derived(this.#future.length > 0);

  constructor(initial: Partial<BoardSetting> = {}) {
    this.open({ ...defaultBoard, ...initial });
    this.message = '';
  }

  /** From now on the rose comes from beside the page, a moment later, until the function returned is called. */
  roseBeside(solver: Solver<RoseQuestion, readonly RoseRow[]>): () => void {
    const first = { question: this.#roseQuestion, answer: this.rose };
    const late = new LateAnswer(solver, first, answersRose);
    this.#lateRose = late;
    return () => {
      late.stop();
      if (this.#lateRose === late) this.#lateRose = null;
    };
  }

  /** Asks for the rose of what stands now. */
  followRose(): void {
    this.#lateRose?.ask(this.#roseQuestion);
  }

  /** The rose of what stands now, however long it takes. */
  wholeRose(): readonly RoseRow[] {
    return this.isRoseCurrent ? this.rose : roseOf({ ...this.#roseQuestion, count: BED_ELEMENTS });
  }

  /** A setting from outside: everything is put where it can stand, and there is nothing to undo. */
  open(setting: BoardSetting): void {
    const fit = edit.onGround(setting.design, setting.ground);
    this.setting =
      fit === null
        ? { ...setting, ground: defaultBoard.ground, design: defaultBoard.design }
        : { ...setting, design: fit.design };
    this.message =
      fit?.problem ?? 'So many pegs have no room on this back. The board opens with its own.';
    this.#settled = this.setting;
    this.#past = [];
    this.#future = [];
    this.chosen = null;
  }

  /** A change is finished: it can be undone as one. */
  settle(): void {
    this.isMoving = false;
    if (this.setting === this.#settled) return;
    this.#past = [...this.#past, this.#settled].slice(-MOST_STEPS);
    this.#future = [];
    this.#settled = this.setting;
  }

  undo(): void {
    const before = this.#past.at(-1);
    if (before === undefined) return;
    this.#past = this.#past.slice(0, -1);
    this.#future = [this.setting, ...this.#future];
    this.#show(before);
  }

  redo(): void {
    const [next, ...rest] = this.#future;
    if (next === undefined) return;
    this.#past = [...this.#past, this.setting];
    this.#future = rest;
    this.#show(next);
  }

  /** Gives up a change that is going on. */
  putBack(): void {
    this.isMoving = false;
    this.setting = this.#settled;
    this.message = '';
  }

  #show(setting: BoardSetting): void {
    this.setting = setting;
    this.#settled = setting;
    this.message = '';
    this.#keepChosen();
  }

  #keepChosen(): void {
    const { pegs, keel } = this.design;
    const isThere =
      this.chosen === 'keel' ? keel !== null : this.chosen !== null && this.chosen < pegs.length;
    if (!isThere) this.chosen = null;
  }

  #take({ design, problem }: edit.Edited): void {
    this.message = problem;
    if (design !== this.design) this.setting = { ...this.setting, design };
  }

  /** Moves a peg or the keel, mm, to the nearest place with room. */
  move(which: number | 'keel', to: Point): void {
    this.isMoving = true;
    this.#take(edit.moved(this.curve, this.design, which, to));
  }

  sizePeg(index: number, field: PegField, value: number): void {
    this.#take(edit.resizedPeg(this.curve, this.design, index, field, value));
  }

  sizeKeel(field: KeelField, value: number): void {
    this.#take(edit.resizedKeel(this.curve, this.design, field, value));
  }

  setKind(which: number | 'keel', kind: Design['pegs'][number]['kind']): void {
    const { design } = this;
    const peg = which === 'keel' ? undefined : design.pegs[which];
    if (peg !== undefined && which !== 'keel') {
      this.#take({ design: edit.withPeg(design, which, { ...peg, kind }), problem: '' });
    } else if (which === 'keel' && design.keel !== null) {
      this.#take({ design: { ...design, keel: { ...design.keel, kind } }, problem: '' });
    }
  }

  addPeg(): void {
    const before = this.design.pegs.length;
    this.#take(edit.added(this.curve, this.design));
    if (this.design.pegs.length > before) this.chosen = before;
  }

  addKeel(): void {
    this.#take(edit.withKeel(this.curve, this.design));
    if (this.design.keel !== null) this.chosen = 'keel';
  }

  remove(which: number | 'keel'): void {
    const { pegs, keel } = this.design;
    const design =
      which === 'keel' ? { pegs, keel: null } : { pegs: pegs.filter((_, i) => i !== which), keel };
    this.#take({ design, problem: '' });
    this.chosen = null;
  }

  /** Brings the pegs nearer or farther from front to back, from where they stood before the change began. */
  spread(value: number): void {
    this.isMoving = true;
    this.#take(edit.spreadTo(this.curve, this.#settled.design, value));
  }

  setGround(change: Partial<Ground>): void {
    this.isMoving = true;
    const ground = { ...this.ground, ...change };
    const fit = edit.onGround(this.#settled.design, ground);
    if (fit === null) {
      this.message =
        'On a back of that size there is no room for all of them. Nothing was changed.';
      return;
    }
    this.message = fit.problem;
    this.setting = { ...this.setting, ground, design: fit.design };
  }

  setLoad(change: Partial<BallLoad>): void {
    this.isMoving = true;
    this.message = '';
    const bearing = (change.bearing ?? this.load.bearing) % 360;
    const load = { ...this.load, ...change };
    this.setting = {
      ...this.setting,
      load: {
        press: nearestAllowed(load.press, loadRanges.press),
        shear: nearestAllowed(load.shear, loadRanges.shear),
        bearing: Math.round(bearing < 0 ? bearing + 360 : bearing) % 360,
        share: nearestAllowed(load.share, loadRanges.share),
      },
    };
  }

  /** Brings the ball’s contact to a place of the face, mm. */
  pressAt(place: Point): void {
    this.setLoad(polarPlace(this.curve, place, this.load.bearing));
  }

  start({ design }: Preset): void {
    const fit = edit.onGround(design, this.ground);
    this.chosen = null;
    if (fit !== null) this.#take(fit);
    else this.message = 'On a back of this size there is no room for that.';
  }

  reset(): void {
    this.setting = defaultBoard;
    this.chosen = null;
    this.message = '';
  }
}
