import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  beliefWords,
  closedFormWords,
  realPeak,
} from '../../../sims/benches/pressure-print/belief.ts';
import { evenRows, printRows } from '../../../sims/benches/pressure-print/curve.ts';
import { describe as inWords, placeWords } from '../../../sims/benches/pressure-print/describe.ts';
import { layoutFor } from '../../../sims/benches/pressure-print/layout.ts';
import { isobarLabels, printFigure } from '../../../sims/benches/pressure-print/print-figure.ts';
import { printOf } from '../../../sims/benches/pressure-print/print.ts';
import { profileOf } from '../../../sims/benches/pressure-print/profile.ts';
import {
  defaultPrint,
  pairSettingOf,
  readPrintLink,
  writePrintLink,
  type PrintSetting,
} from '../../../sims/benches/pressure-print/setting.ts';
import { mapTable } from '../../../sims/benches/pressure-print/table.ts';
import { layerRanges } from '../../../sims/benches/two-curves/layer.ts';
import { pairFrom } from '../../../sims/benches/two-curves/pair.ts';
import { pairRanges } from '../../../sims/benches/two-curves/pair-ranges.ts';
import { expectClose } from '../geometry/close.ts';

const at = (change: Partial<PrintSetting> = {}) => printOf({ ...defaultPrint, ...change });
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const within = ({ min, max }: { min: number; max: number }) => fc.double({ min, max, noNaN: true });
const settings: fc.Arbitrary<PrintSetting> = fc.record({
  held: fc.constantFrom('width' as const, 'depth' as const, 'arc' as const),
  ballDiameter: within(pairRanges.ballDiameter),
  mismatch: within(pairRanges.mismatch),
  width: within(pairRanges.width),
  depth: within(pairRanges.depth),
  arc: within(pairRanges.arc),
  load: within(layerRanges.load),
  thickness: within(layerRanges.thickness),
  modulus: within(layerRanges.modulus),
  poisson: within(layerRanges.poisson),
  translation: fc.double({ min: 0, max: 30, noNaN: true }),
});

describe('printOf', () => {
  test('whatever is set, there is a print, with its reason where it is not the one asked for', () => {
    fc.assert(
      fc.property(settings, (setting) => {
        const { contact, layer, translation, pair, message } = printOf(setting);
        expect(contact.peakPressure).toBeGreaterThan(0);
        expect(layer.load).toBeLessThanOrEqual(setting.load);
        expect(translation).toBeLessThanOrEqual(pair.socket.width / 2);
        const isAsked =
          layer.load === setting.load &&
          setting.translation <= pair.socket.width / 2 + 1e-3 &&
          pair.message === '';
        expect(message === '').toBe(isAsked);
      }),
    );
  });

  test('a load the plastic cannot carry is brought to the greatest on the control’s steps that it can', () => {
    const soft = { thickness: 2, modulus: 200, poisson: 0.3, mismatch: 0, ballDiameter: 30 };
    const edge = { ...soft, held: 'depth', depth: 7.5, translation: 12.99 } as const;
    const { layer, message } = at({ ...edge, load: 2000 });
    const { step } = layerRanges.load;
    expect(layer.load).toBeLessThan(2000);
    expect(layer.load % step).toBe(0);
    expect(plain(message)).toBe(
      `Under more than ${layer.load} N the ball would go right through this plastic: the load is set to that.`,
    );
    expect(at({ ...edge, load: layer.load }).message).toBe('');
    expect(at({ ...edge, load: layer.load + 2 * step }).message).not.toBe('');
  });

  test('a place beyond the rim is brought to the rim', () => {
    expect(at({ translation: 20 })).toMatchObject({ translation: 14 });
    expect(plain(at({ translation: 20 }).message)).toBe(
      'The ball leaves this socket at 14.0 mm: it stands there.',
    );
  });
});

describe('the curves', () => {
  const { pair, layer } = at();

  test('go from the middle to the rim and meet the print where the ball stands', () => {
    const rows = printRows(pair, layer);
    expect(rows[0]?.translation).toBe(0);
    expect(rows.at(-1)?.translation).toBe(14);
    for (const [i, row] of rows.entries()) {
      if (i > 0) expect(row.translation).toBeGreaterThan(rows[i - 1]?.translation ?? NaN);
    }
    for (const row of rows.filter((_, i) => i % 7 === 3)) {
      const print = at({ translation: row.translation });
      expectClose(row.stabilityRatio ?? NaN, print.elasticRatio, { absolute: 1e-9 });
      expectClose(row.peakPressure ?? NaN, print.contact.peakPressure, { relative: 1e-9 });
      expectClose(row.rimShare ?? NaN, print.contact.rimShare, { absolute: 1e-9 });
      expectClose(row.rigidRatio, print.rigidRatio, { absolute: 1e-12 });
    }
  });

  test('the stiffer the plastic, the nearer the elastic curve lies to the rigid one', () => {
    const apart = (modulus: number): number =>
      Math.max(
        ...evenRows(pair, { ...layer, modulus }, 57).map((row) =>
          Math.abs((row.stabilityRatio ?? NaN) - row.rigidRatio),
        ),
      );
    const gaps = [200, 2000, 2e5, 2e7].map(apart);
    for (const [i, gap] of gaps.entries()) if (i > 0) expect(gap).toBeLessThan(gaps[i - 1] ?? NaN);
    expect(gaps.at(-1)).toBeLessThan(0.01);
  });
});

describe('which formula may be believed', () => {
  const said = (change: Partial<PrintSetting>): string => {
    const { contact, closed, layer } = at(change);
    return plain(beliefWords(contact, closed, layer));
  };

  test('inside the face, between thick and thin: neither, and what the peak lies between', () => {
    const { contact, closed } = at({ translation: 0 });
    const between = realPeak(contact, closed);
    expect(said({ translation: 0 })).toContain(
      `lies between the two, ${between?.[0].toFixed(1)} MPa and ${between?.[1].toFixed(1)} MPa`,
    );
    expect(between?.[0]).toBe(closed.hertz?.peakPressure);
  });

  test('a small patch on thick plastic: Hertz, and its number', () => {
    const thick = { load: 50, thickness: 10, poisson: 0.4, mismatch: 10, translation: 0 };
    const { closed, contact } = at(thick);
    expect(said(thick)).toContain(`Believe a peak of ${closed.hertz?.peakPressure.toFixed(1)} MPa`);
    expect(realPeak(contact, closed)).toBeNull();
  });

  test('a wide patch on thin plastic: the thin layer, and so the map', () => {
    const thin = {
      load: 1000,
      thickness: 2,
      modulus: 690,
      poisson: 0.3,
      mismatch: 4,
      translation: 0,
    };
    const { contact, closed } = at(thin);
    expect(closed.domain.believe).toBe('thin layer');
    expect(said(thin)).toContain('The map is such a layer.');
    expectClose(contact.peakPressure, closed.thinLayer?.peakPressure ?? NaN, { relative: 0.02 });
  });

  test('cut by the rim and on its edge: neither knows of a rim, and no numbers of theirs are shown', () => {
    expect(said({ translation: 1.3 })).toContain('neither formula knows of a rim');
    expect(said({ translation: 5 })).toContain('a trend here, not a stress');
    for (const translation of [1.3, 5]) {
      const print = at({ translation });
      expect(closedFormWords(print.contact, print.closed)).toBe('');
      expect(profileOf(print, 8, 16).hertz).toEqual([]);
    }
  });

  test('a fitting ball: neither', () => {
    expect(said({ mismatch: 0, translation: 0 })).toContain('The rim cuts the patch');
    expect(closedFormWords(at({ mismatch: 0 }).contact, at({ mismatch: 0 }).closed)).toBe('');
  });

  test('the closed forms take the force along the normal, not the load alone', () => {
    const { closed, contact, layer } = at({ translation: 1 });
    const { curvatureRadius: R } = at().pair.socket;
    const re = 1 / (1 / 24 - 1 / R);
    const p0 = (closed.thinLayer?.peakPressure ?? NaN) ** 2 * Math.PI * re;
    const bed =
      (layer.modulus * (1 - layer.poisson)) / ((1 + layer.poisson) * (1 - 2 * layer.poisson) * 4);
    expectClose(p0 / bed, Math.hypot(layer.load, contact.sideForce), { relative: 1e-9 });
  });
});

describe('the drawing', () => {
  test('the detail holds the whole print, and its numbers stand apart', () => {
    fc.assert(
      fc.property(settings, fc.integer({ min: 280, max: 1200 }), (setting, width) => {
        const print = printOf(setting);
        const layout = layoutFor(print, width);
        const { box, view } = layout.detail;
        const figure = printFigure(print);
        for (const { x, y } of figure.isobars[0]?.outline ?? []) {
          expect(view.x(x)).toBeGreaterThan(box.left);
          expect(view.x(x)).toBeLessThan(box.right);
          expect(view.y(y)).toBeGreaterThan(box.top);
          expect(view.y(y)).toBeLessThan(box.bottom);
        }
        const labels = isobarLabels(figure, print, view, box.left + 8, layout.size);
        for (const [i, label] of labels.entries()) {
          const above = labels[i - 1];
          if (above) expect(label.at.y - above.at.y).toBeGreaterThanOrEqual(1.2 * layout.size);
        }
      }),
    );
  });

  test('the layout does not move as the ball slides, but for the detail', () => {
    const [here, there] = [0.5, 9].map((translation) => layoutFor(at({ translation }), 800));
    expect(here?.height).toBe(there?.height);
    expect(here?.plan.box).toEqual(there?.plan.box);
    expect(here?.plan.view.scale).toBe(there?.plan.view.scale);
    expect(here?.detail.box).toEqual(there?.detail.box);
  });
});

describe('words and numbers', () => {
  test('the description names place, print, peak, centre, rim, side force, both mismatches', () => {
    const words = plain(inWords(at({ translation: 1.5 })));
    for (const part of [
      'radial mismatch 3.0 mm (diametral 6.0 mm)',
      'stands 1.50 mm from the centre line',
      'cut by the rim',
      'its peak is 32.5 MPa',
      'of the load lies within 1 mm of the rim',
      'a stability ratio of',
      'on a rigid socket it is',
    ]) {
      expect(words).toContain(part);
    }
    expect(plain(placeWords(at({ translation: 1.5 })))).toMatch(
      /^1\.50 mm, peak 32\.5 MPa, 3\d % near the rim, ratio 0\.5\d$/,
    );
  });

  test('over the rim’s top it must be held back, and the words say so', () => {
    expect(plain(inWords(at({ translation: 14 })))).toContain('It must be held back with 3 N');
  });

  test('the map’s numbers add up to the load', () => {
    const print = at({ translation: 1 });
    const { curvatureRadius: R } = print.pair.socket;
    const sum = mapTable(print).rows.reduce((total, row) => {
      const [x = NaN, y = NaN, area = NaN, pressure = NaN] = row.map(Number);
      return total + (area * pressure * Math.sqrt(R ** 2 - x ** 2 - y ** 2)) / R;
    }, 0);
    expectClose(sum, print.layer.load, { relative: 1e-3 });
  });
});

describe('the link', () => {
  test('of the default setting is empty, and an empty link is the default setting', () => {
    expect(writePrintLink(defaultPrint)).toBe('');
    expect(readPrintLink('')).toEqual({ state: defaultPrint, problem: '' });
  });

  test('brings back the same pair, plastic, load and place', () => {
    fc.assert(
      fc.property(settings, (setting) => {
        const { state, problem } = readPrintLink(writePrintLink(setting));
        expect(problem).toBe('');
        const [one, two] = [pairFrom(pairSettingOf(setting)), pairFrom(pairSettingOf(state))];
        expectClose(two.socket.width, one.socket.width, { absolute: 1e-2 });
        expectClose(two.ballRadius, one.ballRadius, { absolute: 1e-4 });
        for (const field of ['load', 'thickness', 'modulus', 'poisson', 'translation'] as const) {
          expectClose(state[field], setting[field], { absolute: 1e-4 });
        }
      }),
    );
  });
});
