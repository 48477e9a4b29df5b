import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { parse, type DefaultTreeAdapterTypes } from 'parse5';

export type Element = DefaultTreeAdapterTypes.Element;
type Node = DefaultTreeAdapterTypes.Node;

/** One page of a built site. */
export interface BuiltPage {
  /** Its address below the site's own, as `study/01-ball-and-cup/`; `404.html` for the page of that name. */
  readonly route: string;
  readonly html: string;
  readonly elements: readonly Element[];
}

/** A built site, read whole. */
export interface BuiltSite {
  readonly folder: string;
  /** The path it is served under, with a slash at either end. */
  readonly base: string;
  readonly pages: readonly BuiltPage[];
  /** Every file, from the site's top, with /. */
  readonly files: ReadonlySet<string>;
}

export function readSite(folder: string, base: string): BuiltSite {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
  const pages = files
    .filter((file) => file.endsWith('.html'))
    .map((file) => readPage(file.replace(/index\.html$/, ''), readText(folder, file)));
  return { folder, base, pages, files: new Set(files) };
}

export function readPage(route: string, html: string): BuiltPage {
  return { route, html, elements: elementsBelow(parse(html)) };
}

export function readText(folder: string, file: string): string {
  return readFileSync(join(folder, file), 'utf8');
}

/** Every element below a node, in the order of the document, those in a `<template>` too. */
export function elementsBelow(node: Node): readonly Element[] {
  const inTemplate = 'content' in node ? [node.content] : [];
  const children = 'childNodes' in node ? node.childNodes : [];
  return [...children, ...inTemplate].flatMap((child) =>
    'tagName' in child ? [child, ...elementsBelow(child)] : elementsBelow(child),
  );
}

export function attribute(element: Element, name: string): string | undefined {
  return element.attrs.find((attr) => attr.name === name)?.value;
}

/** The text in a node, without what is never shown: scripts, styles, and the sources KaTeX keeps beside formulas. */
export function textOf(node: Node): string {
  if ('value' in node) return node.value;
  if (!('childNodes' in node) || /^(script|style|annotation)$/.test(node.nodeName)) return '';
  return node.childNodes.map(textOf).join('');
}

/** The text a reader of the page is given. */
export function bodyText(page: BuiltPage): string {
  const body = page.elements.find(({ tagName }) => tagName === 'body');
  return body === undefined ? '' : textOf(body).replace(/\s+/g, ' ');
}
