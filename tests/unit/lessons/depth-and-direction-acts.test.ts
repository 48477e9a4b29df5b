import { describe, expect, it } from 'vitest';
import { acts } from '../../../lessons/03-depth-and-direction/acts.ts';
import { peakStabilityRatio, rimPoint, sphericalSocket } from '../../../sims/geometry/index.ts';
import { soundShape } from '../../../sims/benches/round-the-rim/sound-shape.ts';

const [whole, worn, oneRadius, lip] = acts;

/** The ratio of a main section by the closed form: the way to the rim on that section's radius. */
function closedForm(act: (typeof acts)[number], bearing: 'forward' | 'up'): number {
  const { face, input } = soundShape(act.shape);
  const { x, y } = rimPoint(face, bearing === 'forward' ? 0 : Math.PI / 2);
  const curvatureRadius = bearing === 'forward' ? input.curvatureRadiusAP : input.curvatureRadiusSI;
  return peakStabilityRatio(sphericalSocket({ curvatureRadius, width: 2 * Math.hypot(x, y) }));
}

describe('the faces of the lecture', () => {
  it.each(acts.slice(0, 3).map((act) => [act.text, act] as const))(
    '%s: the ratios shown are the closed form of its two sections',
    (_, act) => {
      expect(Math.abs(act.forward - closedForm(act, 'forward'))).toBeLessThan(1e-3);
      expect(Math.abs(act.up - closedForm(act, 'up'))).toBeLessThan(1e-3);
    },
  );

  it('the cut in front costs forward, and nothing upward', () => {
    expect(worn.forward).toBeLessThan(0.6 * whole.forward);
    expect(worn.up).toBeCloseTo(whole.up, 6);
  });

  it('one radius flatters the front, and nothing upward', () => {
    expect(oneRadius.forward).toBeGreaterThan(1.2 * whole.forward);
    expect(oneRadius.up).toBeCloseTo(whole.up, 6);
  });

  it('the rigid lip promises more than the closed form of the bone it stands on', () => {
    expect(lip.up).toBeGreaterThan(1.2 * closedForm(lip, 'up'));
  });
});
