import type { Part, Tube } from '../job/job.ts';
import { scheduleName } from '../measure/pipe.ts';
import { BIRMINGHAM_THOUSANDTHS } from '../measure/sizes/gauge.ts';
import { DN_DIAMETERS, NPS_SIZES, type NpsSize } from '../measure/sizes/pipe.ts';
import { commonDiameter, isDiameter } from '../measure/sizes/tube.ts';
import { type Length, MM_PER_INCH, type Mm } from '../measure/units.ts';
import type { Language } from '../words/language.ts';
import type { Warning } from './warnings.ts';

/** What is told of a doubt; undefined where there is none. */
export type Doubt = Pick<Warning, 'text' | 'inFile'> | undefined;

/** Whether a tube of some size measures so: the mill leaves it a little under, and zinc or paint over it. */
function measures(mm: Mm): boolean {
  const [over, under] = [0.3, 0.2];
  return isDiameter(mm + (under - over) / 2, (under + over) / 2 + 1e-9);
}

/** What a diameter was meant as, beside those of the same tube and its headers. */
export function doubtOfSize(od: Length, beside: readonly Length[], words: Language): Doubt {
  if (!od.bare) return undefined;
  return od.tape === undefined
    ? (girthAcross(od, beside, words) ?? bore(od, beside, words) ?? digits(od, words))
    : acrossRound(od, od.tape, words);
}

/**
 * The way round a tube in place of its diameter; it was read to the last figure that is written. One that may be a size under paint is
 * doubted where it is the way round another that stands beside it.
 */
function girthAcross(od: Length, beside: readonly Length[], { warnings }: Language): Doubt {
  const within = acrossFrom(od) + 0.05;
  const across = od.mm / Math.PI;
  const likely = measures(od.mm)
    ? beside.find(({ mm }) => !isDiameter(od.mm, 0.05) && Math.abs(mm - across) <= within)?.mm
    : commonDiameter(across, within);
  return likely === undefined ? undefined : warnings.asMeant.girthAcross(od, likely);
}

/** How far off a diameter may be that follows from a way round, read to the last figure that is written. */
function acrossFrom({ wrote, unit }: Length): Mm {
  const { length } = /\d?[.,](\d+)/.exec(wrote)?.[1] ?? '';
  return (10 ** -length * (unit === 'in' ? MM_PER_INCH : 1)) / 2 / Math.PI;
}

/** Walls in which pipe of EN 10220 is kept: from memory. */
const KEPT_WALLS: readonly Mm[] = [2, 2.3, 2.6, 2.9, 3.2, 3.6, 4, 4.5, 5, 5.6, 6.3];

/** What an open end measures inside, of a size that stands beside it. */
function bore(od: Length, beside: readonly Length[], { warnings }: Language): Doubt {
  if (measures(od.mm)) return undefined;
  const of = beside.flatMap((outside) => {
    const wall = KEPT_WALLS.find((each) => Math.abs(outside.mm - 2 * each - od.mm) < 0.06);
    return wall === undefined ? [] : [warnings.asMeant.bore(od, outside, wall)];
  });
  return of[0];
}

/** A diameter in place of the way round. */
function acrossRound(od: Length, tape: Mm, { warnings }: Language): Doubt {
  const { mm, unit } = od;
  const girth = Math.PI * (mm + tape);
  if (isDiameter(mm, acrossFrom(od) + 0.05) || commonDiameter(girth, 0.06) === undefined) return undefined;
  return warnings.asMeant.acrossRound(girth, mm, unit === 'in' ? 'in' : 'mm');
}

/** Two figures the wrong way round, `45.4` for `44.5`; where they make another size altogether, that is seen. */
function digits(od: Length, { warnings }: Language): Doubt {
  if (measures(od.mm)) return undefined;
  const [, whole = '', decimals] = /^(\d+)[.,](\d+)$/.exec(od.wrote.trim()) ?? [];
  if (decimals === undefined) return undefined;
  const figures = [...whole, ...decimals];
  const per = od.unit === 'in' ? MM_PER_INCH : 1;
  const turned = figures.slice(1).map((second, i) => {
    const all = figures.with(i, second).with(i + 1, figures[i] ?? '');
    return `${all.slice(0, whole.length).join('')}.${all.slice(whole.length).join('')}`;
  });
  const likely = turned.find(
    (each) =>
      Math.abs((Number(each) * per) / od.mm - 1) < 0.25 &&
      commonDiameter(Number(each) * per, 0.06) !== undefined,
  );
  return likely === undefined ? undefined : warnings.asMeant.digits(od, likely);
}

/** Half a thousandth of an inch: a wall written to thousandths is of one table or of the other. */
const SAME_WALL: Mm = MM_PER_INCH / 2000;

/** Of the heavier ones some walls are drawn tube's too, as the 1/4 in of NPS 1 sch 160. */
const COMMON_SCHEDULES = ['40', '80'] as const;

/** The name of a pipe for its diameter, where the wall is that pipe's and no tube's. */
export function nominal(od: Length, wall: Length | undefined, { warnings }: Language): Doubt {
  const size = NPS_SIZES.find(({ inches }) => Math.abs(inches * MM_PER_INCH - od.mm) < 0.05);
  if (!size || !wall || wall.byName) return undefined;
  const schedule = COMMON_SCHEDULES.find((each) => Math.abs(size.walls[each].mm - wall.mm) < SAME_WALL);
  const gauges = [...BIRMINGHAM_THOUSANDTHS.values()].map((each) => (each / 1000) * MM_PER_INCH);
  if (!schedule || gauges.some((gauge) => Math.abs(gauge - wall.mm) < SAME_WALL)) return undefined;
  return warnings.asMeant.nominal(od, wall, `NPS ${size.name} ${scheduleName(schedule)}`, size.od);
}

/** The diameters of a tube and of its headers. */
export function diametersOf({ section, ends }: Tube): readonly Length[] {
  const headers = partsAt(ends).map(({ onto }) => onto);
  return [section, ...headers].flatMap((each) => ('od' in each ? [each.od] : []));
}

/** What both ends of a tube land on. */
export function partsAt({ A, B }: Tube['ends']): readonly Part[] {
  return [A, B].flatMap((end) => (end?.kind === 'coped' ? end.parts : []));
}

/** The pipes among them by their names. */
function pipesAmong(diameters: readonly Length[]): readonly NpsSize[] {
  const named = diameters.filter(({ byName, wrote }) => byName && /^nps/i.test(wrote));
  return NPS_SIZES.filter(({ od }) => named.some(({ mm }) => mm === od.mm || mm === od.in));
}

/** A header whose number is the DN of the pipe that stands beside it at the other end: in decimals, or with its unit, it is a diameter. */
export function alsoDn(od: Length, headers: readonly Length[], { warnings }: Language): Doubt {
  const pipe = od.bare && /^\d+$/.test(od.wrote.trim()) ? DN_DIAMETERS.get(Number(od.wrote)) : undefined;
  const meant = headers.find(({ mm }) => pipe !== undefined && Math.abs(mm - pipe) < 0.5);
  return meant && warnings.asMeant.alsoDn(od, meant);
}

/** A header as wide as the name of a pipe that stands beside it; in decimals it is a diameter. */
export function alsoPipe(od: Length, beside: readonly Length[], { warnings }: Language): Doubt {
  if (od.byName || /[.,]/.test(od.wrote)) return undefined;
  const pipe = pipesAmong(beside).find(({ inches }) => Math.abs(inches * MM_PER_INCH - od.mm) < 0.05);
  return pipe && warnings.asMeant.alsoPipe(od, `NPS ${pipe.name}`, pipe.od);
}
