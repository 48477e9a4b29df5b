import { addressesInStyle, addressesOf, origin } from '../addresses.ts';
import { readText, type BuiltSite } from '../built-site.ts';

/** Every address inside the site, in pages and style sheets, lies under the path it is published at. */
export function underBase(site: BuiltSite): readonly string[] {
  const inPages = site.pages.flatMap((page) =>
    addressesOf(site, page)
      .filter(({ url }) => url.origin === origin && !url.pathname.startsWith(site.base))
      .map(({ url }) => `${page.route}: ${url.pathname}`),
  );
  const inStyles = [...site.files]
    .filter((file) => file.endsWith('.css'))
    .flatMap((file) =>
      addressesInStyle(readText(site.folder, file))
        .filter((address) => address.startsWith('/') && !address.startsWith(site.base))
        .map((address) => `${file}: ${address}`),
    );
  return [...inPages, ...inStyles];
}
