import type { DirectionRow } from '../../geometry/index.ts';
import { degrees, mm, ratio } from '../../shared/format.ts';
import { bearingName, bearingOf, bearingText, wrapped } from './bearing.ts';
import { shapeLine, tenths } from './lettering.ts';
import type { MarkedRatio } from './published.ts';
import type { SoundShape } from './sound-shape.ts';
import { playOf, type BallPlace, type RimMap, type Way } from './way.ts';

/** Of more directions than this that tie, "all round" is nearer the truth than a list. */
const MOST_TIES = 8;

/** The figure in words, for whoever hears it instead of seeing it. */
export function describe(
  sound: SoundShape,
  map: RimMap,
  way: Way,
  ball: BallPlace,
  marks: readonly MarkedRatio[],
): string {
  return [
    `The face of a right socket, seen from its side: ${shapeLine(sound.shape)}.`,
    bridgeWords(sound),
    aroundWords(map),
    wayWords(way),
    ballWords(ball, way),
    marks.length === 0 ? '' : `${marks.length} ratios measured on shoulders are laid over it.`,
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

/** What a screen reader says for the direction: "135°, backward and up; ratio 0.41". */
export function bearingWords({ bearing, here }: Way): string {
  return `${bearingText(bearing)}; ratio ${ratio(here.peakStabilityRatio)}`;
}

/** Where the ball stands, short enough to be said at every step of a slider. */
export function placeWords({ translation, climb, stabilityRatio }: BallPlace, way: Way): string {
  const distance = Math.abs(translation);
  if (distance < 0.005) return 'in the middle';
  return `${mm(distance, 1)} ${bearingName(sideOf(translation, way))}, climbed ${mm(climb, 2)}, ratio ${ratio(stabilityRatio)}`;
}

/** That the ball does not fit the hollow, or ''. */
export function bridgeWords({ shape, ballRadius }: SoundShape): string {
  const { sameRadius, radiusAP, radiusSI } = shape;
  const tightest = sameRadius ? radiusSI : Math.min(radiusAP, radiusSI);
  if (ballRadius <= tightest) return '';
  return (
    `The ball’s radius, ${mm(ballRadius, 1)}, is more than that of the curve, ${mm(tightest, 1)}: ` +
    'it does not reach the bottom but bridges the hollow from rim to rim.'
  );
}

/** "backward", "forward and backward", "all round": where one value is met. */
export function whereText(rows: readonly DirectionRow[]): string {
  if (rows.length > MOST_TIES) return 'all round';
  const names = [...new Set(rows.map(({ direction }) => bearingName(bearingOf(direction))))];
  return names.length === 2
    ? names.join(' and ').replace(/and (.*) and/, 'and $1, and')
    : names.join(', ');
}

function aroundWords({ rows, weakest, strongest }: RimMap): string {
  const [low] = weakest;
  const [high] = strongest;
  if (low === undefined || high === undefined) return '';
  if (weakest.length === rows.length) {
    return `Its peak stability ratio is ${ratio(low.peakStabilityRatio)} in every direction.`;
  }
  return (
    `The peak stability ratio is least ${whereText(weakest)}, ${ratio(low.peakStabilityRatio)}, ` +
    `and greatest ${whereText(strongest)}, ${ratio(high.peakStabilityRatio)}.`
  );
}

function wayWords({ bearing, here }: Way): string {
  const { peakStabilityRatio, balanceStabilityAngle } = here;
  const play = playOf(here);
  return (
    `In the chosen direction, ${bearingText(bearing)}, it is ${ratio(peakStabilityRatio)}, a balance stability angle of ` +
    `${degrees(balanceStabilityAngle)}; the ball meets the rim after ${tenths(play)}, climbs ${tenths(here.depth)} in all, and ` +
    `is out after ${tenths(here.dislocationTranslation)}.`
  );
}

function ballWords(ball: BallPlace, way: Way): string {
  const distance = Math.abs(ball.translation);
  if (distance < 0.005) return 'The ball stands in the middle.';
  return (
    `The ball stands ${tenths(distance)} ${bearingName(sideOf(ball.translation, way))}: it has climbed ` +
    `${mm(ball.climb, 2)}, and the ratio there is ${ratio(ball.stabilityRatio)}.`
  );
}

function sideOf(translation: number, { bearing }: Way): number {
  return translation < 0 ? wrapped(bearing + 180) : bearing;
}
