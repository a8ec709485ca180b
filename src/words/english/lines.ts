import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import { asWritten, joined, type Objection, say } from '../said.ts';
import { quantities } from './quantities.ts';

const COLUMNS = say`name, x1, y1, z1, x2, y2, z2, od, wall`;

/** What is said of lines in a table or a drawing that become a frame's tubes. */
export const lines = {
  /** The first lines of a frame's file. */
  head: (from: string, tubes: number): readonly Said[] => [
    say`${quantities.counted(tubes, say`tube`, say`tubes`)} from the lines of ${asWritten(from)}.`,
    say`Move a point and every tube that ends there follows; behind a point stand the other tubes that end at it.`,
    say`\`copeleaf check\` says what follows from it.`,
  ],
  csvLine: (line: number, name: Said): Said =>
    name === '' ? say`line ${line}` : say`line ${line} (${name})`,

  /** Of a drawing, with the line of its file that it begins at. */
  entity: (name: Said, line: number): Said => say`${name} (line ${line})`,

  noLines: {
    why: say`no line in it makes a tube`,
    instead: say`a row for each tube, below the names of the columns, or a drawing with LINE or POLYLINE`,
  },
  tooManyLines: (most: number): Objection => ({
    why: say`it has more than ${asWritten(most.toLocaleString('en'))} lines`,
    instead: say`a part of it at a time`,
  }),
  noColumn: (column: string): Objection => ({
    why: say`no column is called ${asWritten(column)}`,
    instead: say`a first row with the names of the columns: ${COLUMNS}`,
  }),
  columnTwice: (column: string): Objection => ({
    why: say`two columns are called ${asWritten(column)}`,
    instead: say`each name once: ${COLUMNS}`,
  }),
  tooManyCells: (columns: number): Objection => ({
    why: say`it has more cells than the first row, which has ${columns}: a decimal comma may have made two of one`,
    instead: say`decimals with a point, or semicolons between the cells`,
  }),
  brokenQuotes: {
    why: say`a quote is not closed, or stands where none can`,
    instead: say`quotes round a whole cell, and two for one inside it`,
  },
  tooFar: {
    why: say`it is further than a kilometre from the origin`,
    instead: say`another unit with --units, or the drawing moved to its origin`,
  },
  noSnap: (most: Mm): Objection => ({
    why: say`it is no distance at which two ends are one point`,
    instead: say`a length from 0 to ${quantities.mm(most)}`,
  }),

  noUnits: {
    why: say`the drawing does not say its unit, or says one that is not read`,
    instead: say`--units mm, cm, m, in or ft`,
  },
  binary: { why: say`a binary DXF is not read`, instead: say`the drawing saved as ASCII DXF` },
  noCode: {
    why: say`a number that says what the next line is stands here in a DXF`,
    instead: say`the drawing saved once more as ASCII DXF`,
  },
  cutOff: {
    why: say`the drawing ends before its end`,
    instead: say`the drawing saved once more as ASCII DXF`,
  },
  noNumber: {
    why: say`a number stands here in a DXF`,
    instead: say`the drawing saved once more as ASCII DXF`,
  },
  noPlace: { why: say`it lacks a place that its kind has`, instead: say`it drawn once more, or left out` },
  bulge: {
    why: say`it is bent, and a frame's tubes are straight`,
    instead: say`straight pieces in its place, or the drawing without it`,
  },

  layerIsSize: (layer: Said, size: Said): Said => say`Layer ${layer} is a size: ${size}.`,
  counted: (count: number, kind: Said): Said => say`${count} ${kind}`,
  leftOut: (kinds: readonly Said[], hasBlocks: boolean): Said =>
    say`Left out, for only LINE, POLYLINE and LWPOLYLINE are tubes: ${few(kinds)}.${hasBlocks ? say` Explode blocks (INSERT) first if tubes are in them.` : say``}`,
  unknownColumns: (columns: readonly Said[]): Said =>
    say`Not read: ${few(columns)}. Known columns: ${COLUMNS}.`,
  short: (labels: readonly Said[]): Said => say`Left out, for they have no length: ${few(labels)}.`,
  doubles: (labels: readonly Said[]): Said =>
    say`Left out, for another line lies between the same points: ${few(labels)}.`,
  inOnePiece: (labels: readonly Said[]): Said =>
    say`One tube, for they follow one another in line: ${few(labels)}. --keep-pieces keeps them apart.`,
  sizeless: (count: number, all: number): Said =>
    say`${count} of ${all} tubes have no size: write \`od\` and \`wall\` in the file, or give --od and --wall.`,
};

/** As many as a person reads. */
const FEW = 6;

function few(each: readonly Said[]): Said {
  const more = each.length - FEW;
  return more > 0 ? say`${joined(each.slice(0, FEW), ', ')} and ${more} more` : joined(each, ', ');
}
