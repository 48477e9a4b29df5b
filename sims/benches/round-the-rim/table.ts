import type { Table } from '../../figures/csv.ts';
import { directionMap, type DirectionRow } from '../../geometry/index.ts';
import { bearingName, bearingOf, directionOf } from './bearing.ts';
import type { SoundShape } from './sound-shape.ts';
import { DIRECTIONS, LOOKS, playOf, type Way } from './way.ts';

const DECIMALS = 5;
const EIGHT = 8;

export const tableHeader = [
  'direction (°)',
  'direction in words',
  'peak stability ratio (no unit)',
  'balance stability angle (°)',
  'play before the rim (mm)',
  'depth (mm)',
  'travel to dislocation (mm)',
] as const;

/** Eight directions to read on the page, the chosen one among them at its place. */
export function eightDirections(
  { face, ballRadius }: SoundShape,
  way: Way,
): readonly DirectionRow[] {
  const rows = directionMap(face, ballRadius, { directions: EIGHT, translations: LOOKS });
  const others = rows.filter(({ direction }) => bearingOf(direction) !== way.bearing);
  return [...others, way.here].sort((a, b) => bearingOf(a.direction) - bearingOf(b.direction));
}

/** What stands behind the name of the chosen direction. */
const CHOSEN = ' (chosen)';

/** Decimals of the columns of {@link roseTable}. */
export const roseDigits = [0, 3, 1, 2, 2, 2] as const;

/** The same as a table to read, its rows named by their direction. */
export function roseTable(sound: SoundShape, way: Way): Table {
  return {
    header: [
      'Direction',
      'Peak ratio',
      'Angle (°)',
      'Play (mm)',
      'Depth (mm)',
      'Travel to dislocation (mm)',
    ],
    rows: eightDirections(sound, way).map((row) => {
      const bearing = bearingOf(row.direction);
      const name = `${bearing}°, ${bearingName(bearing)}`;
      return [
        bearing === way.bearing ? name + CHOSEN : name,
        row.peakStabilityRatio,
        (row.balanceStabilityAngle * 180) / Math.PI,
        playOf(row),
        row.depth,
        row.dislocationTranslation,
      ];
    }),
  };
}

export const isChosen = (row: Table['rows'][number]): boolean => String(row[0]).endsWith(CHOSEN);

/** Every direction of the rose, for a file. */
export function rimTable({ face, ballRadius }: SoundShape): Table {
  const rows = directionMap(face, ballRadius, {
    directions: Array.from({ length: DIRECTIONS }, (_, i) => directionOf((360 / DIRECTIONS) * i)),
    translations: LOOKS,
  });
  return { header: tableHeader, rows: rows.map(cells) };
}

function cells(row: DirectionRow): readonly (string | number)[] {
  const bearing = bearingOf(row.direction);
  return [
    bearing,
    bearingName(bearing),
    rounded(row.peakStabilityRatio),
    rounded((row.balanceStabilityAngle * 180) / Math.PI),
    rounded(playOf(row)),
    rounded(row.depth),
    rounded(row.dislocationTranslation),
  ];
}

function rounded(value: number): number {
  return Number.isFinite(value) ? Number(value.toFixed(DECIMALS)) : value;
}
