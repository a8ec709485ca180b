import type { EndName } from '../../job/job.ts';
import type { Said } from '../../measure/said.ts';
import type { Stage } from '../space/scene.ts';
import { useWords } from '../words.ts';

interface SpaceToolsProps {
  /** The ends that have a joint to look at. */
  readonly ends: readonly EndName[];
  /** What a button does to the scene. */
  readonly onAct: (act: (stage: Stage) => void) => void;
}

/** From where the joint is looked at, and steps from there. */
export function SpaceTools({ ends, onAct }: SpaceToolsProps) {
  const words = useWords().page.views;
  const { space } = words;
  const step = (sign: string, name: Said, act: (stage: Stage) => void) => (
    <button type="button" aria-label={name} onClick={() => onAct(act)}>
      {sign}
    </button>
  );
  return (
    <div class="tools">
      <button type="button" onClick={() => onAct(whole)}>
        {space.whole}
      </button>
      {ends.map((name) => (
        <button type="button" key={name} aria-label={space.lookAt(name)} onClick={() => onAct(AT_END[name])}>
          {words.end(name)}
        </button>
      ))}
      <button type="button" onClick={() => onAct(onSpine)}>
        {space.onSpine}
      </button>
      <span class="together">
        {step('←', space.turn.left, STEPS.left)}
        {step('→', space.turn.right, STEPS.right)}
        {step('↑', space.turn.up, STEPS.up)}
        {step('↓', space.turn.down, STEPS.down)}
      </span>
      <span class="together">
        {step('+', space.nearer, STEPS.nearer)}
        {step('−', space.farther, STEPS.farther)}
      </span>
    </div>
  );
}

const whole = (stage: Stage): void => stage.lookFrom([1, -0.9, 0.35], 'whole');
const onSpine = (stage: Stage): void => stage.lookFrom([1, 0, 0.001], 'whole');
const AT_END = {
  A: (stage: Stage): void => stage.lookFrom([1, -0.9, 0.35], 'A'),
  B: (stage: Stage): void => stage.lookFrom([1, -0.9, -0.35], 'B'),
};

const STEP = Math.PI / 18;

const STEPS = {
  left: (stage: Stage): void => stage.turn(-STEP, 0),
  right: (stage: Stage): void => stage.turn(STEP, 0),
  up: (stage: Stage): void => stage.turn(0, STEP),
  down: (stage: Stage): void => stage.turn(0, -STEP),
  nearer: (stage: Stage): void => stage.nearer(1.25),
  farther: (stage: Stage): void => stage.nearer(0.8),
};

/** The same steps by keys. */
export const STEP_OF_KEY: Readonly<Record<string, (stage: Stage) => void>> = {
  ArrowLeft: STEPS.left,
  ArrowRight: STEPS.right,
  ArrowUp: STEPS.up,
  ArrowDown: STEPS.down,
  '+': STEPS.nearer,
  '-': STEPS.farther,
};
