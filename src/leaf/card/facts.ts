import { shortened } from '../../draw/breaking.ts';
import { TEXT } from '../../draw/lettering.ts';
import { spelled } from '../../draw/letters.ts';
import { tubeFactsOf } from '../../job/sections.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import type { Language } from '../../words/language.ts';
import { asWritten } from '../../words/said.ts';
import { edgeFacts } from './edge-words.ts';
import { type Fact, factOf } from './fact.ts';
import { fitUpFacts } from './fit-up-facts.ts';
import { headerFacts } from './header-facts.ts';
import { weldFacts } from './zones.ts';

/** What is known of one end and its tube, in the order in which it is needed. */
export function cardFactsOf(
  solution: TubeSolution,
  cope: Cope,
  job: string | undefined,
  units: 'mm' | 'in',
  words: Language,
): Fact[] {
  const { card } = words;
  const { root } = cope.end;
  return [
    ...jobFacts(job, words),
    ...sizeFacts(solution, cope, units, words),
    ...turnFacts(solution, cope, words),
    ...fitUpFacts(cope, units, words),
    ...lengthFacts(solution, units, words),
    ...edgeFacts(cope, units, words),
    ...weldFacts(cope, words),
    ...(root ? [factOf('root', card.labels.root, spelled(card.root(root)))] : []),
  ];
}

/** A name as long as this takes a card two lines. */
const JOB_NAME: Mm = 70;

/** The job's name, cut short where it would fill the card. */
export function jobFacts(job: string | undefined, { card }: Language): Fact[] {
  return job ? [factOf('job', card.labels.job, shortened(spelled(asWritten(job)), TEXT, JOB_NAME))] : [];
}

function sizeFacts({ tube }: TubeSolution, cope: Cope, units: 'mm' | 'in', words: Language): Fact[] {
  const { labels } = words.card;
  return [
    factOf('tube', labels.tube, spelled(tubeFactsOf(tube.section).said(words).words)),
    ...(tube.wall ? [factOf('wall', labels.wall, spelled(words.quantities.sized(tube.wall)))] : []),
    ...headerFacts(cope, units, words),
  ];
}

function turnFacts({ twist, ends }: TubeSolution, cope: Cope, { card }: Language): Fact[] {
  const other = cope === ends.A ? ends.B : ends.A;
  if (twist === undefined || other?.kind !== 'coped') return [];
  return [factOf('twist', card.labels.twist, card.twist(twist))];
}

function lengthFacts({ lengths }: TubeSolution, units: 'mm' | 'in', { card, quantities }: Language): Fact[] {
  if (!lengths) return [];
  return [
    factOf('work-points', card.labels.workPoints, quantities.tape(lengths.between, units)),
    factOf('long-points', card.labels.longPoints, quantities.tape(lengths.overall, units)),
    factOf('blank', card.labels.blank, card.stock(lengths.blank, units)),
  ];
}
