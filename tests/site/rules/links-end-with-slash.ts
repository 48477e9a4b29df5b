import { addressesOf, fileAt, origin } from '../addresses.ts';
import type { BuiltSite } from '../built-site.ts';

/** A link to a page ends with the slash its address has, so that no host has to send the visitor on. */
export function linksEndWithSlash(site: BuiltSite): readonly string[] {
  return site.pages.flatMap((page) =>
    addressesOf(site, page)
      .filter(({ url }) => url.origin === origin && !url.pathname.endsWith('/'))
      .filter(({ url }) => fileAt(site, `${url.pathname}/`) !== undefined)
      .map(({ url }) => `${page.route}: ${url.pathname} lacks its closing slash`),
  );
}
