import { directionMap, face } from '../../sims/geometry/index.ts';
import { denseContact, denseMaximum, oracleFace } from '../unit/geometry/face-oracle.ts';
import { wornPear, type TestFace } from '../unit/geometry/faces.ts';
import { median, rounded, table } from './table.ts';
import { times } from './times.ts';

/** Milliseconds a map may take, so that a drag of a shape stays live, and how many times as fast as trying it should be. */
const GOAL = 8;
const TIMES = 100;

const DIRECTIONS = 72;
const TRANSLATIONS = 60;
const BALL = 24;

/** Of all places of a map the oracle is tried on one in so many, and its time multiplied. */
const ONE_IN = 48;

const bare: TestFace = { ...wornPear, labrum: undefined, defect: undefined };
const faces: readonly (readonly [name: string, input: TestFace])[] = [
  ['pear face', bare],
  ['pear face, lip', { ...bare, labrum: wornPear.labrum }],
  ['pear face, lip and cut rim', wornPear],
];

/**
 * How long one direction map takes, beside the oracle that the tests hold it against, which tries a cloud of points and
 * then finer and finer clouds about the best, at the same directions and translations; and beside the first of these
 * clouds alone, which knows a ratio to a few percent only.
 */
export function directionMapBench(): string {
  const rows = faces.map(([name, input]) => {
    const onFace = face(input);
    const options = { directions: DIRECTIONS, translations: TRANSLATIONS };
    const map = median(times(60, 40, () => void directionMap(onFace, BALL, options)));
    const dense = oracleFace(input);
    const oracle =
      ONE_IN *
      median(
        times(2, 1, () => {
          everyPlace(ONE_IN, (out, angle) => void denseContact(dense, BALL, out, angle));
        }),
      );
    const cloud = median(
      times(3, 1, () => {
        everyPlace(1, (out, angle) => {
          denseMaximum(dense, BALL, out * Math.cos(angle), out * Math.sin(angle));
        });
      }),
    );
    return [
      name,
      rounded(map, 2),
      rounded(map / GOAL, 2),
      rounded(oracle),
      rounded(oracle / map),
      rounded(oracle / map / TIMES, 2),
      rounded(cloud / map),
    ];
  });
  return table(
    `Direction map, ${DIRECTIONS} directions × ${TRANSLATIONS} translations, goal ${GOAL} ms and ${TIMES} times as fast as the oracle`,
    ['face', 'median ms', '÷ goal', 'oracle ms', '÷ map', '÷ goal', 'first cloud ÷ map'],
    rows,
  );
}

/** One in so many of the places of a map. */
function everyPlace(oneIn: number, run: (translation: number, direction: number) => void): void {
  for (let i = 0; i < DIRECTIONS * TRANSLATIONS; i += oneIn) {
    const direction = (2 * Math.PI * Math.floor(i / TRANSLATIONS)) / DIRECTIONS;
    run((14 * ((i * 7) % TRANSLATIONS)) / TRANSLATIONS, direction);
  }
}

if (import.meta.main) console.log(directionMapBench());
