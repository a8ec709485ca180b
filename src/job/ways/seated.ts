import { isMap, isScalar, isSeq, type Pair, type YAMLMap } from 'yaml';
import { readLength } from '../../measure/length.ts';
import type { Job } from '../job.ts';
import { readJob } from '../read-job.ts';
import { type Complaint, Refusal } from '../text/complaint.ts';
import { parseJobText } from '../text/text.ts';

/**
 * The job after its first cut: end A is coped and seated, and `length` was measured along the spine from its cut edge
 * to the level of end B's length mark. It is written into the text of the job as `between: { seated: length }`, so that
 * what is printed travels with the corrected job. Throws `Refusal` where the length can't be read or the job is not
 * one tube with both ends; and with any mistake that the corrected job has.
 */
export function jobWithSeated(job: Job, length: string): Job {
  const reading = readLength(length, job.units);
  if (!reading.ok) {
    const { why, instead } = job.words.faults.said(reading.fault);
    throw refusal('length', length, why, instead);
  }
  if (reading.value.mm <= 0) throw refusal('not-positive', length, 'it has to be more than 0', EXAMPLE);
  const [tube, another] = job.tubes;
  if (tube === undefined || another !== undefined) {
    throw refusal(
      'seated',
      length,
      'it is a length of one tube, and the job has several',
      'a job of that tube alone',
    );
  }
  if (!(tube.ends.A && tube.ends.B)) {
    const why = 'it reaches from the seated end A to end B, and the job has only one of the two';
    throw refusal('seated', length, why, 'a job with both ends');
  }
  const file = job.origin?.file ?? 'job';
  const { paper } = job.sheet;
  return readJob(withSeated(job.source, file, length), file, {
    words: job.words,
    paper,
    insistOnPaper: paper,
  });
}

const EXAMPLE = 'a length such as 587mm or 23-1/8in';

function refusal(code: string, length: string, why: string, instead: string): Refusal {
  const complaint: Complaint = {
    code,
    file: 'command line',
    read: `--seated ${length}`,
    why,
    instead,
    key: 'between',
  };
  return new Refusal([complaint]);
}

/** The text of a job with its tube's `between`, key and value, replaced. */
function withSeated(source: string, file: string, length: string): string {
  const { document } = parseJobText(source, file);
  const pair = isMap(document.contents) ? betweenOf(document.contents) : undefined;
  const [from, end] = [startOf(pair), endOf(pair)];
  if (from === undefined || end === undefined) throw new Error('a tube with both ends has its `between`');
  // A value of several lines ends with the last line's own end.
  const to = source.slice(0, end).trimEnd().length;
  return `${source.slice(0, from)}between: { seated: ${JSON.stringify(length)} }${source.slice(to)}`;
}

function betweenOf(root: YAMLMap): Pair | undefined {
  const tubes = pairOf(root, 'tubes')?.value;
  const tube = isSeq(tubes) ? tubes.items[0] : pairOf(root, 'tube')?.value;
  return isMap(tube) ? pairOf(tube, 'between') : undefined;
}

function pairOf(map: YAMLMap, name: string): Pair | undefined {
  return map.items.find(({ key }) => isScalar(key) && key.value === name);
}

function startOf(pair: Pair | undefined): number | undefined {
  return isScalar(pair?.key) ? pair.key.range?.[0] : undefined;
}

function endOf(pair: Pair | undefined): number | undefined {
  const value = pair?.value;
  return isScalar(value) || isMap(value) || isSeq(value) ? value.range?.[1] : undefined;
}
