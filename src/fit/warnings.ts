import type { EndName, Part, Section, Tube } from '../job/job.ts';
import { factsOf } from '../job/kinds.ts';
import { type Mm, radians } from '../measure/units.ts';
import { millimetres, writeAngle } from '../measure/write.ts';
import type { Cope } from '../saddle/cope.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import { stationInWords } from '../saddle/station.ts';
import type { Dihedrals } from './dihedrals.ts';
import { acuteOf, type EndReport } from './end-report.ts';

export type WarningCode = 'misses' | 'wider' | 'heel-angle' | 'feather' | 'stand-off' | 'gap' | 'short';

/** What can be cut as asked but may disappoint: the number, where it is, and what to do about it. */
export interface Warning {
  readonly code: WarningCode;
  /** Left out where the whole tube is meant. */
  readonly end?: EndName;
  readonly text: string;
}

/** Branch angle for a sound weld at the heel: AISC 360 table K2.1A (secondary). */
const LEAST_HEEL = radians(30);
const KNIFE_EDGE = radians(15);
const MOST_STAND_OFF: Mm = 1;
/** A 1/16 in filler rod goes in: common practice, no source. */
export const ROD: Mm = 1.6;

/** Every warning about one coped end, in the order in which a person would meet them. */
export function endWarnings(tube: Tube, name: EndName, report: EndReport): readonly Warning[] {
  const { end } = report.cope;
  const found = [
    misses(tube, report),
    ...end.parts.flatMap((part) => [wider(tube, part), heelAngle(part)]),
    feather(report),
    standOff(report),
    wideGap(report),
  ];
  return found.flatMap((warning) => (warning ? [{ ...warning, end: name }] : []));
}

/** Warnings about a tube as a whole. */
export function tubeWarnings({ lengths, tube }: TubeSolution): readonly Warning[] {
  const across = 'od' in tube.section ? tube.section.od.mm : tube.section.wide.mm;
  if (!lengths || lengths.throats >= across) return [];
  return [
    {
      code: 'short',
      text:
        `Only ${mm(lengths.throats)} of tube is left between the two throats, less than its own diameter ` +
        `of ${mm(across)}. Check \`between\`, or use one solid piece.`,
    },
  ];
}

type Found = { readonly code: WarningCode; readonly text: string } | undefined;

function misses({ section }: Tube, { cope }: EndReport): Found {
  const [part, ...others] = cope.end.parts;
  const past = others.length === 0 ? pastTheSide(section, part) : undefined;
  if (past === undefined ? !missesSomewhere(cope) : past <= 1e-9) return undefined;
  const reach = past === undefined ? 'The tube reaches' : `The tube reaches ${mm(past)}`;
  const text =
    `${reach} past the side of the header there, so part of the edge touches nothing. It is ` +
    'trimmed level with the middle of the header: close it with a plate, or use a smaller tube or less offset.';
  return { code: 'misses', text };
}

/** How far a round tube reaches past a straight header; undefined where that is no matter of one number. */
function pastTheSide(section: Section, { onto, offset }: Part): Mm | undefined {
  if (section.kind !== 'round' || onto.kind === 'bend') return undefined;
  return Math.abs(offset.mm) + section.od.mm / 2 - factsOf(onto).across;
}

function missesSomewhere({ joint, outside }: Cope): boolean {
  const { turn } = joint.section;
  return Array.from({ length: 720 }, (_, i) => outside((i * turn) / 720)).some(({ contact }) => !contact);
}

/** A tube is wider than the header it lands on, or on a box than the flat of the face it lands on. */
function wider({ section }: Tube, { onto }: Part): Found {
  const across = section.kind === 'round' ? section.od.mm : section.wide.mm;
  const { room } = factsOf(onto);
  if (room === undefined || across - room.mm <= 1e-9) return undefined;
  const text =
    `The tube is ${mm(across - room.mm)} wider than ${room.of}, which is ${mm(room.mm)}. Flatten the end or choose a smaller ` +
    'tube if the edge must touch all round.';
  return { code: 'wider', text };
}

function heelAngle({ angle }: Part): Found {
  const acute = acuteOf(angle.rad);
  if (acute >= LEAST_HEEL - 1e-12) return undefined;
  const text =
    `The acute angle is ${writeAngle(acute)}: under 30° a weld at the heel can hardly be made sound ` +
    '(AISC 360 table K2.1A, secondary). Open the angle if you can.';
  return { code: 'heel-angle', text };
}

/** Whether a bevelled end is left with an edge as thin as a knife's, which is taken off by hand. */
export function isKnife({ end }: Cope, dihedrals: Dihedrals | undefined): boolean {
  const { preparation } = end;
  if (preparation.edge !== 'bevel' || preparation.blunt || !dihedrals) return false;
  return Math.PI - dihedrals.most.angle < KNIFE_EDGE - 1e-12;
}

function feather({ cope, dihedrals }: EndReport): Found {
  if (!dihedrals || !isKnife(cope, dihedrals)) return undefined;
  const thin = Math.PI - dihedrals.most.angle;
  const text =
    `The edge runs out to a knife of ${writeAngle(thin)} at ${at(dihedrals.most.station, cope)}. It cuts fingers and ` +
    'burns away under the arc: take it off with `blunt`, about half the wall.';
  return { code: 'feather', text };
}

function standOff({ cope, standOff: held }: EndReport): Found {
  const { preparation } = cope.end;
  if (preparation.edge !== 'square' || held === undefined || held <= MOST_STAND_OFF) return undefined;
  const text =
    preparation.from === 'inside'
      ? `Cut to the inside line, the end stands off by ${mm(held)} on its outer edge: grind that back until it seats.`
      : `Cut square to the outside line by mistake, the end would stand off by ${mm(held)}. Cut to the solid line.`;
  return { code: 'stand-off', text };
}

function wideGap({ gap, cope }: EndReport): Found {
  if (gap.mm <= ROD) return undefined;
  const text =
    `A gap of ${mm(gap.mm)} stays at ${at(gap.station, cope)}, and a 1.6 mm (1/16 in) filler rod goes in. Bevel the ` +
    'inner edge instead (`edge: bevel`), or let the legs of the weld grow by the gap.';
  return { code: 'gap', text };
}

function mm(length: Mm): string {
  return `${millimetres(length)} mm`;
}

function at(station: number, { joint }: Cope): string {
  return `station ${stationInWords(station, joint.section)}`;
}
