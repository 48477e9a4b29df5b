import { stabilityRatioAt } from '../../geometry/index.ts';
import {
  contactPressure,
  hertzContact,
  type CarriedContact,
  type HertzContact,
} from '../../mechanics/index.ts';
import { mm, newtons } from '../../shared/format.ts';
import { layerOf, layerRanges, type LayerSetting } from '../two-curves/layer.ts';
import { pairFrom, type Pair } from '../two-curves/pair.ts';
import { fieldOf, type PressureField } from './field.ts';
import { pairSettingOf, type PrintSetting } from './setting.ts';

/** Everything the bench shows of one place of the ball. */
export interface Print {
  readonly pair: Pair;
  /** As asked for, but for a load the layer cannot carry. */
  readonly layer: LayerSetting;
  readonly translation: number;
  readonly contact: CarriedContact;
  readonly field: PressureField;
  /** The closed forms for the force along the common normal. */
  readonly closed: HertzContact;
  /** Stability ratio of the elastic layer, and of a rigid socket, at this place. */
  readonly elasticRatio: number;
  readonly rigidRatio: number;
  /** Why something is not as it was asked for; '' where all is. */
  readonly message: string;
}

/** A load so much less than the greatest has room to be solved for. */
const HELD = 0.999;

/** The pressure under the ball; what cannot be had is brought to the nearest that can, and `message` says so. */
export function printOf(setting: PrintSetting): Print {
  const pair = pairFrom(pairSettingOf(setting));
  const { socket, ballRadius } = pair;
  const reach = socket.width / 2;
  const translation = Math.max(0, Math.min(reach, setting.translation));
  const { layer, contact } = carriedBy(pair, setting, translation);
  const closed = hertzContact({
    ballRadius,
    socketRadius: socket.curvatureRadius,
    ...layerOf(layer),
    load: Math.hypot(layer.load, contact.sideForce),
  });
  return {
    pair,
    layer,
    translation,
    contact,
    field: fieldOf(pair, layer, contact),
    closed,
    elasticRatio: contact.sideForce / layer.load,
    rigidRatio: stabilityRatioAt(socket, ballRadius, translation),
    message: [
      pair.message,
      setting.translation > reach + 1e-3
        ? `The ball leaves this socket at ${mm(reach, 1)}: it stands there.`
        : '',
      layer.load < setting.load
        ? `Under more than ${newtons(layer.load)} the ball would go right through this plastic: the load is set to that.`
        : '',
    ]
      .filter((sentence) => sentence !== '')
      .join(' '),
  };
}

/** The contact under the load asked for, or under the greatest on the control's steps that the layer carries. */
function carriedBy(
  { socket, ballRadius }: Pair,
  setting: LayerSetting,
  translation: number,
): { readonly layer: LayerSetting; readonly contact: CarriedContact } {
  const { load, thickness, modulus, poisson } = setting;
  const question = { socket, ballRadius, translation, ...layerOf(setting) };
  const under = (compressiveLoad: number) => contactPressure({ ...question, compressiveLoad });
  const asked = under(load);
  if (asked.state !== 'too much for the layer') {
    return { layer: { load, thickness, modulus, poisson }, contact: asked };
  }
  const { step } = layerRanges.load;
  const most = HELD * asked.greatestLoad;
  const carried = most > step ? Math.floor(most / step) * step : most;
  const contact = under(carried);
  if (contact.state === 'too much for the layer') {
    throw new RangeError(`load is ${carried}; allowed: up to ${asked.greatestLoad} N`);
  }
  return { layer: { load: carried, thickness, modulus, poisson }, contact };
}
