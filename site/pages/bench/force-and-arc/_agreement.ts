import { expectedOf } from '../../../../sims/benches/force-and-arc/describe.ts';
import { readForce } from '../../../../sims/benches/force-and-arc/reading.ts';
import { settle } from '../../../../sims/benches/force-and-arc/settle.ts';
import { defaultSetting } from '../../../../sims/benches/force-and-arc/settings.ts';

const DEPTHS = [1.5, 4];
const FRICTIONS = [0, 0.1];
/** Turn of the socket as a share of the angle at which the force goes over. */
const SHARES = [0.3, 0.6, 0.95, 1.05];

const trials = DEPTHS.flatMap((depth) =>
  FRICTIONS.flatMap((friction) => {
    const { tiltAtLimit } = readForce({ ...defaultSetting, depth, friction, version: 1 });
    return SHARES.map((share) => {
      const version = (share * (tiltAtLimit ?? NaN) * 180) / Math.PI;
      const reading = readForce({ ...defaultSetting, depth, friction, version });
      if (reading.rest === null) throw new Error('no force to try');
      const { socket, ballRadius } = reading.cup;
      const measured = settle({ socket, ballRadius, force: reading.rest.force, friction });
      return { expected: expectedOf(reading), measured };
    });
  }),
);

const held = trials.filter(({ measured }) => measured.outcome === 'held');

/** How many balls were let go when the page was built, how many of them went where theory says, and how far off they lay. */
export const balls = trials.length;
export const agreeing = trials.filter(
  ({ expected, measured }) => measured.outcome === (expected === null ? 'over the rim' : 'held'),
).length;
/** mm */
export const largestDifference = Math.max(
  ...held.map(({ expected, measured }) => Math.abs(measured.translation - (expected ?? Infinity))),
);
