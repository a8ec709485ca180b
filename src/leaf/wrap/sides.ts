import type { Part } from '../../job/job.ts';
import type { Cope } from '../../saddle/cope.ts';
import { homeStation } from '../../saddle/peaks.ts';

/** The two sides of a joint that have a name, as stations: the acute one and the obtuse one. */
export interface Sides {
  readonly heel: number;
  readonly toe: number;
}

/** Where heel and toe are; undefined for a union, which has none. */
export function sidesOf({ heel, joint: { section } }: Pick<Cope, 'heel' | 'joint'>): Sides | undefined {
  if (heel === undefined) return undefined;
  const at = (turned: number): number => homeStation(section.towards(heel + turned), section.turn);
  return { heel: at(0), toe: at(Math.PI) };
}

/** What the acute and the obtuse side are called: at a mitre they are those of the corner. */
export function sideNames({ onto }: Part): { readonly heel: string; readonly toe: string } {
  return onto.kind === 'mitre' ? { heel: 'inside', toe: 'outside' } : { heel: 'heel', toe: 'toe' };
}
