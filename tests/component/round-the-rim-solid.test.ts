import { afterEach, expect, test, vi } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import type { BufferGeometry, Camera, Material, Object3D, Scene } from 'three';
import { presets } from '../../sims/benches/round-the-rim/presets.ts';
import { readColours } from '../../sims/benches/round-the-rim/solid/colours.ts';
import {
  enFace,
  fromTheFront,
  type OrbitView,
} from '../../sims/benches/round-the-rim/solid/orbit.ts';
import { openSolid, type Renderer } from '../../sims/benches/round-the-rim/solid/solid-scene.ts';
import SolidCanvas from '../../sims/benches/round-the-rim/SolidCanvas.svelte';
import SolidView from '../../sims/benches/round-the-rim/SolidView.svelte';
import { RoundTheRim } from '../../sims/benches/round-the-rim/state.svelte.ts';
import '../../site/styles/tokens.css';
import '../../site/styles/base.css';

afterEach(() => {
  vi.restoreAllMocks();
});

/** A renderer that draws nothing and remembers what it was given. */
function standIn() {
  const seen = {
    scene: null as Scene | null,
    camera: null as Camera | null,
    frames: 0,
    disposed: 0,
  };
  const renderer = {
    render: (scene: Object3D, camera: Camera) => {
      seen.scene = scene as Scene;
      seen.camera = camera;
      seen.frames += 1;
    },
    setSize: () => undefined,
    setPixelRatio: () => undefined,
    dispose: () => {
      seen.disposed += 1;
    },
  };
  return { seen, make: () => renderer as unknown as Renderer };
}

/** Everything in a scene that holds memory of the graphics card. */
function holdings(scene: Scene | null): Set<BufferGeometry | Material> {
  const found = new Set<BufferGeometry | Material>();
  scene?.traverse((part) => {
    const { geometry, material } = part as { geometry?: BufferGeometry; material?: Material };
    if (geometry !== undefined) found.add(geometry);
    if (material !== undefined) found.add(material);
  });
  return found;
}

function listen(things: Iterable<BufferGeometry | Material>, freed: Set<unknown>): void {
  for (const thing of things) thing.addEventListener('dispose', () => freed.add(thing));
}

function subjectOf(bench: RoundTheRim, view: OrbitView = enFace) {
  return {
    sound: bench.sound,
    way: bench.way,
    ball: bench.ball,
    view,
    colours: readColours(document.body),
    showsBall: true,
  };
}

function worn(): RoundTheRim {
  const bench = new RoundTheRim();
  bench.reshape({ lip: true, defect: 'segment' });
  return bench;
}

test('frees every geometry and material it made, those it replaced and those it still had', () => {
  const { seen, make } = standIn();
  const solid = openSolid(document.createElement('canvas'), make);
  solid.resize(600, 400, 1);
  const bench = worn();
  const freed = new Set<unknown>();
  const made = new Set<BufferGeometry | Material>();
  const show = (): void => {
    solid.show(subjectOf(bench));
    const now = holdings(seen.scene);
    listen(
      [...now].filter((thing) => !made.has(thing)),
      freed,
    );
    now.forEach((thing) => made.add(thing));
  };
  show();
  bench.face(30);
  show();
  bench.turn('width', 28);
  show();
  const atEnd = holdings(seen.scene);
  expect(atEnd.size).toBeGreaterThan(20);
  expect(made.size).toBeGreaterThan(atEnd.size);
  expect(freed.size).toBe(made.size - atEnd.size);
  solid.dispose();
  expect(freed).toEqual(made);
  expect(seen.scene?.children).toHaveLength(0);
  expect(seen.disposed).toBe(1);
});

test('moving the ball builds nothing anew', () => {
  const { seen, make } = standIn();
  const solid = openSolid(document.createElement('canvas'), make);
  solid.resize(600, 400, 1);
  const bench = new RoundTheRim();
  const colours = readColours(document.body);
  solid.show({ ...subjectOf(bench), colours });
  const before = holdings(seen.scene);
  bench.moveTo(-3);
  solid.show({ ...subjectOf(bench, fromTheFront), colours });
  expect(holdings(seen.scene)).toEqual(before);
  solid.dispose();
});

test('en face superior is up and anterior to the right; from the front the outer side is to the left', () => {
  const { make } = standIn();
  const solid = openSolid(document.createElement('canvas'), make);
  solid.resize(600, 400, 1);
  const bench = new RoundTheRim();
  const at = (view: OrbitView) =>
    Object.fromEntries(
      solid.show(subjectOf(bench, view)).words.map(({ word, x, y }) => [word, { x, y }]),
    );
  const side = at(enFace);
  expect(side.superior?.y).toBeLessThan(side.inferior?.y ?? NaN);
  expect(side.anterior?.x).toBeGreaterThan(side.posterior?.x ?? NaN);
  const front = at(fromTheFront);
  expect(front.anterior?.x).toBeCloseTo(front.posterior?.x ?? NaN, 6);
  expect(front.superior?.y).toBeLessThan(front.inferior?.y ?? NaN);
  // What is lateral of the view's middle lies to the left of it.
  expect(front.anterior?.x).toBeGreaterThan(300);
  solid.dispose();
});

test.each(presets)('draws $id to scale', ({ shape }) => {
  const { make } = standIn();
  const solid = openSolid(document.createElement('canvas'), make);
  solid.resize(540, 540, 1);
  const bench = new RoundTheRim(shape);
  const { words, pixelsPerMillimetre, greatestClimb } = solid.show(subjectOf(bench));
  const [top, bottom] = words;
  const { height } = bench.sound.face.outline;
  expect(((bottom?.y ?? NaN) - (top?.y ?? NaN)) / pixelsPerMillimetre).toBeCloseTo(height + 9, 6);
  const depths = bench.map.rows.map(({ depth }) => depth);
  expect(greatestClimb).toBeCloseTo(Math.max(...depths), 1);
  solid.dispose();
});

test('the view is turned by its buttons, says from where it looks, and frees itself when closed', async () => {
  const { seen, make } = standIn();
  const bench = new RoundTheRim();
  let disposed = 0;
  const closed = vi.fn();
  await render(SolidCanvas, {
    sound: bench.sound,
    way: bench.way,
    ball: bench.ball,
    opener: (canvas: HTMLCanvasElement) => {
      const scene = openSolid(canvas, make);
      return {
        ...scene,
        dispose: () => {
          disposed += 1;
          scene.dispose();
        },
      };
    },
    onclose: closed,
    onlost: () => undefined,
  }).then(async ({ unmount }) => {
    await expect.poll(() => seen.frames).toBeGreaterThan(0);
    const words = () => page.getByRole('img').element().getAttribute('aria-label') ?? '';
    expect(words()).toContain('Seen from the side, the front and above.');
    await page.getByRole('button', { name: 'En face' }).click();
    await expect.poll(words).toContain('Seen from the side.');
    for (const name of ['Turn left', 'Turn right', 'Turn up', 'Turn down', 'Closer', 'Further']) {
      const { frames } = seen;
      await page.getByRole('button', { name }).click();
      await expect.poll(() => seen.frames).toBeGreaterThan(frames);
    }
    await page.getByRole('button', { name: 'From the front' }).click();
    await expect
      .poll(() => document.getElementById('said-politely')?.textContent)
      .toBe('Seen from the front.');
    await page.getByRole('button', { name: 'Close this view' }).click();
    expect(closed).toHaveBeenCalledOnce();
    const still = seen.frames;
    await new Promise((resolve) => setTimeout(resolve, 120));
    expect(seen.frames).toBe(still);
    await unmount();
    expect(disposed).toBe(1);
  });
});

test('a change of theme repaints', async () => {
  const { seen, make } = standIn();
  const bench = new RoundTheRim();
  await render(SolidCanvas, {
    sound: bench.sound,
    way: bench.way,
    ball: bench.ball,
    opener: (canvas: HTMLCanvasElement) => openSolid(canvas, make),
    onclose: () => undefined,
    onlost: () => undefined,
  });
  await expect.poll(() => seen.frames).toBeGreaterThan(0);
  const before = holdings(seen.scene);
  document.documentElement.dataset.theme = 'night';
  await expect.poll(() => [...holdings(seen.scene)].some((thing) => before.has(thing))).toBe(false);
  delete document.documentElement.dataset.theme;
});

test('where nothing can be drawn in three dimensions a sentence says so, and nothing is loaded', async () => {
  vi.spyOn(HTMLCanvasElement.prototype, 'getContext').mockReturnValue(null);
  const bench = new RoundTheRim();
  await render(SolidView, { sound: bench.sound, way: bench.way, ball: bench.ball });
  await page.getByRole('button', { name: 'Show in three dimensions' }).click();
  await expect.element(page.getByText(/WebGL is missing or switched off/)).toBeVisible();
  expect(document.querySelector('canvas')).toBeNull();
});
