import type { Said } from '../../measure/said.ts';
import type { MeshPlace } from '../../space/mesh.ts';
import { type Eye, eyeOf } from './eye.ts';
import type { Model } from './model.ts';
import { painterOn } from './painter.ts';
import { steerBy } from './steering.ts';
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
  const draw = (): void => {
    const { clientWidth, clientHeight } = canvas;
    painter.paint(eye.view(), eye.lens(clientWidth / Math.max(1, clientHeight)));
    const words = (model?.words ?? []).map(({ text, at }) => {
      const [right, up] = eye.seenAt(at);
      return { text, x: (clientWidth + right * clientHeight) / 2, y: ((1 - up) * clientHeight) / 2 };
    });
    placeWords(words);
  };
  const painter = painterOn(canvas, draw);
  const eye = eyeOf(draw);
  steerBy(canvas, eye);
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
      painter.hold(surfacesOf(next));
      if (first) lookFrom([1, -0.9, 0.35], 'whole');
      else draw();
    },
    resize() {
      const ratio = Math.min(devicePixelRatio, 2);
      canvas.width = Math.floor(canvas.clientWidth * ratio);
      canvas.height = Math.floor(canvas.clientHeight * ratio);
      draw();
    },
    end: painter.end,
  };
}
