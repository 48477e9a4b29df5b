/** A step as the index lists it. */
export interface StepSummary {
  readonly title: string;
  readonly minutes: number;
}

/**
 * The steps of a deck, read from the text of its `lecture.mdx`.
 *
 * @param where names the deck in an error
 * @throws Error where a step has no title, minutes or notes, or the minutes do not add up to `planned`
 */
export function stepsOf(source: string, planned: number, where: string): readonly StepSummary[] {
  const pieces = source.split(/^<Step\b/m).slice(1);
  if (pieces.length === 0) throw new Error(`${where} has no step.`);
  const steps = pieces.map((piece, index) => {
    const tag = /^[^>]*>/.exec(piece)?.[0] ?? '';
    const title = /\btitle="([^"]+)"/.exec(tag)?.[1];
    const minutes = Number(/\bminutes=\{([\d.]+)\}/.exec(tag)?.[1]);
    const name = `${where}, step ${index + 1}`;
    if (title === undefined) throw new Error(`${name} has no title="…".`);
    if (!(minutes > 0)) throw new Error(`${name} (${title}) has no minutes={…} above 0.`);
    if (!piece.includes('<Notes slot="notes">')) {
      throw new Error(`${name} (${title}) has no <Notes slot="notes">.`);
    }
    return { title, minutes };
  });
  const total = steps.reduce((all, { minutes }) => all + minutes, 0);
  if (Math.abs(total - planned) > 1e-9) {
    throw new Error(`The steps of ${where} take ${total} minutes; its head says ${planned}.`);
  }
  return steps;
}
