import { attribute, bodyText, type BuiltSite } from '../built-site.ts';

/** Every formula was set: none is left as a code block, as TeX source, or as an error of the renderer. */
export function mathematicsRendered(site: BuiltSite): readonly string[] {
  return site.pages.flatMap((page) => {
    const left = page.elements
      .flatMap((element) => (attribute(element, 'class') ?? '').split(/\s+/))
      .filter((name) => /^language-math$|^math-(inline|display)$|^katex-error$/.test(name));
    const source = /\$\$|\\(frac|sin|cos|tan|sqrt|text|mathrm)\b/.exec(bodyText(page));
    return [...left, ...(source ? [source[0]] : [])].map((what) => `${page.route}: ${what}`);
  });
}
