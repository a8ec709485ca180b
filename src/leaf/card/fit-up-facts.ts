import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import { check } from '../../words/english/check.ts';
import { inBoth } from '../names.ts';
import type { Fact } from './fact.ts';

/** Where the marks are made that a leaf is laid on; none for an end with numbers. */
export function fitUpFacts({ fitUp, end }: Cope, units: 'mm' | 'in'): Fact[] {
  if (!fitUp) return [];
  const [{ angle, offset }] = end.parts;
  const line = `where the header's centre line comes nearest the heel`;
  const rotation = {
    label: 'rotation',
    text: `marked with end A seated, ${line}${angle.rad === Math.PI / 2 ? sideTaken(offset.mm, units) : ''}.`,
  };
  const length = {
    label: 'length',
    text: `marked ${fitUp.clock ? 'on the line of that mark' : `on the line ${line}`}: ${check.squareAcross}.`,
  };
  return [...(fitUp.clock ? [rotation] : []), ...(fitUp.lengthSetback === undefined ? [] : [length])];
}

/** A square joint has no heel: its mark may be on either side, and the offset tells which. */
export function sideTaken(offset: Mm, units: 'mm' | 'in'): string {
  if (offset === 0) return ': either side, for at 90° both are alike';
  return `: at 90° the side from which the header passes ${inBoth(Math.abs(offset), units)} to the ${offset > 0 ? 'right' : 'left'} with B up`;
}
