import type { EndName } from '../../job/job.ts';
import { Action } from '../action.tsx';
import type { SceneStage } from '../space/scene.ts';
import { useWords } from '../words.ts';

interface SpaceToolsProps {
  /** The ends that have a joint to look at. */
  readonly ends: readonly EndName[];
  /** What a button does to the scene. */
  readonly onAct: (act: (stage: SceneStage) => void) => void;
}

/** From where the joint is looked at, and steps from there. */
export function SpaceTools({ ends, onAct }: SpaceToolsProps) {
  const { end, space } = useWords().page.views;
  return (
    <div class="tools">
      <Action words={space.whole} onAct={() => onAct(LOOKS.whole)} />
      {ends.map((name) => (
        <Action key={name} words={end(name)} fullName={space.lookAt(name)} onAct={() => onAct(LOOKS[name])} />
      ))}
      <Action words={space.onSpine} onAct={() => onAct(LOOKS.spine)} />
      {[TURNS, MOVES].map((steps) => (
        <span class="together" key={steps[0].step}>
          {steps.map(({ step, act }) => (
            <Action
              key={step}
              words={space.steps[step].sign}
              fullName={space.steps[step].name}
              onAct={() => onAct(act)}
            />
          ))}
        </span>
      ))}
    </div>
  );
}

const LOOKS = {
  whole: (stage: SceneStage): void => stage.lookFrom([1, -0.9, 0.35], 'whole'),
  A: (stage: SceneStage): void => stage.lookFrom([1, -0.9, 0.35], 'A'),
  B: (stage: SceneStage): void => stage.lookFrom([1, -0.9, -0.35], 'B'),
  spine: (stage: SceneStage): void => stage.lookFrom([1, 0, 0.001], 'whole'),
};

const STEP = Math.PI / 18;

const TURNS = [
  { step: 'left', key: 'ArrowLeft', act: (stage: SceneStage) => stage.turn(-STEP, 0) },
  { step: 'right', key: 'ArrowRight', act: (stage: SceneStage) => stage.turn(STEP, 0) },
  { step: 'up', key: 'ArrowUp', act: (stage: SceneStage) => stage.turn(0, STEP) },
  { step: 'down', key: 'ArrowDown', act: (stage: SceneStage) => stage.turn(0, -STEP) },
] as const;

const MOVES = [
  { step: 'nearer', key: '+', act: (stage: SceneStage) => stage.nearer(1.25) },
  { step: 'farther', key: '-', act: (stage: SceneStage) => stage.nearer(0.8) },
] as const;

/** What a key does to the scene. */
export function stepOf(key: string): ((stage: SceneStage) => void) | undefined {
  return [...TURNS, ...MOVES].find((each) => each.key === key)?.act;
}
