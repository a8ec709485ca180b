import type { Said } from '../../measure/said.ts';
import type { MeshPlace } from '../../space/mesh.ts';
import { type Eye, eyeOn } from './eye.ts';
import type { Model } from './model.ts';
import { painterOn } from './painter.ts';
import { surfacesOf } from './surfaces.ts';

/** A model shown on a canvas. */
export interface SceneStage extends Pick<Eye, 'turn' | 'nearer'> {
  readonly show: (model: Model) => void;
  /** Looks from a direction at the whole, or at one end. */
  readonly lookFrom: (way: MeshPlace, at: 'whole' | 'A' | 'B') => void;
  readonly resize: () => void;
  readonly end: () => void;
}

/** Where words come to lie on the canvas, in its own pixels. */
export type PlaceWords = (
  words: readonly { readonly text: Said; readonly x: number; readonly y: number }[],
) => void;

/** Sets up a scene. Throws where the browser has no WebGL. */
export function stageOn(canvas: HTMLCanvasElement, placeWords: PlaceWords): SceneStage {
  let model: Model | undefined;
  let painter = painterOn(canvas);
  const draw = (): void => {
    const { clientWidth, clientHeight } = canvas;
    painter.paint(eye.camera);
    const words = (model?.words ?? []).map(({ text, at }) => {
      const { x, y } = eye.seenAt(at);
      return { text, x: ((1 + x) * clientWidth) / 2, y: ((1 - y) * clientHeight) / 2 };
    });
    placeWords(words);
  };
  const eye = eyeOn(painter.gl, canvas, draw);
  const lookFrom = (way: MeshPlace, at: 'whole' | 'A' | 'B'): void => {
    if (model) eye.lookFrom(way, model, at);
  };
  const resize = (): void => {
    painter.resize();
    eye.camera.perspective({ aspect: canvas.clientWidth / Math.max(1, canvas.clientHeight) });
    draw();
  };
  canvas.addEventListener('webglcontextlost', (event) => event.preventDefault());
  canvas.addEventListener('webglcontextrestored', () => {
    painter = painterOn(canvas);
    if (model) painter.hold(surfacesOf(model));
    resize();
  });
  return {
    lookFrom,
    turn: eye.turn,
    nearer: eye.nearer,
    show(next) {
      const first = model === undefined;
      model = next;
      painter.hold(surfacesOf(next));
      if (first) lookFrom([1, -0.9, 0.35], 'whole');
      else draw();
    },
    resize,
    end() {
      eye.end();
      painter.end();
    },
  };
}
