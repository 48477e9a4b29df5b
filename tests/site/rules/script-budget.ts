import type { BuiltSite } from '../built-site.ts';
import { scriptWeight } from '../script-weight.ts';

/** Bytes of gzipped script a page may load before a sim is scrolled to, with all its sims, and when asked for more. */
export const budget = { atRest: 90_000, allIn: 200_000, onRequest: 150_000 };

/** Every page keeps within the budget. */
export function scriptBudget(site: BuiltSite): readonly string[] {
  return site.pages.flatMap((page) => {
    const weight = scriptWeight(site, page);
    return (['atRest', 'allIn', 'onRequest'] as const)
      .filter((when) => weight[when] > budget[when])
      .map((when) => `${page.route}: ${weight[when]} bytes ${when}, allowed ${budget[when]}`);
  });
}
