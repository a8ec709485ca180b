import { toNumber } from './fraction.ts';
import { readLength } from './length.ts';
import { readNumber } from './number.ts';
import { type Reading, refused, taken } from './reading.ts';
import { EN_DIAMETERS, NPS_SIZES, type NpsSize, SCHEDULES, type Schedule } from './sizes/pipe.ts';
import { plainSpelling } from './spelling.ts';
import type { Length } from './units.ts';

/** What the name of a size stands for. The wall is known where its schedule or thickness is a part of the name. */
export interface PipeSize {
  readonly od: Length;
  readonly wall?: Length;
}

/** Longer than any name of a size. */
const LONGEST = 40;

/**
 * Reads a pipe by the name of its size: `NPS 1-1/2 sch 40` or `NPS 1-1/2` from ASME B36.10M in its column of `unit`, which the rest
 * of the job is written in; `EN 48.3 x 2.6` or `EN 48.3` from EN 10220 series 1. Does not throw.
 */
export function readPipe(text: string, unit: 'mm' | 'in'): Reading<PipeSize> {
  const read = text.trim();
  if (read.length > LONGEST) return refused(`${read.slice(0, LONGEST)}...`, { kind: 'no-size-name' });
  const [series = ''] = /^[a-z]*/.exec(plainSpelling(read).toLowerCase()) ?? [];
  if (series.startsWith('nps')) return readNps(read, unit);
  if (series === 'en') return readEn(read, unit);
  return refused(read, { kind: series === 'dn' ? 'nominal-diameter' : 'which-series' });
}

/** Whether a text is one that `readPipe` is meant for, whether or not it knows the size. */
export function namesPipe(text: string): boolean {
  return /^(nps|en|dn) ?\d/i.test(plainSpelling(text));
}

function readNps(read: string, unit: 'mm' | 'in'): Reading<PipeSize> {
  let at = read.search(/sch|xxs/i);
  while (at > 0 && /[\s,]/.test(read.charAt(at - 1))) at -= 1;
  const named = at < 0 ? read : read.slice(0, at);
  const size = findNps(read, named);
  if (!size.ok) return size;
  const od: Length = { mm: size.value.od[unit], wrote: named, unit, byName: true };
  if (at < 0) return taken({ od });
  const scheduleNamed = read.slice(at).replace(/^[\s,]+/, '');
  const bare = plainSpelling(scheduleNamed).replace(/^sch(edule)?\.? ?/i, '');
  const schedule = SCHEDULES.find((each) => each === bare.toUpperCase());
  if (schedule === undefined) {
    return refused(read, { kind: 'schedule-not-known', known: SCHEDULES.map(scheduleName), named });
  }
  const wall: Length = { mm: size.value.walls[schedule][unit], wrote: scheduleNamed, unit, byName: true };
  return taken({ od, wall });
}

/** `sch 40`, `XXS`. */
export function scheduleName(schedule: Schedule): string {
  return schedule === 'XXS' ? schedule : `sch ${schedule}`;
}

function findNps(read: string, named: string): Reading<NpsSize> {
  const number = plainSpelling(named).replace(/^nps ?| ?(in|inch|inches|")$/gi, '');
  const reading = readNumber(number);
  if (!reading.ok) return refused(read, { kind: 'number-in-name', within: reading.fault });
  const inches = toNumber(reading.value);
  const size = NPS_SIZES.find((each) => each.inches === inches);
  if (size) return taken(size);
  const near = neighbours(inches, NPS_SIZES, (each) => each.inches).map((each) => `NPS ${each.name}`);
  return refused(read, { kind: 'nps-not-known', near });
}

function readEn(read: string, unit: 'mm' | 'in'): Reading<PipeSize> {
  const at = read.search(/[x×]/iu);
  const [named, thickness] = at < 0 ? [read] : [read.slice(0, at).trimEnd(), read.slice(at + 1).trimStart()];
  const reading = readNumber(plainSpelling(named).replace(/^en ?| ?mm$/gi, ''));
  if (!reading.ok) return refused(read, { kind: 'number-in-name', within: reading.fault });
  const asked = toNumber(reading.value);
  const diameter = EN_DIAMETERS.find((each) => each === asked);
  if (diameter === undefined) {
    const near = neighbours(asked, EN_DIAMETERS, (each) => each).map((each) => `EN ${each}`);
    return refused(read, { kind: 'en-not-known', near });
  }
  const od: Length = { mm: diameter, wrote: named, unit, byName: true };
  if (thickness === undefined) return taken({ od });
  const wall = readLength(thickness, 'mm');
  if (!wall.ok) return refused(read, { kind: 'number-in-name', within: wall.fault });
  if (wall.value.mm <= 0) return refused(read, { kind: 'name-without-wall' });
  return taken({ od, wall: wall.value });
}

/** The known sizes next below and next above. */
function neighbours<Size>(
  asked: number,
  sizes: readonly Size[],
  of: (size: Size) => number,
): readonly Size[] {
  const below = sizes.filter((size) => of(size) < asked).at(-1);
  const above = sizes.find((size) => of(size) > asked);
  return [below, above].filter((size) => size !== undefined);
}
