import type { Said } from '../measure/said.ts';
import { MM_PER_INCH, type Mm, radians, type Units } from '../measure/units.ts';
import type { Cope } from '../saddle/cope.ts';
import type { Extreme } from '../saddle/extremes.ts';
import type { Language } from '../words/language.ts';
import type { Dihedrals } from './dihedrals.ts';
import type { EndReport } from './end-report.ts';
import { wrapped } from './wrapped.ts';

type Words = Language['check'];

/** Letters on a line. */
const LONGEST = 90;

/** A gap or a stand-off of less is nothing to a tenth of a millimetre, to which it would be printed. */
const SHOWN = 0.05;

/** What follows for one end: its marks, where its edge reaches, how it meets the header, what a slip would open. */
export function endLines(report: EndReport, units: Units, words: Language): readonly Said[] {
  const { check, quantities } = words;
  const { cope, standOff, dihedrals } = report;
  const at = (station: number): Said => quantities.station(station, cope.joint.section.stations);
  const place = ({ setback, station }: Extreme): Said => check.place(setback, at(station), units);
  const { preparation } = cope.end;
  const held = preparation.edge === 'square' && preparation.from === 'inside' ? 0 : (standOff ?? 0);
  return [
    ...markLines(cope, units, check).flatMap((line) => wrapped(line, LONGEST)),
    check.extremes(place(cope.throat), place(cope.longPoint)),
    ...(dihedrals ? wrapped(surfacesLine(dihedrals, openingOf(report), check), LONGEST) : []),
    ...wrapped(gapLine(report, units, words), LONGEST),
    ...(held >= SHOWN ? [check.wouldStandOff(held, units)] : []),
    ...slipLines(report, units, check),
  ];
}

function surfacesLine(dihedrals: Dihedrals, opening: Mm, check: Words): Said {
  const { least, most } = dihedrals;
  return check.surfaces(least.angle, most.angle, weldFor(dihedrals, opening, check));
}

/** The gap that is meant or stays, in words that hold for as much of the tube as touches. */
function gapLine({ cope, missed, gap }: EndReport, units: Units, { check, quantities }: Language): Said {
  const { root } = cope.end;
  const at = quantities.station(gap.station, cope.joint.section.stations);
  if (root && root.mm > 0)
    return gap.mm >= SHOWN
      ? check.wideRoot(root, gap.mm, at, units)
      : check.evenRoot(root, missed !== undefined);
  if (cope.end.toFlat && gap.mm >= SHOWN) return check.cornerGap(gap.mm, at, units);
  return gap.mm >= SHOWN ? check.gap(gap.mm, at, units) : check.noGap(missed !== undefined);
}

function openingOf({ cope, gap }: EndReport): Mm {
  return gap.mm + (cope.end.root?.mm ?? 0);
}

/** Less of the way round than this touches too little for a figure of what a slip opens there to mean anything. */
const TELLING_SHARE = 0.5;

function slipLines(report: EndReport, units: Units, check: Words): readonly Said[] {
  if (report.contact < TELLING_SHARE) return [];
  return check.slips(slipsOf(report, units), units).flatMap((line) => wrapped(line, LONGEST));
}

/** What is marked on the tube at the frame, and where. */
function markLines({ fitUp, end }: Cope, units: Units, check: Words): readonly Said[] {
  if (!fitUp) return [];
  const eitherSide = end.parts[0].angle.rad === Math.PI / 2;
  const on = fitUp.clock ? 'rotation-mark' : eitherSide ? 'either-side' : 'heel';
  const { clock, lengthSetback } = fitUp;
  return [
    ...(clock ? [check.rotationMark(eitherSide)] : []),
    ...(lengthSetback === undefined ? [] : [check.lengthMark(on, lengthSetback, units)]),
  ];
}

/** The weld that the corner and the gap ask for, named and not designed: dihedral ranges are common practice. */
function weldFor({ least, most }: Dihedrals, gap: Mm, check: Words): Said {
  return check.weld(most.angle > radians(120), least.angle < radians(60), gap > 0.005);
}

/** The worst first; of offset for what a tape is read to. What opens nothing is nothing to measure, such as the offset to a plate. */
function slipsOf({ sensitivity, offsetOpens }: EndReport, units: Units): Parameters<Words['slips']>[0] {
  const { angle, clock, offset, scale } = sensitivity;
  return [
    { of: 'angle' as const, mm: angle },
    { of: 'rotation' as const, mm: clock },
    { of: 'offset' as const, mm: units === 'in' ? offsetOpens(MM_PER_INCH / 32) : offset },
    { of: 'scale' as const, mm: scale },
  ]
    .filter(({ mm }) => mm > 1e-9)
    .sort((a, b) => b.mm - a.mm);
}
