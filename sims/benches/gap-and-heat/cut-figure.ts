import { fixed, type Point, type View } from '../../figures/view.ts';
import { thicknessOf, tipThickness } from './mantle.ts';
import type { GapSetting, HoldName } from './settings.ts';

/** A stem as the cut shows it: half its thickness at the bone’s surface and at its tip, and its length, mm. */
export interface Stem {
  readonly root: number;
  readonly tip: number;
  readonly length: number;
}

export function stemOf(setting: GapSetting, name: HoldName): Stem {
  if (name === 'pegs') {
    const radius = setting.pegDiameter / 2;
    return { root: radius, tip: radius, length: setting.pegLength };
  }
  const { keelThickness, keelHeight } = setting;
  return { root: keelThickness / 2, tip: tipThickness(keelThickness) / 2, length: keelHeight };
}

/** Outline of a stem, or of its hole with room on every side, open at the bone’s surface. */
export function stemLine({ root, tip, length }: Stem, room: number, view: View): string {
  const at = (x: number, z: number): string => `${fixed(view.x(x))} ${fixed(view.y(z))}`;
  const [wide, narrow, deep] = [root + room, tip + room, -length - room];
  // Beyond the tip the hole goes on straight.
  return [
    `M${at(-wide, 0)}`,
    `L${at(-narrow, -length)}`,
    `L${at(-narrow, deep)}`,
    `L${at(narrow, deep)}`,
    `L${at(narrow, -length)}`,
    `L${at(wide, 0)}`,
  ].join('');
}

/** Half the width of stem and room at a depth below the bone’s surface, mm. */
export function halfAt({ root, tip, length }: Stem, depth: number, room: number): number {
  const part = Math.min(1, depth / length);
  return root + (tip - root) * part + room;
}

/** Lines beside a hole that run as far into the bone as a temperature has reached, on both sides. */
export function reachLine(stem: Stem, setting: GapSetting, reach: number, view: View): string {
  const room = thicknessOf(setting) + reach;
  const side = (sign: 1 | -1): string =>
    [0, stem.length]
      .map((depth, i) => {
        const x = view.x(sign * halfAt(stem, depth, room));
        return `${i === 0 ? 'M' : 'L'}${fixed(x)} ${fixed(view.y(-depth))}`;
      })
      .join('');
  return side(-1) + side(1);
}

/** Where a thermometer feels the bone: beside the cement, two fifths down. */
export function feelsAt(setting: GapSetting, view: View): Point {
  const stem = stemOf(setting, setting.measured);
  const depth = 0.4 * stem.length;
  return { x: view.x(halfAt(stem, depth, thicknessOf(setting))), y: view.y(-depth) };
}
