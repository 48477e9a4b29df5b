import {
  ballPath,
  climbAt,
  peakStabilityRatio,
  rimContactTranslation,
  socketFromDepth,
  sphericalSocket,
  stabilityRatioAt,
} from '../../sims/geometry/index.ts';

/** The cup of the first lesson, with its ball. */
export const cup = socketFromDepth({ depth: 4, width: 28 });
export const ballRadius = 24;
export const press = 50;
export const peak = peakStabilityRatio(cup);
export const rimContact = rimContactTranslation(cup, ballRadius);

/** A place on the way out to look at: half way between the rim's contact and the rim's edge. */
export const someway = (rimContact + cup.width / 2) / 2;
export const climbSomeway = climbAt(cup, ballRadius, someway);
export const ratioSomeway = stabilityRatioAt(cup, ballRadius, someway);

/** Work to push the ball out against a steady press: press × climb, N·mm and J. */
export const work = press * cup.depth;
export const workInJoules = work / 1000;

/** Three balls for the one cup: one that fits it, the lesson's, and a small one. */
export const balls = [
  { name: 'fits exactly', ballRadius: cup.curvatureRadius },
  { name: 'a little smaller', ballRadius },
  { name: 'much smaller', ballRadius: 18 },
].map((ball) => ({ ...ball, rimContact: rimContactTranslation(cup, ball.ballRadius) }));

/** What a smaller ball does to the greatest ratio on the way out, read from the two paths and not from the formula. */
function outcomeOf(smaller: number, larger: number): 'less' | 'same' | 'more' {
  const ROWS = 201;
  const greatest = (radius: number): number =>
    Math.max(...ballPath(cup, radius, ROWS).map(({ stabilityRatio }) => stabilityRatio));
  const change = greatest(smaller) / greatest(larger) - 1;
  if (Math.abs(change) < 1e-6) return 'same';
  return change < 0 ? 'less' : 'more';
}

export const smallBallOutcome = outcomeOf(18, ballRadius);

/** The same ball and width, with a cup of a larger radius: mismatch bought with depth. */
export const openCup = sphericalSocket({ curvatureRadius: 32, width: cup.width });
