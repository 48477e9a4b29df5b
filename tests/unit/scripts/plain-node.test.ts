import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { currentNode } from '../../../site/scripts/current-node.mjs';
import { root } from '../../../site/scripts/project.mjs';

test.each([
  ['sims/geometry/index.ts', 'sphericalSocket'],
  ['sims/mechanics/index.ts', 'restPosition'],
])('%s is imported by Node alone, with no build and no document', (file, name) => {
  const script = `const module = await import('./${file}'); console.log(typeof module.${name});`;
  const { stdout, stderr } = spawnSync(currentNode(), ['--input-type=module', '--eval', script], {
    cwd: root,
    encoding: 'utf8',
    env: {},
  });
  expect(stderr).toBe('');
  expect(stdout.trim()).toBe('function');
});
