import { attribute, type BuiltPage, type BuiltSite, type Element } from './built-site.ts';

/** An address a page names, with the place that names it. */
export interface NamedAddress {
  readonly page: BuiltPage;
  readonly element: Element;
  readonly attribute: string;
  readonly url: URL;
}

/** Stands for wherever the site is published. */
export const origin = 'https://held-in-the-cup.invalid';

const addressAttributes = [
  'href',
  'src',
  'srcset',
  'poster',
  'data',
  'action',
  'formaction',
  'xlink:href',
  'component-url',
  'renderer-url',
  'before-hydration-url',
];

/** Every address in a page's markup, made absolute. */
export function addressesOf(site: BuiltSite, page: BuiltPage): readonly NamedAddress[] {
  const pageUrl = new URL(site.base + page.route, origin);
  return page.elements.flatMap((element) =>
    addressAttributes.flatMap((name) => {
      const value = attribute(element, name);
      if (value === undefined) return [];
      const written = name === 'srcset' ? value.split(',').map(firstWord) : [value];
      return written.map((address) => ({
        page,
        element,
        attribute: name,
        url: new URL(address, pageUrl),
      }));
    }),
  );
}

function firstWord(candidate: string): string {
  return candidate.trim().split(/\s/)[0] ?? '';
}

/** Whether the browser fetches an address by itself, as against a link that a visitor may follow. */
export function isLoaded({ element, attribute: name }: NamedAddress): boolean {
  if (element.tagName === 'a' || element.tagName === 'area') return false;
  const isLink = element.tagName === 'link' && name === 'href';
  return !isLink || !/^(canonical|author|license|help)$/.test(attribute(element, 'rel') ?? '');
}

/** The file a path leads to in a built site, or undefined. */
export function fileAt(site: BuiltSite, pathname: string): string | undefined {
  if (!pathname.startsWith(site.base)) return undefined;
  const path = decodeURIComponent(pathname.slice(site.base.length));
  return [path, `${path}index.html`].find((file) => site.files.has(file));
}

/** Addresses in a style sheet: those of `url()` and `@import`, as written. */
export function addressesInStyle(css: string): readonly string[] {
  const named = /url\(\s*(["']?)(.*?)\1\s*\)|@import\s+(["'])(.*?)\3/g;
  return [...css.matchAll(named)].map((match) => match[2] ?? match[4] ?? '');
}
