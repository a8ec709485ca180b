import type { CopedEnd, EndName, Part, TubeSection } from '../job/job.ts';
import type { Room } from '../job/kind.ts';
import { headerFactsOf } from '../job/kinds.ts';
import { tubeFactsOf, unitsOfTube } from '../job/sections.ts';
import type { Said } from '../measure/said.ts';
import { type Mm, type Radians, radians, type Units } from '../measure/units.ts';
import type { Cope } from '../saddle/cope.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import type { Language } from '../words/language.ts';
import type { Dihedrals } from './dihedrals.ts';
import { acuteOf, type EndReport } from './end-report.ts';

export type WarningCode =
  | 'misses'
  | 'wider'
  | 'heel-angle'
  | 'feather'
  | 'stand-off'
  | 'gap'
  | 'short'
  | 'as-meant';

/** What can be cut as asked but may disappoint: the number, where it is, and what to do about it. */
export interface Warning {
  readonly code: WarningCode;
  /** Left out where the whole tube is meant. */
  readonly end?: EndName;
  /** In words that hold at the bench and on the page too. */
  readonly text: Said;
  /** The same where a job file is edited: with the key that mends it. */
  readonly inFile: Said;
}

/** Branch angle for a sound weld at the heel: AISC 360 table K2.1A (secondary). */
const LEAST_HEEL = radians(30);
/** Below this an edge is as thin as a knife's, and burns away: common practice, no source. */
const KNIFE_EDGE = radians(15);
/** More than this is filed for long: common practice, no source. */
export const MOST_STAND_OFF: Mm = 1;
/** A 1/16 in filler rod goes in: common practice, no source. */
export const ROD: Mm = 1.6;

/** Every warning about one coped end, in the order in which a person would meet them. */
export function endWarnings(
  solution: TubeSolution,
  name: EndName,
  report: EndReport,
  words: Language,
): readonly Warning[] {
  const { end } = report.cope;
  const units = unitsOfTube(solution.tube);
  const found = [
    misses(report, units, words),
    ...end.parts.flatMap((part) => [wider(solution, end, part, words), heelAngle(solution, part, words)]),
    feather(report, words),
    standOff(report, units, words),
    wideGap(report, units, words),
  ];
  return found.flatMap((warning) => (warning ? [{ ...warning, end: name }] : []));
}

/** Warnings about a tube as a whole. */
export function tubeWarnings(solution: TubeSolution, words: Language): readonly Warning[] {
  const left = tooShort(solution);
  if (left === undefined) return [];
  const { tube } = solution;
  const across = tubeFactsOf(tube.section).across.mm;
  return [{ code: 'short', ...words.warnings.short(left, across, askedIn(solution), unitsOfTube(tube)) }];
}

/** What its file is: a frame has points where a job of tubes has lengths and angles. */
function askedIn({ places }: TubeSolution): 'frame' | 'tubes' {
  return places ? 'frame' : 'tubes';
}

/** What is left of a tube between its short points where that is less than its own width; else undefined. */
export function tooShort({ lengths, tube }: TubeSolution): Mm | undefined {
  return lengths && lengths.throats < tubeFactsOf(tube.section).across.mm ? lengths.throats : undefined;
}

type Found = Omit<Warning, 'end'> | undefined;

function misses({ missed }: EndReport, units: Units, words: Language): Found {
  return missed && { code: 'misses', ...words.warnings.misses(missed.past, units) };
}

/** A tube is wider than the header it lands on, or on a box than the flat of the face it lands on. */
function wider(solution: TubeSolution, end: CopedEnd, part: Part, words: Language): Found {
  const { tube } = solution;
  const { section } = tube;
  const units = unitsOfTube(tube);
  const room = roomLacking(section, end, part);
  if (!room) return undefined;
  const name = headerFactsOf(part.onto).said(words).name;
  const { by, face } = room;
  const isBoxOnBox = section.kind === 'rectangular' && face !== undefined && room.mm + by <= face + 1e-9;
  const { boxOnBox, wider } = words.warnings;
  // A round header's name is its width.
  const named = face === undefined;
  const mends = { file: askedIn(solution), own: tube.name, first: part.stops?.name };
  const told = isBoxOnBox
    ? boxOnBox(by, room.mm, name, mends.file, units)
    : wider(by, { ...room, named }, name, mends, units);
  return { code: 'wider', ...told };
}

/** How much wider a tube is than what its edge may touch all round, and what that is; undefined where it is not. */
export function roomLacking(
  section: TubeSection,
  { toFlat }: CopedEnd,
  { onto }: Part,
): (Room & { readonly by: Mm }) | undefined {
  const { room: whole } = headerFactsOf(onto);
  const room: Room | undefined =
    toFlat && whole?.face ? { mm: whole.face, of: 'header', face: whole.face } : whole;
  const by = tubeFactsOf(section).across.mm - (room?.mm ?? Number.POSITIVE_INFINITY);
  return room && by > 1e-9 ? { ...room, by } : undefined;
}

function heelAngle(solution: TubeSolution, part: Part, words: Language): Found {
  if (!isTight(part)) return undefined;
  return { code: 'heel-angle', ...words.warnings.heelAngle(acuteOf(part.angle.rad), askedIn(solution)) };
}

/** Whether a weld at the heel can hardly be made sound. */
export function isTight({ angle }: Part): boolean {
  return acuteOf(angle.rad) < LEAST_HEEL - 1e-12;
}

/** How thin the edge of a bevelled end is where it is as thin as a knife's, which is taken off by hand; else undefined. */
export function knifeOf({ end }: Cope, dihedrals: Dihedrals | undefined): Radians | undefined {
  const { preparation } = end;
  if (preparation.edge !== 'bevel' || preparation.land || !dihedrals) return undefined;
  const thin = dihedrals.thinnest.angle;
  return thin < KNIFE_EDGE - 1e-12 ? thin : undefined;
}

/** A land under half a millimetre is none. */
const LEAST_WALL: Mm = 1;

/**
 * The land to leave on a knife edge. Its inner side seats, so it holds the outer edge off by less than its thickness: one as thick as
 * a rod leaves no gap that a rod goes into.
 */
export function landFor({ thickness }: Cope): 'half-the-wall' | 'rod' | 'none' {
  if (thickness === undefined) return 'half-the-wall';
  if (thickness < LEAST_WALL) return 'none';
  return thickness / 2 > ROD ? 'rod' : 'half-the-wall';
}

function feather({ cope, dihedrals }: EndReport, words: Language): Found {
  const thin = knifeOf(cope, dihedrals);
  if (thin === undefined || !dihedrals) return undefined;
  const where = at(dihedrals.thinnest.station, cope, words);
  return { code: 'feather', ...words.warnings.feather(thin, where, landFor(cope)) };
}

function standOff({ cope, standOff: held }: EndReport, units: Units, { warnings }: Language): Found {
  const { preparation } = cope.end;
  // On its own line an end stands off by nothing; what a cut to the other one would do follows, and is no warning.
  if (preparation.edge !== 'square' || preparation.from !== 'inside') return undefined;
  if (held === undefined || held <= MOST_STAND_OFF) return undefined;
  return { code: 'stand-off', ...warnings.standsOff(held, units) };
}

function wideGap({ gap, cope }: EndReport, units: Units, words: Language): Found {
  if (gap.mm <= ROD) return undefined;
  const { gap: wide, cornerGap } = words.warnings;
  const { toFlat, preparation, root } = cope.end;
  const where = at(gap.station, cope, words);
  const told = toFlat
    ? cornerGap(gap.mm, where, units)
    : wide(gap.mm, root?.mm ?? 0, where, preparation.edge === 'bevel', units);
  return { code: 'gap', ...told };
}

function at(station: number, { joint }: Cope, { quantities }: Language): Said {
  return quantities.station(station, joint.section.stations);
}
