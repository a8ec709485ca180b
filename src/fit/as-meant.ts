import type { BendHeader, CopedEnd, MitreHeader, Part, Tube } from '../job/job.ts';
import { mirroredAngle } from '../job/mirrored.ts';
import { tubeFactsOf } from '../job/sections.ts';
import { NPS_SIZES } from '../measure/sizes/pipe.ts';
import { type Angle, type Length, MM_PER_INCH, type Mm, radians } from '../measure/units.ts';
import type { Hand, TubeSolution } from '../saddle/solve.ts';
import type { Language } from '../words/language.ts';
import { endsAsMeant } from './ends-as-meant.ts';
import { idleHeaders } from './idle-headers.ts';
import { alsoDn, alsoPipe, type Doubt, diametersOf, doubtOfSize, nominal, partsAt } from './size-as-meant.ts';
import type { Warning } from './warnings.ts';

/**
 * What was understood as it is written and mostly was meant otherwise. A number that has its unit is meant, but for a size that is the name
 * of a pipe. What the ends of a frame's tubes land on is looked at where it is a tube itself.
 */
export function asMeant(solution: TubeSolution, words: Language): readonly Warning[] {
  const { tube, hand, places, ends } = solution;
  const { section, wall } = tube;
  const beside = diametersOf(tube);
  const own =
    section.kind === 'round'
      ? [doubtOfSize(section.od, beside, words), nominal(section.od, wall, words)]
      : [];
  const warned = (doubt: Doubt): Warning[] => (doubt ? [{ code: 'as-meant', ...doubt }] : []);
  const ofTube = own.flatMap(warned);
  if (places) return ofTube;
  const whole = [
    lengthOfOneEnd(tube, words),
    inName(tube, words),
    ...lengthsOf(tube).map((each) => inFeet(each, words)),
    ...endsAsMeant(tube, words),
    mirrorOfItself(solution, words),
  ];
  const ofEnds = (['A', 'B'] as const).flatMap((name) => {
    const end = tube.ends[name];
    const cope = ends[name];
    const doubts: readonly Doubt[] = [
      ...(end?.kind === 'coped' ? ofEnd(tube, end, beside, hand, words) : []),
      ...(cope?.kind === 'coped'
        ? idleHeaders(cope).map((place) => words.warnings.asMeant.idle(place + 1))
        : []),
    ];
    return doubts.flatMap(warned).map((warning): Warning => ({ ...warning, end: name }));
  });
  return [...ofTube, ...whole.flatMap(warned), ...ofEnds];
}

function ofEnd(
  { section }: Tube,
  { parts }: CopedEnd,
  beside: readonly Length[],
  hand: Hand,
  words: Language,
): readonly Doubt[] {
  const across = tubeFactsOf(section).across.mm;
  const headers = beside.filter((each) => section.kind !== 'round' || each !== section.od);
  return parts.flatMap(({ onto, clock }: Part) => [
    'od' in onto
      ? (doubtOfSize(onto.od, beside, words) ??
        alsoPipe(onto.od, beside, words) ??
        alsoDn(onto.od, headers, words))
      : undefined,
    onto.kind === 'bend' ? tightBend(onto, words) : undefined,
    onto.kind === 'mitre' ? turnOfOneJoint(onto, across, words) : undefined,
    oClock(hand === 'opposite' ? mirroredAngle(clock) : clock, words),
  ]);
}

/** Of a piece that both hands have alike so many are made as were asked for of each, together: more than of a pair by itself. */
function mirrorOfItself({ tube, bothHands }: TubeSolution, { warnings }: Language): Doubt {
  return bothHands && tube.copies > 2 ? warnings.asMeant.mirrorOfItself(tube.copies / 2) : undefined;
}

/** A length goes from one end to the other, of which one was not written. */
function lengthOfOneEnd({ between, ends }: Tube, { warnings }: Language): Doubt {
  if (!between || 'ways' in between || (ends.A && ends.B)) return undefined;
  return warnings.asMeant.lengthOfOneEnd(between, ends.A ? 'B' : 'A');
}

function lengthsOf({ between }: Tube): readonly Length[] {
  if (!between) return [];
  return 'ways' in between ? between.ways.map(({ length }) => length) : [between];
}

/** Feet with a point and inches behind it; a half is a half, and no inches have 25 or 75. */
function inFeet({ mm, wrote }: Length, { warnings }: Language): Doubt {
  const [, feet, inches] = /^(\d+)[.,]([1-46-9]|10|11) ?(?:ft|feet|foot|')$/i.exec(wrote.trim()) ?? [];
  return feet && inches ? warnings.asMeant.inFeet(wrote, mm, Number(feet), Number(inches)) : undefined;
}

/** The name tells a tube with corners, and its size a round one. What lands on a box may be named by that. */
function inName({ name, section, ends }: Tube, { warnings }: Language): Doubt {
  const onBox = partsAt(ends).some(({ onto }) => onto.kind === 'box');
  if (section.kind !== 'round' || onBox) return undefined;
  const { od } = section;
  const sides =
    /(\d{1,4}(?:\.\d{1,2})?) ?[x×] ?(\d{1,4}(?:\.\d{1,2})?)/iu.exec(name)?.slice(1).map(Number) ?? [];
  // Beside a diameter stands a wall, which is no third of it.
  const isBox = [1, MM_PER_INCH].some((unit) => {
    const lengths = sides.map((side) => side * unit);
    return lengths.some((mm) => Math.abs(mm - od.mm) < 0.05) && lengths.every((mm) => mm > od.mm / 3);
  });
  return isBox || /(?<![\p{L}\p{N}])(?:SHS|RHS)(?![\p{L}\p{N}])/u.test(name)
    ? warnings.asMeant.inName(od)
    : undefined;
}

/** A whole number from 1 to 12 is the hour of a clock face to many. */
function oClock({ wrote }: Angle, { warnings }: Language): Doubt {
  const hour = /^\d\d?$/.test(wrote.trim()) ? Number(wrote) : 0;
  return hour >= 1 && hour <= 12 ? warnings.asMeant.oClock(hour) : undefined;
}

/** Of so little at a joint an elbow is made of slivers: common practice, no source. */
const LEAST_TURN = radians(10);

/** The turn of one joint in place of the whole elbow's: its pieces come out shorter than half the tube is wide. */
function turnOfOneJoint({ turn, segments }: MitreHeader, across: Mm, { warnings }: Language): Doubt {
  if (!segments || segments.pieces < 3) return undefined;
  const joints = segments.pieces - 1;
  const each = turn.rad / joints;
  const middle = 2 * segments.radius.mm * Math.tan(each / 2);
  const whole = turn.rad * joints;
  if (each >= LEAST_TURN || middle >= across / 2 || whole > Math.PI + 1e-9) return undefined;
  return warnings.asMeant.turnOfOneJoint(turn.rad, segments.pieces, middle, segments.radius.unit);
}

/**
 * A bend round less than its own diameter is made by no bender; but for a short elbow to weld, whose radius is its nominal size (ASME B16.9, from
 * memory), it is measured to the inside.
 */
function tightBend({ od, radius }: BendHeader, { warnings }: Language): Doubt {
  if (!radius.bare || radius.mm >= od.mm - 1e-9) return undefined;
  const isElbow = NPS_SIZES.some(
    (size) => Math.abs(size.od.mm / od.mm - 1) < 0.05 && Math.abs(size.inches * MM_PER_INCH - radius.mm) < 1,
  );
  return isElbow ? undefined : warnings.asMeant.tightBend(od, radius);
}
