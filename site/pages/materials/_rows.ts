import {
  materials,
  type Material,
  type MaterialName,
  type Quantity,
} from '../../../sims/mechanics/index.ts';
import { fixedText } from '../../../sims/shared/format.ts';

type Property = Exclude<keyof Material, 'what'>;

const properties: readonly { readonly key: Property; readonly name: string }[] = [
  { key: 'youngsModulus', name: 'Young’s modulus E' },
  { key: 'poissonRatio', name: 'Poisson’s ratio ν' },
  { key: 'yieldStrength', name: 'Yields when pulled at' },
  { key: 'tensileStrength', name: 'Strength, pulled' },
  { key: 'compressiveStrength', name: 'Strength, pressed' },
  { key: 'conductivity', name: 'Heat conductivity k' },
  { key: 'volumetricHeat', name: 'Heat for each volume ρc' },
];

/** How a unit of the modules is written for a reader: by how much more, and in what. */
const written: Readonly<
  Record<Quantity['unit'], { readonly times: number; readonly unit: string }>
> = {
  MPa: { times: 1, unit: 'MPa' },
  'W/(mm·K)': { times: 1000, unit: 'W/(m·K)' },
  'J/(mm³·K)': { times: 1000, unit: 'MJ/(m³·K)' },
  '': { times: 1, unit: '' },
};

export interface Row {
  readonly name: string;
  readonly value: string;
  /** '' where one source gives one number */
  readonly range: string;
  readonly unit: string;
  readonly quantity: Quantity;
}

/** What the course computes with for a material, as it is written on the page. */
export function rowsOf(name: MaterialName): readonly Row[] {
  return properties.flatMap(({ key, name: property }) => {
    const quantity = materials[name][key];
    if (quantity === undefined) return [];
    const { value, low, high } = quantity;
    const { times, unit } = written[quantity.unit];
    const text = (number: number): string => figures(number * times);
    const range = low === undefined || high === undefined ? '' : `${text(low)} to ${text(high)}`;
    return [{ name: property, value: text(value), range, unit, quantity }];
  });
}

/** As many decimals as a number of this size needs, and no more than it has. */
function figures(value: number): string {
  const most = value >= 100 ? 0 : value >= 10 ? 1 : 3;
  return fixedText(value, Math.min(most, decimalsOf(Number(value.toPrecision(3)))));
}

function decimalsOf(value: number): number {
  return String(value).split('.')[1]?.length ?? 0;
}
