import type { Part } from '../../job/job.ts';
import type { Said } from '../../measure/said.ts';
import type { Cope } from '../../saddle/cope.ts';
import { wrapStation } from '../../space/section.ts';
import type { Language } from '../../words/language.ts';

/** The two sides of a joint that have a name, as stations: the acute one and the obtuse one. */
export interface Sides {
  readonly heel: number;
  readonly toe: number;
}

/** Where heel and toe are; undefined for a union, which has none. */
export function sidesOf({ heel, joint: { section } }: Pick<Cope, 'heel' | 'joint'>): Sides | undefined {
  if (heel === undefined) return undefined;
  const at = (turned: number): number => wrapStation(section.towards(heel + turned), section.turn);
  return { heel: at(0), toe: at(Math.PI) };
}

/** On which side of the tube one of several headers stands that ends at the joint: 1 for its clock's, -1 for the other; undefined of one that goes on. */
export function sideOfStop({ stops }: Part, several: boolean): 1 | -1 | undefined {
  return several ? stops?.ahead : undefined;
}

/** What the side is called that lies at the clock. */
export function sideAtClock(part: Part, words: Language): Said {
  const { heel, toe } = sideNames(part, words);
  return part.angle.rad <= Math.PI / 2 ? heel : toe;
}

export interface SideNames {
  readonly heel: Said;
  readonly toe: Said;
}

/** What the acute and the obtuse side are called: at a mitre they are those of the corner. */
export function sideNames({ onto }: Part, { picture }: Language): SideNames {
  return onto.kind === 'mitre'
    ? { heel: picture.inside, toe: picture.outside }
    : { heel: picture.heel, toe: picture.toe };
}
