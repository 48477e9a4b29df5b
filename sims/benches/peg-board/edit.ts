import type { Point } from '../../figures/view.ts';
import type { OutlineCurve } from '../../geometry/outline.ts';
import { nearestAllowed } from '../../shared/range.ts';
import { mm } from '../../shared/format.ts';
import { curveOf } from './outline.ts';
import { fitted, KEEL_NAME, nearestPlace, obstacle, others, pegName } from './room.ts';
import {
  keelRanges,
  MOST_PEGS,
  newKeel,
  newPeg,
  pegRanges,
  type Design,
  type Ground,
  type KeelField,
  type KeelPlace,
  type PegField,
  type PegPlace,
} from './settings.ts';

/** A design after a change, and one sentence where the change was not taken as asked ('' where it was). */
export interface Edited {
  readonly design: Design;
  readonly problem: string;
}

const ASKED = 0.06;
const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export function withPeg(design: Design, index: number, peg: PegPlace): Design {
  return { ...design, pegs: design.pegs.map((each, i) => (i === index ? peg : each)) };
}

/** Moves a peg or the keel to the nearest place that has room for it. */
export function moved(
  curve: OutlineCurve,
  design: Design,
  which: number | 'keel',
  { x, y }: Point,
): Edited {
  const present = which === 'keel' ? design.keel : (design.pegs[which] ?? null);
  if (present === null) return { design, problem: '' };
  const rest = others(design, which);
  const asked = {
    ...present,
    x: nearestAllowed(x, pegRanges.x),
    y: nearestAllowed(y, pegRanges.y),
  };
  const at = nearestPlace(curve, asked, rest);
  if (at === null) return { design, problem: '' };
  const name = which === 'keel' ? KEEL_NAME : pegName(which);
  const isAsked = Math.hypot(at.x - x, at.y - y) < ASKED * Math.SQRT2;
  const problem = isAsked
    ? ''
    : `${upper(name)} would reach ${obstacle(curve, asked, rest)}. It stands at the nearest place with room.`;
  return { design: placed(design, which, at), problem };
}

function placed(design: Design, which: number | 'keel', at: PegPlace | KeelPlace): Design {
  if ('span' in at) return { ...design, keel: at };
  return which === 'keel' ? design : withPeg(design, which, at);
}

/** Another size of a peg; one too thick for its place becomes as thick as there is room for. */
export function resizedPeg(
  curve: OutlineCurve,
  design: Design,
  index: number,
  field: PegField,
  value: number,
): Edited {
  const peg = design.pegs[index];
  if (peg === undefined) return { design, problem: '' };
  if (field === 'x' || field === 'y')
    return moved(curve, design, index, { ...peg, [field]: value });
  const range = pegRanges[field];
  const rest = others(design, index);
  const fits = (size: number): boolean => obstacle(curve, { ...peg, [field]: size }, rest) === '';
  const asked = nearestAllowed(value, range);
  let size = asked;
  while (size > range.min && !fits(size)) size = nearestAllowed(size - range.step, range);
  const problem =
    size === asked
      ? ''
      : `Where ${pegName(index)} stands there is room for ${mm(size, 1)}. It is set so.`;
  return { design: withPeg(design, index, { ...peg, [field]: size }), problem };
}

/** Another size of the keel, likewise. */
export function resizedKeel(
  curve: OutlineCurve,
  design: Design,
  field: KeelField,
  value: number,
): Edited {
  const { keel } = design;
  if (keel === null) return { design, problem: '' };
  if (field === 'x' || field === 'y')
    return moved(curve, design, 'keel', { ...keel, [field]: value });
  const range = keelRanges[field];
  const rest = others(design, 'keel');
  const fits = (size: number): boolean => obstacle(curve, { ...keel, [field]: size }, rest) === '';
  const asked = nearestAllowed(value, range);
  let size = asked;
  while (size > range.min && !fits(size)) size = nearestAllowed(size - range.step, range);
  const problem =
    size === asked ? '' : `Where the keel stands there is room for ${mm(size, 1)}. It is set so.`;
  return { design: { ...design, keel: { ...keel, [field]: size } }, problem };
}

/** One peg more, near the middle, like the last one. */
export function added(curve: OutlineCurve, design: Design): Edited {
  if (design.pegs.length >= MOST_PEGS) {
    return { design, problem: `The board takes ${MOST_PEGS} pegs. Remove one first.` };
  }
  const last = design.pegs.at(-1);
  const peg = { ...newPeg, ...last, x: 0, y: 0 };
  const rest = others(design, null);
  for (const each of [peg, { ...peg, diameter: pegRanges.diameter.min }]) {
    const at = nearestPlace(curve, each, rest);
    if (at !== null) return { design: { ...design, pegs: [...design.pegs, at] }, problem: '' };
  }
  return { design, problem: 'There is no room for another peg.' };
}

/** With a keel, in the middle as far as there is room. */
export function withKeel(curve: OutlineCurve, design: Design): Edited {
  const rest = others(design, 'keel');
  for (let { span } = newKeel; span >= keelRanges.span.min; span -= keelRanges.span.step) {
    const at = nearestPlace(curve, { ...newKeel, span }, rest);
    if (at === null) continue;
    const problem =
      span === newKeel.span ? '' : `Between the pegs there is room for a keel of ${mm(span, 1)}.`;
    return { design: { ...design, keel: at }, problem };
  }
  return { design, problem: 'There is no room for a keel between the pegs.' };
}

/** From the foremost peg to the rearmost, middle to middle, mm. */
export function spreadOf({ pegs }: Design): number {
  if (pegs.length === 0) return 0;
  const across = pegs.map(({ x }) => x);
  return Math.max(...across) - Math.min(...across);
}

/** Pegs brought to another distance from front to back, their order and heights kept. */
export function spreadTo(curve: OutlineCurve, design: Design, spread: number): Edited {
  const present = spreadOf(design);
  if (!(present > 0)) return { design, problem: '' };
  const across = design.pegs.map(({ x }) => x);
  const middle = (Math.max(...across) + Math.min(...across)) / 2;
  const pegs = design.pegs.map((peg) => ({
    ...peg,
    x: Math.round((middle + ((peg.x - middle) * spread) / present) * 10) / 10 || 0,
  }));
  return fittedTo(curve, { ...design, pegs }, design);
}

/** The same design on another back. */
export function onGround(design: Design, ground: Ground): Edited | null {
  const next = fitted(curveOf(ground), design);
  if (next === null) return null;
  return { design: next, problem: movedWords(design, next) };
}

function fittedTo(curve: OutlineCurve, asked: Design, before: Design): Edited {
  const next = fitted(curve, asked);
  if (next === null) return { design: before, problem: 'There is no room for that.' };
  return { design: next, problem: movedWords(asked, next) };
}

function movedWords(asked: Design, given: Design): string {
  const names = given.pegs.flatMap((peg, i) => {
    const from = asked.pegs[i];
    const isMoved = from !== undefined && Math.hypot(peg.x - from.x, peg.y - from.y) > ASKED;
    return isMoved ? [pegName(i)] : [];
  });
  const all = [
    ...(given.keel !== null &&
    asked.keel !== null &&
    Math.hypot(given.keel.x - asked.keel.x, given.keel.y - asked.keel.y) > ASKED
      ? [KEEL_NAME]
      : []),
    ...names,
  ];
  if (all.length === 0) return '';
  const list = all.join(', ').replace(/, ([^,]*)$/, ' and $1');
  const verb = all.length === 1 ? 'was' : 'were';
  return `${upper(list)} ${verb} moved to the nearest place with room.`;
}
