import type { TubeSolution } from '../saddle/solve.ts';
import type { Language } from '../words/language.ts';
import { asMeant } from './as-meant.ts';
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

/** Every warning of a job, once for both hands: the opposite hand's are those of its twin. */
export function warningsOf(solutions: readonly TubeSolution[], words: Language): readonly TubeWarning[] {
  return solutions
    .filter(({ hand }) => hand === 'as-drawn')
    .flatMap((solution) => reportTube(solution, words).warnings.map((warning) => ({ solution, warning })));
}

export function reportTube(solution: TubeSolution, words: Language): TubeReport {
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
  ];
  return { solution, ends: { ...(A && { A }), ...(B && { B }) }, warnings };
}
