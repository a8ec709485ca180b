import type { Said } from '../../measure/said.ts';
import type { Angle, Length, Mm } from '../../measure/units.ts';
import { type Objection, say } from '../said.ts';
import { quantities } from './quantities.ts';

const { own, radius, written, writtenAngle } = quantities;

/** A header in the person's words and in the other unit, as it stands after `onto`; and in few words. */
type Spoken = {
  readonly words: Said;
  /** In the person's words alone. */
  readonly brief: Said;
  readonly name: Said;
};

/** What an end lands on, each kind by its sizes. */
export const headers = {
  round: ({ od }: { readonly od: Length }): Spoken => ({
    words: written(od),
    brief: own(od),
    name: say`the ${own(od)} header`,
  }),
  plate: (): Spoken => ({ words: say`a plate`, brief: say`a plate`, name: say`the plate` }),
  mitre: ({ turn, segments }: Mitre): Spoken => ({
    words: say`a mitre that turns ${writtenAngle(turn)}${segments ? say` in ${segments.pieces} pieces round a centre line of ${written(segments.radius)}` : say``}`,
    brief: say`a mitre that turns ${writtenAngle(turn)}${segments ? say`, centre line radius ${own(segments.radius)}` : say``}`,
    name: say`the next piece`,
  }),
  box: ({ wide, deep, corner, roll }: Box): Spoken => ({
    words: say`a box ${written(wide)} wide, ${written(deep)} deep, corner radius ${radius(corner)}${roll.rad === 0 ? say`` : say`, rolled ${writtenAngle(roll)}`}`,
    brief: say`a box ${own(wide)} x ${own(deep)}${roll.rad === 0 ? say`` : say`, rolled ${writtenAngle(roll)}`}`,
    name: say`the ${own(wide)} x ${own(deep)} box`,
  }),
  bend: ({ od, radius, centre }: Bend): Spoken => ({
    words: say`a bend of ${written(od)}, bent to ${written(radius)} on its centre line, its centre ${writtenAngle(centre)} round from the tube`,
    brief: say`a bend of ${own(od)}, radius ${own(radius)}, its centre ${writtenAngle(centre)} round from the tube`,
    name: say`the bent ${own(od)} header`,
  }),

  noSize: (od: Said): Objection => ({
    why: say`the header needs a size`,
    instead: say`the outside diameter of the header, as in ${od}`,
  }),
  sizeTwice: (key: Said): Objection => ({
    why: say`${key} gives the header already`,
    instead: say`one of the two`,
  }),
  noFlat: (toFlat: Said): Objection => ({
    why: say`${toFlat} is for an end on a box, whose corners are left to be filled`,
    instead: say`no such key, or \`box\` as the header`,
  }),
  noTurn: {
    why: say`a corner turns by more than 0 and less than 180 degrees`,
    instead: say`a turn such as 90deg`,
  },
  needsBoth: (key: Said): Objection => ({ why: say`${key} needs it too`, instead: say`both, or neither` }),
  pieces: say`a whole number, 2 or more`,
  noPieces: {
    why: say`a bend is made of 2 to 100 pieces`,
    instead: say`a whole number such as 5`,
  },
  bentTooTight: (od: Length, radius: Length): Objection => ({
    why: say`a tube of ${own(od)} can't be bent round a centre line of ${own(radius)}`,
    instead: say`a radius over half the diameter`,
  }),
  /** A bend of straight pieces. */
  piecesTooTight: (across: Length, radius: Length): Objection => ({
    why: say`round a centre line of ${own(radius)} the pieces of a tube of ${own(across)} have nothing left on their inside`,
    instead: say`a radius over half the diameter, to the centre line`,
  }),
  /** On the inside of the bend there is so much from its wall to the bend's centre. */
  bentTooTightForRoot: (od: Length, radius: Length, room: Mm, units: 'mm' | 'in'): Objection => ({
    why: say`a bend of ${own(od)} round a centre line of ${own(radius)} leaves ${quantities.limit(room, units)} inside it, no more than the root gap`,
    instead: say`a root gap under ${quantities.limit(room, units)}`,
  }),
};

type Mitre = {
  readonly turn: Angle;
  readonly segments?: { readonly pieces: number; readonly radius: Length };
};

type Box = {
  readonly wide: Length;
  readonly deep: Length;
  readonly corner: Length;
  readonly roll: Angle;
};

type Bend = {
  readonly od: Length;
  readonly radius: Length;
  readonly centre: Angle;
};
