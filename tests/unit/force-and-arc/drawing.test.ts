import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placeLabels } from '../../../sims/benches/force-and-arc/arrow-labels.ts';
import { ceilingOf, forceChain, pullBetween } from '../../../sims/benches/force-and-arc/arrows.ts';
import { ballPose } from '../../../sims/benches/force-and-arc/ball-pose.ts';
import { layoutFor, scapulaView, turned } from '../../../sims/benches/force-and-arc/layout.ts';
import { planes, type PlaneName } from '../../../sims/benches/force-and-arc/planes.ts';
import { readForce } from '../../../sims/benches/force-and-arc/reading.ts';
import { defaultSetting, type ForceSetting } from '../../../sims/benches/force-and-arc/settings.ts';
import { situationsOf } from '../../../sims/benches/force-and-arc/situations.ts';

const names: readonly PlaneName[] = ['above', 'front'];
const WIDTHS = [300, 344, 560, 816];

function drawn(setting: ForceSetting, width: number) {
  const layout = layoutFor(width);
  const reading = readForce(setting);
  const view = scapulaView(layout.joint, reading.plane, reading.cup.ballRadius);
  const pose = ballPose(reading, null);
  const centre = view.toScreen(pose.centre);
  const chain = forceChain(reading, view, centre, ceilingOf(reading));
  return { layout, reading, view, pose, centre, chain };
}

const everySituation = names.flatMap((plane) =>
  situationsOf(plane).map(({ change }) => ({ ...defaultSetting, plane, ...change })),
);

describe('the picture', () => {
  test.each(names)('%s: screen and scapula turn into each other', (plane) => {
    fc.assert(
      fc.property(fc.double({ min: -60, max: 60 }), fc.double({ min: -60, max: 60 }), (x, y) => {
        fc.pre(Number.isFinite(x + y));
        const view = scapulaView(layoutFor(780).joint, planes[plane], 24);
        const place = view.toPlace(view.toScreen({ aside: x, out: y }));
        expect(place.aside).toBeCloseTo(x, 8);
        expect(place.out).toBeCloseTo(y, 8);
      }),
    );
  });

  test('from above the front lies below and the chest to the right; from the front up lies above', () => {
    const above = scapulaView(layoutFor(780).joint, planes.above, 24);
    const front = scapulaView(layoutFor(780).joint, planes.front, 24);
    expect(above.aside.y).toBeLessThan(0);
    expect(above.out.x).toBeLessThan(0);
    expect(above.out.y).toBeGreaterThan(0);
    expect(front.aside.x).toBeCloseTo(0, 9);
    expect(front.aside.y).toBeCloseTo(-1, 9);
    expect(front.out.x).toBeCloseTo(-1, 9);
    expect(front.out.y).toBeCloseTo(0, 9);
  });

  test('holds the whole resting ball, however the socket is turned and whatever its size', () => {
    for (const plane of names) {
      for (const tilt of [-25, 0, 15, 31, 35]) {
        for (const ballDiameter of [30, 48, 60]) {
          for (const width of WIDTHS) {
            const setting = {
              ...defaultSetting,
              plane,
              ballDiameter,
              version: tilt,
              inclination: tilt,
              depth: 2,
              friction: 0.3,
            };
            const { centre, view, layout, reading } = drawn(setting, width);
            const radius = reading.cup.ballRadius * view.scale;
            expect(centre.x - radius).toBeGreaterThan(0);
            expect(centre.y - radius).toBeGreaterThan(0);
            expect(centre.y + radius).toBeLessThan(layout.joint.height);
          }
        }
      }
    }
  });

  test('a resting ball touches the socket where the net force points', () => {
    for (const setting of everySituation) {
      const { pose, reading } = drawn(setting, 780);
      if (pose.contact === null) {
        expect(reading.state).toBe('over the rim');
        expect(pose.leaving).not.toBeNull();
        continue;
      }
      const aside = pose.contact.aside - pose.centre.aside;
      const inward = pose.centre.out - pose.contact.out;
      expect(Math.hypot(aside, inward)).toBeCloseTo(reading.cup.ballRadius, 6);
      expect(Math.atan2(aside, inward)).toBeCloseTo(reading.lean, 6);
    }
  });

  test('turning carries a place about the deepest point towards the positive side', () => {
    const place = turned({ aside: 0, out: 10 }, Math.PI / 6);
    expect(place.aside).toBeCloseTo(5, 9);
    expect(place.out).toBeCloseTo(10 * Math.cos(Math.PI / 6), 9);
  });
});

describe('the arrows', () => {
  test('close the chain, and a dragged head gives the pull it is dragged to', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...names),
        fc.integer({ min: 1, max: 80 }),
        fc.integer({ min: -80, max: 80 }),
        (plane, fives, turn) => {
          const size = 5 * fives;
          const own =
            plane === 'above'
              ? { backCuffSize: size, backCuffTurn: turn }
              : { lowerCuffSize: size, lowerCuffTurn: turn };
          const { chain, view } = drawn({ ...defaultSetting, plane, ...own }, 780);
          const [, second, third] = chain.pulls;
          if (second === undefined || third === undefined) throw new Error('three pulls');
          expect(third.to).toEqual(chain.net);
          const pull = pullBetween(second.from, second.to, view, chain.perNewton);
          expect(pull.size).toBeCloseTo(size, 6);
          expect(pull.turn).toBeCloseTo(turn, 6);
        },
      ),
    );
  });

  test('the ceiling holds every head of the chain', () => {
    const { chain, view, reading } = drawn(
      { ...defaultSetting, frontCuffSize: 400, frontCuffTurn: 80 },
      780,
    );
    const reach = ceilingOf(reading) * chain.perNewton;
    for (const { to } of chain.pulls) {
      expect(Math.hypot(to.x - chain.from.x, to.y - chain.from.y)).toBeLessThanOrEqual(
        reach + 1e-9,
      );
    }
    expect(reach / view.scale).toBeCloseTo(43, 9);
  });

  test.each(WIDTHS)(
    'lettering keeps inside a picture %i wide, no two lines on one another',
    (width) => {
      for (const setting of everySituation) {
        const { chain, layout } = drawn(setting, width);
        const { size, joint } = layout;
        const texts = chain.pulls.map(({ pull }) => pull.name);
        const labels = placeLabels(chain, texts, 'net force 426 N', size, [
          joint.width,
          joint.height,
        ]);
        expect(labels).toHaveLength(4);
        const boxes = labels.map(({ text, x, y, anchor, isNet }) => {
          const long = text.length * size * 0.5 * (isNet ? 1.1 : 1);
          const left = anchor === 'start' ? x : anchor === 'end' ? x - long : x - long / 2;
          return { left, right: left + long, y };
        });
        for (const [i, box] of boxes.entries()) {
          expect(box.left).toBeGreaterThanOrEqual(0);
          expect(box.right).toBeLessThanOrEqual(joint.width);
          for (const other of boxes.slice(i + 1)) {
            const isAcross = box.left < other.right - 1 && other.left < box.right - 1;
            if (isAcross) expect(Math.abs(box.y - other.y)).toBeGreaterThan(size * 0.9);
          }
        }
      }
    },
  );
});
