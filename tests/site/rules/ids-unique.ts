import { attribute, type BuiltPage, type BuiltSite } from '../built-site.ts';

const referring = [
  'for',
  'aria-labelledby',
  'aria-describedby',
  'aria-controls',
  'aria-details',
  'list',
];

/** No id stands twice on a page, and every id an attribute refers to is there. */
export function idsUnique(site: BuiltSite): readonly string[] {
  return site.pages.flatMap((page) => {
    const ids = valuesOf(page, 'id');
    const twice = ids.filter((id, i) => ids.indexOf(id) !== i);
    const referred = referring
      .flatMap((name) => valuesOf(page, name))
      .flatMap((value) => value.split(/\s+/));
    const lost = [...referred, ...paintReferences(page)].filter((id) => !ids.includes(id));
    return [
      ...new Set(twice.map((id) => `${page.route}: #${id} stands more than once`)),
      ...new Set(lost.map((id) => `${page.route}: #${id} is referred to and not there`)),
    ];
  });
}

/** Ids that drawings refer to: fill="url(#bone)", clip-path, mask, marker-end. */
function paintReferences(page: BuiltPage): readonly string[] {
  return page.elements
    .flatMap(({ attrs }) => attrs)
    .flatMap(({ value }) => /^url\(["']?#(.+?)["']?\)/.exec(value)?.[1] ?? []);
}

function valuesOf(page: BuiltPage, name: string): readonly string[] {
  return page.elements.flatMap((element) => attribute(element, name) ?? []);
}
