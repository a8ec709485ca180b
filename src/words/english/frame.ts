import type { Said } from '../../measure/said.ts';
import { say } from '../said.ts';

/** What is told of a whole frame. */
export const frameWords = {
  joined: (name: Said, to: Said): Said =>
    say`${name} lies nearer to ${to} than the snap: they are one point, where ${to} is.`,
  near: (end: 'A' | 'B', tube: Said, header: Said): Said =>
    say`End ${end} of ${tube} ends inside ${header}, beside its axis: it is coped onto it there.`,
};
