import type { Said } from '../../../measure/said.ts';
import type { Length, Mm } from '../../../measure/units.ts';
import { asWritten, type Objection, say } from '../../said.ts';
import { quantities } from '../quantities.ts';

const AN_END = say`\`plain\`, or a map with \`onto\` and \`angle\``;

/** The ends of a tube: what they land on, how they are turned, what is marked on them, how their edge is made. */
export const ends = {
  end: AN_END,
  plainAlone: (setting: Said): Objection => ({
    why: say`\`plain\` stands in place of the map`,
    instead: setting,
  }),
  list: say`a list of headers, each a map with \`onto\` and \`angle\``,
  noEnd: {
    why: say`there is no end to cope`,
    instead: say`an end, as in \`A: { onto: { od: 44.5mm }, angle: 60deg }\``,
  },
  noEndOfThatName: { why: say`a tube has the ends A and B`, instead: say`--end A or --end B` },
  emptyList: { why: say`there is no header in the list`, instead: AN_END },
  noHeader: {
    why: say`a coped end lands on something`,
    instead: say`the header it lands on, or \`plain\` for a square cut`,
  },
  noAngle: {
    why: say`the joint needs its angle`,
    instead: say`the angle between tube and header, as in 60deg`,
  },
  mitreHasItsAngle: {
    why: say`a mitre halves its turn, which gives the angle`,
    instead: say`the turn alone`,
  },
  noOffset: (onto: 'plate' | 'mitre'): Objection => ({
    why: say`a ${asWritten(onto)} is the same wherever it is met: it has no axis to be beside of`,
    instead: say`no offset`,
  }),
  /** `reach` is the least offset with which nothing is met. */
  misses: (tube: Said, header: Said, reach: Mm, units: 'mm' | 'in'): Objection => ({
    why: say`the tube, ${tube}, passes beside ${header} and misses it`,
    instead: say`an offset under ${quantities.amount(reach, units)} to either side`,
  }),
  rootTooWide: (most: Mm, units: 'mm' | 'in'): Objection => ({
    why: say`a weld's root is not left open by ${quantities.limit(most, units)} and more`,
    instead: say`a length under ${quantities.limit(most, units)}, such as ${units === 'mm' ? say`1mm` : say`1/16in`}`,
  }),

  noLengthBetween: {
    why: say`a tube with two ends has a length between their work points`,
    instead: say`its length, as in 600mm, or one end alone`,
  },
  lengthOfOneEnd: {
    why: say`what is measured from one end to the other takes both ends to come to a length`,
    instead: say`both ends as well, or a length from work point to work point`,
  },

  /** Where a rotation can't be marked. */
  noMark: {
    endA: {
      why: say`end A is coped and seated first, and the mark is made with it in its place`,
      instead: say`an angle such as 35deg here, and the mark at end B`,
    },
    list: {
      why: say`several headers have no one centre line to mark`,
      instead: say`an angle such as 35deg for each, counted from the spine`,
    },
    turned: (why: Said): Objection => ({
      why,
      instead: say`an angle such as 0deg or 90deg, counted from the spine`,
    }),
  },
  /** Where a length can't be marked. */
  noLengthMark: (because: 'no-end' | 'plain' | 'list'): Objection => ({
    why: NO_LENGTH_MARK[because],
    instead: say`a length such as 600mm, or a coped end B that lands on one header`,
  }),

  squareNeedsWall: (wall: Said, bevel: Said): Objection => ({
    why: say`a square cut has to clear the header with its inside edge too, which takes the wall`,
    instead: say`${wall} as well, or ${bevel}`,
  }),
  landNeedsWall: (wall: Said): Objection => ({
    why: say`the land is a part of the wall, so the wall has to be known`,
    instead: say`${wall} as well`,
  }),
  landOverWall: (wall: Length): Objection => ({
    why: say`the land is thicker than the wall, ${quantities.own(wall)}`,
    instead: say`a length up to ${quantities.own(wall)}`,
  }),
  landIsForBevel: (bevel: Said, land: Said): Objection => ({
    why: say`a square cut has no feather to take off`,
    instead: say`${bevel}, or no ${land}`,
  }),
  insideIsForSquare: (square: Said, from: Said): Objection => ({
    why: say`only a cut left square can go by the inside line`,
    instead: say`${square} as well, or no ${from}`,
  }),

  /** The length mark of end B, of a line that meets nothing. */
  lengthMarkBeside: {
    read: say`between: mark`,
    why: say`the line of the tube at the header's centre line passes beside the header, so no length can be marked on it`,
    instead: say`a length, or less offset at end B`,
  },
  cutsCross: (by: Mm, least: Mm, units: 'mm' | 'in'): Objection => ({
    why: say`the cuts of its two ends cross by ${quantities.amount(by, units)} and leave no tube between them`,
    instead: say`at least ${units === 'mm' ? quantities.mm(least) : quantities.roundedUp(least, units)}, measured from work point to work point`,
  }),
  bendCrosses: (end: 'A' | 'B'): Objection & { readonly read: Said } => ({
    read: say`end ${end}`,
    why: say`the arc of the bend that it lands on crosses the tube again, away from the joint`,
    instead: say`a larger \`radius\`, or a \`centre\` turned away from the body (180deg is straight away)`,
  }),
};

const NO_LENGTH_MARK = {
  'no-end': say`it is end B whose length is marked, with end A seated, and there is no end B`,
  plain: say`a square end B is cut at the mark itself and has no leaf to lay on it`,
  list: say`several headers have no one centre line to mark the length on`,
};
