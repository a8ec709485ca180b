import type { EndName } from '../../job/job.ts';
import type { Cope } from '../../saddle/cope.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import { useBench } from '../bench.ts';
import type { Path } from '../job/job-doc.ts';
import type { Notes } from '../job/notes.ts';
import { halfShown, type JointLines, JointPicture, jointLines } from '../views/joint-picture.tsx';
import { TubeBody } from '../views/tube-body.tsx';
import { Dial } from './dial.tsx';
import { EndFields } from './end-row.tsx';
import { endKindAt } from './kinds.ts';
import { TubeFields } from './tube-row.tsx';
import { Watch } from './watch.tsx';

interface BoardProps {
  readonly tube: Path;
  /** What is drawn; a ghost where nothing was understood yet. */
  readonly shown: { readonly solution: TubeSolution; readonly ghost: boolean };
  readonly notes: Notes;
  readonly part: string | undefined;
}

interface Drawn {
  readonly cope: Cope;
  readonly lines: JointLines;
}

/** The tube as it stands on its leaves, B up: each joint's picture beside what is asked about it. */
export function Board({ tube, shown, notes, part }: BoardProps) {
  const { doc } = useBench();
  const { solution, ghost } = shown;
  const drawn = (name: EndName): Drawn | undefined => {
    const end = solution.ends[name];
    return end?.kind === 'coped' ? { cope: end, lines: jointLines(end, name) } : undefined;
  };
  const [A, B] = [drawn('A'), drawn('B')];
  const half = halfShown([A, B].flatMap((each) => (each ? [each.lines] : [])));
  const { reach } = solution.section;
  const across = (A ?? B)?.lines.across ?? [-reach, reach];
  const hasB = endKindAt(doc, [...tube, 'ends', 'B']) !== 'none';
  const row = (name: EndName, picture: Drawn | undefined) => (
    <section class={`row end-${name}`} aria-label={`End ${name}`}>
      <div class="picture">
        <div class="strip">
          <span class="letter" aria-hidden="true">
            {name}
          </span>
          {picture && !ghost && (
            <>
              <span class="aside" aria-hidden="true">
                seen from A to B
              </span>
              <Dial
                solution={solution}
                part={picture.cope.end.parts[0]}
                label={`How end ${name} is turned, seen from A to B with the spine on top`}
              />
            </>
          )}
        </div>
        {picture && (
          <JointPicture
            end={name}
            lines={picture.lines}
            half={half}
            ghost={ghost}
            label={`End ${name} from its side${ghost ? ', an example' : ''}`}
          />
        )}
        <TubeBody
          across={picture?.lines.across ?? across}
          half={half}
          ghost={ghost}
          end={
            picture
              ? undefined
              : { at: name === 'A' ? 'bottom' : 'top', cut: solution.ends[name] !== undefined }
          }
        />
      </div>
      <div class="asks">
        <EndFields tube={tube} name={name} />
        <Watch warnings={notes.warnings.filter(({ end }) => end === name)} />
      </div>
    </section>
  );
  return (
    <div class="board" data-part={part?.split('.').at(-1)} data-end={part?.split('.')[0]}>
      {hasB && row('B', B)}
      <section class="row tube" aria-label="Tube">
        <div class="picture">
          <TubeBody
            across={across}
            half={half}
            ghost={ghost}
            end={hasB ? undefined : { at: 'top', cut: false }}
          />
        </div>
        <div class="asks">
          {!hasB && <EndFields tube={tube} name="B" />}
          <TubeFields tube={tube} />
          <Watch warnings={notes.warnings.filter(({ end }) => end === undefined)} />
        </div>
      </section>
      {row('A', A)}
    </div>
  );
}
