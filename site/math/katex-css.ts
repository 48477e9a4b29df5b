import type { Plugin } from 'vite';

/** Keeps only the woff2 faces of the formula stylesheet: every browser the course supports reads them. */
export function woff2Only(): Plugin {
  return {
    name: 'woff2-only',
    enforce: 'pre',
    transform(code, id) {
      if (!id.includes('/katex/dist/katex')) return null;
      return code.replaceAll(/,\s*url\([^)]*\.(?:woff|ttf)\)\s*format\([^)]*\)/g, '');
    },
  };
}
