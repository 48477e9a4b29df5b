import { describe, expect, test } from 'vitest';
import { basePath, builtSite } from '../../site/scripts/project.mjs';
import { readSite } from './built-site.ts';
import { rules } from './rules.ts';

describe('the built site', () => {
  const site = readSite(builtSite(), basePath());

  test('has pages', () => {
    expect(site.pages.map(({ route }) => route)).toEqual(
      expect.arrayContaining(['', '404.html', 'sources/', 'study/01-ball-and-cup/']),
    );
  });

  test.each(Object.entries(rules))('%s', (_, rule) => {
    expect(rule(site)).toEqual([]);
  });
});
