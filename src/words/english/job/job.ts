import type { Said } from '../../../measure/said.ts';
import { type Objection, say } from '../../said.ts';
import { ends } from './ends.ts';
import { frame } from './frame.ts';
import { text } from './text.ts';
import { values } from './values.ts';
import { ways } from './ways.ts';

const A_STOCK_LENGTH = say`a length and how many there are, as in 6m x 3, or one length, as in 2.4m`;

/** What a job file asks for, and what is wrong with it. */
export const job = {
  ends,
  frame,
  text,
  values,
  ways,

  /** What a complaint about flags says instead of a file. */
  commandLine: say`command line`,
  tubeTwice: { why: say`there is a \`tube\` as well`, instead: say`all of them in \`tubes\`` },
  noTube: { why: say`there is no tube`, instead: say`\`tube:\` with \`od\` and \`ends\`` },
  tubes: say`a list of tubes, each beginning with \`-\``,
  noTubeInList: { why: say`there is no tube in the list`, instead: say`at least one tube` },
  /** What a tube is called that has no name. */
  unnamed: (place: number): Said => say`tube ${place}`,
  sameName: {
    why: say`another tube has this name, and their leaves could not be told apart`,
    instead: say`a name of its own for each tube`,
  },

  stock: {
    length: A_STOCK_LENGTH,
    list: say`a list: ${A_STOCK_LENGTH}`,
    count: (count: number, most: number): Objection => ({
      why: count === 0 ? say`there is nothing in the list` : say`no shop has so many different lengths`,
      instead: say`up to ${most} lengths, each ${A_STOCK_LENGTH}`,
    }),
    misread: (why: Said): Objection => ({ why, instead: A_STOCK_LENGTH }),
    notPositive: { why: say`it has to be more than 0`, instead: A_STOCK_LENGTH },
    lengthFirst: {
      why: say`the length comes first, and then how many there are`,
      instead: A_STOCK_LENGTH,
    },
    noCount: (most: number): Objection => ({
      why: say`how many there are is a whole number from 1 to ${most}`,
      instead: A_STOCK_LENGTH,
    }),
  },
};
