import type { Job } from '../job.ts';
import type { Complaint, Misreading } from './complaint.ts';
import type { TextPlace } from './place.ts';

/** The place of the value at this path or, where it was left to its default, of the nearest thing round it. */
export function locate(job: Job, path: string): TextPlace | undefined {
  for (let outer = path; outer !== ''; outer = outer.replace(/(^|\.)[^.[]+$|\[\d+\]$/, '')) {
    const place = job.origin?.places.get(outer);
    if (place !== undefined) return place;
  }
  return job.origin?.places.get('');
}

/** A complaint about the value at this path, for mistakes that only later stages can see. */
export function complainAt(job: Job, path: string, code: string, misreading: Misreading): Complaint {
  const place = locate(job, path);
  const [key = ''] = path.split('.').at(-1)?.split('[') ?? [];
  const complaint: Complaint = {
    code,
    file: job.origin?.file ?? 'job',
    ...misreading,
    ...(key !== '' && { key }),
  };
  if (place === undefined) return complaint;
  return 'flag' in place ? { ...complaint, read: place.flag } : { ...complaint, ...place };
}
