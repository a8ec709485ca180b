import { useMemo } from 'preact/hooks';
import type { TubeSolution } from '../../saddle/solve.ts';
import { modelOf } from '../space/model.ts';
import { useWords } from '../words.ts';
import { SpaceTools, stepOf } from './space-tools.tsx';
import { useStage } from './use-stage.ts';

/** The joint in space, turned by pointer, touch, keys and buttons. */
export function SpaceView({ solution }: { readonly solution: TubeSolution }) {
  const words = useWords();
  const { space } = words.page.views;
  const model = useMemo(() => modelOf(solution, words), [solution, words]);
  const { canvas, afloat, trouble, act } = useStage(model);
  const press = (event: KeyboardEvent): void => {
    const step = stepOf(event.key);
    if (!step) return;
    event.preventDefault();
    act(step);
  };
  if (trouble) return <p class="aside">{space.none}</p>;
  return (
    <div class="stack">
      <SpaceTools
        ends={(['A', 'B'] as const).filter((name) => solution.ends[name]?.kind === 'coped')}
        onAct={act}
      />
      <div class="stage">
        <canvas ref={canvas} tabIndex={0} role="img" aria-label={space.picture} onKeyDown={press} />
        <div class="afloat" ref={afloat} aria-hidden="true" />
      </div>
      <p class="aside">
        {model.short && space.short}
        {space.how}
      </p>
    </div>
  );
}
