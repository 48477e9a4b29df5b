// @ts-check
import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import svelte from '@astrojs/svelte';
import { defineConfig } from 'astro/config';
import { createHash } from 'node:crypto';
import { woff2Only } from './site/math/katex-css.ts';
import { mathPlugin } from './site/math/plugin.ts';
import { themeScript } from './site/theme/script.ts';

const base = process.env.BASE_PATH ?? '/';
const themeHash = createHash('sha256').update(themeScript).digest('base64');

export default defineConfig({
  srcDir: './site',
  publicDir: './site/public',
  base,
  trailingSlash: 'always',
  devToolbar: { enabled: false },
  integrations: [svelte(), mdx()],
  markdown: {
    syntaxHighlight: false,
    processor: satteri({ features: { math: true }, mdastPlugins: [mathPlugin] }),
  },
  security: {
    csp: {
      directives: [
        "default-src 'self'",
        "worker-src 'self'",
        "img-src 'self' data: blob:",
        // A picture made from a figure carries its font inside.
        "font-src 'self' data:",
        "object-src 'none'",
        "base-uri 'none'",
        "form-action 'none'",
      ],
      scriptDirective: { hashes: [`sha256-${themeHash}`] },
      styleDirective: {
        resources: ["'self'", { resource: "'unsafe-inline'", kind: 'attribute' }],
      },
    },
  },
  build: { inlineStylesheets: 'never' },
  vite: { plugins: [woff2Only()], build: { assetsInlineLimit: 0 } },
});
