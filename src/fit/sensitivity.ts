import type { CopedEnd, Part, TubeSection } from '../job/job.ts';
import { type Mm, radians } from '../measure/units.ts';
import type { Cope } from '../saddle/cope.ts';
import { type Joint, jointOf, toMeet } from '../saddle/joint.ts';
import { cutFaceOf, depthsOf, type Face, scaledFace } from './face.ts';
import { touches, widestGap } from './gap.ts';
import { slideToTouch } from './seat.ts';
import { allSideLimitsOf, faceSideLimits } from './side-limits.ts';

/** What gap opens, in mm beyond the undisturbed one, if one measurement is off by a full step. */
export interface Sensitivity {
  /** 1 degree of angle. */
  readonly angle: Mm;
  /** 1 degree of rotation. */
  readonly clock: Mm;
  /** 1 mm of offset. */
  readonly offset: Mm;
  /** 1 % of printed scale. */
  readonly scale: Mm;
}

/**
 * The worse sign of each step, after the end is slid along its axis until it touches, or with a root gap until that is
 * left where it is least.
 */
export function sensitivityOf(cope: Cope, section: TubeSection, wall: Mm, seated: Mm): Sensitivity {
  const { face, sideLimits, gap, moved } = seatedEnd(cope, section, wall, seated);
  const { turn } = cope.joint.section;
  return {
    angle: moved((part, sign) => ({ ...part, angle: turned(part.angle, sign) })),
    clock: moved((part, sign) => ({ ...part, clock: turned(part.clock, sign) })),
    offset: moved(offsetBy(1)),
    scale: worse((sign) => {
      const scale = 1 + sign / 100;
      const moved = scaledLimits(sideLimits, scale, turn);
      return opening(cope.joint, cope.joint, scaledFace(face, scale, turn), moved) - gap;
    }),
  };
}

/** What another step of offset opens: the response is not linear. */
export function offsetOpens(cope: Cope, section: TubeSection, wall: Mm, seated: Mm, step: Mm): Mm {
  return seatedEnd(cope, section, wall, seated).moved(offsetBy(step));
}

type Change = (part: Part, sign: 1 | -1) => Part;

function offsetBy(step: Mm): Change {
  return (part, sign) => ({ ...part, offset: { ...part.offset, mm: part.offset.mm + sign * step } });
}

/** An end as it is meant: its face, its gap, and what a change of its headers opens beyond that. */
function seatedEnd(cope: Cope, section: TubeSection, wall: Mm, seated: Mm) {
  const face = cutFaceOf(cope, wall);
  const sideLimits = faceSideLimits(cope, face);
  const gap = cope.joint.rooted ? opening(cope.joint, cope.joint, face, sideLimits) : seated;
  const moved = (change: Change): Mm =>
    worse((sign) => {
      const end = movedEnd(cope.end, (part) => change(part, sign));
      return end && opening(cope.joint, jointOf(section, end), face, sideLimits) - gap;
    });
  return { face, sideLimits, gap, moved };
}

/**
 * Where these come to lie with a leaf of the wrong scale: opposite the spine its two ends do not meet, and in what a small one leaves
 * bare there its line is taken to go on.
 */
function scaledLimits(limits: readonly number[], scale: number, turn: number): readonly number[] {
  const scaled = limits.flatMap((limit) => {
    const home = limit - turn * Math.round(limit / turn);
    return [home - turn, home, home + turn].map((each) => scale * each);
  });
  return [turn / 2, ...scaled.filter((each) => Math.abs(each) <= turn / 2)];
}

function turned<Turn extends { readonly rad: number }>(angle: Turn, degrees: number): Turn {
  return { ...angle, rad: angle.rad + radians(degrees) };
}

function worse(opens: (sign: 1 | -1) => Mm | undefined): Mm {
  return Math.max(0, opens(1) ?? 0, opens(-1) ?? 0);
}

/** The end with its headers moved; undefined where the step leaves no joint to speak of. */
function movedEnd(end: CopedEnd, change: (part: Part) => Part): CopedEnd | undefined {
  const [first, ...others] = end.parts;
  const parts = [change(first), ...others.map(change)] as const;
  const sound = parts.every(({ angle }) => angle.rad > 0 && angle.rad < Math.PI);
  return sound ? { ...end, parts: [...parts] } : undefined;
}

/** The widest gap where both the header meant and the header met are touched. */
function opening(meant: Joint, met: Joint, face: Face, ofFace: readonly number[]): Mm {
  const sideLimits = [...ofFace, ...allSideLimitsOf(met, depthsOf(face))];
  const meantTouches = touches(meant);
  const metTouches = touches(met);
  const counts = (station: number): boolean => meantTouches(station) && metTouches(station);
  const slide = slideToTouch(toMeet(met), face, sideLimits);
  return widestGap(toMeet(met), face, slide, counts, sideLimits).mm;
}
