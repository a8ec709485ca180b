import type { Job } from '../job/job.ts';
import type { Complaint } from '../job/text/complaint.ts';
import { complainAt } from '../job/text/origin.ts';
import { type Comparison, disagreement, lengthLimit, readingsInWords } from '../job/ways/agreement.ts';
import { betweenInWords } from '../job/ways/between.ts';
import type { Mm } from '../measure/units.ts';
import { writeLength } from '../measure/write.ts';
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
    const objection = job.words.job.noLength[came.fault]();
    const read = `between: ${betweenInWords(reading)}`;
    const place = lengths.length > 1 ? `${path}[${i}]` : path;
    return [complainAt(job, place, 'no-reading', { read, ...objection })];
  });
  return nothing.length > 0 ? nothing : differences(job, lengths, path);
}

function differences(job: Job, lengths: readonly ReadLength[], path: string): Complaint[] {
  const [first, ...others] = cameOf(lengths);
  const off = first && others.find((other) => disagreement(first, other, compared(job.units)));
  const apart = first && off && disagreement(first, off, compared(job.units));
  if (!apart) return [];
  const read = `between: ${lengths.map(({ reading }) => betweenInWords(reading)).join(' and ')}`;
  return [complainAt(job, path, 'readings-differ', { read, ...apart })];
}

/** Each measured length in words with what it came to; none where the length was told as itself. */
export function lengthsInWords(lengths: readonly ReadLength[], unit: 'mm' | 'in'): readonly string[] {
  const [first, ...others] = cameOf(lengths);
  if (!first || (others.length === 0 && first.read.reading.way === 'work-points')) return [];
  return readingsInWords([first, ...others], compared(unit));
}

function cameOf(lengths: readonly ReadLength[]): Came[] {
  return lengths.flatMap((read) => (read.came.ok ? [{ read, mm: read.came.value }] : []));
}

function compared(unit: 'mm' | 'in'): Comparison<Came> {
  return {
    say: ({ read: { reading }, mm }) => {
      const words = betweenInWords(reading);
      return reading.way === 'work-points' ? words : `${words}, that is ${writeLength(mm, unit)}`;
    },
    more: (value, other) => value.mm - other.mm,
    ...lengthLimit(unit),
  };
}
