import { readFrame } from '../../src/frame/read-frame.ts';
import type { CopedEnd, EndName, Job, Part } from '../../src/job/job.ts';
import { PAPERS } from '../../src/job/paper/paper.ts';
import type { Complaint } from '../../src/job/text/complaint.ts';
import { Refusal } from '../../src/job/text/complaint.ts';
import { ENGLISH } from '../../src/words/english.ts';

const [paper] = PAPERS;

export function readText(text: string): Job {
  if (!paper) throw new Error('there is no paper');
  return readFrame(text, 'frame.yaml', { words: ENGLISH, paper });
}

/** A frame file: these points, these tubes, each a flow mapping without its braces, and what else the frame has. */
export function fileOf(
  points: Readonly<Record<string, string>>,
  tubes: readonly string[],
  more: readonly string[] = [],
): string {
  return [
    'copeleaf: 1',
    'units: mm',
    'frame:',
    ...more.map((line) => `  ${line}`),
    '  points:',
    ...Object.entries(points).map(([name, at]) => `    ${name}: ${at}`),
    '  tubes:',
    ...tubes.map((tube) => `    - { ${tube} }`),
    '',
  ].join('\n');
}

export function readLines(...file: Parameters<typeof fileOf>): Job {
  return readText(fileOf(...file));
}

/** What is complained about; none where the file is read. */
export function complaintsOf(text: string): readonly Complaint[] {
  try {
    readText(text);
    return [];
  } catch (error) {
    if (error instanceof Refusal) return error.complaints;
    throw error;
  }
}

/** How an end came out: its headers by their names, with what stops marked, or how far a plain end runs past. */
export function endOf(job: Job, name: string, end: EndName): string {
  const place = job.tubes.findIndex((tube) => tube.name === name);
  const [tube, seat] = [job.tubes[place], job.frame?.seats[place]];
  const cut = tube?.ends[end];
  if (!tube || !seat || !cut) throw new Error(`there is no ${name} ${end}`);
  const { headers, past, open, inside } = seat.ends[end];
  const nameOf = (index: number | undefined): string => job.tubes[index ?? -1]?.name ?? '';
  if (cut.kind !== 'coped') {
    const more = `${open ? ' open' : ''}${inside === undefined ? '' : ` inside ${nameOf(inside)}`}`;
    return `plain ${(past ?? 0).toFixed(3)}${more}`;
  }
  return cut.parts
    .map((part, i) => {
      const onto = nameOf(headers[i]);
      if (part.onto.kind === 'mitre') return `mitre ${onto}`;
      if (part.onto.kind === 'plate') return 'flat';
      return `${part.stops ? 'stopped ' : ''}${onto}`;
    })
    .join(' + ');
}

/** A coped end of a tube, and the first of its parts. */
export function copedOf(job: Job, name: string, end: EndName): CopedEnd & { readonly first: Part } {
  const cut = job.tubes.find((tube) => tube.name === name)?.ends[end];
  if (cut?.kind !== 'coped') throw new Error(`${name} ${end} is not coped`);
  return { ...cut, first: cut.parts[0] };
}
