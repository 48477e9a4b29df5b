import { leastThinLayer, type CarriedContact, type HertzContact } from '../../mechanics/index.ts';
import type { LayerSetting } from '../two-curves/layer.ts';
import { megapascals } from '../two-curves/lettering.ts';

const MAP_IS_THIN = 'The layer is thin against the patch, and the map may be believed.';
const MAP_IS_ROUGH =
  'The map takes the layer as thin, which against this patch it is not: read from it where the ball presses, and its peak only roughly.';

/**
 * Which of the closed forms may be believed where the ball stands, and how far the map, in a few sentences. The forms know
 * of no rim, which the contact's state tells.
 */
export function beliefWords(
  contact: CarriedContact,
  { hertz, thinLayer, domain }: HertzContact,
  layer: LayerSetting,
): string {
  const map = isThin(contact, layer) ? MAP_IS_THIN : MAP_IS_ROUGH;
  if (contact.state === 'on the rim edge') {
    return (
      'The edge of the rim carries the ball. Neither formula knows of a rim, and the map tells a trend here, not a stress: ' +
      'real plastic gives way at its edge.'
    );
  }
  if (contact.state === 'cut by the rim') {
    return `The rim cuts the patch, and neither formula knows of a rim. ${map}`;
  }
  if (hertz === null || thinLayer === null || !domain.isSmallPatch) return `${domain.words} ${map}`;
  if (domain.believe === 'thin layer') return `${domain.words} The map is such a layer.`;
  if (domain.believe === 'Hertz') {
    return `${domain.words} Believe a peak of ${megapascals(hertz.peakPressure)}, not the map’s ${megapascals(contact.peakPressure)}.`;
  }
  const [low, high] = sorted(hertz.peakPressure, thinLayer.peakPressure);
  return (
    `${domain.words} The peak in a real layer lies between the two, ${megapascals(low)} and ${megapascals(high)}; the map ` +
    `is the thin layer, and stands at its end of that.`
  );
}

/** The two pressures (MPa) the peak in a real layer lies between; null where that cannot be said, or one form holds. */
export function realPeak(
  contact: CarriedContact,
  { hertz, thinLayer, domain }: HertzContact,
): readonly [low: number, high: number] | null {
  if (contact.state !== 'on the face' || domain.believe !== 'neither' || !domain.isSmallPatch) {
    return null;
  }
  return hertz === null || thinLayer === null
    ? null
    : sorted(hertz.peakPressure, thinLayer.peakPressure);
}

/** The two closed forms in numbers; '' where they have none, or where the rim leaves them none. */
export function closedFormWords(
  contact: CarriedContact,
  { hertz, thinLayer }: HertzContact,
): string {
  if (contact.state !== 'on the face' || hertz === null || thinLayer === null) return '';
  return (
    `Hertz: ${megapascals(hertz.peakPressure)} over ${areaText(hertz.contactRadius)}. ` +
    `Thin layer: ${megapascals(thinLayer.peakPressure)} over ${areaText(thinLayer.contactRadius)}. ` +
    `The map: ${megapascals(contact.peakPressure)} over ${contact.contactArea.toFixed(0)}\u00a0mm².`
  );
}

/** Whether the patch, as a disc of its area, is so wide that its plastic hardly escapes sideways. */
function isThin({ contactArea }: CarriedContact, { thickness, poisson }: LayerSetting): boolean {
  return Math.sqrt(contactArea / Math.PI) / thickness >= leastThinLayer(poisson);
}

function areaText(radius: number): string {
  return `${(Math.PI * radius ** 2).toFixed(0)}\u00a0mm²`;
}

function sorted(one: number, two: number): readonly [low: number, high: number] {
  return [Math.min(one, two), Math.max(one, two)];
}
