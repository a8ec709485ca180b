import type { Said } from '../../measure/said.ts';
import { sawLength, tapeLength } from '../../measure/saw-length.ts';
import { plainSpelling } from '../../measure/spelling.ts';
import {
  type Angle,
  degrees,
  type Length,
  MM_PER_INCH,
  type Mm,
  type Radians,
  type Units,
} from '../../measure/units.ts';
import {
  decimalInches,
  inchFraction,
  isMetric,
  lengthAsWritten,
  millimetres,
  writeAngle,
} from '../../measure/write.ts';
import { asWritten, say } from '../said.ts';

/** Lengths, angles and counts. Lengths in mm, angles in radians; `units` are those of the job. */
export const quantities = {
  /** `31.75 mm`. */
  mm: (mm: Mm): Said => one(mm, 'mm'),
  /** In the job's unit alone: `512.3 mm`, `~20-5/32 in`. */
  one: (mm: Mm, units: Units): Said => one(mm, units),
  /** In the job's unit and the other: `512.3 mm (~20-5/32 in)`. */
  both: (mm: Mm, units: Units): Said => both(mm, units),
  /** In the job's unit, to what a tape is read to: `512.5 mm`, `20-5/32 in`. */
  tape: (mm: Mm, units: Units): Said => one(tapeLength(mm, units), units),
  /** Up to the next millimetre or sixteenth. */
  roundedUp: (mm: Mm, units: Units): Said => one(roundedUp(mm, units), units),
  /** Down to it. */
  roundedDown: (mm: Mm, units: Units): Said => one(-roundedUp(-mm, units), units),
  /** A limit that a length may reach, in the job's unit and never over it: `19.05 mm`, `0.75 in`. */
  limit: (mm: Mm, units: Units): Said =>
    units === 'mm' ? say`${below(mm, 100)} mm` : say`${below(mm / MM_PER_INCH, 1000)} in`,
  /** A computed amount in the job's unit, however small: `0.38 mm`, `~5/32 in`, `0.015 in`. */
  amount: (mm: Mm, units: Units): Said =>
    units === 'mm' || Math.abs(mm) >= MM_PER_INCH / 32
      ? one(mm, units)
      : say`${Number((mm / MM_PER_INCH).toFixed(3)) + 0} in`,
  /** Where a tenth decides: `2.3 mm`, `3/32 in`. */
  oneToATenth: (mm: Mm, units: Units): Said =>
    one(units === 'mm' ? toATenth(mm) : tapeLength(mm, units), units),
  /** The same to a tenth of a millimetre. */
  bothToATenth: (mm: Mm, units: Units): Said => {
    const [metric, inch] = [one(toATenth(mm), 'mm'), one(mm, 'in')];
    return units === 'mm' ? say`${metric} (${inch})` : say`${inch} (${metric})`;
  },
  /** A blank as it is sawn: `432 mm`. */
  sawn: (mm: Mm, units: Units): Said => one(sawLength(mm, units), units),
  /** As the person wrote it, and in the other unit; a named size in both: `16 BWG (1.65 mm, ~1/16 in, 0.065)`. */
  written,
  /** In the person's own words alone, without a sign where words beside it say which way. */
  unsigned: (length: Length): Said => asWritten(own(length).replace(/^[-−]\s*/, '')),
  /** The same in the person's own words alone; a named size in millimetres too. */
  sized: (length: Length): Said =>
    length.byName ? say`${asWritten(length.wrote)} (${one(length.mm, 'mm')})` : own(length),
  /** A radius that follows from the wall where none was given: `5 mm (2 x wall, EN 10219-2)`. */
  radius: (length: Length): Said =>
    length.byName
      ? say`${one(length.mm, isMetric(length.unit) ? 'mm' : 'in')} (${asWritten(length.wrote)})`
      : written(length),
  /** In the person's own words alone, with the unit that was meant. */
  own,
  /** To at most two decimals: `60.25°`. */
  angle,
  angleToATenth: (angle: Radians): Said => say`${Math.round(degrees(angle) * 10) / 10}°`,
  /** As the person wrote it; one measured in another way with what it came to: `30.26° (rise 7in, run 12in)`. */
  writtenAngle,
  /** Where a heel is: `clocked 35° right of the spine`. */
  clocked: (clock: Angle): Said =>
    clock.rad < 0
      ? say`clocked ${angle(-clock.rad)} left of the spine`
      : say`clocked ${writtenAngle(clock)} right of the spine`,
  /** `1 leaf`, `2 leaves`. */
  counted: (count: number, one: Said, many: Said): Said => say`${count} ${count === 1 ? one : many}`,
  /** `60°`. */
  wholeAngle: (angle: Radians): Said => wholeAngle(angle),
  /** A length in one unit, an inch in its decimals too: `31.75 mm`, `1-1/2 in (1.500)`. */
  inOne: (mm: Mm, units: Units): Said =>
    units === 'mm' ? one(mm, 'mm') : say`${one(mm, 'in')} (${asWritten(decimalInches(mm))})`,
  /** A station as people say it: `118°`, or where stations are mm round the outside `46.5 mm`. */
  station: (station: number, counts: 'angles' | 'mm'): Said =>
    counts === 'angles' ? wholeAngle(station) : one(toATenth(station), 'mm'),
  /** A turn with its side in place of a sign, B up: `35° left`; on one line or opposite there is no side. */
  twist: (twist: Radians): Said => {
    const turned = Math.abs(twist);
    if (turned < 1e-9 || Math.PI - turned < 1e-9) return angle(turned);
    return say`${angle(turned)} ${twist > 0 ? say`right` : say`left`}`;
  },
  /** The filler rod that a gap is tried with. */
  rod: say`1.6 mm (1/16 in)`,
};

function written(length: Length): Said {
  const { mm, wrote, unit, byName } = length;
  const inches = say`${one(mm, 'in')}, ${asWritten(decimalInches(mm))}`;
  if (byName) return say`${asWritten(wrote)} (${one(mm, 'mm')}, ${inches})`;
  return say`${own(length)} (${isMetric(unit) ? inches : one(mm, 'mm')})`;
}

function roundedUp(mm: Mm, units: Units): Mm {
  const step = units === 'mm' ? 1 : MM_PER_INCH / 16;
  return Math.ceil(mm / step - 1e-6) * step;
}

function wholeAngle(angle: Radians): Said {
  return say`${Math.round(degrees(angle))}°`;
}

function angle(rad: Radians): Said {
  return asWritten(writeAngle(rad));
}

/** More decimals than anyone writes: a program's number, which is said as one that is worked out here. */
const COMPUTED = /^[-+]?\d*[.]\d{5}/;

function writtenAngle({ rad, wrote, byName }: Angle): Said {
  if (COMPUTED.test(wrote)) return angle(rad);
  if (byName) return say`${angle(rad)} (${asWritten(wrote)})`;
  return /[\p{L}°]/u.test(plainSpelling(wrote)) ? asWritten(wrote) : say`${asWritten(wrote)}°`;
}

function own(length: Length): Said {
  if (COMPUTED.test(length.wrote)) return one(length.mm, isMetric(length.unit) ? 'mm' : 'in');
  return asWritten(lengthAsWritten(length));
}

/** Down to the next of so many parts of one; what rounding leaves under it counts as reached. */
function below(value: number, parts: number): number {
  return Math.floor(value * parts + 1e-6) / parts;
}

function toATenth(mm: Mm): Mm {
  return Math.round(mm * 10) / 10;
}

function one(mm: Mm, units: Units): Said {
  return units === 'mm' ? say`${asWritten(millimetres(mm))} mm` : say`${asWritten(inchFraction(mm))} in`;
}

function both(mm: Mm, units: Units): Said {
  return say`${one(mm, units)} (${one(mm, units === 'mm' ? 'in' : 'mm')})`;
}
