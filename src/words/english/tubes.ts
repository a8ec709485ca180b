import type { Said } from '../../measure/said.ts';
import type { Length, Mm, Units } from '../../measure/units.ts';
import { millimetres } from '../../measure/write.ts';
import { asWritten, joined, type Objection, say } from '../said.ts';
import { values } from './job/values.ts';
import { quantities } from './quantities.ts';

const { limit, own, radius, written } = quantities;

/** A tube in the person's words and in the other unit; what such a tube is called. */
type Spoken = {
  readonly words: Said;
  /** In the person's words alone. */
  readonly brief: Said;
  readonly name: Said;
};

const ONE_OF_THE_TWO = say`one of the two`;

/** Tubes, each kind by its sizes, and what is wrong with these. */
export const tubes = {
  round: ({ od }: { readonly od: Length }): Spoken => ({
    words: written(od),
    brief: own(od),
    name: say`a round tube`,
  }),
  rectangular: ({ wide, deep, corner }: Rectangle): Spoken => ({
    words: say`${own(wide)} x ${own(deep)}, corner radius ${radius(corner)}`,
    brief: say`${own(wide)} x ${own(deep)}, corner radius ${own(corner)}`,
    name: say`a rectangular tube`,
  }),
  /** Of a tube with faces: where its spine runs, and why no rotation is marked on it. */
  turned: {
    spine: say`the middle of a wide face`,
    why: say`the faces of a rectangular tube show how it is turned`,
  },

  noSize: (pipe: Said): Objection => ({
    why: say`the tube needs a size`,
    instead: say`its outside diameter, as in 38.1mm or 1-1/2in, or ${pipe}`,
  }),
  sizeTwice: (key: Said): Objection => ({ why: say`${key} gives the size already`, instead: ONE_OF_THE_TWO }),
  pipeName: say`the name of a size, as in NPS 1-1/2 sch 40 or EN 48.3 x 2.6`,
  /** The name of a pipe in place of its diameter, mm; `pipe` is how it is asked for by its name, where it can be. */
  nameInPlace: (od: Mm | undefined, pipe: Said | undefined): Objection => {
    const known = od === undefined ? say`` : say`, ${asWritten(millimetres(od))}mm`;
    const inItsPlace = pipe === undefined ? [] : [say`${pipe} in its place`];
    return {
      why: say`that is the name of a size and no length`,
      instead: joined([say`its outside diameter${known}`, ...inItsPlace], ', or '),
    };
  },

  wall: say`a length such as 2.4mm or .095in, or a gauge such as 16 BWG`,
  /** The diameter and the wall, each in place of the other. */
  swapped: (od: string, wall: string): Objection => ({
    why: say`no tube is thinner than its wall, ${asWritten(wall)}`,
    instead: say`\`od: ${asWritten(wall)}\` and \`wall: ${asWritten(od)}\`, if the two are swapped`,
  }),
  wallTwice: (key: Said, wall: Length, withoutWall: Said): Objection => ({
    why: say`${key} gives the wall already, ${own(wall)}`,
    instead: say`${withoutWall}, or no wall`,
  }),
  wallFills: (across: Length, units: Units): Objection => {
    const most = limit(across.mm / 2, units);
    return {
      why: say`the wall fills the tube: half of ${own(across)} is ${most}`,
      instead: say`a wall of ${most} at most, which is a solid bar`,
    };
  },

  /** A number without a unit, in the file's, and what else it can have meant. */
  thickWall: (here: Length, others: readonly Length[], across: Length): Objection => ({
    why: say`that is ${Math.round((100 * here.mm) / across.mm)} % of the tube, ${own(across)}: hardly a tube has such a wall`,
    instead: values.whichReading(here, others),
  }),

  needs: (setting: Said): Objection => ({ why: say`it is needed here`, instead: setting }),
  /** Where none is given: so many times the wall. */
  usualCorner: (times: number): Said => say`${times} x wall, EN 10219-2`,
  noCorner: {
    why: say`the corners follow from the wall, which is not given`,
    instead: say`the wall, or the outside radius of the corners, 0 if they are sharp`,
  },
  cornerTooWide: (corner: Length, most: Mm, units: Units): Objection => ({
    why: say`corners of ${own(corner)} are wider than half of its narrow side`,
    instead: say`a corner up to ${limit(most, units)}`,
  }),
};

type Rectangle = {
  readonly wide: Length;
  readonly deep: Length;
  readonly corner: Length;
};
