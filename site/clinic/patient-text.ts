import { parse, type DefaultTreeAdapterTypes } from 'parse5';

type Node = DefaultTreeAdapterTypes.Node;
type Element = DefaultTreeAdapterTypes.Element;

/**
 * What a patient reads or hears in a page, paragraph by paragraph: every paragraph and list item inside an element
 * marked `data-patient`, and the words that stand for its pictures. Headings, buttons and lettering are left out, as
 * the reading grades ask.
 *
 * @param html a page, or part of one
 */
export function patientBlocks(html: string): readonly string[] {
  return markedBelow(parse(html)).flatMap(blocksIn);
}

function markedBelow(node: Node): readonly Element[] {
  return elementsIn(node).flatMap((child) =>
    attribute(child, 'data-patient') === undefined ? markedBelow(child) : [child],
  );
}

function blocksIn(element: Element): readonly string[] {
  if (attribute(element, 'data-uncounted') !== undefined) return [];
  if (attribute(element, 'role') === 'img') return present(attribute(element, 'aria-label') ?? '');
  const inner = elementsIn(element).flatMap(blocksIn);
  const isBlock = element.tagName === 'p' || element.tagName === 'li';
  return isBlock && inner.length === 0 ? present(textOf(element)) : inner;
}

function present(text: string): readonly string[] {
  const tidy = text.replace(/\s+/g, ' ').trim();
  return tidy === '' ? [] : [tidy];
}

function elementsIn(node: Node): readonly Element[] {
  if (!('childNodes' in node)) return [];
  return node.childNodes.filter((child): child is Element => 'tagName' in child);
}

function textOf(node: Node): string {
  if ('value' in node) return node.value;
  return 'childNodes' in node ? node.childNodes.map(textOf).join('') : '';
}

function attribute(element: Element, name: string): string | undefined {
  return element.attrs.find((attr) => attr.name === name)?.value;
}
