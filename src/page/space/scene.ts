import { AmbientLight, Color, type Line, type Mesh, Scene, Vector3, WebGLRenderer } from 'three';
import type { Said } from '../../measure/said.ts';
import type { MeshPlace } from '../../space/mesh.ts';
import { eyeOn } from './eye.ts';
import type { Model } from './model.ts';
import { surfacesOf } from './surfaces.ts';

/** A model shown on a canvas. */
export interface SceneStage {
  readonly show: (model: Model) => void;
  /** Turns what is seen, in radians round the tube and up. */
  readonly turn: (round: number, up: number) => void;
  /** Comes nearer by a factor. */
  readonly nearer: (factor: number) => void;
  /** Looks from a direction at the whole, or at one end. */
  readonly lookFrom: (way: MeshPlace, at: 'whole' | 'A' | 'B') => void;
  readonly resize: () => void;
  readonly end: () => void;
}

/** Where words come to lie on the canvas, in its own pixels; hidden where they are behind the eye. */
export type PlaceWords = (
  words: readonly { readonly text: Said; readonly x: number; readonly y: number }[],
) => void;

/** Sets up a scene. Throws where the browser has no WebGL. */
export function stageOn(canvas: HTMLCanvasElement, placeWords: PlaceWords): SceneStage {
  const renderer = new WebGLRenderer({ canvas, antialias: true });
  const scene = new Scene();
  scene.background = new Color(0xffffff);
  let model: Model | undefined;
  let content: (Mesh | Line)[] = [];
  const draw = (): void => {
    renderer.render(scene, eye.camera);
    placeWords((model?.words ?? []).map(({ text, at }) => ({ text, ...seenAt(at) })));
  };
  const seenAt = (at: MeshPlace): { x: number; y: number } => {
    const seen = new Vector3(...at).project(eye.camera);
    return { x: ((seen.x + 1) / 2) * canvas.clientWidth, y: ((1 - seen.y) / 2) * canvas.clientHeight };
  };
  const eye = eyeOn(canvas, draw);
  scene.add(eye.camera, new AmbientLight(0xffffff, 1.3));
  const lookFrom = (way: MeshPlace, at: 'whole' | 'A' | 'B'): void => {
    if (model) eye.lookFrom(way, model, at);
  };
  return {
    lookFrom,
    turn: eye.turn,
    nearer: eye.nearer,
    show(next) {
      const first = model === undefined;
      model = next;
      scene.remove(...content);
      for (const each of content) each.geometry.dispose();
      content = surfacesOf(next);
      scene.add(...content);
      if (first) lookFrom([1, -0.9, 0.35], 'whole');
      else draw();
    },
    resize() {
      renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
      renderer.setSize(canvas.clientWidth, canvas.clientHeight, false);
      eye.fit(canvas.clientWidth / Math.max(1, canvas.clientHeight));
    },
    end() {
      eye.close();
      renderer.dispose();
    },
  };
}
