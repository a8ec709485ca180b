import { shortened } from '../../draw/breaking.ts';
import { SMALL } from '../../draw/lettering.ts';
import { spelled } from '../../draw/letters.ts';
import { tubeFactsOf } from '../../job/sections.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import type { Language } from '../../words/language.ts';
import { inBoth, sawWords, wrote } from '../names.ts';
import { edgeFacts } from './edge-words.ts';
import type { Fact } from './fact.ts';
import { fitUpFacts } from './fit-up-facts.ts';
import { headerFacts } from './header-facts.ts';

/** What is known of one end and its tube, in the order in which it is needed. */
export function factsOf(
  solution: TubeSolution,
  cope: Cope,
  job: string | undefined,
  units: 'mm' | 'in',
  words: Language,
): Fact[] {
  return [
    ...jobFacts(job),
    ...sizeFacts(solution, cope, units, words),
    ...turnFacts(solution, cope, words),
    ...fitUpFacts(cope, units),
    ...lengthFacts(solution, units),
    ...edgeFacts(cope, units, words),
    ...(cope.end.root
      ? [{ label: 'root gap', text: `${wrote(cope.end.root)}, taken off along the tube` }]
      : []),
    { label: 'girth', text: girthWords(solution, units) },
  ];
}

/** A name as long as this takes a card two lines. */
const JOB_NAME: Mm = 70;

/** The job's name, cut short where it would fill the card. */
export function jobFacts(job: string | undefined): Fact[] {
  return job ? [{ label: 'job', text: shortened(spelled(job), SMALL, JOB_NAME) }] : [];
}

function sizeFacts({ tube }: TubeSolution, { end }: Cope, units: 'mm' | 'in', words: Language): Fact[] {
  return [
    { label: 'tube', text: spelled(tubeFactsOf(tube.section).said(words).words) },
    ...(tube.wall ? [{ label: 'wall', text: wrote(tube.wall) }] : []),
    ...headerFacts(end, units, words),
  ];
}

function turnFacts({ twist, ends }: TubeSolution, cope: Cope, words: Language): Fact[] {
  const other = cope === ends.A ? ends.B : ends.A;
  if (twist === undefined || other?.kind !== 'coped') return [];
  return [{ label: 'twist', text: `${words.quantities.twist(twist)}, from heel A to heel B` }];
}

function lengthFacts({ lengths }: TubeSolution, units: 'mm' | 'in'): Fact[] {
  if (!lengths) return [];
  return [
    { label: 'work points', text: inBoth(lengths.between, units) },
    { label: 'long points', text: inBoth(lengths.overall, units) },
    { label: 'blank', text: `${sawWords(lengths.blank, units)} of stock` },
  ];
}

function girthWords({ section }: TubeSolution, units: 'mm' | 'in'): string {
  return `${inBoth(section.girth, units)} by tape. Seam open: larger tube or smaller print; overlap: the reverse.`;
}
