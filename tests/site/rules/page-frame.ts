import { attribute, bodyText, textOf, type BuiltPage, type BuiltSite } from '../built-site.ts';

/** Every page has a language, a title of its own, a description, one first heading, and the caution. */
export function pageFrame(site: BuiltSite): readonly string[] {
  const titles = site.pages.map(titleOf);
  return site.pages.flatMap((page, i) => {
    const title = titles[i] ?? '';
    const headings = page.elements.filter(({ tagName }) => tagName === 'h1');
    const checks: readonly (readonly [boolean, string])[] = [
      [languageOf(page) === 'en', 'has no language'],
      [title.trim() !== '', 'has no title'],
      [titles.indexOf(title) === i, `has the title of another page, “${title}”`],
      [(metaOf(page, 'description') ?? '').trim() !== '', 'has no description'],
      [
        (metaOf(page, 'viewport') ?? '').includes('width=device-width'),
        'has no viewport for a phone',
      ],
      [headings.length === 1, `has ${headings.length} first headings`],
      [headings.every((heading) => textOf(heading).trim() !== ''), 'has an empty first heading'],
      [/for education only/i.test(bodyText(page)), 'has no caution'],
    ];
    return checks.flatMap(([holds, what]) => (holds ? [] : [`${page.route}: ${what}`]));
  });
}

function languageOf(page: BuiltPage): string | undefined {
  const html = page.elements.find(({ tagName }) => tagName === 'html');
  return html && attribute(html, 'lang');
}

function titleOf(page: BuiltPage): string {
  const title = page.elements.find(
    ({ tagName, parentNode }) => tagName === 'title' && parentNode?.nodeName === 'head',
  );
  return title ? textOf(title) : '';
}

function metaOf(page: BuiltPage, name: string): string | undefined {
  const meta = page.elements.find((element) => attribute(element, 'name') === name);
  return meta && attribute(meta, 'content');
}
