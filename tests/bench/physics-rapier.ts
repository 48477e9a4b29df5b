import RAPIER from '@dimforge/rapier2d-compat';
import type { BallWorld, WorldMaker } from '../../sims/physics/ball-world.ts';
import { UPDATE_SECONDS } from '../../sims/physics/constants.ts';
import type { WorldPlan } from '../../sims/physics/world-plan.ts';

/**
 * Stiffness of contacts, Hz. Ours are sixteen updates to one of the engine's usual step, so its usual 30 Hz times sixteen;
 * as it comes, the ball sinks in by half a millimetre.
 */
const CONTACT_FREQUENCY = 480;

/** The same ball and socket pieces in rapier, 1 unit = 1 mm; friction is the engine's own. */
export async function loadRapier(): Promise<WorldMaker> {
  await RAPIER.init();
  let last: RAPIER.World | null = null;
  return (plan) => {
    // Its memory is not collected with the scene: one world is kept at a time.
    last?.free();
    last = new RAPIER.World({ x: 0, y: 0 });
    return fill(last, plan);
  };
}

function fill(world: RAPIER.World, { profile, ...plan }: WorldPlan): BallWorld {
  world.timestep = UPDATE_SECONDS;
  world.integrationParameters.contact_natural_frequency = CONTACT_FREQUENCY;
  const socket = world.createRigidBody(RAPIER.RigidBodyDesc.fixed());
  const fixed = [...profile.pieces, ...profile.stops].map((piece) => {
    const corners = Float32Array.from(piece.flatMap(({ x, z }) => [x, z]));
    const shape = RAPIER.ColliderDesc.convexHull(corners);
    if (!shape) throw new Error('rapier takes no such piece');
    return world.createCollider(shape, socket);
  });
  const ball = world.createRigidBody(
    RAPIER.RigidBodyDesc.dynamic().setTranslation(0, plan.startHeight).lockRotations(),
  );
  const disc = world.createCollider(RAPIER.ColliderDesc.ball(plan.ballRadius), ball);
  let frictionNow = NaN;
  let massNow = NaN;
  return {
    update: ({ force, compressiveLoad, friction, damping }) => {
      if (friction !== frictionNow) {
        for (const collider of [disc, ...fixed]) collider.setFriction(friction);
        frictionNow = friction;
      }
      const mass = compressiveLoad / plan.loadAcceleration;
      if (mass !== massNow) disc.setMass(mass);
      massNow = mass;
      ball.setLinearDamping(damping);
      ball.resetForces(true);
      ball.addForce({ x: force.x, y: force.z }, true);
      world.step();
    },
    motion: () => {
      const [position, velocity] = [ball.translation(), ball.linvel()];
      return {
        position: { x: position.x, z: position.y },
        velocity: { x: velocity.x, z: velocity.y },
      };
    },
    contacts: () => [],
  };
}
