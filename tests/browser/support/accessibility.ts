import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/**
 * Fails where axe finds any violation of WCAG 2.2 A or AA, targets smaller than 24 px among them.
 *
 * @param within selector of the part to look at; the whole page where it is left out
 */
export async function expectNoAxeViolations(page: Page, within?: string): Promise<void> {
  const axe = new AxeBuilder({ page })
    .options({ rules: { 'target-size': { enabled: true } } })
    .withTags(tags);
  await expectNone(within === undefined ? axe : axe.include(within));
}

/** Fails where axe finds text too faint on its ground: all that a change of colour scheme can break. */
export function expectNoFaintText(page: Page): Promise<void> {
  return expectNone(new AxeBuilder({ page }).withRules(['color-contrast']));
}

async function expectNone(axe: AxeBuilder): Promise<void> {
  // One run in the page itself: a second page to gather results from frames of other origins takes as long again, and
  // no page has such frames.
  const { violations } = await axe.setLegacyMode().analyze();
  const found = violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id} at ${target.join(' ')}: ${failureSummary}`),
  );
  expect(found).toEqual([]);
}
