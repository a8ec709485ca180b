import type { EndName, Part, Tube, TubeSection } from '../job/job.ts';
import { headerFactsOf } from '../job/kinds.ts';
import { tubeFactsOf } from '../job/sections.ts';
import type { Said } from '../measure/said.ts';
import { type Mm, radians } from '../measure/units.ts';
import type { Cope } from '../saddle/cope.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import type { Language } from '../words/language.ts';
import type { Dihedrals } from './dihedrals.ts';
import { acuteOf, type EndReport } from './end-report.ts';

export type WarningCode = 'misses' | 'wider' | 'heel-angle' | 'feather' | 'stand-off' | 'gap' | 'short';

/** What can be cut as asked but may disappoint: the number, where it is, and what to do about it. */
export interface Warning {
  readonly code: WarningCode;
  /** Left out where the whole tube is meant. */
  readonly end?: EndName;
  readonly text: Said;
}

/** Branch angle for a sound weld at the heel: AISC 360 table K2.1A (secondary). */
const LEAST_HEEL = radians(30);
/** Below this an edge is as thin as a knife's, and burns away: common practice, no source. */
const KNIFE_EDGE = radians(15);
/** More than this is filed for long: common practice, no source. */
const MOST_STAND_OFF: Mm = 1;
/** A 1/16 in filler rod goes in: common practice, no source. */
export const ROD: Mm = 1.6;

/** Every warning about one coped end, in the order in which a person would meet them. */
export function endWarnings(
  tube: Tube,
  name: EndName,
  report: EndReport,
  words: Language,
): readonly Warning[] {
  const { end } = report.cope;
  const found = [
    misses(tube, report, words),
    ...end.parts.flatMap((part) => [wider(tube, part, words), heelAngle(part, words)]),
    feather(report, words),
    standOff(report, words),
    wideGap(report, words),
  ];
  return found.flatMap((warning) => (warning ? [{ ...warning, end: name }] : []));
}

/** Warnings about a tube as a whole. */
export function tubeWarnings({ lengths, tube }: TubeSolution, words: Language): readonly Warning[] {
  const across = tubeFactsOf(tube.section).across.mm;
  if (!lengths || lengths.throats >= across) return [];
  return [{ code: 'short', text: words.warnings.short(lengths.throats, across) }];
}

type Found = { readonly code: WarningCode; readonly text: Said } | undefined;

function misses({ section }: Tube, { cope }: EndReport, words: Language): Found {
  const [part, ...others] = cope.end.parts;
  const past = others.length === 0 ? pastTheSide(section, part) : undefined;
  if (past === undefined ? !missesSomewhere(cope) : past <= 1e-9) return undefined;
  return { code: 'misses', text: words.warnings.misses(past) };
}

/** How far a tube that reaches as far to every side does so past a straight header; else it is no matter of one number. */
function pastTheSide(section: TubeSection, { onto, offset }: Part): Mm | undefined {
  const { radius } = tubeFactsOf(section);
  if (radius === undefined || onto.kind === 'bend') return undefined;
  return Math.abs(offset.mm) + radius - headerFactsOf(onto).across;
}

function missesSomewhere({ joint, touching }: Cope): boolean {
  const { turn } = joint.section;
  return Array.from({ length: 720 }, (_, i) => touching((i * turn) / 720)).some(({ contact }) => !contact);
}

/** A tube is wider than the header it lands on, or on a box than the flat of the face it lands on. */
function wider({ section }: Tube, { onto }: Part, words: Language): Found {
  const across = tubeFactsOf(section).across.mm;
  const { room } = headerFactsOf(onto);
  if (room === undefined || across - room.mm <= 1e-9) return undefined;
  return { code: 'wider', text: words.warnings.wider(across - room.mm, room) };
}

function heelAngle({ angle }: Part, words: Language): Found {
  const acute = acuteOf(angle.rad);
  if (acute >= LEAST_HEEL - 1e-12) return undefined;
  return { code: 'heel-angle', text: words.warnings.heelAngle(acute) };
}

/** Whether a bevelled end is left with an edge as thin as a knife's, which is taken off by hand. */
export function isKnife({ end }: Cope, dihedrals: Dihedrals | undefined): boolean {
  const { preparation } = end;
  if (preparation.edge !== 'bevel' || preparation.land || !dihedrals) return false;
  return Math.PI - dihedrals.most.angle < KNIFE_EDGE - 1e-12;
}

function feather({ cope, dihedrals }: EndReport, words: Language): Found {
  if (!dihedrals || !isKnife(cope, dihedrals)) return undefined;
  const thin = Math.PI - dihedrals.most.angle;
  return { code: 'feather', text: words.warnings.feather(thin, at(dihedrals.most.station, cope, words)) };
}

function standOff({ cope, standOff: held }: EndReport, { warnings }: Language): Found {
  const { preparation } = cope.end;
  if (preparation.edge !== 'square' || held === undefined || held <= MOST_STAND_OFF) return undefined;
  const text = preparation.from === 'inside' ? warnings.standsOff(held) : warnings.wouldStandOff(held);
  return { code: 'stand-off', text };
}

function wideGap({ gap, cope }: EndReport, words: Language): Found {
  if (gap.mm <= ROD) return undefined;
  return { code: 'gap', text: words.warnings.gap(gap.mm, at(gap.station, cope, words)) };
}

function at(station: number, { joint }: Cope, { quantities }: Language): Said {
  return quantities.station(station, joint.section.stations);
}
