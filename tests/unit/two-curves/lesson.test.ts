import { describe, expect, test } from 'vitest';
import { curvesActs, printActs } from '../../../lessons/04-mismatch/acts.ts';
import {
  before,
  closeFit,
  closePair,
  commonPair,
  fits,
  looseFit,
  loosePair,
  lossOf,
  openedOutcome,
  ways,
} from '../../../lessons/04-mismatch/cups.ts';
import { evidence, FARTHEST } from '../../../lessons/04-mismatch/evidence.ts';
import {
  centred,
  closedForms,
  harderSlid,
  hertzAsks,
  hertzFrom,
  layer,
  pressed,
  sharper,
  slid,
  thinLayerAsks,
  thinLayerUpTo,
} from '../../../lessons/04-mismatch/presses.ts';
import { actCells as printCells } from '../../../sims/benches/pressure-print/acts.ts';
import { actCells as curveCells } from '../../../sims/benches/two-curves/acts.ts';
import { peakStabilityRatio } from '../../../sims/geometry/index.ts';
import { pairOf } from '../../../lessons/04-mismatch/cups.ts';
import { expectClose } from '../geometry/close.ts';

/* What the lesson on mismatch says in words, held to what its modules compute. */

const wayOf = (held: string) => {
  const found = ways.find((way) => way.held === held);
  if (found === undefined) throw new Error(`no way with ${held} held`);
  return found;
};

describe('what is held decides', () => {
  test('each way keeps what it says it holds, and all come to the same mismatch', () => {
    for (const { pair } of ways) expect(pair.mismatch).toBe(looseFit);
    expectClose(wayOf('width').pair.shape.width, closePair.shape.width, { relative: 1e-9 });
    expectClose(wayOf('depth').pair.shape.depth, closePair.shape.depth, { relative: 1e-9 });
    expectClose(wayOf('arc').pair.shape.arc, closePair.shape.arc, { relative: 1e-9 });
    expect(wayOf('cup').pair.socket).toEqual(closePair.socket);
  });

  test('width costs about twice what depth costs; arc and a smaller ball cost no ratio', () => {
    const [width, depth] = [lossOf(wayOf('width')), lossOf(wayOf('depth'))];
    expect(width / depth).toBeGreaterThan(1.8);
    expect(width / depth).toBeLessThan(2.2);
    expectClose(wayOf('arc').ratio, before.ratio, { relative: 1e-9 });
    expectClose(wayOf('cup').ratio, before.ratio, { relative: 1e-9 });
  });

  test('play keeps step with the mismatch only where the arc does', () => {
    const step = looseFit / closeFit;
    expectClose(wayOf('arc').play / before.play, step, { relative: 1e-9 });
    expect(wayOf('depth').play / before.play).toBeLessThan(step);
    expect(wayOf('width').play).toBeLessThan(wayOf('depth').play);
  });

  test('the prediction: same ball, same width, a flatter cup holds less', () => {
    expect(openedOutcome).toBe('falls');
    expect(peakStabilityRatio(commonPair.socket)).toBeLessThan(before.ratio);
  });
});

describe('patch and edge', () => {
  test('by the thin layer the peak goes with the square root of the sharpness, by Hertz with its two-thirds power', () => {
    const [close, loose] = [centred(closeFit), centred(looseFit)];
    expectClose(loose.thinLayer.peakPressure / close.thinLayer.peakPressure, sharper ** (1 / 2), {
      relative: 1e-9,
    });
    expectClose(loose.hertz.peakPressure / close.hertz.peakPressure, sharper ** (2 / 3), {
      relative: 1e-9,
    });
  });

  test('neither form may be believed for any of the three fits', () => {
    for (const mismatch of fits) {
      const { domain, map, hertz } = centred(mismatch);
      expect(domain.believe).toBe('neither');
      expect(domain.patchToThickness).toBeGreaterThan(hertzAsks);
      expect(domain.patchToThickness).toBeLessThan(thinLayerAsks);
      expect(map.peakPressure).toBeGreaterThan(hertz.peakPressure);
      expect(hertzFrom(mismatch)).toBeGreaterThan(layer.thickness);
      expect(thinLayerUpTo(mismatch)).toBeLessThan(layer.thickness);
    }
  });

  test('at the thicknesses that are told, each form begins to hold', () => {
    const pair = pairOf(looseFit);
    expect(closedForms(pair, 1.01 * hertzFrom(looseFit)).domain.isHalfSpace).toBe(true);
    expect(closedForms(pair, 0.99 * hertzFrom(looseFit)).domain.isHalfSpace).toBe(false);
    expect(closedForms(pair, 0.99 * thinLayerUpTo(looseFit)).domain.isThinLayer).toBe(true);
    expect(closedForms(pair, 1.01 * thinLayerUpTo(looseFit)).domain.isThinLayer).toBe(false);
  });

  test('slid aside the close pair is on its edge and the loose one is not', () => {
    expect(harderSlid).toBe('close');
    expect(pressed(closePair, slid).state).toBe('on the rim edge');
    expect(pressed(loosePair, slid).state).toBe('on the face');
    expect(pressed(loosePair, slid).rimShare).toBe(0);
  });

  test('an exact fit, centred, has its patch end at the rim and the lowest peak of all', () => {
    const exact = pressed(pairOf(0));
    expect(exact.state).toBe('cut by the rim');
    expect(exact.peakPressure).toBeLessThan(centred(closeFit).hertz.peakPressure);
  });
});

describe('the lecture', () => {
  test('its acts show what the notes say of them', () => {
    const ratios = curvesActs.map((act) => Number(curveCells(act).at(-1)));
    const [close = NaN, width = NaN, depth = NaN, arc = NaN] = ratios;
    expect(width).toBeLessThan(depth);
    expect(depth).toBeLessThan(close);
    expect(arc).toBe(close);
    expect(printActs.map((act) => printCells(act)[0])).toEqual([
      expect.stringMatching(/MPa$/),
      expect.stringMatching(/MPa$/),
      'edge',
      expect.stringMatching(/MPa$/),
    ]);
  });
});

describe('the evidence', () => {
  const lines = evidence.flatMap((group) => group.lines);

  test('all of it lies on the axis, and where the other mismatch is shown it is the double or the half', () => {
    for (const { id, range = [], at, above, worseBelow, otherwise } of lines) {
      const places = [...range, at, above, worseBelow, otherwise].filter(
        (place) => place !== undefined,
      );
      expect(places.length, id).toBeGreaterThan(0);
      for (const place of places) {
        expect(place, id).toBeGreaterThanOrEqual(0);
        expect(place, id).toBeLessThanOrEqual(FARTHEST);
      }
      const said = at ?? above;
      if (otherwise !== undefined) expect([2, 0.5], id).toContain(otherwise / (said ?? NaN));
    }
  });

  test('every line has a name and says how it was read', () => {
    for (const { name, howRead } of lines) {
      expect(name).toMatch(/^(Often heard|\p{Lu}.* \d{4})$/u);
      expect(howRead).toMatch(/^(abstract|quoted|common practice)$/);
    }
  });

  test('the studies overlap only in part: the larger never had the joints of which the smaller tells', () => {
    const larger = lines.find(({ id }) => id === 'mismatch-no-effect');
    const smaller = lines.find(({ id }) => id === 'mismatch-lucency-below');
    expect(smaller?.range?.[0]).toBeLessThan(larger?.range?.[0] ?? NaN);
    expect(smaller?.worseBelow).toBeGreaterThan(larger?.range?.[0] ?? NaN);
  });
});
