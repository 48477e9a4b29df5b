import type { BuiltSite } from './built-site.ts';
import { idsUnique } from './rules/ids-unique.ts';
import { linksEndWithSlash } from './rules/links-end-with-slash.ts';
import { linksResolve } from './rules/links-resolve.ts';
import { mathematicsRendered } from './rules/mathematics-rendered.ts';
import { noLeftovers } from './rules/no-leftovers.ts';
import { nothingFromOutside } from './rules/nothing-from-outside.ts';
import { pageFrame } from './rules/page-frame.ts';
import { scriptBudget } from './rules/script-budget.ts';
import { securityPolicy } from './rules/security-policy.ts';
import { simsDrawn } from './rules/sims-drawn.ts';
import { underBase } from './rules/under-base.ts';

/** What must hold of a built site, each in words and as a function that returns what is wrong. */
export const rules: Readonly<Record<string, (site: BuiltSite) => readonly string[]>> = {
  'every link and fragment leads somewhere': linksResolve,
  'links to pages end with a slash': linksEndWithSlash,
  'every formula is set': mathematicsRendered,
  'every page has its frame: language, title, description, one heading, caution': pageFrame,
  'every page carries the security policy': securityPolicy,
  'nothing is loaded from another place': nothingFromOutside,
  'ids are unique and references to them hold': idsUnique,
  'scripts keep within the budget': scriptBudget,
  'every sim is drawn before any script runs': simsDrawn,
  'no value was lost and no text left unwritten': noLeftovers,
  'every address lies under the path of the site': underBase,
};
