import type { Job } from '../../src/job/job.ts';
import { type DrawnFrame, spineBy } from './random-frames.ts';
import { minus, type Place, type RayEnd, type RayTube, unitAlong } from './ray-march.ts';

/** The frame as rays see it: who lands on whom is the program's answer, where that stands is not. */
export function rayTubes({ tubes }: DrawnFrame, job: Job): readonly RayTube[] {
  return tubes.map((tube, place): RayTube => {
    const seat = job.frame?.seats[place];
    const face = spineBy(tube.from, tube.to);
    const size = tube.box
      ? { deep: tube.box.deep / 2, wide: tube.box.wide / 2, corner: tube.box.corner, face }
      : { radius: (tube.od ?? 0) / 2 };
    const end = (name: 'A' | 'B'): RayEnd => {
      const cut = job.tubes[place]?.ends[name];
      const headers = seat?.ends[name].headers ?? [];
      if (cut?.kind !== 'coped') return { kind: 'plain', past: seat?.ends[name].past ?? 0 };
      const own = name === 'A' ? tube.from : tube.to;
      if (cut.parts[0].onto.kind === 'mitre') {
        const other = tubes[headers[0] ?? 0] ?? tube;
        const away = (each: DrawnFrame['tubes'][number]): Place =>
          unitAlong(String(each.from) === String(own) ? minus(each.to, own) : minus(each.from, own));
        return { kind: 'plane', normal: unitAlong(minus(away(tube), away(other))) };
      }
      return {
        kind: 'onto',
        headers: headers.map((header) => {
          const its = tubes[header];
          const stops =
            String(its?.from) === String(own) ? 'A' : String(its?.to) === String(own) ? 'B' : undefined;
          return { tube: header, ...(stops && { stops }) };
        }),
      };
    };
    return { from: tube.from, to: tube.to, size, ends: { A: end('A'), B: end('B') } };
  });
}
