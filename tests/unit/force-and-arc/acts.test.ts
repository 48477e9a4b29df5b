import { describe, expect, test } from 'vitest';
import { acts } from '../../../lessons/05-direction-of-force/acts.ts';
import { readAct } from '../../../sims/benches/force-and-arc/acts.ts';
import { inDegrees } from '../../../sims/benches/force-and-arc/reading.ts';
import { settle } from '../../../sims/benches/force-and-arc/settle.ts';

/** How near a simulated ball must rest to theory, mm: the facets of the engine’s hollow. */
const NEAR = 0.1;

describe('the acts of the lecture on direction', () => {
  test.each(acts)('$text: the simulation ends as the theory has it', (act) => {
    const { rest, cup, friction } = readAct(act);
    if (rest === null) throw new Error('no force');
    const { socket, ballRadius } = cup;
    const { outcome, translation } = settle({ socket, ballRadius, force: rest.force, friction });
    expect(outcome).toBe(rest.translation === null ? 'over the rim' : 'held');
    if (rest.translation !== null) {
      expect(Math.abs(translation - rest.translation)).toBeLessThan(NEAR);
    }
  });

  test('lean and turn cancel in one act and add up in the next', () => {
    const [balanced, weak, turned, both, worse] = acts.map((act) => readAct(act));
    const angle = (reading: typeof balanced): number => inDegrees(reading?.angle ?? Number.NaN);
    expect(angle(balanced)).toBeCloseTo(0, 9);
    expect(angle(weak)).toBeLessThan(0);
    expect(angle(turned)).toBeGreaterThan(0);
    expect(angle(both)).toBeCloseTo(angle(weak) + angle(turned), 9);
    expect(Math.abs(angle(both))).toBeLessThan(Math.abs(angle(weak)));
    expect(angle(worse)).toBeGreaterThan(angle(turned));
    expect(worse?.state).toBe('over the rim');
  });
});
