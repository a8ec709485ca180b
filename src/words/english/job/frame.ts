import type { Said } from '../../../measure/said.ts';
import type { Mm, Units } from '../../../measure/units.ts';
import { asWritten, joined, type Objection, say } from '../../said.ts';
import { quantities } from '../quantities.ts';

const A_PLACE = say`three lengths, as in \`[0, 250, 1200]\`: to the right, away from you, up`;
const TWO_POINTS = say`two points, as in \`[left, right]\``;
const ALL_OVER_AGAIN = say`points, tubes or ends that do not rest on one another in a circle`;
const A_WAY = say`up, down, left, right, front, back, or three numbers such as \`[1, 0, 1]\``;
const MANY_TIMES = say`the cut would be many times as long as the tube is wide`;
const PLAIN_NAME = say`a name without a comma`;

/** What is wrong with a frame: its points, its tubes, and what follows where they meet. */
export const frame = {
  notRead: { why: say`a frame makes its tubes itself`, instead: say`the tubes one by one in \`tubes\`` },
  noTubesBeside: { why: say`the frame has its own tubes`, instead: say`all of them in the frame` },
  notYet: {
    why: say`tapes are not read yet`,
    instead: say`the point by its three lengths, or from another point`,
  },
  points: say`points by their names, each ${A_PLACE}`,
  tubes: say`a list of tubes, each with \`along\` and a size`,
  noTubes: { why: say`a frame has tubes`, instead: say`\`tubes:\`, each with \`along\` and a size` },
  names: say`names of tubes, as in \`[sill, post]\``,
  commaInName: { why: say`in a frame names stand in lists, where a comma parts them`, instead: PLAIN_NAME },
  unknown: (name: Said, kind: 'point' | 'tube', meant: string | undefined): Objection => ({
    why: kind === 'point' ? say`no point is called ${name}` : say`no tube is called ${name}`,
    instead:
      meant === undefined
        ? say`the name of a ${asWritten(kind)} of this frame`
        : say`\`${asWritten(meant)}\`, if that is meant`,
  }),
  circle: (names: readonly Said[]): Objection => ({
    why: say`each rests on the next: ${joined(names, ' -> ')}`,
    instead: ALL_OVER_AGAIN,
  }),
  endOf: (end: 'A' | 'B', tube: Said): Said => say`${tube} ${end}`,

  /** Points whose numbers are mostly meant in the next larger unit: so long is the longest tube by them. */
  stubby: (longest: Mm, units: Units): Objection => {
    const [unit, larger] = units === 'mm' ? [say`mm`, say`cm`] : [say`in`, say`ft`];
    return {
      why: say`without units all points are in ${unit}, and hardly a frame is that small: its longest tube is ${quantities.amount(longest, units)}, and each is under 6 times as long as it is wide`,
      instead: say`the numbers of the points with their unit, if they are in ${larger}; if they are in ${unit}, that unit at one of them`,
    };
  },

  aPlace: A_PLACE,
  tooManyNumbers: {
    why: say`a point has three numbers; a decimal comma inside [ ] makes two of one`,
    instead: say`decimals with a point, or in quotes: \`["1,5", 0, 20]\``,
  },
  tooFewNumbers: { why: say`a point has three numbers`, instead: A_PLACE },
  noPoint: {
    why: say`nothing says where it is`,
    instead: say`\`on\` a tube, in the \`middle\` of two points, or \`from\` a point`,
  },
  oneWay: { why: say`it is placed already`, instead: say`one of the two` },
  noAt: {
    why: say`it says on which tube and not where`,
    instead: say`\`at\`: how far from that tube's first point`,
  },
  noBy: (from: Said): Objection => ({
    why: say`it says from which point and not how far`,
    instead: say`\`by\`: three lengths from ${from}`,
  }),
  twoPoints: TWO_POINTS,
  notTwoPoints: { why: say`a tube's axis, and a middle, lie between two points`, instead: TWO_POINTS },
  aShare: say`a part of the way such as 0.4`,
  noShare: {
    why: say`it is no part of the way from one point to the other`,
    instead: say`a number such as 0.4`,
  },
  beyond: (tube: Said, long: Mm, units: Units): Objection => ({
    why: say`${tube} is ${quantities.limit(long, units)} long, from point to point`,
    instead: say`a length up to that`,
  }),
  outAlong: (tube: Said): Objection => ({
    why: say`that way runs along ${tube}, which has no outside there`,
    instead: say`a way across the tube`,
  }),
  aWay: A_WAY,
  noWay: { why: say`it is no way in space`, instead: A_WAY },

  noBetween: {
    why: say`in a frame a tube's length follows from its points`,
    instead: say`\`along\` alone`,
  },
  noCopies: (key: string): Objection => ({
    why: say`a frame makes its own copies and hands: \`${asWritten(key)}\` is not for it`,
    instead: say`\`mirror\` for the other half, or \`copies\` at the head of the file for whole frames`,
  }),
  noAlong: { why: say`nothing says where the tube runs`, instead: say`\`along\`: ${TWO_POINTS}` },
  noLength: { why: say`its two points are one`, instead: say`two points that are apart` },
  faceAlong: { why: say`a face can't look along its tube`, instead: say`a way across the tube` },
  alongTwin: (name: Said): Objection => ({
    why: say`${name} and its mirror image lie in one line, over one another`,
    instead: say`the tube from plane to end, or from end to end so that it is its own mirror image`,
  }),
  onePlane: {
    why: say`one plane is the mirror`,
    instead: say`one of \`x\`, \`y\` and \`z\`, as in \`{ x: 600 }\``,
  },
  aDensity: say`g/cm3, as in 7.85`,
  noDensity: { why: say`it is no density`, instead: say`g/cm3, as in 7.85 for steel or 2.7 for aluminium` },

  oneCut: {
    why: say`the end is cut in one way`,
    instead: say`one of \`onto\`, \`plain\`, \`mitre\` and \`flat\``,
  },
  noPast: {
    why: say`only a plain end runs past its point`,
    instead: say`\`plain: true\` beside it, or no \`past\``,
  },
  noMitre: {
    why: say`nothing to mitre it with: two ends of one outside have to come first at the point, and no tube run through it`,
    instead: say`the other end of the same size, or no \`mitre\``,
  },
  /** `across`: the plane that cuts it nearly square. */
  flatAlong: (tube: Said, angle: number, across: 'x' | 'y' | 'z' | undefined): Objection => ({
    why: say`${tube} lies at ${asWritten(angle.toFixed(1))} degrees to that plane, under 15: ${MANY_TIMES}`,
    instead: across
      ? say`\`flat: ${asWritten(across)}\`, which cuts it nearly square, or other points: z is up`
      : say`a plane that cuts across the tube`,
  }),
  ontoItself: { why: say`a tube does not land on itself`, instead: say`the tubes it lands on` },
  missesAll: (names: readonly Said[]): Objection => ({
    why: say`the tube passes beside ${joined(names, ' and ')} and misses it`,
    instead: say`a point nearer to it, or another tube`,
  }),
  tooFlat: (tube: Said, header: Said, angle: number): Objection => ({
    why: say`${tube} lands on ${header} at ${asWritten(angle.toFixed(1))} degrees, under 15: ${MANY_TIMES}`,
    instead: say`\`onto: [${header}]\` at that end if it is meant, or other points`,
  }),
  cutsCross: (by: Mm, units: Units): Objection => ({
    why: say`the cuts of its two ends cross by ${quantities.amount(by, units)} and leave no tube between them`,
    instead: say`points further apart`,
  }),
  nothingBetween: (between: Mm, units: Units): Objection => ({
    why: say`its ends cross: ${quantities.amount(between, units)} is left between the work points`,
    instead: say`points further apart`,
  }),
};
