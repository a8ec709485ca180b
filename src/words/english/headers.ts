import type { Said } from '../../measure/said.ts';
import type { Angle, Length } from '../../measure/units.ts';
import { say } from '../said.ts';
import { quantities } from './quantities.ts';

const { own, written, writtenAngle } = quantities;

/** A header in the person's words and in the other unit, as it stands after `onto`; and in few words. */
interface Spoken {
  readonly words: Said;
  readonly name: Said;
}

/** What an end lands on, each kind by its sizes. */
export const headers = {
  round: ({ od }: { readonly od: Length }): Spoken => ({
    words: written(od),
    name: say`the ${own(od)} header`,
  }),
  plate: (): Spoken => ({ words: say`a plate`, name: say`the plate` }),
  mitre: ({ turn, segments }: Mitre): Spoken => ({
    words: say`a mitre that turns ${writtenAngle(turn)}${segments ? say` in ${segments.pieces} pieces round a centre line of ${written(segments.radius)}` : say``}`,
    name: say`the next piece`,
  }),
  box: ({ wide, deep, corner, roll }: Box): Spoken => ({
    words: say`a box ${written(wide)} wide, ${written(deep)} deep, corners ${written(corner)}${roll.rad === 0 ? say`` : say`, rolled ${writtenAngle(roll)}`}`,
    name: say`the ${own(wide)} x ${own(deep)} box`,
  }),
  bend: ({ od, radius, centre }: Bend): Spoken => ({
    words: say`a bend of ${written(od)}, bent to ${written(radius)} on its centre line, its centre ${writtenAngle(centre)} round from the tube`,
    name: say`the bent ${own(od)} header`,
  }),
};

interface Mitre {
  readonly turn: Angle;
  readonly segments?: { readonly pieces: number; readonly radius: Length };
}

interface Box {
  readonly wide: Length;
  readonly deep: Length;
  readonly corner: Length;
  readonly roll: Angle;
}

interface Bend {
  readonly od: Length;
  readonly radius: Length;
  readonly centre: Angle;
}
