import { expect, test } from 'vitest';
import { wrongImport } from '../../../site/scripts/import-direction.mjs';

test.each([
  ['sims/geometry/climb.ts', './mismatch.ts'],
  ['sims/mechanics/rest-position.ts', '../geometry/index.ts'],
  ['sims/physics/world.ts', 'matter-js'],
  ['sims/physics/world.ts', '../mechanics/index.ts'],
  ['sims/figures/Slider.svelte', '../shared/range.ts'],
  ['sims/benches/push-bench/Bench.svelte', '../../physics/world.ts'],
  ['lessons/01-ball-and-cup/words.ts', '../../sims/geometry/index.ts'],
  ['site/pages/index.astro', '../../sims/figures/Slider.svelte'],
  ['tests/unit/geometry/climb.test.ts', '../../../site/paths.ts'],
])('%s may import %s', (file, source) => {
  expect(wrongImport(file, source)).toBeUndefined();
});

test.each([
  ['sims/geometry/climb.ts', '../mechanics/index.ts'],
  ['sims/geometry/climb.ts', 'd3-scale'],
  ['sims/mechanics/rest-position.ts', '../shared/range.ts'],
  ['sims/mechanics/rest-position.ts', 'node:fs'],
  ['sims/physics/world.ts', '../benches/push-bench/state.svelte.ts'],
  ['sims/figures/Slider.svelte', '../benches/push-bench/Bench.svelte'],
  ['sims/figures/Slider.svelte', '../physics/world.ts'],
  ['sims/benches/push-bench/Bench.svelte', '../../../site/paths.ts'],
  ['sims/benches/push-bench/Bench.svelte', '../../../lessons/sources.json'],
  ['site/pages/index.astro', '../../tests/fixtures/a.ts'],
])('%s may not import %s', (file, source) => {
  expect(wrongImport(file, source)).toMatch(/imports? no|does not import/);
});
