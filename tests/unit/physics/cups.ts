import {
  socketFromDepth,
  sphericalSocket,
  type SphericalSocket,
} from '../../../sims/geometry/index.ts';
import type { PushReading } from '../../../sims/physics/push-reading.ts';
import { createPushScene, type PushScene } from '../../../sims/physics/push-scene.ts';

/** One cup of the grid, with the load (N) it is pushed under. */
export interface GridCup {
  readonly socket: SphericalSocket;
  readonly ballRadius: number;
  readonly load: number;
}

const LOADS = [20, 50, 200, 800];

/**
 * Balls of 30 to 60 mm in sockets 16 to 44 mm wide: conforming, a little looser, and up to 25 mm looser in radius, with
 * arcs to about 55°; and shallow hollows of 0.5 and 1.5 mm.
 */
export function gridOfCups(): readonly GridCup[] {
  const deep = [30, 38, 48, 60].flatMap((diameter) =>
    [16, 24, 34, 44].flatMap((width) =>
      [0, 0.3, 2, 8, 25]
        .map((mismatch) => ({ curvatureRadius: diameter / 2 + mismatch, width }))
        .filter(({ curvatureRadius }) => width / 2 <= 0.82 * curvatureRadius)
        .map((shape) => ({ socket: sphericalSocket(shape), ballRadius: diameter / 2 })),
    ),
  );
  const shallow = [30, 48, 60].flatMap((diameter) =>
    [16, 30, 44].flatMap((width) =>
      [0.5, 1.5]
        .map((depth) => socketFromDepth({ depth, width }))
        .filter(({ curvatureRadius }) => curvatureRadius >= diameter / 2)
        .map((socket) => ({ socket, ballRadius: diameter / 2 })),
    ),
  );
  return [...deep, ...shallow].map((cup, i) => ({ ...cup, load: LOADS[i % LOADS.length] ?? 50 }));
}

export interface PushOutcome {
  readonly reading: PushReading;
  /** Simulated seconds from the start of the push to its end. */
  readonly seconds: number;
}

/** Pushes until the scene has its answer, or for twenty seconds: then the reading still says "pushing". */
export function pushToTheEnd(scene: PushScene): PushOutcome {
  const MOST_SECONDS = 20;
  const from = scene.read().time;
  scene.startPush();
  for (;;) {
    scene.step();
    const reading = scene.read();
    const seconds = reading.time - from;
    if (reading.push !== 'pushing' || seconds > MOST_SECONDS) return { reading, seconds };
  }
}

/** Pushes a ball out of a cup of the grid. */
export function pushCup({ socket, ballRadius, load }: GridCup, friction: number): PushOutcome {
  return pushToTheEnd(createPushScene({ socket, ballRadius, compressiveLoad: load, friction }));
}

/** Runs a scene for so many seconds of its own time. */
export function runFor(scene: PushScene, seconds: number): PushReading {
  const end = scene.read().time + seconds - 1e-9;
  while (scene.read().time < end) scene.step();
  return scene.read();
}

export function describeCup({ socket, ballRadius, load }: GridCup): string {
  const degrees = (socket.halfArc * 180) / Math.PI;
  return `ball ${2 * ballRadius}, width ${socket.width}, depth ${socket.depth.toFixed(2)} mm, β ${degrees.toFixed(1)}°, ${load} N`;
}
