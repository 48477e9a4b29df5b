/** Ids of the sources and facts a page's text shows through `<Cite id="…" />` and `<Fact id="…" />`, each once. */
export function idsIn(text: string): {
  readonly cites: readonly string[];
  readonly facts: readonly string[];
} {
  const find = (component: string): readonly string[] => [
    ...new Set(
      [...text.matchAll(new RegExp(`<${component}\\b[^>]*?\\bid=["']([^"']+)["']`, 'g'))].flatMap(
        ([, id]) => id ?? [],
      ),
    ),
  ];
  return { cites: find('Cite'), facts: find('Fact') };
}
