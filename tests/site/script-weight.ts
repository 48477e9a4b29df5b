import { init, parse } from 'es-module-lexer';
import { posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import { addressesOf, fileAt } from './addresses.ts';
import { attribute, readText, textOf, type BuiltPage, type BuiltSite } from './built-site.ts';

await init;

/** Bytes of script, each file gzipped as a host sends it. */
export interface ScriptWeight {
  /**
   * What loads with the page itself. In Study, where a reader scrolls to the sims, that takes in every sim that does not
   * wait for it; elsewhere the sim is what the page is for, and counts below.
   */
  readonly atRest: number;
  /** With every sim of the page, and whatever they may load later by themselves. */
  readonly allIn: number;
  /** What loads only once a visitor asks for it by a button: {@link onRequestFiles}, and what these import. */
  readonly onRequest: number;
}

/** Names, before their hash, of the files that nothing loads but a visitor's request. */
export const onRequestFiles: readonly string[] = ['solid-scene'];

/** What scripts a page loads weigh. */
export function scriptWeight(site: BuiltSite, page: BuiltPage): ScriptWeight {
  const inline = page.elements
    .filter((element) => element.tagName === 'script' && !attribute(element, 'src'))
    .reduce((sum, element) => sum + gzipped(scriptText(element)), 0);
  const early = entriesOf(site, page, false);
  const late = entriesOf(site, page, true);
  const all = reached(site, [...early, ...late], 'asked for');
  const unasked = reached(site, [...early, ...late], 'by itself');
  return {
    atRest: inline + sizeOf(site, reached(site, early, 'at once')),
    allIn: inline + sizeOf(site, unasked),
    onRequest: sizeOf(site, new Set([...all].filter((file) => !unasked.has(file)))),
  };
}

/** Script files a page names, either those that load with it or those of its sims. */
function entriesOf(site: BuiltSite, page: BuiltPage, areLate: boolean): readonly string[] {
  return addressesOf(site, page)
    .filter(({ element, attribute: name }) => {
      if (element.tagName === 'astro-island') {
        const waits = attribute(element, 'client') === 'visible';
        return areLate === (waits || !page.route.startsWith('study/')) && name !== 'href';
      }
      const isPreload = element.tagName === 'link' && attribute(element, 'rel') === 'modulepreload';
      return !areLate && (isPreload || (element.tagName === 'script' && name === 'src'));
    })
    .flatMap(({ url }) => fileAt(site, url.pathname) ?? []);
}

/** Every file that the given ones import, directly or not, and they themselves. */
function reached(site: BuiltSite, entries: readonly string[], how: Loading): ReadonlySet<string> {
  const found = new Set<string>();
  const visit = (file: string): void => {
    if (found.has(file) || !site.files.has(file)) return;
    found.add(file);
    importsOf(site, file, how).forEach(visit);
  };
  entries.forEach(visit);
  return found;
}

function isOnRequest(file: string): boolean {
  return onRequestFiles.includes(posix.basename(file).split('.')[0] ?? '');
}

/** Which imports are followed: the static ones; those made later as well; those a visitor asks for on top. */
type Loading = 'at once' | 'by itself' | 'asked for';

function importsOf(site: BuiltSite, file: string, how: Loading): readonly string[] {
  const [imports] = parse(readText(site.folder, file));
  return imports.flatMap(({ n, d }) => {
    if (n?.startsWith('.') !== true) return [];
    const target = posix.join(posix.dirname(file), n);
    const isFollowed =
      d === -1 ||
      (d >= 0 && (how === 'asked for' || (how === 'by itself' && !isOnRequest(target))));
    return isFollowed ? [target] : [];
  });
}

function sizeOf(site: BuiltSite, files: ReadonlySet<string>): number {
  return [...files].reduce((sum, file) => sum + gzipped(readText(site.folder, file)), 0);
}

export function gzipped(text: string): number {
  return text === '' ? 0 : gzipSync(text).length;
}

function scriptText(element: Parameters<typeof textOf>[0]): string {
  return 'childNodes' in element ? element.childNodes.map(textOf).join('') : '';
}
