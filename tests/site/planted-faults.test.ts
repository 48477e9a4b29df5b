import { expect, test } from 'vitest';
import { readPage, type BuiltSite } from './built-site.ts';
import { idsUnique } from './rules/ids-unique.ts';
import { linksEndWithSlash } from './rules/links-end-with-slash.ts';
import { linksResolve } from './rules/links-resolve.ts';
import { mathematicsRendered } from './rules/mathematics-rendered.ts';
import { noLeftovers } from './rules/no-leftovers.ts';
import { nothingFromOutside } from './rules/nothing-from-outside.ts';
import { pageFrame } from './rules/page-frame.ts';
import { securityPolicy } from './rules/security-policy.ts';
import { simsDrawn } from './rules/sims-drawn.ts';
import { underBase } from './rules/under-base.ts';

/** A site of one page at /course/ and another page, beside it, to link to. */
function siteWith(body: string, head = ''): BuiltSite {
  const html = `<!doctype html><html lang="en"><head>${head}</head><body>${body}</body></html>`;
  const files = new Set(['index.html', 'there/index.html', 'picture.svg']);
  const pages = [readPage('', html), readPage('there/', '<p id="place">Here</p>')];
  return { folder: '', base: '/course/', pages, files };
}

const faults: readonly (readonly [
  what: string,
  rule: (site: BuiltSite) => readonly string[],
  sound: string,
  faulty: string,
])[] = [
  ['a dead link', linksResolve, '<a href="there/">a</a>', '<a href="/course/nowhere/">a</a>'],
  ['a dead fragment', linksResolve, '<a href="there/#place">a</a>', '<a href="there/#no">a</a>'],
  ['a dead picture', linksResolve, '<img src="picture.svg">', '<img src="lost.svg">'],
  ['a missing slash', linksEndWithSlash, '<a href="there/">a</a>', '<a href="there">a</a>'],
  [
    'a formula left as code',
    mathematicsRendered,
    '<annotation>\\frac12</annotation>',
    '<code class="language-math">x</code>',
  ],
  ['a formula left as source', mathematicsRendered, '<p>$5</p>', '<p>\\frac{1}{2}</p>'],
  [
    'a script from outside',
    nothingFromOutside,
    '<a href="https://example.org/">a</a>',
    '<script src="https://example.org/a.js"></script>',
  ],
  ['an id twice', idsUnique, '<i id="a"></i><i id="b"></i>', '<i id="a"></i><i id="a"></i>'],
  ['a lost label', idsUnique, '<i id="a"></i><b aria-labelledby="a">', '<b aria-labelledby="a">'],
  ['a lost hatch', idsUnique, '<path id="h" fill="url(#h)"/>', '<svg><path fill="url(#h)"/></svg>'],
  [
    'a sim that only a script draws',
    simsDrawn,
    '<astro-island><svg></svg></astro-island>',
    '<astro-island></astro-island>',
  ],
  ['a lost value', noLeftovers, '<p>4 mm</p>', '<p>undefined mm</p>'],
  ['an address beside the site', underBase, '<a href="/course/">a</a>', '<a href="/">a</a>'],
];

test.each(faults)('%s is found', (_, rule, sound, faulty) => {
  expect(rule(siteWith(sound))).toEqual([]);
  expect(rule(siteWith(faulty))).toHaveLength(1);
});

test('a page without its frame is found', () => {
  expect(pageFrame(siteWith('<h1>One</h1><h1>Two</h1>')).join()).toMatch(
    /no title.*no description.*2 first headings.*no caution/,
  );
});

test('a policy that lets in scripts by text is found', () => {
  const policy =
    "default-src 'self'; object-src 'none'; base-uri 'none'; form-action 'none'; script-src 'self'";
  const meta = (content: string) =>
    `<meta http-equiv="content-security-policy" content="${content}">`;
  const problems = (content: string) =>
    securityPolicy(siteWith('', meta(content))).filter((problem) => !problem.startsWith('there/'));
  expect(problems(policy)).toEqual([]);
  expect(problems(`${policy} 'unsafe-inline'`)).toHaveLength(1);
  expect(problems('')).not.toEqual([]);
});
