import type { RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Model } from '../space/model.ts';
import { type PlaceWords, type SceneStage, stageOn } from '../space/scene.ts';

/** A scene and the elements that it is shown in. */
export interface Staged {
  readonly canvas: RefObject<HTMLCanvasElement | null>;
  /** Where the words lie over the canvas. */
  readonly afloat: RefObject<HTMLDivElement | null>;
  /** Does something to the scene once there is one. */
  readonly act: (act: (stage: SceneStage) => void) => void;
  /** The browser can't show it. */
  readonly trouble: boolean;
}

/** Shows a model for as long as its elements stand, at their size. */
export function useStage(model: Model): Staged {
  const canvas = useRef<HTMLCanvasElement>(null);
  const afloat = useRef<HTMLDivElement>(null);
  const stage = useRef<SceneStage | undefined>(undefined);
  const [trouble, setTrouble] = useState(false);
  useEffect(() => {
    const made = canvas.current && afloat.current && begun(canvas.current, afloat.current);
    if (!made) {
      setTrouble(true);
      return undefined;
    }
    stage.current = made;
    const watcher = new ResizeObserver(() => made.resize());
    if (canvas.current) watcher.observe(canvas.current);
    return () => {
      watcher.disconnect();
      made.end();
    };
  }, []);
  useEffect(() => stage.current?.show(model), [model]);
  return { canvas, afloat, trouble, act: (act) => stage.current && act(stage.current) };
}

/** Undefined where the browser can't. */
function begun(canvas: HTMLCanvasElement, afloat: HTMLElement): SceneStage | undefined {
  try {
    return stageOn(canvas, floating(afloat));
  } catch {
    return undefined;
  }
}

/** Lays each word in an element of its own. */
function floating(afloat: HTMLElement): PlaceWords {
  return (words) => {
    while (afloat.children.length < words.length) afloat.append(document.createElement('span'));
    for (const [i, span] of Array.from(afloat.children).entries()) {
      const word = words[i];
      if (!(span instanceof HTMLElement)) continue;
      span.textContent = word?.text ?? '';
      span.className = word?.text.length === 1 ? 'letter' : '';
      if (word) span.style.transform = `translate(${word.x}px, ${word.y}px) translate(-50%, -50%)`;
    }
  };
}
