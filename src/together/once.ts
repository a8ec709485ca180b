import type { Job } from '../job/job.ts';

/** The same, worked out once for each job: a job never changes. */
export function oncePerJob<Result>(workOut: (job: Job) => Result): (job: Job) => Result {
  const known = new WeakMap<Job, { readonly result: Result }>();
  return (job) => {
    const { result } = known.get(job) ?? { result: workOut(job) };
    known.set(job, { result });
    return result;
  };
}
