import { rimContactTranslation, stabilityRatioAt } from '../../geometry/index.ts';
import { elasticStabilityCurve, type ElasticStabilityRow } from '../../mechanics/index.ts';
import { layerOf, type LayerSetting } from '../two-curves/layer.ts';
import type { Pair } from '../two-curves/pair.ts';

/** What a ball meets on its way to the rim, on the elastic layer and in a rigid socket. */
export interface PrintRow extends ElasticStabilityRow {
  readonly rigidRatio: number;
}

/** Rows before first rim contact, about it, and after; about it the curves bend. */
const BEFORE = 12;
const ABOUT = 22;
const AFTER = 16;
const REACH = 2;

/** Rows from the middle to the rim, closer together where the curves bend, first rim contact among them. */
export function printRows(pair: Pair, layer: LayerSetting): readonly PrintRow[] {
  return rowsAt(pair, layer, translationsOf(pair));
}

/** Evenly spaced rows, to read or to compute with. */
export function evenRows(pair: Pair, layer: LayerSetting, count: number): readonly PrintRow[] {
  const reach = pair.socket.width / 2;
  const places = Array.from({ length: count }, (_, i) => (reach * i) / (count - 1));
  return rowsAt(pair, layer, places);
}

function rowsAt(
  { socket, ballRadius }: Pair,
  layer: LayerSetting,
  translations: readonly number[],
): readonly PrintRow[] {
  const rows = elasticStabilityCurve({
    socket,
    ballRadius,
    ...layerOf(layer),
    compressiveLoad: layer.load,
    translations,
  });
  return rows.map((row) => ({
    ...row,
    rigidRatio: stabilityRatioAt(socket, ballRadius, row.translation),
  }));
}

function translationsOf({ socket, ballRadius }: Pair): readonly number[] {
  const reach = socket.width / 2;
  const rim = rimContactTranslation(socket, ballRadius);
  const from = Math.max(0, rim - REACH);
  const to = Math.min(reach, rim + REACH);
  const part = (start: number, end: number, count: number): readonly number[] =>
    Array.from({ length: count }, (_, i) => start + ((end - start) * i) / count);
  return [
    ...(from > 0 ? part(0, from, BEFORE) : []),
    ...(rim > from ? part(from, rim, ABOUT / 2) : []),
    ...part(rim, to, ABOUT / 2),
    ...(to < reach ? part(to, reach, AFTER) : []),
    reach,
  ];
}
