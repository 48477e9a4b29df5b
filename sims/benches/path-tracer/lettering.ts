import type { CupSetting } from '../shared/cup-setting.ts';
import type { Drawn } from './setting.ts';

export const tenths = (mm: number): string => `${plain(mm, 1)} mm`;
export const hundredths = (mm: number): string => `${plain(mm, 2)} mm`;
export const degrees = (radians: number): string => `${plain((radians * 180) / Math.PI, 1)}°`;

export function ratio(value: number): string {
  return Number.isFinite(value) ? plain(value, 2) : 'no limit';
}

/** A setting in one line: "ball 48.0 mm, width 28.0 mm, depth 4.0 mm". */
export function settingLine({ setting, cup }: Drawn): string {
  return `ball ${tenths(cup.ballRadius * 2)}, width ${tenths(cup.socket.width)}, ${shapeWords(setting, cup.shape)}`;
}

/** The same for a picture's legend, where room is short: one unit for all. */
export function legendLine({ setting, cup }: Drawn): string {
  const { shapeBy } = setting;
  const sizes = `ball ${plain(cup.ballRadius * 2, 1)}, width ${plain(cup.socket.width, 1)}`;
  return `${sizes}, ${shapeBy} ${tenths(cup.shape[shapeBy])}`;
}

function shapeWords({ shapeBy }: CupSetting, shape: Drawn['cup']['shape']): string {
  return `${shapeBy} ${tenths(shape[shapeBy])}`;
}

/** A number with its decimals, a real minus sign, and no negative nothing. */
function plain(value: number, digits: number): string {
  const text = value.toFixed(digits);
  return /^-0\.?0*$/.test(text) ? text.slice(1) : text.replace('-', '−');
}
