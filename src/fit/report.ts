import type { TubeSolution } from '../saddle/solve.ts';
import type { Language } from '../words/language.ts';
import { asMeant } from './as-meant.ts';
import { type Beside, besideIn } from './beside.ts';
import { type EndReport, reportEnd } from './end-report.ts';
import { endWarnings, tubeWarnings, type Warning } from './warnings.ts';

/** All that is known about one tube of one hand. */
export interface TubeReport {
  readonly solution: TubeSolution;
  readonly ends: {
    readonly A?: EndReport | 'plain';
    readonly B?: EndReport | 'plain';
  };
  readonly warnings: readonly Warning[];
}

/** A warning and the tube that it is about. */
export interface TubeWarning {
  readonly solution: TubeSolution;
  readonly warning: Warning;
}

/** Every warning of these tubes of a job, once for both hands: the opposite hand's are those of its twin. */
export function warningsOf(
  solutions: readonly TubeSolution[],
  words: Language,
  all: readonly TubeSolution[] = solutions,
): readonly TubeWarning[] {
  const beside = besideIn(all, words);
  return solutions
    .filter(({ hand }) => hand === 'as-drawn')
    .flatMap((solution) =>
      reportTube(solution, words, beside).warnings.map((warning) => ({ solution, warning })),
    );
}

/** `beside`: what the other tubes of its job tell of it. */
export function reportTube(solution: TubeSolution, words: Language, beside: Beside = () => []): TubeReport {
  const { tube } = solution;
  const look = (name: 'A' | 'B'): EndReport | 'plain' | undefined => {
    const end = solution.ends[name];
    if (!end) return undefined;
    return end.kind === 'plain' ? 'plain' : reportEnd(tube, end);
  };
  const A = look('A');
  const B = look('B');
  const warnings = [
    ...(A && A !== 'plain' ? endWarnings(solution, 'A', A, words) : []),
    ...(B && B !== 'plain' ? endWarnings(solution, 'B', B, words) : []),
    ...tubeWarnings(solution, words),
    ...asMeant(solution, words),
    ...beside(solution),
  ];
  return { solution, ends: { ...(A && { A }), ...(B && { B }) }, warnings };
}
