import type { Point, View } from '../../figures/view.ts';
import { isPulled, marginText } from './lettering.ts';
import { placeLabels, type HoldLabel } from './peg-labels.ts';
import type { Design } from './settings.ts';
import type { HoldReading, Stand } from './stand.ts';

/** A margin that has room for a peg to be forgotten is not lettered for the back row. */
const FAR_FROM_SLIPPING = 8;

/** For the back row: the margin alone, at the holds that are pulled. */
export function stageLabels(
  design: Design,
  stand: Stand,
  view: View,
  size: number,
  load: Point,
): readonly HoldLabel[] {
  return placeLabels(
    design,
    (which) => lineOf(which === 'keel' ? stand.keel : stand.pegs[which]),
    view,
    size,
    [load],
  ).filter(({ lines }) => lines.length > 0);
}

function lineOf(hold: HoldReading | null | undefined): readonly string[] {
  if (hold === undefined || hold === null || !isPulled(hold)) return [];
  if (hold.isSlipping) return ['slips'];
  return hold.margin > FAR_FROM_SLIPPING ? [] : [marginText(hold)];
}
