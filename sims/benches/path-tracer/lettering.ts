import { fixedText, mm } from '../../shared/format.ts';
import type { Drawn } from './setting.ts';

export const tenths = (value: number): string => mm(value, 1);
export const hundredths = (value: number): string => mm(value, 2);

/** A setting in one line: "ball 48.0 mm, width 28.0 mm, depth 4.0 mm". */
export function settingLine({ setting: { shapeBy }, cup }: Drawn): string {
  const { shape, socket, ballRadius } = cup;
  return `ball ${tenths(ballRadius * 2)}, width ${tenths(socket.width)}, ${shapeBy} ${tenths(shape[shapeBy])}`;
}

/** The same for a picture's legend, where room is short: one unit for all. */
export function legendLine({ setting: { shapeBy }, cup }: Drawn): string {
  const { shape, socket, ballRadius } = cup;
  const sizes = `ball ${fixedText(ballRadius * 2, 1)}, width ${fixedText(socket.width, 1)}`;
  return `${sizes}, ${shapeBy} ${tenths(shape[shapeBy])}`;
}
