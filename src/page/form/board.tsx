import type { EndName } from '../../job/job.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import { useBench } from '../bench.ts';
import { halfShown, type JointLines, JointPicture, jointLines } from '../views/joint-picture.tsx';
import { TubeBody } from '../views/tube-body.tsx';
import { useWords } from '../words.ts';
import { Dial } from './dial.tsx';
import { EndFields } from './end-row.tsx';
import { endKindAt } from './kinds.ts';
import { TubeFields } from './tube-row.tsx';
import { Watch } from './watch.tsx';

interface BoardProps {
  /** What is drawn; a ghost where nothing was understood yet. */
  readonly solution: TubeSolution;
  readonly ghost: boolean;
}

interface Drawn {
  readonly cope: Cope;
  readonly lines: JointLines;
}

/** The tube as it stands on its leaves, B up: each joint's picture beside what is asked about it. */
export function Board(props: BoardProps) {
  const { solution, ghost } = props;
  const { doc, tube, notes, part } = useBench();
  const words = useWords();
  const drawn = (name: EndName): Drawn | undefined => {
    const end = solution.ends[name];
    return end?.kind === 'coped' ? { cope: end, lines: jointLines(end, name, words) } : undefined;
  };
  const [A, B] = [drawn('A'), drawn('B')];
  const half = halfShown([A, B].flatMap((each) => (each ? [each.lines] : [])));
  const { reach } = solution.section;
  const body = { across: (A ?? B)?.lines.across ?? [-reach, reach], half, ghost };
  const hasB = endKindAt(doc, [...tube, 'ends', 'B']) !== 'none';
  return (
    <div class="board" data-part={aspectOf('tube', part)}>
      {hasB && <EndRow {...props} name="B" drawn={B} body={body} />}
      <section class="row tube" aria-label={words.page.form.board.tube}>
        <div class="picture">
          <TubeBody {...body} end={hasB ? undefined : { at: 'top', cut: false }} />
        </div>
        <div class="asks stack">
          {!hasB && <EndFields name="B" />}
          <TubeFields />
          <Watch warnings={notes.warnings.filter(({ end }) => end === undefined)} />
        </div>
      </section>
      <EndRow {...props} name="A" drawn={A} body={body} />
    </div>
  );
}

interface EndRowProps extends BoardProps {
  readonly name: EndName;
  readonly drawn: Drawn | undefined;
  /** How the tube is drawn where nothing of its end says otherwise. */
  readonly body: { readonly across: readonly Mm[]; readonly half: Mm; readonly ghost: boolean };
}

/** One end: how it is turned, its joint, and what is asked about it. */
function EndRow({ solution, ghost, name, drawn, body }: EndRowProps) {
  const { notes, part } = useBench();
  const words = useWords().page.form.board;
  const open = { at: name === 'A' ? 'bottom' : 'top', cut: solution.ends[name] !== undefined } as const;
  return (
    <section class={`row end-${name}`} data-part={aspectOf(name, part)} aria-label={words.end(name)}>
      <div class="picture">
        <div class="strip">
          <span class="letter" aria-hidden="true">
            {name}
          </span>
          {drawn && !ghost && (
            <>
              <span class="aside" aria-hidden="true">
                {words.seenFrom}
              </span>
              <Dial solution={solution} part={drawn.cope.end.parts[0]} label={words.dial(name)} />
            </>
          )}
        </div>
        {drawn && (
          <JointPicture
            end={name}
            lines={drawn.lines}
            half={body.half}
            ghost={ghost}
            label={words.picture(name, ghost)}
          />
        )}
        <TubeBody {...body} across={drawn?.lines.across ?? body.across} end={drawn ? undefined : open} />
      </div>
      <div class="asks stack">
        <EndFields name={name} />
        <Watch warnings={notes.warnings.filter(({ end }) => end === name)} />
      </div>
    </section>
  );
}

/** What of the tube or of an end the person is at; undefined while it is another's. */
function aspectOf(whose: 'tube' | EndName, part: string | undefined): string | undefined {
  const [own, aspect] = part?.split('.') ?? [];
  return own === whose ? aspect : undefined;
}
