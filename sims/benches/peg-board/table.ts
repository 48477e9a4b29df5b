import type { Table } from '../../figures/csv.ts';
import { outcomeShort } from './lettering.ts';
import type { RoseRow } from './rose.ts';
import { backWords, bedWords } from './describe.ts';
import type { Design, Ground } from './settings.ts';
import { isRest, type HoldReading, type Stand } from './stand.ts';

const MICROMETRES = 1000;

/** The rose as numbers: one row for each place the load is carried to. */
export function roseTable(rose: readonly RoseRow[]): Table {
  return {
    header: ['load at (°)', 'lift-off (µm)', 'least margin', 'socket'],
    rows: rose.map(({ bearing, liftOff, margin, outcome }) => {
      const rests = outcome === 'balanced';
      return [
        bearing,
        rests ? rounded(liftOff * MICROMETRES, 2) : '',
        rests ? rounded(margin, 3) : '',
        outcomeShort[outcome],
      ];
    }),
  };
}

/** Everything that holds, where it stands and what it bears; then the rose. With a ground, the back first. For a file. */
export function boardTable(
  design: Design,
  stand: Stand,
  rose: readonly RoseRow[],
  ground?: Ground,
): Table {
  const bears = (hold: HoldReading | null | undefined): readonly (number | string)[] =>
    hold === null || hold === undefined || !isRest(stand)
      ? ['', '', hold === null || hold === undefined ? '' : rounded(hold.strength, 1), '']
      : [
          rounded(hold.pull, 2),
          rounded(hold.margin, 3),
          rounded(hold.strength, 1),
          rounded(hold.sideways, 2),
        ];
  const { pegs, keel } = design;
  const blank = ['', '', '', '', '', '', '', '', '', ''];
  return {
    header: [
      'what',
      'kind or outcome',
      'to the front (mm) or load at (°)',
      'up (mm)',
      'diameter or thickness (mm)',
      'length in plan (mm)',
      'depth (mm)',
      'pull (N)',
      'margin',
      'pull-out (N)',
      'sideways (N)',
      'lift-off (µm)',
    ],
    rows: [
      ...(ground === undefined ? [] : [groundRow(ground)]),
      ...pegs.map(({ kind, x, y, diameter, length }, i) => [
        `peg ${i + 1}`,
        kind,
        x,
        y,
        diameter,
        '',
        length,
        ...bears(stand.pegs[i]),
        '',
      ]),
      ...(keel === null
        ? []
        : [
            [
              'keel',
              keel.kind,
              keel.x,
              keel.y,
              keel.thickness,
              keel.span,
              keel.depth,
              ...bears(stand.keel),
              '',
            ],
          ]),
      [
        'socket now',
        outcomeShort[stand.outcome],
        ...blank.slice(1),
        isRest(stand) ? rounded(stand.liftOff * MICROMETRES, 2) : '',
      ],
      ...rose.map(({ bearing, liftOff, outcome, margin }) => [
        'load carried to',
        outcomeShort[outcome],
        bearing,
        ...blank.slice(0, 5),
        outcome === 'balanced' ? rounded(margin, 3) : '',
        '',
        '',
        outcome === 'balanced' ? rounded(liftOff * MICROMETRES, 2) : '',
      ]),
    ],
  };
}

/** The back itself, in words. */
function groundRow(ground: Ground): readonly (string | number)[] {
  const { width, height, modulus, layer, bed } = ground;
  const words = [
    `${height} mm by ${width} mm`,
    backWords(ground),
    bedWords[bed],
    `bone of ${modulus} MPa and ${layer} mm`,
  ];
  const blank = ['', '', '', '', '', '', '', '', '', ''];
  return ['back', words.join('; ').replaceAll('\u00a0', ' '), ...blank];
}

function rounded(value: number, digits: number): number | string {
  return Number.isFinite(value) ? Number(value.toFixed(digits)) : 'no limit';
}
