import type { PegTask } from '../../sims/benches/peg-board/question-task.ts';
import type { Answers } from '../../sims/study/prepare-questions.ts';
import { quantity } from '../../sims/study/quantity.ts';
import { elasticGroup } from './elastic-group.ts';
import * as n from './seats.ts';

const micrometres = (value: number) => quantity(value * n.MICROMETRES, 0, 'µm');

/** One peg by its sides. The slips are the area of its foot, and its radius for its diameter. */
function margin() {
  const [diameter, length, strength, pull] = [6, 12, 2, 180];
  const sides = n.sidesOfPeg({ diameter, length });
  const pullOut = strength * sides;
  const foot = (Math.PI / 4) * diameter ** 2;
  return {
    values: {
      diameter: quantity(diameter, 0, 'mm'),
      length: quantity(length, 0, 'mm'),
      strength: quantity(strength, 0, 'N/mm²'),
      pull: quantity(pull, 0, 'N'),
      sides: quantity(sides, 0, 'mm²'),
      pullOut: quantity(pullOut, 0, 'N'),
      margin: quantity(pullOut / pull, 2),
      byFoot: quantity((strength * foot) / pull, 2),
      byRadius: quantity(pullOut / 2 / pull, 2),
    },
  };
}

/** A pull and a tilt on three in a row. The slips leave out the pull, and one side of the sum. */
function group() {
  const [apart, pull, moment] = [6, 120, 900];
  const { pulls, squares } = elasticGroup([-apart, 0, apart], 1, { pull, moment });
  const [, , outer = NaN] = pulls;
  const lever = (moment * apart) / squares;
  return {
    values: {
      apart: quantity(apart, 0, 'mm'),
      pull: quantity(pull, 0, 'N'),
      moment: quantity(moment, 0, 'N·mm'),
      squares: quantity(squares, 0, 'mm²'),
      share: quantity(pull / pulls.length, 0, 'N'),
      lever: quantity(lever, 0, 'N'),
      outer: quantity(outer, 0, 'N'),
      noShare: quantity(lever, 0, 'N'),
      oneSide: quantity(pull / pulls.length + 2 * lever, 0, 'N'),
    },
  };
}

/** The same peg before and after bone has grown to it. */
function grownIn() {
  const kindOf = (kind: string) => n.kindRows.find((row) => row.kind === kind);
  const [pressed, grown] = [kindOf('fluted press-fit'), kindOf('in-grown')];
  if (pressed === undefined || grown === undefined) throw new Error('a kind is missing');
  const times = grown.pullOut / pressed.pullOut;
  return {
    key: times > 1.5 && grown.stiffness > 1.5 * pressed.stiffness ? 'both' : 'neither',
    values: {
      pressed: quantity(pressed.pullOut, 0, 'N'),
      grown: quantity(grown.pullOut, 0, 'N'),
      times: quantity(times, 0),
      stiffer: quantity(grown.stiffness / pressed.stiffness, 0),
    },
  };
}

/** Two pegs brought apart on the bench: the lift-off falls, the hardest pull hardly changes. */
function apart() {
  const [near, far] = [n.near.at(n.FRONT), n.far.at(n.FRONT)];
  const [before, after] = [n.hardestPull(near), n.hardestPull(far)];
  const isSamePull = Math.abs(after / before - 1) < 0.05;
  const isLessLift = far.liftOff < 0.9 * near.liftOff;
  return {
    key: isLessLift && isSamePull ? 'lift-only' : isLessLift ? 'both-fall' : 'pull-only',
    values: {
      near: quantity(n.NEAR, 0, 'mm'),
      far: quantity(n.FAR, 0, 'mm'),
      liftBefore: micrometres(near.liftOff),
      liftAfter: micrometres(far.liftOff),
      pullBefore: quantity(before, 0, 'N'),
      pullAfter: quantity(after, 0, 'N'),
    },
  };
}

/** A plate and three pegs of about one pull-out. */
function keelAndPegs() {
  const lift = (layout: n.Layout) => micrometres(n.liftAt(layout, n.FRONT));
  const isMore = n.liftAt(n.plate, n.FRONT) > n.liftAt(n.near, n.FRONT);
  const isAlike = Math.abs(n.plate.pullOut / n.near.pullOut - 1) < 0.05;
  return {
    key: isMore && isAlike ? 'one-line' : 'weaker',
    values: {
      keelOut: quantity(n.plate.pullOut, 0, 'N'),
      pegsOut: quantity(n.near.pullOut, 0, 'N'),
      keelLift: lift(n.plate),
      pegsLift: lift(n.near),
      broadside: quantity(n.keelBroadside.area, 0, 'mm²'),
      sideways: quantity(n.pegsSideways.area, 0, 'mm²'),
    },
  };
}

/** What is asked to be laid out. Its limits are teaching values: some layouts keep them, most do not. */
export function layOut() {
  const { press, shear, share } = n.load;
  const load = { press, shear, share };
  const task: PegTask = {
    ground: n.ground,
    load,
    peg: n.newPeg,
    start: n.inLine.design.pegs.map(({ x, y }) => ({ x, y })),
    way: [
      { x: 0, y: 9 },
      { x: 5.5, y: -7 },
      { x: -5.5, y: -7 },
    ],
    limits: { lift: 0.115, margin: 1.25, wall: 3 },
  };
  const { peg, limits, ground } = task;
  return {
    task,
    values: {
      diameter: quantity(peg.diameter, 0, 'mm'),
      length: quantity(peg.length, 0, 'mm'),
      height: quantity(ground.height, 0, 'mm'),
      width: quantity(ground.width, 0, 'mm'),
      press: quantity(load.press, 0, 'N'),
      shear: quantity(load.shear, 0, 'N'),
      share: quantity(load.share, 0, '%'),
      lift: micrometres(limits.lift),
      margin: quantity(limits.margin, 2),
      wall: quantity(limits.wall, 0, 'mm'),
      directions: quantity(n.far.rose.length, 0),
    },
  };
}

export const answers: Answers = { margin, group, grownIn, apart, keelAndPegs, layOut };
