import { describe, expect, it } from 'vitest';
import { acts } from '../../../lessons/01-ball-and-cup/acts.ts';
import { cup } from '../../../lessons/01-ball-and-cup/cups.ts';
import { peakStabilityRatio } from '../../../sims/geometry/index.ts';

describe('the acts of the lecture', () => {
  it('slip where the theory says, within 3 %, whatever the ball and the press', () => {
    const theory = peakStabilityRatio(cup);
    for (const { text, measured } of acts.slice(0, 3)) {
      expect(Math.abs((measured ?? 0) / theory - 1), text).toBeLessThan(0.03);
    }
  });

  it('end on a flat that nothing holds', () => {
    const last = acts.at(-1);
    expect(last?.text).toBe('flat');
    expect(last?.measured).not.toBeNull();
    expect(last?.measured).toBeLessThan(0.005);
  });
});
