import type { Answers } from '../../sims/study/prepare-questions.ts';
import { quantity } from '../../sims/study/quantity.ts';
import { BONE_HEAT_LIMIT, SKIN_BURN_LIMIT } from '../../sims/mechanics/index.ts';
import { factValue } from '../fact-value.ts';
import * as n from './cements.ts';

const celsius = (value: number, digits = 1) => quantity(value, digits, '°C');
const disc = (diameter: number): number => (Math.PI / 4) * diameter ** 2;

/** Hole less peg. The slips leave out the lid, the ring’s growth, and take the difference of the widths for the gap. */
function onePeg() {
  const [diameter, length, gap] = [6, 12, 1.5];
  const peg = { count: 1, diameter, length };
  const { sheet, corners, tip, total } = n.pegParts(gap, peg);
  const [hole, depth] = [diameter + 2 * gap, length + gap];
  return {
    values: {
      diameter: quantity(diameter, 0, 'mm'),
      length: quantity(length, 0, 'mm'),
      hole: quantity(hole, 0, 'mm'),
      depth: quantity(depth, 1, 'mm'),
      holeVolume: quantity(disc(hole) * depth, 0, 'mm³'),
      pegVolume: quantity(disc(diameter) * length, 0, 'mm³'),
      ring: quantity(sheet + corners, 0, 'mm³'),
      lid: quantity(tip, 0, 'mm³'),
      cement: quantity(total, 0, 'mm³'),
      noLid: quantity(sheet + corners, 0, 'mm³'),
      sheetOnly: quantity(sheet + tip, 0, 'mm³'),
      wrongGap: quantity(disc(diameter + 4 * gap) * depth - disc(diameter) * length, 0, 'mm³'),
    },
  };
}

/** A drill one millimetre too wide, that is half a millimetre on each side. */
function drill() {
  const [diameter, gap, wider] = [n.pegDiameter, n.PLANNED, 1];
  const wide = gap + wider / 2;
  const ringOf = (room: number): number => disc(diameter + 2 * room) - disc(diameter);
  const times = ringOf(wide) / ringOf(gap);
  return {
    key: times > wide / gap ? 'more' : 'even',
    values: {
      diameter: quantity(diameter, 0, 'mm'),
      gap: quantity(gap, 0, 'mm'),
      wider: quantity(wider, 0, 'mm'),
      holeWider: quantity((100 * wider) / (diameter + 2 * gap), 0, '%'),
      sheet: quantity((ringOf(gap) * wide) / gap, 1, 'mm²'),
      ring: quantity(ringOf(wide), 1, 'mm²'),
      before: quantity(ringOf(gap), 1, 'mm²'),
      after: quantity(ringOf(wide), 1, 'mm²'),
      times: quantity(times, 2),
      gapTimes: quantity(wide / gap, 1),
    },
  };
}

/** Twice and a half times as thick. The slips go with the thickness itself, and with its cube. */
function crossing() {
  const [thin, thick] = [2, 5];
  const times = thick / thin;
  const first = Math.round(n.crossing(thin));
  return {
    values: {
      thin: quantity(thin, 0, 'mm'),
      thick: quantity(thick, 0, 'mm'),
      thinTime: quantity(first, 0, 's'),
      thickTime: quantity(first * times ** 2, 0, 's'),
      times: quantity(times, 1),
      squared: quantity(times ** 2, 2),
      span: quantity(n.settingSpan, 0, 's'),
      inProportion: quantity(first * times, 0, 's'),
      cubed: quantity(first * times ** 3, 0, 's'),
    },
  };
}

function where() {
  const { peakInCement, peakAtBone } = n.thick;
  return {
    key: peakInCement > peakAtBone ? 'inside' : 'surface',
    values: {
      thickness: quantity(n.THICK, 0, 'mm'),
      ofCement: celsius(peakInCement),
      ofBone: celsius(peakAtBone),
    },
  };
}

/** Shares to whole per cent, as they are asked. The slips take the plain mean, and the shares the wrong way round. */
function touch() {
  const [start, body] = [18, n.bodyTemperature];
  const ofCement = Math.round(100 * n.cementShare) / 100;
  const mixed = (share: number): number => share * start + (1 - share) * body;
  return {
    values: {
      start: celsius(start, 0),
      body: celsius(body, 0),
      ofCement: quantity(100 * ofCement, 0, '%'),
      ofBone: quantity(100 * (1 - ofCement), 0, '%'),
      contact: celsius(mixed(ofCement)),
      mean: celsius(mixed(1 / 2)),
      swapped: celsius(mixed(1 - ofCement)),
    },
  };
}

/** A mantle that is harm by one criterion and none by the other. */
function twoCriteria() {
  const { injury, peakAtBone } = n.middle;
  return {
    key: injury.isPastBoneLimit && !injury.isPastSkinLimit ? 'unknown' : 'dies',
    values: {
      thickness: quantity(n.MIDDLE, 0, 'mm'),
      peak: celsius(peakAtBone),
      reference: celsius(43, 0),
      equivalent: quantity(injury.cem43, 0),
      limit: quantity(BONE_HEAT_LIMIT, 0),
      burn: quantity(injury.arrhenius, 3),
      burnLimit: quantity(SKIN_BURN_LIMIT, 0),
      apart: celsius(n.skinMinute - n.QUOTED, 0),
    },
  };
}

function camera() {
  return {
    values: {
      camera: celsius(factValue('bone-surface-heat')),
      keel: celsius(factValue('keel-warming'), 0),
      thin: quantity(n.THIN, 0, 'mm'),
    },
  };
}

export const answers: Answers = { onePeg, drill, crossing, where, touch, twoCriteria, camera };
