import {
  DirectionalLight,
  HemisphereLight,
  OrthographicCamera,
  Scene,
  Vector3,
  WebGLRenderer,
  type Group,
} from 'three';
import type { Face } from '../../../geometry/index.ts';
import { climbField } from './climb-field.ts';
import { toEye, type OrbitView } from './orbit.ts';
import { discard } from './parts.ts';
import { bodyOf, moverOf, place, type Mover, type SolidSubject } from './solid-body.ts';

/** Where a word belongs, in pixels from the upper left corner. */
export interface WordPlace {
  readonly word: string;
  readonly x: number;
  readonly y: number;
}

/** What a drawn view tells about itself. */
export interface SolidFrame {
  readonly words: readonly WordPlace[];
  readonly pixelsPerMillimetre: number;
  /** Climb at the dark end of the colours, mm, and from one line to the next. */
  readonly greatestClimb: number;
  readonly lineStep: number;
}

export interface SolidScene {
  /** Draws the subject; what has not changed since is not built again. */
  readonly show: (subject: SolidSubject) => SolidFrame;
  readonly resize: (width: number, height: number, pixelRatio: number) => void;
  /** Frees everything it made. */
  readonly dispose: () => void;
}

/** The part of a renderer that is used: a stand-in serves where there is no graphics context. */
export type Renderer = Pick<WebGLRenderer, 'render' | 'setSize' | 'setPixelRatio' | 'dispose'>;

/** Half of what the view shows up and down at zoom 1, mm. */
const HALF_HEIGHT = 27;
/** Middle of the view: between deepest point and rim. */
const TARGET = new Vector3(0, 0, 3);
const EYE_DISTANCE = 200;
const WORDS = [
  { word: 'superior', x: 0, y: 1 },
  { word: 'inferior', x: 0, y: -1 },
  { word: 'anterior', x: 1, y: 0 },
  { word: 'posterior', x: -1, y: 0 },
] as const;

/**
 * A face with its ball in three dimensions, on a canvas. Nothing is drawn but by `show`: there is no loop.
 *
 * @throws Error where the browser gives no graphics context
 */
export function openSolid(
  canvas: HTMLCanvasElement,
  makeRenderer: (canvas: HTMLCanvasElement) => Renderer = webgl,
): SolidScene {
  const renderer = makeRenderer(canvas);
  const scene = new Scene();
  const camera = new OrthographicCamera();
  camera.near = 1;
  camera.far = 2 * EYE_DISTANCE;
  const lamp = new DirectionalLight('white', 1.9);
  scene.add(new HemisphereLight('white', 'white', 1.75), lamp);
  let size = { width: 1, height: 1 };
  let body: Group | null = null;
  let mover: Mover | null = null;
  let last: SolidSubject | null = null;
  let climbs = { greatestClimb: 0, lineStep: 1 };

  function build(subject: SolidSubject): void {
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
  }

  function aim(view: OrbitView): number {
    const half = HALF_HEIGHT / view.zoom;
    const across = (half * size.width) / size.height;
    // On a narrow canvas the width is what must hold the face.
    const spread = Math.max(1, (HALF_HEIGHT * 0.92) / view.zoom / across);
    camera.top = half * spread;
    camera.bottom = -camera.top;
    camera.right = across * spread;
    camera.left = -camera.right;
    const eye = new Vector3(...toEye(view));
    camera.position.copy(eye).multiplyScalar(EYE_DISTANCE).add(TARGET);
    camera.lookAt(TARGET);
    camera.updateProjectionMatrix();
    camera.updateMatrixWorld();
    lamp.position.copy(eye).add(new Vector3(-0.5, 0.9, 0.35));
    return size.height / (2 * camera.top);
  }

  function wordPlaces({ curve, outline }: Face): readonly WordPlace[] {
    const margin = 4.5;
    return WORDS.map(({ word, x, y }) => {
      const at = new Vector3(
        x * (outline.width / 2 + margin),
        y * (curve.halfHeight + margin),
        2,
      ).project(camera);
      return { word, x: ((at.x + 1) / 2) * size.width, y: ((1 - at.y) / 2) * size.height };
    });
  }

  return {
    show: (subject) => {
      build(subject);
      const pixelsPerMillimetre = aim(subject.view);
      renderer.render(scene, camera);
      return { words: wordPlaces(subject.sound.face), pixelsPerMillimetre, ...climbs };
    },
    resize: (width, height, pixelRatio) => {
      size = { width, height };
      renderer.setPixelRatio(Math.min(2, pixelRatio));
      renderer.setSize(width, height, false);
    },
    dispose: () => {
      discard(scene);
      scene.clear();
      lamp.dispose();
      renderer.dispose();
    },
  };
}

function webgl(canvas: HTMLCanvasElement): WebGLRenderer {
  return new WebGLRenderer({ canvas, antialias: true, alpha: true });
}
