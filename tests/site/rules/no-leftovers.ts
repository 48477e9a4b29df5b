import { bodyText, type BuiltSite } from '../built-site.ts';

/** What a reader sees when a value was lost on the way, a text was never written, or a path of the machine leaked. */
const leftovers: readonly RegExp[] = [
  /\bundefined\b/,
  /\bNaN\b/,
  /\[object \w+\]/,
  /\blorem ipsum\b/i,
  /\b(TODO|FIXME|TBD|XXX)\b/,
  /\blocalhost\b/,
  /\bnode_modules\b/,
  /(^|\s)\/(home|root|tmp|Users|work)\//,
];

export function noLeftovers(site: BuiltSite): readonly string[] {
  return site.pages.flatMap((page) => {
    const text = bodyText(page);
    return leftovers.flatMap((leftover) => {
      const found = leftover.exec(text);
      if (found === null) return [];
      const around = text.slice(Math.max(0, found.index - 30), found.index + 30);
      return [`${page.route}: “…${around}…”`];
    });
  });
}
