import { expect, test } from 'vitest';
import sources from '../../../lessons/sources.json' with { type: 'json' };
import { boneSource } from '../../../sims/benches/shared/bone-words.ts';
import { boneNames, bones } from '../../../sims/mechanics/index.ts';

test.each(boneNames)('%s says its modulus and where that comes from', (name) => {
  const { modulus } = bones[name];
  const words = boneSource(name).replaceAll('\u00a0', ' ');
  expect(words).toMatch(/^[A-Z]/);
  expect(words).toContain(`${modulus.value} `);
  expect(words).toContain(modulus.howRead === 'abstract' ? 'read as an abstract' : modulus.howRead);
  const source = sources.find(({ id }) => id === modulus.source);
  if (source === undefined) throw new Error(`no source ${modulus.source}`);
  // A bench may not know of the lessons: the names it gives to sources are held to be theirs.
  const [first] = source.author as readonly { readonly family?: string }[];
  if (first?.family !== undefined) expect(words).toContain(first.family);
  else expect(source.title).toContain(/ASTM (\w+)/.exec(words)?.[1] ?? 'no name');
  const year = source.issued?.['date-parts'][0]?.[0];
  if (year !== undefined) expect(words).toContain(String(year));
});
