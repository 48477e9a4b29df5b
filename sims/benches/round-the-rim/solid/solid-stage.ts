import {
  DirectionalLight,
  HemisphereLight,
  OrthographicCamera,
  Scene,
  Vector3,
  WebGLRenderer,
} from 'three';
import type { Spot } from './bands.ts';
import { toEye, type OrbitView } from './orbit.ts';
import { discard } from './parts.ts';

/** Where a word belongs, in pixels from the upper left corner. */
export interface WordPlace {
  readonly word: string;
  readonly x: number;
  readonly y: number;
}

/** What a drawn view tells about itself. */
export interface StageFrame {
  readonly words: readonly WordPlace[];
  readonly pixelsPerMillimetre: number;
}

/** Something drawn in three dimensions from where a visitor looks at it. */
export interface Stage<Subject, Frame extends StageFrame> {
  /** Draws the subject; what has not changed since is not built again. */
  readonly show: (subject: Subject) => Frame;
  readonly resize: (width: number, height: number, pixelRatio: number) => void;
  /** Frees everything it made. */
  readonly dispose: () => void;
}

/** The part of a renderer that is used: a stand-in serves where there is no graphics context. */
export type Renderer = Pick<WebGLRenderer, 'render' | 'setSize' | 'setPixelRatio' | 'dispose'>;

/** What stands on a stage. */
export interface StagePlay<Subject, More> {
  /** Half of what the view shows up and down at zoom 1, mm. */
  readonly halfHeight: number;
  /** Middle of the view, mm. */
  readonly target: Spot;
  /** Brings the scene to a subject, building only what has changed; returns what there is to tell. */
  readonly update: (scene: Scene, subject: Subject) => More;
  /** How far the four words of direction stand from the middle, and at what height, mm. */
  readonly words: (subject: Subject) => { across: number; up: number; height: number };
}

const EYE_DISTANCE = 200;
const WORDS = [
  { word: 'superior', x: 0, y: 1 },
  { word: 'inferior', x: 0, y: -1 },
  { word: 'anterior', x: 1, y: 0 },
  { word: 'posterior', x: -1, y: 0 },
] as const;

/**
 * A stage on a canvas. Nothing is drawn but by `show`: there is no loop.
 *
 * @throws Error where the browser gives no graphics context
 */
export function openStage<Subject extends { readonly view: OrbitView }, More extends object>(
  canvas: HTMLCanvasElement,
  makeRenderer: (canvas: HTMLCanvasElement) => Renderer,
  play: StagePlay<Subject, More>,
): Stage<Subject, StageFrame & More> {
  const renderer = makeRenderer(canvas);
  const scene = new Scene();
  const camera = new OrthographicCamera();
  camera.near = 1;
  camera.far = 2 * EYE_DISTANCE;
  const lamp = new DirectionalLight('white', 1.9);
  scene.add(new HemisphereLight('white', 'white', 1.75), lamp);
  const target = new Vector3(...play.target);
  let size = { width: 1, height: 1 };

  function aim(view: OrbitView): number {
    const half = play.halfHeight / view.zoom;
    const across = (half * size.width) / size.height;
    // On a narrow canvas the width is what must hold the subject.
    const spread = Math.max(1, (play.halfHeight * 0.92) / view.zoom / across);
    camera.top = half * spread;
    camera.bottom = -camera.top;
    camera.right = across * spread;
    camera.left = -camera.right;
    const eye = new Vector3(...toEye(view));
    camera.position.copy(eye).multiplyScalar(EYE_DISTANCE).add(target);
    camera.lookAt(target);
    camera.updateProjectionMatrix();
    camera.updateMatrixWorld();
    lamp.position.copy(eye).add(new Vector3(-0.5, 0.9, 0.35));
    return size.height / (2 * camera.top);
  }

  function wordPlaces(subject: Subject): readonly WordPlace[] {
    const { across, up, height } = play.words(subject);
    return WORDS.map(({ word, x, y }) => {
      const at = new Vector3(x * across, y * up, height).project(camera);
      return { word, x: ((at.x + 1) / 2) * size.width, y: ((1 - at.y) / 2) * size.height };
    });
  }

  return {
    show: (subject) => {
      const more = play.update(scene, subject);
      const pixelsPerMillimetre = aim(subject.view);
      renderer.render(scene, camera);
      return { words: wordPlaces(subject), pixelsPerMillimetre, ...more };
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

export function webgl(canvas: HTMLCanvasElement): WebGLRenderer {
  return new WebGLRenderer({ canvas, antialias: true, alpha: true });
}
