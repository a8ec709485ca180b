import type { Part } from '../../job/job.ts';
import { complain } from '../../job/text/desk.ts';
import { degrees } from '../../measure/units.ts';
import { asWritten } from '../../words/said.ts';
import type { CutAsk } from '../asked.ts';
import { type Meeting, meetingOf, partOfMeeting, stopOfMeeting } from '../meeting.ts';
import { askedEnd, type Stood, type StoodEnd } from '../stood.ts';
import type { PossibleHeader } from './candidates.ts';
import { type CutEnd, endOf, LEAST, type Surroundings } from './cut-end.ts';
import { metOf } from './touching.ts';

/** A candidate, how it lies to the end, and the part of the cut that it makes. */
interface Landed {
  readonly candidate: PossibleHeader;
  readonly meeting: Meeting;
  readonly part: Part;
}

/** The end coped onto those candidates that its wall comes to; `untouched` where it comes to none that the file names. */
export function coped(
  surroundings: Surroundings,
  own: StoodEnd,
  candidates: readonly PossibleHeader[],
): CutEnd | 'untouched' | undefined {
  if (candidates.length === 0) return 'untouched';
  const { cut: asks } = askedEnd(own);
  const landed = candidates.flatMap((candidate): Landed[] => {
    const meeting = meetingOf(own, candidate.tube);
    const part = meeting && partWith(surroundings, asks, meeting, candidate, true);
    return meeting && part ? [{ candidate, meeting, part }] : [];
  });
  const met = metOf(
    own.tube,
    landed.map(({ part }) => part),
  );
  const kept = landed.filter((_, i) => met[i]);
  const [first] = kept;
  if (!first) return missed(own, candidates, landed);
  const narrow = kept.find(({ meeting }) => meeting.angle < LEAST);
  if (narrow && asks.kind !== 'onto') return tooFlat(own, narrow.candidate.tube, narrow.meeting.angle);
  const near = kept.flatMap(({ candidate }) => (candidate.near ? [candidate.tube] : []));
  const headers = kept.map(({ candidate }) => candidate.tube);
  const alone =
    kept.length === 1 ? partWith(surroundings, asks, first.meeting, first.candidate, false) : undefined;
  const parts = alone ? [alone] : kept.map(({ part }) => part);
  const cut = endOf(own, parts, headers, alone ? first.meeting.shift : 0);
  return cut && { ...cut, near };
}

function missed(
  own: StoodEnd,
  candidates: readonly PossibleHeader[],
  landed: readonly Landed[],
): 'untouched' | undefined {
  const { cut, spot } = askedEnd(own);
  if (cut.kind === 'onto') {
    const names = candidates.map(({ tube }) => asWritten(tube.name));
    return complain(spot, 'misses', spot.desk.words.job.frame.missesAll(names));
  }
  const unplaced = landed.length < candidates.length;
  return unplaced ? tooFlat(own, candidates[0]?.tube ?? own.tube, 0) : 'untouched';
}

function tooFlat(own: StoodEnd, header: Stood, angle: number): undefined {
  const { spot } = askedEnd(own);
  const { frame } = spot.desk.words.job;
  const objection = frame.tooFlat(asWritten(own.tube.name), asWritten(header.name), degrees(angle));
  complain(spot, 'angle', objection);
}

function partWith(
  surroundings: Surroundings,
  asks: CutAsk,
  meeting: Meeting,
  { tube, end }: PossibleHeader,
  shifted: boolean,
): Part | undefined {
  const part = partOfMeeting(meeting, shifted, meeting.header.asked.spot.desk.bareUnit);
  if (end === undefined) return part;
  const its = surroundings.find({ tube, end });
  const name = asks.kind === 'found' ? { name: tube.name } : {};
  return its && { ...part, stops: { ...stopOfMeeting(meeting, end, its), ...name } };
}
