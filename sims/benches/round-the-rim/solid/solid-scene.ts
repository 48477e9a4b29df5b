import type { Group } from 'three';
import { climbField } from './climb-field.ts';
import { discard } from './parts.ts';
import { bodyOf, moverOf, place, type Mover, type SolidSubject } from './solid-body.ts';
import { openStage, webgl, type Renderer, type Stage, type StageFrame } from './solid-stage.ts';

export type { Renderer } from './solid-stage.ts';

/** What a drawn view tells about itself. */
export interface SolidFrame extends StageFrame {
  /** Climb at the dark end of the colours, mm, and from one line to the next. */
  readonly greatestClimb: number;
  readonly lineStep: number;
}

export type SolidScene = Stage<SolidSubject, SolidFrame>;

/** Room between the face and the words round it, mm. */
const MARGIN = 4.5;

/**
 * A face with its ball in three dimensions, on a canvas.
 *
 * @throws Error where the browser gives no graphics context
 */
export function openSolid(
  canvas: HTMLCanvasElement,
  makeRenderer: (canvas: HTMLCanvasElement) => Renderer = webgl,
): SolidScene {
  let body: Group | null = null;
  let mover: Mover | null = null;
  let last: SolidSubject | null = null;
  let climbs = { greatestClimb: 0, lineStep: 1 };

  return openStage(canvas, makeRenderer, {
    halfHeight: 27,
    // Between deepest point and rim.
    target: [0, 0, 3],
    words: ({ sound: { face } }: SolidSubject) => ({
      across: face.outline.width / 2 + MARGIN,
      up: face.curve.halfHeight + MARGIN,
      height: 2,
    }),
    update: (scene, subject) => {
      const { sound, way, colours } = subject;
      const isNewLook = last?.colours !== colours;
      if (last?.sound !== sound || isNewLook) {
        if (body !== null) discard(body);
        const field = climbField(sound);
        const lineStep = field.greatest > 4 ? 1 : 0.5;
        climbs = { greatestClimb: field.greatest, lineStep };
        body = bodyOf(sound, field, lineStep, colours);
        scene.add(body);
      }
      if (last?.way !== way || last.sound !== sound || isNewLook || mover === null) {
        if (mover !== null) discard(mover.group);
        mover = moverOf(subject);
        scene.add(mover.group);
      }
      place(mover, subject);
      last = subject;
      return climbs;
    },
  });
}
