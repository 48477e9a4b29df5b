import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layoutFor } from '../../../sims/benches/path-tracer/layout.ts';
import {
  defaultTracer,
  drawn,
  positionRange,
  readTracerLink,
  writeTracerLink,
  type TracerSetting,
} from '../../../sims/benches/path-tracer/setting.ts';
import { cupFrom, cupRanges, type CupSetting } from '../../../sims/benches/shared/cup-setting.ts';
import { nearestAllowed } from '../../../sims/shared/range.ts';

const cups: fc.Arbitrary<CupSetting> = fc.record({
  ballDiameter: fc.integer({ min: 60, max: 120 }).map((n) => n / 2),
  width: fc.integer({ min: 24, max: 92 }).map((n) => n / 2),
  shapeBy: fc.constantFrom('depth' as const, 'radius' as const, 'mismatch' as const),
  depth: fc.integer({ min: 0, max: 140 }).map((n) => n / 10),
  radius: fc.integer({ min: 30, max: 160 }).map((n) => n / 2),
  mismatch: fc.integer({ min: 0, max: 80 }).map((n) => n / 2),
});

describe('the link', () => {
  test('of the default setting is empty, and an empty link is the default setting', () => {
    expect(writeTracerLink(defaultTracer)).toBe('');
    expect(readTracerLink('')).toEqual({ state: defaultTracer, problem: '' });
  });

  test('brings back the same cup, place, friction and kept curve', () => {
    const settings: fc.Arbitrary<TracerSetting> = fc
      .tuple(
        cups,
        fc.integer({ min: 0, max: 30 }),
        fc.integer({ min: -2300, max: 2300 }),
        fc.option(cups),
      )
      .map(([cup, friction, position, kept]) => ({
        ...cup,
        friction: friction / 100,
        position: position / 100,
        kept,
      }));
    fc.assert(
      fc.property(settings, (setting) => {
        const { state, problem } = readTracerLink(writeTracerLink(setting));
        expect(problem).toBe('');
        expect(cupFrom(state)).toEqual(cupFrom(setting));
        expect([state.friction, state.position]).toEqual([setting.friction, setting.position]);
        expect(state.kept === null).toBe(setting.kept === null);
        if (state.kept && setting.kept) expect(cupFrom(state.kept)).toEqual(cupFrom(setting.kept));
      }),
    );
  });

  test('does not carry what is not the knob', () => {
    expect(writeTracerLink({ ...defaultTracer, radius: 40, mismatch: 9 })).toBe('');
  });
});

test('the translation’s steps meet the middle and both rims of every width', () => {
  for (let { min: width } = cupRanges.width; width <= cupRanges.width.max; width += 0.5) {
    const range = positionRange(width);
    for (const place of [-width / 2, 0, width / 2])
      expect(nearestAllowed(place, range)).toBe(place);
  }
});

describe('the layout', () => {
  const widths = fc.integer({ min: 280, max: 1900 });

  test('keeps three panels in order, apart, and every plot inside the picture', () => {
    fc.assert(
      fc.property(cups, fc.option(cups), widths, (now, kept, width) => {
        const shown = [drawn(now).cup, ...(kept === null ? [] : [drawn(kept).cup])];
        const { view, height, size, section, path, ratio, reach } = layoutFor(shown, width);
        expect(size).toBeGreaterThanOrEqual(12);
        expect(section.bottom - section.top).toBeGreaterThan(200);
        expect(path.top).toBeGreaterThan(section.bottom);
        expect(path.bottom - path.top).toBeGreaterThan(70);
        expect(ratio.top).toBeGreaterThan(path.bottom + size);
        expect(ratio.bottom - ratio.top).toBeGreaterThan(85);
        expect(height - ratio.bottom).toBeGreaterThan(size * 5.5);
        expect(view.x(-reach)).toBeGreaterThanOrEqual(size * 2.5);
        expect(view.x(reach)).toBeLessThanOrEqual(width - size * 2.5);
      }),
    );
  });

  test('shows the deepest point, both rims and the ball’s centre at its highest', () => {
    fc.assert(
      fc.property(cups, widths, (now, width) => {
        const { cup } = drawn(now);
        const { view, section } = layoutFor([cup], width);
        expect(view.y(0)).toBeLessThan(section.bottom);
        expect(view.y(cup.ballRadius + cup.socket.depth)).toBeGreaterThan(0);
        expect(view.x(-cup.socket.width / 2)).toBeGreaterThan(0);
      }),
    );
  });

  test('does not change height while a cup is changed', () => {
    fc.assert(
      fc.property(cups, cups, widths, (one, other, width) => {
        const heightOf = (setting: CupSetting) => layoutFor([drawn(setting).cup], width).height;
        expect(heightOf(one)).toBe(heightOf(other));
      }),
    );
  });
});
