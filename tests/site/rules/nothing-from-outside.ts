import { addressesInStyle, addressesOf, isLoaded, origin } from '../addresses.ts';
import { readText, type BuiltSite } from '../built-site.ts';

/** No page and no style sheet fetches anything from another place. */
export function nothingFromOutside(site: BuiltSite): readonly string[] {
  const inPages = site.pages.flatMap((page) =>
    addressesOf(site, page)
      .filter((address) => isLoaded(address) && isOutside(address.url))
      .map(({ url }) => `${page.route}: loads ${url.href}`),
  );
  const inStyles = [...site.files]
    .filter((file) => file.endsWith('.css'))
    .flatMap((file) =>
      addressesInStyle(readText(site.folder, file))
        .filter((address) => isOutside(new URL(address, origin)))
        .map((address) => `${file}: loads ${address}`),
    );
  return [...inPages, ...inStyles];
}

function isOutside(url: URL): boolean {
  return url.protocol !== 'data:' && url.origin !== origin;
}
