import type { Said } from '../../measure/said.ts';
import type { Length } from '../../measure/units.ts';
import { say } from '../said.ts';
import { quantities } from './quantities.ts';

const { own, written } = quantities;

/** A tube in the person's words and in the other unit; what such a tube is called. */
interface Spoken {
  readonly words: Said;
  readonly name: Said;
}

/** Tubes, each kind by its sizes. */
export const tubes = {
  round: ({ od }: { readonly od: Length }): Spoken => ({ words: written(od), name: say`a round tube` }),
  rectangular: ({ wide, deep, corner }: Rectangle): Spoken => ({
    words: say`${own(wide)} x ${own(deep)}, corners ${written(corner)}`,
    name: say`a rectangular tube`,
  }),
};

interface Rectangle {
  readonly wide: Length;
  readonly deep: Length;
  readonly corner: Length;
}
