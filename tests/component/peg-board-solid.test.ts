import { afterEach, expect, test, vi } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import type { BufferGeometry, Material, Object3D } from 'three';
import { openBoard } from '../../sims/benches/peg-board/solid/solid-scene.ts';
import SolidBoard from '../../sims/benches/peg-board/SolidBoard.svelte';
import { PegBoard } from '../../sims/benches/peg-board/state.svelte.ts';
import { presets } from '../../sims/benches/peg-board/presets.ts';
import { readColours } from '../../sims/benches/round-the-rim/solid/colours.ts';
import { enFace } from '../../sims/benches/round-the-rim/solid/orbit.ts';
import type { Renderer } from '../../sims/benches/round-the-rim/solid/solid-stage.ts';
import '../../site/styles/tokens.css';
import '../../site/styles/base.css';

afterEach(() => {
  vi.restoreAllMocks();
});

/** Draws nothing, and tells what it was given that holds memory of the graphics card. */
function standIn() {
  let shown: Object3D | null = null;
  const renderer = {
    render: (scene: Object3D) => {
      shown = scene;
    },
    setSize: () => undefined,
    setPixelRatio: () => undefined,
    dispose: () => undefined,
  };
  const holdings = (): Set<BufferGeometry | Material> => {
    const found = new Set<BufferGeometry | Material>();
    shown?.traverse((part) => {
      const { geometry, material } = part as { geometry?: BufferGeometry; material?: Material };
      if (geometry !== undefined) found.add(geometry);
      if (material !== undefined) found.add(material);
    });
    return found;
  };
  return { make: () => renderer as unknown as Renderer, holdings };
}

function subjectOf(bench: PegBoard) {
  const { design, seat, stand, load } = bench;
  const colours = readColours(document.body);
  return { design, seat, stand, load, showsBone: true, view: enFace, colours };
}

test('frees all it made; a turn builds nothing anew, another layout does', () => {
  const { make, holdings } = standIn();
  const scene = openBoard(document.createElement('canvas'), make);
  scene.resize(600, 400, 1);
  const bench = new PegBoard();
  const freed = new Set<unknown>();
  const made = new Set<BufferGeometry | Material>();
  const note = (): void => {
    for (const thing of holdings()) {
      if (made.has(thing)) continue;
      made.add(thing);
      thing.addEventListener('dispose', () => freed.add(thing));
    }
  };
  const first = subjectOf(bench);
  scene.show(first);
  note();
  const before = holdings();
  scene.show({ ...first, view: { ...enFace, yaw: 1 } });
  expect(holdings()).toEqual(before);
  bench.addKeel();
  scene.show(subjectOf(bench));
  note();
  expect([...holdings()].some((thing) => before.has(thing))).toBe(false);
  scene.dispose();
  expect(made.size).toBeGreaterThan(before.size);
  expect(freed).toEqual(made);
});

test.each(presets)('shows $id and tells how many times its movement is drawn', ({ design }) => {
  const { make, holdings } = standIn();
  const scene = openBoard(document.createElement('canvas'), make);
  scene.resize(600, 400, 1);
  const bench = new PegBoard({ design });
  const { times, words } = scene.show(subjectOf(bench));
  expect(words).toHaveLength(4);
  expect(times).toBe(bench.stand.outcome === 'balanced' ? Math.max(2, times) : 1);
  for (const thing of holdings()) {
    if (!('attributes' in thing)) continue;
    const { array } = thing.getAttribute('position');
    expect(Array.from(array as Float32Array).every(Number.isFinite)).toBe(true);
  }
  scene.dispose();
});

test('where nothing can be drawn in three dimensions a sentence says so', async () => {
  vi.spyOn(HTMLCanvasElement.prototype, 'getContext').mockReturnValue(null);
  await render(SolidBoard, { bench: new PegBoard() });
  await page.getByRole('button', { name: 'Show in three dimensions' }).click();
  await expect.element(page.getByText(/WebGL is missing or switched off/)).toBeVisible();
});
