import { partOf, type Said } from '../../../measure/said.ts';
import { say } from '../../said.ts';
import { pageMeasures } from './measures.ts';

type End = 'A' | 'B';

/** The form round its fields: whose they are, what is chosen, what is added and taken away, what is wrong. */
export const pageForm = {
  /** Whose a value is. */
  of: {
    tube: say`the tube`,
    end: (end: End): Said => say`end ${end}`,
    header: (end: End, number: number): Said => say`end ${end}, header ${number}`,
  },
  /** A value, or one of several readings, with whose it is, for those who hear the form. */
  fieldOf: (label: Said, of: Said): Said => say`${label}, ${of}`,
  measured: (label: Said, of: Said): Said => say`how the ${label} of ${of} was measured`,
  marksOnLeaf: say`The leaf carries the lines to lay on the marks.`,
  readings: {
    measured: (label: Said, reading: Said, of: Said): Said =>
      say`how ${reading} of the ${label} of ${of} was measured`,
    add: say`Add a reading`,
    addTo: (label: Said, of: Said): Said => say`Add a reading of the ${label} of ${of}`,
    remove: say`Remove`,
    /** What a value came to, by its key. */
    told: (key: 'onto' | 'angle' | 'clock' | 'offset', reading: Said): Said =>
      say`${pageMeasures.keys[key]}: ${reading}`,
    removeFrom: (label: Said, reading: Said, of: Said): Said =>
      say`Remove ${reading} of the ${label} of ${of}`,
  },
  board: {
    tube: say`Tube`,
    end: (end: End): Said => say`End ${end}`,
    seenFrom: say`seen from A to B`,
    dial: (end: End): Said => say`How end ${end} is turned, seen from A to B with the spine on top`,
    picture: (end: End, example: boolean): Said =>
      say`End ${end} from its side${example ? say`, an example` : say``}`,
  },
  tube: {
    title: say`Tube`,
    name: say`name of the tube`,
    copies: say`quantity of the tube`,
    section: say`Section of the tube`,
    sections: { round: say`round`, rectangular: say`rectangular` },
    edge: say`How the edge is made`,
    edges: { bevel: say`bevelled`, square: say`left square` },
    more: say`Land, root gap, allowance and note`,
    note: say`note on the tube's ticket`,
    noteInFile: say`Its note has several lines: they stand in the job file, and are changed there.`,
    pair: say`also the opposite hand`,
  },
  tubes: {
    choice: say`Tube`,
    unnamed: (number: number): Said => say`tube ${number}`,
    add: say`Add a tube`,
    copy: say`Copy this tube`,
    remove: say`Remove this tube`,
  },
  end: {
    kinds: {
      none: say`no end here`,
      one: say`lands on a header`,
      several: say`lands on several`,
      plain: say`is cut off square`,
    },
    more: (end: End): Said => say`Edge and seam of end ${end}`,
  },
  header: {
    title: (number: number): Said => say`Header ${number}`,
    add: (end: End): Said => say`Add a header to end ${end}`,
    remove: say`Remove`,
    removeFrom: (end: End, number: number): Said => say`Remove header ${number} of end ${end}`,
    landsOn: (of: Said): Said => say`What ${of} lands on`,
    kinds: {
      round: say`round tube`,
      box: say`box`,
      plate: say`plate`,
      bend: say`bend`,
      mitre: say`mitre`,
    },
  },
  job: {
    summary: (title: Said | undefined, paper: Said | undefined): Said =>
      say`Job, paper and stock: ${title ?? say`no title`}${paper === undefined ? say`` : say`, on ${paper}`}`,
    title: say`title of the job`,
    margin: say`margin on all four sides`,
    stock: (number: number): Said => say`stock length ${number}`,
    addStock: say`Add a stock length`,
  },
  /** What a warning is about, before it is told. */
  warnings: {
    misses: say`past the side`,
    wider: say`wider than the header`,
    'heel-angle': say`sharp heel`,
    feather: say`feather edge`,
    'stand-off': say`stand-off`,
    gap: say`gap`,
    short: say`short tube`,
    'as-meant': say`as meant?`,
  },
  lacking: say`Still to fill in`,
  wrong: say`What can’t be read`,
  line: (line: number): Said => say`line ${line}`,
  /** Follows what was read. */
  because: (why: Said, instead: Said): Said => say`: ${why}. Write ${instead}.`,
  /** Before what is wrong with it. */
  named: (label: Said): Said => say`${label}:`,
  mistake: (why: Said, instead: Said): Said =>
    say`${partOf(why, `${why.slice(0, 1).toUpperCase()}${why.slice(1)}`)}. Write ${instead}.`,
};
