import type { Job } from '../job/job.ts';
import type { Complaint } from '../job/text/complaint.ts';
import { complainAt } from '../job/text/origin.ts';
import { type Comparison, disagreement, lengthLimit, readingsInWords } from '../job/ways/agreement.ts';
import { betweenInWords } from '../job/ways/between.ts';
import type { Said } from '../measure/said.ts';
import type { Mm } from '../measure/units.ts';
import type { Language } from '../words/language.ts';
import type { ReadLength } from './readings.ts';

/** A measured length that came to a number, from work point to work point. */
interface Came {
  readonly read: ReadLength;
  readonly mm: Mm;
}

/** What is wrong with a tube's measured lengths: one that comes to nothing, or two that differ. */
export function complaintsOfLengths(job: Job, lengths: readonly ReadLength[], path: string): Complaint[] {
  const nothing = lengths.flatMap(({ reading, came }, i) => {
    if (came.ok) return [];
    const objection = job.words.job.ways.noLength[came.fault];
    const read = betweenRead([{ reading }], job.words);
    const place = lengths.length > 1 ? `${path}[${i}]` : path;
    return [complainAt(job, place, 'no-reading', { read, ...objection })];
  });
  return nothing.length > 0 ? nothing : differences(job, lengths, path);
}

function differences(job: Job, lengths: readonly ReadLength[], path: string): Complaint[] {
  const { words, units } = job;
  const [first, ...others] = cameOf(lengths);
  const [apart] = others.flatMap((other) =>
    first ? (disagreement(first, other, compared(units, words), words) ?? []) : [],
  );
  if (!apart) return [];
  const read = betweenRead(lengths, words);
  return [complainAt(job, path, 'readings-differ', { read, ...apart })];
}

/** The key with all that was measured for it, as a message quotes it. */
export function betweenRead(lengths: readonly Pick<ReadLength, 'reading'>[], words: Language): Said {
  const { under, all } = words.job.ways;
  return under('between', all(lengths.map(({ reading }) => betweenInWords(reading, words))));
}

/** Each measured length in words with what it came to; none where the length was told as itself. */
export function lengthsInWords(
  lengths: readonly ReadLength[],
  unit: 'mm' | 'in',
  words: Language,
): readonly Said[] {
  const [first, ...others] = cameOf(lengths);
  if (!first || (others.length === 0 && first.read.reading.way === 'work-points')) return [];
  return readingsInWords([first, ...others], compared(unit, words), words);
}

function cameOf(lengths: readonly ReadLength[]): Came[] {
  return lengths.flatMap((read) => (read.came.ok ? [{ read, mm: read.came.value }] : []));
}

function compared(unit: 'mm' | 'in', words: Language): Comparison<Came> {
  return {
    say: ({ read: { reading }, mm }) => {
      const read = betweenInWords(reading, words);
      if (reading.way === 'work-points') return read;
      return words.job.ways.cameTo(read, words.quantities.inOne(mm, unit));
    },
    more: (value, other) => value.mm - other.mm,
    ...lengthLimit(unit, words),
  };
}
