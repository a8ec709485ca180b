import type { Mm } from '../measure/units.ts';
import { angleAsWritten, asWritten, bothUnits } from '../measure/write.ts';
import type { Header, Section } from './job.ts';

/** How far a header reaches from its axis, along w, to either side. A plate is endless. */
export function halfAcross(header: Header): Mm {
  switch (header.kind) {
    case 'round':
      return header.od.mm / 2;
    case 'plate':
    case 'mitre':
      return Number.POSITIVE_INFINITY;
    case 'box':
      return boxReach(header.wide.mm, header.deep.mm, header.corner.mm, header.roll.rad);
    case 'bend':
      return Number.POSITIVE_INFINITY;
  }
}

/** How far a header reaches from its axis towards the tube's body. */
export function halfTowards(header: Header): Mm {
  switch (header.kind) {
    case 'round':
    case 'bend':
      return header.od.mm / 2;
    case 'plate':
    case 'mitre':
      return 0;
    case 'box':
      return boxReach(header.deep.mm, header.wide.mm, header.corner.mm, header.roll.rad);
  }
}

/** Half the width of a rolled rectangle with round corners. */
function boxReach(along: Mm, square: Mm, corner: Mm, roll: number): Mm {
  const core =
    (along / 2 - corner) * Math.abs(Math.cos(roll)) + (square / 2 - corner) * Math.abs(Math.sin(roll));
  return core + corner;
}

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

/** A tube's size in the person's words and in the other unit. */
export function sectionInWords(section: Section): string {
  if (section.kind === 'round') return bothUnits(section.od);
  return `${asWritten(section.wide)} x ${asWritten(section.deep)}, corners ${bothUnits(section.corner)}`;
}

/** A header in the person's words and in the other unit, after `onto`. */
export function headerInWords(header: Header): string {
  switch (header.kind) {
    case 'round':
      return bothUnits(header.od);
    case 'plate':
      return 'a plate';
    case 'mitre': {
      const { turn, segments } = header;
      const bend =
        segments && ` in ${segments.pieces} pieces round a centre line of ${bothUnits(segments.radius)}`;
      return `a mitre that turns ${angleAsWritten(turn)}${bend ?? ''}`;
    }
    case 'box': {
      const { wide, deep, corner, roll } = header;
      const rolled = roll.rad === 0 ? '' : `, rolled ${angleAsWritten(roll)}`;
      return `a box ${bothUnits(wide)} wide, ${bothUnits(deep)} deep, corners ${bothUnits(corner)}${rolled}`;
    }
    case 'bend':
      return `a bend of ${bothUnits(header.od)}, centre line ${bothUnits(header.radius)}, centre at ${angleAsWritten(header.centre)}`;
  }
}
