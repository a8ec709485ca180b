import { isMap, isScalar, isSeq, type Pair, type YAMLMap } from 'yaml';
import { readLength } from '../../measure/length.ts';
import { asWritten, type Objection } from '../../words/said.ts';
import type { Job } from '../job.ts';
import { readJob } from '../read-job.ts';
import { Refusal } from '../text/complaint.ts';
import { clipped, onOneLine } from '../text/quoting.ts';
import { parseJobText } from '../text/text.ts';

/**
 * The job after its first cut: end A is coped and seated, and `length` was measured along the spine from its cut edge
 * to the level of end B's length mark. It is written into the text of the job as `between: { seated: length }`, so that
 * what is printed travels with the corrected job. Throws `Refusal` where the length can't be read or the job is not
 * one tube with both ends; and with any mistake that the corrected job has.
 */
export function jobWithSeated(job: Job, length: string): Job {
  const reading = readLength(length, job.units);
  const { faults, job: jobWords } = job.words;
  const words = jobWords.ways.seated;
  const refuse = (code: string, objection: Objection): Refusal =>
    new Refusal([
      {
        code,
        file: jobWords.commandLine,
        read: asWritten(clipped(onOneLine(`--seated ${length}`))),
        ...objection,
        key: 'between',
      },
    ]);
  if (!reading.ok) throw refuse('length', faults.said(reading.fault));
  if (reading.value.mm <= 0) throw refuse('not-positive', words.notPositive);
  const [tube, another] = job.tubes;
  if (tube === undefined || another !== undefined) throw refuse('seated', words.severalTubes);
  if (!(tube.ends.A && tube.ends.B)) throw refuse('seated', words.oneEnd);
  const file = job.origin?.file ?? 'job';
  const { paper } = job.sheet;
  return readJob(withSeated(job.source, file, length), file, {
    words: job.words,
    paper,
    insistOnPaper: paper,
  });
}

/** The text of a job with its tube's `between`, key and value, replaced. */
function withSeated(source: string, file: string, length: string): string {
  const parsed = parseJobText(source, file);
  if (!parsed.ok) throw new Error('the text of a job that was read is YAML');
  const { document } = parsed.value;
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
