// @ts-check
import js from '@eslint/js';
import astro from 'eslint-plugin-astro';
import svelte from 'eslint-plugin-svelte';
import { defineConfig, globalIgnores } from 'eslint/config';
import globals from 'globals';
import ts from 'typescript-eslint';
import { importDirection } from './site/scripts/import-direction.mjs';

// A script inside a page is checked with its page, by astro check.
const inPages = ['**/*.astro', '**/*.astro/*.ts'];
const typed = ['**/*.ts', '**/*.mjs', '**/*.js', '**/*.svelte'];

export default defineConfig(
  globalIgnores(['dist/', 'artefacts/', '.astro/', '**/node_modules/']),
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  js.configs.recommended,
  {
    files: typed,
    ignores: inPages,
    extends: [ts.configs.strictTypeChecked, ts.configs.stylisticTypeChecked],
  },
  { files: inPages, extends: [ts.configs.strict] },
  svelte.configs.recommended,
  astro.configs.recommended,
  {
    languageOptions: {
      globals: { ...globals.browser, ...globals.node },
      parserOptions: {
        projectService: true,
        tsconfigRootDir: import.meta.dirname,
        extraFileExtensions: ['.svelte'],
      },
    },
  },
  { files: inPages, languageOptions: { parserOptions: { projectService: false } } },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser } },
  },
  {
    plugins: { project: { rules: { 'import-direction': importDirection } } },
    rules: {
      'project/import-direction': 'error',
      eqeqeq: 'error',
      'no-console': 'error',
    },
  },
  {
    files: typed,
    ignores: inPages,
    rules: {
      '@typescript-eslint/consistent-type-imports': 'error',
      // It asks for the ! that no-non-null-assertion forbids.
      '@typescript-eslint/non-nullable-type-assertion-style': 'off',
      // matter-js declares as classes what it makes and takes as plain objects.
      '@typescript-eslint/no-unsafe-class-instance-assignment': 'off',
      // A number in a sentence or a path is the usual case here, not a slip.
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      // `onclick={() => step()}` reads well and says nothing false.
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
    },
  },
  {
    // Here types stand in comments, or come from a component; these rules read neither. The compiler and svelte-check do.
    files: ['**/*.mjs', '**/*.js', '**/*.svelte'],
    rules: {
      '@typescript-eslint/no-unsafe-argument': 'off',
      '@typescript-eslint/no-unsafe-assignment': 'off',
      '@typescript-eslint/no-unsafe-call': 'off',
      '@typescript-eslint/no-unsafe-member-access': 'off',
      '@typescript-eslint/no-unsafe-return': 'off',
    },
  },
  {
    // What runs in a terminal speaks there.
    files: ['site/scripts/**', 'tests/**'],
    rules: { 'no-console': 'off' },
  },
  {
    // TypeScript and astro check know every name.
    files: ['**/*.ts', '**/*.svelte', '**/*.astro'],
    rules: { 'no-undef': 'off' },
  },
);
