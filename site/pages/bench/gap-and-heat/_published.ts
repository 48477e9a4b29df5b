import { BODY_TEMPERATURE } from '../../../../sims/benches/gap-and-heat/heat.ts';
import type { Published, PublishedHeat } from '../../../../sims/benches/gap-and-heat/published.ts';
import { factOf, sourceOf } from '../../../sources/library.ts';
import { shortReference } from '../../../sources/reference.ts';

const WHERE = 'Gap and Heat';

async function publishedOf(id: string, label: string, above = 0): Promise<Published> {
  const { value, low, high, n, source, howRead } = await factOf(id, WHERE);
  if (value === undefined || low === undefined || high === undefined || source === undefined) {
    throw new Error(`${WHERE}: the fact “${id}” has no value, no range or no source`);
  }
  const reference = shortReference(await sourceOf(source, WHERE));
  return {
    label,
    value: above + value,
    low: above + low,
    high: above + high,
    source: `${reference}${n === undefined ? '' : `, n = ${n}`}, read as an ${howRead}.`,
  };
}

/** Weights and temperatures measured on cadaver sockets; what is printed as a rise is laid on the warmth of the body. */
export async function publishedHeat(): Promise<PublishedHeat> {
  return {
    weight: await publishedOf('cement-in-sockets', 'cement put into sockets'),
    peaks: [
      await publishedOf(
        'peg-warming',
        `round pegs, as a rise over ${BODY_TEMPERATURE} °C`,
        BODY_TEMPERATURE,
      ),
      await publishedOf(
        'keel-warming',
        `round keels, as a rise over ${BODY_TEMPERATURE} °C`,
        BODY_TEMPERATURE,
      ),
      await publishedOf('bone-surface-heat', 'open surface of the bone, by infrared camera'),
    ],
  };
}
