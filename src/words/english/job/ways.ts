import type { Said } from '../../../measure/said.ts';
import type { Angle, Length, Mm, Radians } from '../../../measure/units.ts';
import { decimalInches } from '../../../measure/write.ts';
import { asWritten, joined, type Objection, say } from '../../said.ts';
import { quantities } from '../quantities.ts';

const { own, writtenAngle } = quantities;

const THREE_SIDES = say`three lengths: along the tube and along the header from where their centre lines cross, and between the marks`;

const EXAMPLES = {
  girth: say`{ girth: 4-3/4in }`,
  'off-square': say`{ off-square: 28deg }`,
  rise: say`{ rise: 7in, run: 12in }`,
  triangle: say`{ triangle: [200mm, 200mm, 208mm] }`,
  acute: say`{ acute: 62deg, read-at: heel }`,
  arc: say`{ arc: 9.7mm }`,
  faces: say`{ faces: 22-1/2in }`,
  straightedge: say`{ straightedge: 22-3/8in, at: 90deg }`,
  overall: say`{ overall: 25in }`,
  seated: say`{ seated: 587mm }`,
};

type Way = keyof typeof EXAMPLES;

/** Values that were measured in another way than they are given, and several readings of one value. */
export const ways = {
  diameter: say`a length such as 38.1mm or 1-1/2in, or { girth: 120mm }`,
  angle: say`an angle such as 60deg, or what was measured, as in { rise: 7in, run: 12in }`,
  clock: say`an angle such as 35deg, or { arc: 9.7mm }, round the outside from the spine`,
  between: say`a length such as 600mm, or what was measured, as in { faces: 22-1/2in }`,
  threeSides: THREE_SIDES,

  /** What was measured, as it stands where the value itself would: `rise 7in, run 12in`. */
  girth: (girth: Length, tape: Length): Said =>
    say`girth ${own(girth)}${tape.mm > 0 ? say` with a tape ${own(tape)} thick` : say``}`,
  offSquare: (lean: Angle): Said => say`${writtenAngle(lean)} off square`,
  riseAndRun: (rise: Length, run: Length): Said => say`rise ${own(rise)}, run ${own(run)}`,
  triangle: (tube: Length, header: Length, marks: Length): Said =>
    say`triangle ${own(tube)}, ${own(header)}, ${own(marks)}`,
  acute: (angle: Angle, side: 'heel' | 'toe'): Said =>
    say`${writtenAngle(angle)} acute, read at the ${asWritten(side)}`,
  arc: (arc: Length): Said => say`arc ${own(arc)}`,
  along: (way: 'faces' | 'overall' | 'seated', length: Length): Said => say`${asWritten(way)} ${own(length)}`,
  straightedge: (length: Length, at: Angle | Length): Said =>
    say`straightedge ${own(length)} at ${'rad' in at ? writtenAngle(at) : own(at)}`,
  all: (readings: readonly Said[]): Said => joined(readings, ' and '),
  /** Of a key, as the file has it. */
  under: (key: string, reading: Said): Said => say`${asWritten(key)}: ${reading}`,

  /** A reading, and what it came to. */
  cameTo: (reading: Said, value: Said): Said => say`${reading}, that is ${value}`,
  isTaken: (reading: Said): Said => say`${reading}; this one is taken`,
  comparesAs: (reading: Said, difference: Said): Said => say`${reading}; ${difference}`,
  same: say`the same`,
  apart: (difference: Said, way: 'more' | 'less'): Said => say`${difference} ${asWritten(way)}`,
  differ: (first: Said, other: Said, difference: Said, most: Said): Objection => ({
    why: say`${first} and ${other} differ by ${difference}; the readings may differ by ${most} at most`,
    instead: say`both measured again, and those that agree`,
  }),

  tooMany: (count: number, most: number): Objection => ({
    why: say`nobody measures one value ${count} times`,
    instead: say`a list of up to ${most} readings`,
  }),
  emptyList: (wanted: Said): Objection => ({ why: say`there is nothing in the list`, instead: wanted }),
  /** Each way as a person writes it, by its key. */
  examples: EXAMPLES,
  nothingMeasured: (ways: readonly Way[]): Objection => ({
    why: say`there is no measurement in it`,
    instead: joined(
      ways.map((way) => EXAMPLES[way]),
      ' or ',
    ),
  }),
  twoWays: (first: Way, other: Way): Objection => ({
    why: say`\`${asWritten(first)}\` and \`${asWritten(other)}\` are two ways of measuring`,
    instead: say`one of the two, or a list that compares them, as in [${EXAMPLES[first]}, ${EXAMPLES[other]}]`,
  }),
  goesWith: (has: string, lacks: readonly string[], way: Way): Objection => ({
    why: say`\`${asWritten(has)}\` goes with ${joined(
      lacks.map((key) => say`\`${asWritten(key)}\``),
      ' and ',
    )}`,
    instead: EXAMPLES[way],
  }),
  markAmongReadings: {
    why: say`a mark has no number yet that another could be compared with`,
    instead: say`the mark alone, or what was measured`,
  },

  tapeOverGirth: (tape: Length, girth: Length): Objection => ({
    why: say`a tape ${own(tape)} thick leaves nothing of ${own(girth)} round it`,
    instead: say`the thickness of the tape itself, such as 0.1mm`,
  }),
  leanTooFar: {
    why: say`a tube that leans by 90 degrees from square runs along the header`,
    instead: say`a lean between -90 and 90 degrees, such as 28deg`,
  },
  notThreeSides: (count: number): Objection => ({
    why: say`it has three sides, and there ${count === 1 ? say`is 1` : say`are ${count}`}`,
    instead: THREE_SIDES,
  }),
  noTriangle: (marks: Length, isFar: boolean): Objection => ({
    why: say`${own(marks)} between the marks is ${
      isFar ? say`not less than the two other sides together` : say`not more than the two others differ by`
    }`,
    instead: THREE_SIDES,
  }),
  notAcute: {
    why: say`an acute angle is over 0 and not over 90 degrees`,
    instead: say`the acute angle, such as 62deg`,
  },
  tooFarRound: (girth: Mm, units: 'mm' | 'in'): Objection => ({
    why: say`the way round this tube is ${quantities.limit(girth, units)}`,
    instead: say`an arc up to ${quantities.limit(girth, units)} to either side of the spine`,
  }),

  /** Of the lengths along a tube to the edge of a cope that exists. */
  notch: {
    lengths: say`8 lengths or more, at equal stations from the spine`,
    found: (count: number, value: Said, within: Said): Said =>
      say`notch of ${count} lengths, that is ${value} ± ${within}`,
    within: (mm: Mm, unit: 'mm' | 'in'): Said =>
      unit === 'mm' ? quantities.mm(mm) : say`${asWritten(decimalInches(mm))} in`,
    findsAngle: {
      why: say`the \`notch\` gives the angle`,
      instead: say`one of the two`,
    },
    noMark: {
      why: say`the lengths of a \`notch\` are told from the spine, and a mark is not made yet`,
      instead: say`an angle such as 35deg, or no clock: the lengths give it`,
    },
    ofRoundTube: {
      why: say`only a round tube's notch can be read back`,
      instead: say`the angle, the clock and the offset themselves`,
    },
    onRoundHeader: {
      why: say`only the notch for a straight round header can be read back`,
      instead: say`the angle, the clock and the offset themselves, or \`onto: { od: ... }\``,
    },
    tooFew: (count: number): Objection => ({
      why: say`${quantities.counted(count, say`length`, say`lengths`)} can't tell a notch`,
      instead: say`8 or more at equal stations, such as one every 30 degrees`,
    }),
    tooMany: (count: number, most: number): Objection => ({
      why: say`nobody measures ${count} lengths round one tube`,
      instead: say`8 to ${most} of them`,
    }),
    /** The reading at a place, from 1; at a station. */
    odd: (place: number, station: Radians, others: Mm, unit: 'mm' | 'in'): Objection => ({
      why: say`length ${place}, at ${quantities.angle(station)}, does not lie with the others: by them it is about ${quantities.one(others, unit)}`,
      instead: say`it measured again`,
    }),
    noNotch: (scatter: Mm, unit: 'mm' | 'in'): Objection => ({
      why: say`no round header cuts this tube to these lengths: the nearest that one does is off by ${quantities.one(scatter, unit)}`,
      instead: say`them measured again, from one line square round the tube, going right from the spine`,
    }),
    /** Where they are so many and the first one again. */
    closedTwice: (count: number): Objection => ({
      why: say`the last length is the first again, and read at ${count + 1} equal stations they don't settle it`,
      instead: say`the ${count} without the last, each at its own station`,
    }),
    unsettled: (values: readonly Said[]): Objection => ({
      why: say`these readings don't settle ${joined(values, ' and ')}`,
      instead: say`${values.length > 1 ? say`one of them` : say`it`} as well, measured in another way, or more lengths`,
    }),
    /** A value that is not settled: how far off it may be. */
    offBy: (key: Said, within: Said | undefined): Said =>
      within ? say`${key} (it may be off by ${within})` : say`${key} (they tell nothing of it)`,
  },

  /** Why a measured length comes to no number, and what to measure instead. */
  noLength: {
    'axis-beside': {
      why: say`the tube's axis passes beside a header, so there is no face to measure to along it`,
      instead: say`\`straightedge\`, along a line of the tube that meets both headers`,
    },
    'line-beside': {
      why: say`on that line the tube passes beside a header, so a straight edge meets nothing there`,
      instead: say`another station for \`at\`, whose line meets both headers`,
    },
    'still-turns': {
      why: say`end B's rotation is only marked, so what a line of the tube meets there is not known`,
      instead: say`\`faces\`, along the axis, or \`overall\``,
    },
    'mark-beside': {
      why: say`the line of the length mark passes beside the header`,
      instead: say`what was measured from work point to work point, or \`overall\``,
    },
  },

  /** Of the length of a seated tube, given for a job that was read already. */
  seated: {
    notPositive: {
      why: say`it has to be more than 0`,
      instead: say`a length such as 587mm or 23-1/8in`,
    },
    severalTubes: {
      why: say`it is a length of one tube, and the job has several`,
      instead: say`a job of that tube alone`,
    },
    oneEnd: {
      why: say`it reaches from the seated end A to end B, and the job has only one of the two`,
      instead: say`a job with both ends`,
    },
  },
};
