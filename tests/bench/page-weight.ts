import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { basePath, builtSite } from '../../site/scripts/project.mjs';
import { addressesInStyle, addressesOf, fileAt, isLoaded, origin } from '../site/addresses.ts';
import { readSite, readText, type BuiltPage, type BuiltSite } from '../site/built-site.ts';
import { budget } from '../site/rules/script-budget.ts';
import { scriptWeight } from '../site/script-weight.ts';
import { rounded, table } from './table.ts';

/** Bytes of script and of everything each page loads, gzipped where that helps, against the budget. */
export function pageWeights(): string {
  const site = readSite(builtSite(), basePath());
  const rows = site.pages.map((page) => {
    const { atRest, allIn } = scriptWeight(site, page);
    return [
      `/${page.route}`,
      kilobytes(atRest),
      rounded(atRest / budget.atRest, 2),
      kilobytes(allIn),
      rounded(allIn / budget.allIn, 2),
      kilobytes(otherBytes(site, page) + allIn),
    ];
  });
  return table(
    `Weight of each page, kB gzipped (script budget ${budget.atRest / 1000} at rest, ${budget.allIn / 1000} all in)`,
    ['page', 'script', '÷ budget', 'with sims', '÷ budget', 'all files'],
    rows,
  );
}

/** The page itself, its style sheets, pictures, and the fonts it asks for at once. */
function otherBytes(site: BuiltSite, page: BuiltPage): number {
  const named = addressesOf(site, page)
    .filter((address) => isLoaded(address) && address.url.origin === origin)
    .flatMap(({ url }) => fileAt(site, url.pathname) ?? [])
    .filter((file) => !file.endsWith('.js') && !file.endsWith('.html'));
  const imported = named
    .filter((file) => file.endsWith('.css'))
    .flatMap((file) => importedStyles(site, file));
  const files = new Set([...named, ...imported]);
  return [...files].reduce((sum, file) => sum + sent(site, file), sent(site, fileOf(page)));
}

function importedStyles(site: BuiltSite, file: string): readonly string[] {
  const address = new URL(site.base + file, origin);
  return addressesInStyle(readText(site.folder, file))
    .filter((name) => name.endsWith('.css'))
    .flatMap((name) => fileAt(site, new URL(name, address).pathname) ?? []);
}

function fileOf({ route }: BuiltPage): string {
  return route.endsWith('.html') ? route : `${route}index.html`;
}

/** Bytes a host sends: fonts and pixel pictures are packed already. */
function sent(site: BuiltSite, file: string): number {
  const bytes = readFileSync(join(site.folder, file));
  return /\.(woff2|png|webp|avif|jpg)$/.test(file) ? bytes.length : gzipSync(bytes).length;
}

function kilobytes(bytes: number): number {
  return rounded(bytes / 1000, 1);
}
