import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { TubeSolution } from '../../saddle/solve.ts';
import { loadSpace } from '../space/load.ts';
import type { Place } from '../space/mesh.ts';
import { modelOf } from '../space/model.ts';
import type { Stage } from '../space/scene.ts';

const STEP = Math.PI / 18;

/** The joint in space, turned by pointer, touch, keys and buttons. */
export function SpaceView({ solution }: { readonly solution: TubeSolution }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const words = useRef<HTMLDivElement>(null);
  const stage = useRef<Stage | undefined>(undefined);
  const [trouble, setTrouble] = useState(false);
  const model = useMemo(() => modelOf(solution), [solution]);
  useEffect(() => {
    const made = canvas.current && words.current && begun(canvas.current, words.current);
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
  const look = (way: Place, at: 'whole' | 'A' | 'B') => () => stage.current?.lookFrom(way, at);
  const press = (event: KeyboardEvent): void => {
    const act = KEYS[event.key];
    if (!act || !stage.current) return;
    event.preventDefault();
    act(stage.current);
  };
  if (trouble) return <p class="aside">This browser shows nothing in three dimensions: it has no WebGL.</p>;
  const ends = (['A', 'B'] as const).filter((name) => solution.ends[name]?.kind === 'coped');
  return (
    <div class="space">
      <div class="tools">
        <button type="button" onClick={look([1, -0.9, 0.35], 'whole')}>
          Whole
        </button>
        {ends.map((name) => (
          <button
            type="button"
            key={name}
            aria-label={`Look at end ${name}`}
            onClick={look([1, -0.9, name === 'A' ? 0.35 : -0.35], name)}
          >
            End {name}
          </button>
        ))}
        <button type="button" onClick={look([1, 0, 0.001], 'whole')}>
          On the spine
        </button>
        <span class="together">
          <button type="button" aria-label="turn left" onClick={() => stage.current?.turn(-STEP, 0)}>
            ←
          </button>
          <button type="button" aria-label="turn right" onClick={() => stage.current?.turn(STEP, 0)}>
            →
          </button>
          <button type="button" aria-label="turn up" onClick={() => stage.current?.turn(0, STEP)}>
            ↑
          </button>
          <button type="button" aria-label="turn down" onClick={() => stage.current?.turn(0, -STEP)}>
            ↓
          </button>
        </span>
        <span class="together">
          <button type="button" aria-label="nearer" onClick={() => stage.current?.nearer(1.25)}>
            +
          </button>
          <button type="button" aria-label="farther" onClick={() => stage.current?.nearer(0.8)}>
            −
          </button>
        </span>
      </div>
      <div class="stage">
        <canvas ref={canvas} tabIndex={0} role="img" aria-label={LABEL} onKeyDown={press} />
        <div class="afloat" ref={words} aria-hidden="true" />
      </div>
      <p class="aside">
        {model.short ? 'The tube is shown shorter than it is. ' : ''}Drag or use the arrow keys to turn it, +
        and − to come nearer. Orange is waste; the blue line is the spine.
      </p>
    </div>
  );
}

const LABEL = 'The joint in three dimensions. Arrow keys turn it, plus and minus come nearer.';

const KEYS: Readonly<Record<string, (stage: Stage) => void>> = {
  ArrowLeft: (stage) => stage.turn(-STEP, 0),
  ArrowRight: (stage) => stage.turn(STEP, 0),
  ArrowUp: (stage) => stage.turn(0, STEP),
  ArrowDown: (stage) => stage.turn(0, -STEP),
  '+': (stage) => stage.nearer(1.25),
  '-': (stage) => stage.nearer(0.8),
};

/** Undefined where the browser can't. */
function begun(canvas: HTMLCanvasElement, afloat: HTMLElement): Stage | undefined {
  try {
    return loadSpace()?.(canvas, (words) => {
      while (afloat.children.length < words.length) afloat.append(document.createElement('span'));
      for (const [i, span] of Array.from(afloat.children).entries()) {
        const word = words[i];
        if (!(span instanceof HTMLElement)) continue;
        span.textContent = word?.text ?? '';
        span.className = word?.text.length === 1 ? 'letter' : '';
        if (word) span.style.transform = `translate(${word.x}px, ${word.y}px) translate(-50%, -50%)`;
      }
    });
  } catch {
    return undefined;
  }
}
