import { Circle, Polygon, Vec2, World } from 'planck';
import type { BallWorld } from '../../sims/physics/ball-world.ts';
import { UPDATE_SECONDS } from '../../sims/physics/constants.ts';
import type { WorldPlan } from '../../sims/physics/world-plan.ts';

/** The iterations its makers recommend. */
const VELOCITY_ITERATIONS = 8;
const POSITION_ITERATIONS = 3;

/** The same ball and socket pieces in planck, 1 unit = 1 mm; friction is the engine's own. */
export function createPlanckWorld({ profile, ...plan }: WorldPlan): BallWorld {
  const world = new World({ gravity: new Vec2(0, 0), allowSleep: false });
  const socket = world.createBody();
  const fixed = [...profile.pieces, ...profile.stops].map((piece) =>
    socket.createFixture({
      shape: new Polygon(piece.map(({ x, z }) => new Vec2(x, z))),
      restitution: 0,
    }),
  );
  const ball = world.createBody({
    type: 'dynamic',
    fixedRotation: true,
    position: new Vec2(0, plan.startHeight),
  });
  const disc = ball.createFixture({
    shape: new Circle(plan.ballRadius),
    density: 1,
    restitution: 0,
  });
  let frictionNow = NaN;
  return {
    update: ({ force, compressiveLoad, friction, damping }) => {
      if (friction !== frictionNow) {
        for (const fixture of [disc, ...fixed]) fixture.setFriction(friction);
        for (let contact = world.getContactList(); contact; contact = contact.getNext()) {
          contact.resetFriction();
        }
        frictionNow = friction;
      }
      const mass = compressiveLoad / plan.loadAcceleration;
      if (ball.getMass() !== mass) ball.setMassData({ mass, center: new Vec2(0, 0), I: 0 });
      ball.setLinearDamping(damping);
      ball.applyForceToCenter(new Vec2(force.x, force.z), true);
      world.step(UPDATE_SECONDS, VELOCITY_ITERATIONS, POSITION_ITERATIONS);
    },
    motion: () => {
      const [position, velocity] = [ball.getPosition(), ball.getLinearVelocity()];
      return {
        position: { x: position.x, z: position.y },
        velocity: { x: velocity.x, z: velocity.y },
      };
    },
    contacts: () => [],
  };
}
