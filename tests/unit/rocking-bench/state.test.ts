import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { describe as words, settingLine } from '../../../sims/benches/rocking-bench/describe.ts';
import { readingsOf } from '../../../sims/benches/rocking-bench/readings.ts';
import { RockingBench } from '../../../sims/benches/rocking-bench/state.svelte.ts';
import { rockingTable } from '../../../sims/benches/rocking-bench/table.ts';

/** A visitor who asked for less motion: every movement is there at once. */
beforeEach(() => {
  vi.stubGlobal('matchMedia', () => ({ matches: true }));
  vi.stubGlobal('cancelAnimationFrame', () => undefined);
});
afterEach(() => {
  vi.unstubAllGlobals();
});

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const valueOf = (bench: RockingBench, name: string) =>
  readingsOf(bench).find((reading) => reading.name === name);

test('before the simulation has run it shows the solver’s rest and says so', () => {
  const bench = new RockingBench();
  expect(bench.readings).toBe(null);
  expect(valueOf(bench, 'A, gap')?.note).toBe('by the solver');
  expect(plain(words(bench))).toMatch(
    /^A ball is pressed on two sockets with 500 N, 90 % of the way to the top rim\. A, held by one peg/,
  );
});

test('measured, it stands beside the solver and within 5 % of it', async () => {
  const bench = new RockingBench({ press: 750 });
  await bench.settle();
  for (const name of ['a', 'b'] as const) {
    const [measured, solved] = [bench.shown[name], bench.theory[name]];
    expect(measured.state).toBe('at rest');
    expect(Math.abs(measured.liftOff / solved.liftOff - 1)).toBeLessThan(0.05);
  }
  expect(bench.shown.a.holds[0]?.isSlipping).toBe(true);
  expect(plain(words(bench))).toContain('At 358 N it slips out.');
  expect(plain(valueOf(bench, 'B, gap')?.note ?? '')).toMatch(/^solver \d+ µm, [+−]?0\.\d %$/);
});

test('the ball goes back: what slipped stays slipped, and the solver no longer stands for it', async () => {
  const bench = new RockingBench({ press: 750 });
  await bench.settle();
  const before = bench.readings?.a.slips.reduce((most, slip) => Math.max(most, slip), 0) ?? 0;
  bench.place(-90);
  expect(before).toBeGreaterThan(0.01);
  expect(bench.readings?.a.contactAngle).toBeLessThan(-0.3);
  expect(bench.remembers).toBe(true);
  expect(valueOf(bench, 'A, gap')?.note).toMatch(/^solver, never slipped/);
  bench.putBack();
  expect(bench.remembers).toBe(false);
});

test('rocking gives a gap for each load, and the solver’s beside it', async () => {
  const bench = new RockingBench({ cycles: 3, press: 600, left: 80 });
  await bench.rock();
  expect(bench.isRocking).toBe(false);
  for (const name of ['a', 'b'] as const) {
    expect(bench.rims[name]).toHaveLength(6);
    bench.rims[name].forEach(({ liftOff }, i) => {
      expect(Math.abs(liftOff / (bench.rocked?.theory[name][i] ?? NaN) - 1)).toBeLessThan(0.05);
    });
  }
  const { header, rows } = rockingTable(bench);
  expect(rows).toHaveLength(6);
  for (const row of rows) expect(row).toHaveLength(header.length);
  expect(plain(words(bench))).toMatch(/A, rocked 3 times: gap \d+ µm at the first load/);
});

test('a socket that nothing holds is lost in words, and a new ball place starts afresh', async () => {
  const bench = new RockingBench();
  bench.changeDesign('a', { layout: 'none' });
  bench.changeDesign('b', { layout: 'none', bed: 'rough' });
  await bench.settle();
  expect(words(bench)).toContain('has slid off: nothing holds it along the bone.');
  expect(words(bench)).toContain('has overturned: nothing balances this load.');
  expect(valueOf(bench, 'B, gap')).toMatchObject({ value: 'over\u00adturned' });
  bench.place(0);
  expect(bench.readings).toBe(null);
  await bench.settle();
  expect(bench.shown.b.state).toBe('at rest');
});

test('pegs apart stay on the back when it shrinks', () => {
  const bench = new RockingBench();
  bench.changeDesign('b', { layout: 'level', spacing: 26 });
  expect(bench.setting.b.spacing).toBeLessThan(27 - 6);
});

test('a keel is set in cement as a keel, and its eighths are called so', async () => {
  const bench = new RockingBench();
  bench.changeDesign('a', { layout: 'keel' });
  expect(bench.setting.a.kind).toBe('keel cemented');
  await bench.settle();
  expect(plain(valueOf(bench, 'A, hardest pull')?.note ?? '')).toMatch(/^this eighth slips at/);
  bench.changeDesign('a', { layout: 'one' });
  expect(bench.setting.a.kind).toBe('smooth cemented');
});

test('the foot of a picture says what was set', () => {
  expect(plain(settingLine(new RockingBench().setting))).toBe(
    '500 N, 90 % of the way to the top rim; A: one peg in the middle, 6 mm by 10 mm, smooth cemented, lying on slippery bone; B: two pegs, top and bottom, 6 mm by 10 mm, smooth cemented, lying on slippery bone; bone 210 MPa, 6 mm thick; back 36 mm by 27 mm; ball 48 mm, diametral mismatch 6 mm',
  );
});
