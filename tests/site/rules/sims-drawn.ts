import { attribute, elementsBelow, textOf, type BuiltSite } from '../built-site.ts';

/** Every island of script stands in the page as it will look, so that a reader without scripts loses no picture. */
export function simsDrawn(site: BuiltSite): readonly string[] {
  return site.pages.flatMap((page) =>
    page.elements
      .filter(({ tagName }) => tagName === 'astro-island')
      .filter((island) => {
        const hasDrawing = elementsBelow(island).some(({ tagName }) => tagName === 'svg');
        return !hasDrawing && textOf(island).trim() === '';
      })
      .map((island) => `${page.route}: ${attribute(island, 'component-url') ?? '?'} is empty`),
  );
}
