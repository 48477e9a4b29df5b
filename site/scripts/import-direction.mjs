import { dirname, posix, relative, sep } from 'node:path';
import { root } from './project.mjs';

/**
 * Which folders a file of a folder may import, besides its own: arrows point one way, lessons → benches → figures,
 * physics → mechanics → geometry. `packages` tells whether it may import packages.
 *
 * @type {Readonly<Record<string, { readonly folders: readonly string[], readonly packages: boolean }>>}
 */
export const zones = {
  'sims/geometry': { folders: [], packages: false },
  'sims/mechanics': { folders: ['sims/geometry'], packages: false },
  'sims/physics': { folders: ['sims/geometry', 'sims/mechanics'], packages: true },
  'sims/shared': { folders: ['sims/geometry', 'sims/mechanics'], packages: true },
  'sims/figures': { folders: ['sims/geometry', 'sims/mechanics', 'sims/shared'], packages: true },
  'sims/benches': {
    folders: ['sims/geometry', 'sims/mechanics', 'sims/physics', 'sims/shared', 'sims/figures'],
    packages: true,
  },
  // Whatever else lies in sims/: it knows nothing of the site either.
  sims: { folders: [], packages: true },
  lessons: { folders: ['sims', 'site'], packages: true },
  // Pictures of the pages are taken with the tests' own helpers.
  'site/scripts': { folders: ['tests'], packages: true },
  site: { folders: ['sims', 'lessons'], packages: true },
};

/**
 * What is wrong with an import, in words, or undefined.
 *
 * @param {string} file importing file, from the project's top, with /
 * @param {string} source what it imports, as written
 * @returns {string | undefined}
 */
export function wrongImport(file, source) {
  const zone = Object.keys(zones).find((folder) => file.startsWith(`${folder}/`));
  const rule = zone === undefined ? undefined : zones[zone];
  if (zone === undefined || rule === undefined) return undefined;
  if (!source.startsWith('.')) {
    return rule.packages ? undefined : `${zone} imports no package, but here ${source}`;
  }
  const target = posix.join(dirname(file), source);
  const isAllowed = [zone, ...rule.folders].some((folder) => target.startsWith(`${folder}/`));
  return isAllowed ? undefined : `${zone} does not import ${target}`;
}

/** @type {import('eslint').Rule.RuleModule} */
export const importDirection = {
  meta: { type: 'problem', schema: [], messages: { wrong: '{{ what }}' } },
  create(context) {
    const file = relative(root, context.filename).split(sep).join('/');
    /** @param {{ source?: unknown }} node */
    const check = (node) => {
      const source = /** @type {import('estree').Literal | null | undefined} */ (node.source);
      if (typeof source?.value !== 'string') return;
      const what = wrongImport(file, source.value);
      if (what !== undefined) context.report({ node: source, messageId: 'wrong', data: { what } });
    };
    return {
      ImportDeclaration: check,
      ImportExpression: check,
      ExportNamedDeclaration: check,
      ExportAllDeclaration: check,
    };
  },
};
