import { addressesOf, fileAt, origin, type NamedAddress } from '../addresses.ts';
import { attribute, type BuiltSite } from '../built-site.ts';

/** Every address inside the site leads to a file of it, and every fragment to an element of that file. */
export function linksResolve(site: BuiltSite): readonly string[] {
  const ids = new Map(site.pages.map(({ route, elements }) => [route, idsOf(elements)]));
  return site.pages.flatMap((page) =>
    addressesOf(site, page)
      .filter(({ url }) => url.origin === origin)
      .flatMap((address) => problemOf(site, ids, address))
      .map((problem) => `${page.route}: ${problem}`),
  );
}

function idsOf(elements: BuiltSite['pages'][number]['elements']): ReadonlySet<string> {
  return new Set(elements.flatMap((element) => attribute(element, 'id') ?? []));
}

function problemOf(
  site: BuiltSite,
  ids: ReadonlyMap<string, ReadonlySet<string>>,
  { url }: NamedAddress,
): readonly string[] {
  const file = fileAt(site, url.pathname);
  if (file === undefined) return [`${url.pathname} leads nowhere`];
  const fragment = decodeURIComponent(url.hash.slice(1));
  const there = ids.get(file.replace(/index\.html$/, ''));
  // A fragment with = is a setting of a sim, not a place on the page.
  if (fragment === '' || fragment.includes('=') || there === undefined) return [];
  return there.has(fragment) ? [] : [`${url.pathname} has no #${fragment}`];
}
