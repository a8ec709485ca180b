import type { Mm } from '../measure/units.ts';
import { bothUnits, isMetric, lengthAsWritten } from '../measure/write.ts';
import type { Section } from './job.ts';

/** How far a tube reaches from its axis at most. */
export function reachOf(section: Section): Mm {
  if (section.kind === 'round') return section.od.mm / 2;
  const { wide, deep, corner } = section;
  return Math.hypot(wide.mm / 2 - corner.mm, deep.mm / 2 - corner.mm) + corner.mm;
}

/** The way round a tube's outside. */
export function girthOf(section: Section): Mm {
  if (section.kind === 'round') return Math.PI * section.od.mm;
  const { wide, deep, corner } = section;
  return 2 * (wide.mm + deep.mm) + (2 * Math.PI - 8) * corner.mm;
}

/** The length in whose unit a tube's size was written. */
export function sizeOf(section: Section): {
  readonly unit: 'mm' | 'cm' | 'm' | 'in' | 'ft';
  readonly mm: Mm;
} {
  return section.kind === 'round' ? section.od : section.wide;
}

/** The unit in which a tube's computed lengths are told: the one of those two that its size was written in or near. */
export function unitsOf({ section }: { readonly section: Section }): 'mm' | 'in' {
  return isMetric(sizeOf(section).unit) ? 'mm' : 'in';
}

/** A tube's size in the person's words and in the other unit. */
export function sectionInWords(section: Section): string {
  if (section.kind === 'round') return bothUnits(section.od);
  return `${lengthAsWritten(section.wide)} x ${lengthAsWritten(section.deep)}, corners ${bothUnits(section.corner)}`;
}
