import { cementVolume, type CementDesign } from '../../mechanics/index.ts';
import { mm } from '../../shared/format.ts';
import { ranges, type GapSetting, type HoldName } from './settings.ts';

/** Pegs stand on a ring of this radius, mm; one alone in its middle. Teaching value. */
const RING = 8.5;
/** A keel narrows to these shares of its length and thickness at the tip. Teaching values. */
const TAPER = { length: 0.7, thickness: 0.75 } as const;
/** Of the polymer with contrast powder, g/mm³. Teaching value. */
export const DENSITY = 1.19e-3;

/** The cement of one design, mm³. */
export interface Mantle {
  readonly cement: number;
  /** What there would be without the fit error */
  readonly planned: number;
}

/** Both designs with the same gap and the same fit error. */
export interface Mantles {
  /** As asked for, but for holes that would meet. */
  readonly setting: GapSetting;
  /** Why something is not as asked for; '' where all is. */
  readonly message: string;
  readonly pegs: Mantle;
  readonly keel: Mantle;
}

/** Thickness of the cement on every side, mm. */
export const thicknessOf = ({ gap, fitError }: GapSetting): number => gap + fitError;

export function mantlesOf(asked: GapSetting): Mantles {
  const { setting, message } = apart(asked);
  const mantle = (name: HoldName): Mantle => {
    const total = (fitError: number): number =>
      cementVolume({ ...designOf(setting, name), fitError }).total;
    return { cement: total(setting.fitError), planned: total(0) };
  };
  return { setting, message, pegs: mantle('pegs'), keel: mantle('keel') };
}

export function designOf(setting: GapSetting, name: HoldName): CementDesign {
  const { gap, pegCount, pegDiameter, pegLength, keelLength, keelThickness, keelHeight } = setting;
  if (name === 'keel') {
    return {
      keel: {
        x: 0,
        y: 0,
        length: keelLength,
        thickness: keelThickness,
        height: keelHeight,
        tipLength: TAPER.length * keelLength,
        tipThickness: tipThickness(keelThickness),
        gap,
      },
    };
  }
  return {
    pegs: Array.from({ length: pegCount }, (_, i) => {
      const turn = (2 * Math.PI * i) / pegCount;
      const ring = pegCount === 1 ? 0 : RING;
      const place = { x: ring * Math.sin(turn), y: ring * Math.cos(turn) };
      return { ...place, diameter: pegDiameter, length: pegLength, tip: 'flat', gap };
    }),
  };
}

export const tipThickness = (thickness: number): number => TAPER.thickness * thickness;

/** Brings fit error and gap down to where the holes of neighbours do not meet. */
function apart(asked: GapSetting): { readonly setting: GapSetting; readonly message: string } {
  const { pegCount, pegDiameter, gap, fitError } = asked;
  const between = pegCount === 1 ? Infinity : 2 * RING * Math.sin(Math.PI / pegCount);
  const tenths = Math.floor(5 * (between - pegDiameter) + 1e-6);
  const most = Math.max(ranges.gap.min, tenths / 10);
  if (gap + fitError <= most + 1e-9) return { setting: asked, message: '' };
  const kept = Math.min(gap, most);
  const left = Math.max(0, Number((most - kept).toFixed(4)));
  return {
    setting: { ...asked, gap: kept, fitError: left },
    message:
      `${pegCount} pegs of ${mm(pegDiameter, 1)} leave room for ${mm(most, 1)} of cement before their holes meet: ` +
      `the gap is ${mm(kept, 1)}, the fit error ${mm(left, 1)}.`,
  };
}
