import { isScalar } from 'yaml';
import { diameterOfGirth } from '../measure/girth.ts';
import { namesPipe, readPipe } from '../measure/pipe.ts';
import type { Length } from '../measure/units.ts';
import { complain, IN_A_FILE, type Spot } from './text/desk.ts';
import { isMapAt } from './text/fields.ts';
import { unusual } from './text/usual.ts';
import { askUnit, lengthAt } from './text/values.ts';
import { comparedLengths } from './ways/agreement.ts';
import { agreed } from './ways/several.ts';
import { givenAt, measuredAt, type Way } from './ways/ways.ts';

/**
 * An outside diameter: plain, by the way round it, or a list of such that has to agree. The name of a pipe in its place
 * is told what it comes to and where it may stand.
 */
export function diameterAt(spot: Spot | undefined, of: 'tube' | 'header'): Length | undefined {
  if (spot === undefined) return undefined;
  const read = (way: Spot): Length | undefined =>
    isMapAt(way) ? measuredAt(way, 'girth', [girthOf(of)]) : plainDiameterAt(way, of);
  const { words, bareUnit } = spot.desk;
  const readings = givenAt(spot, words.job.ways.diameter, read);
  return agreed(spot, readings, comparedLengths(bareUnit, words));
}

/** From the way round it by a tape, which is taken to be without thickness unless that is told. */
function girthOf(of: 'tube' | 'header'): Way<Length> {
  return {
    key: 'girth',
    options: ['tape'],
    read(fields) {
      const girth = lengthAt(fields.at('girth'), 'positive');
      const tape = fields.has('tape') ? lengthAt(fields.get('tape'), 'zero-or-more', 'tape') : NO_TAPE;
      if (!girth || !tape) return undefined;
      const mm = diameterOfGirth(girth.mm, tape.mm);
      const words = fields.desk.words.job.ways;
      if (mm <= 0) return complain(fields.at('tape'), 'girth', words.tapeOverGirth(tape, girth));
      if (unusual({ ...girth, mm }, of)) return askUnit(fields.at('girth'), girth, of);
      const wrote = words.girth(girth, tape);
      const bare = girth.bare && { bare: girth.bare };
      return { mm, wrote, unit: girth.unit, ...bare, byName: true, tape: tape.mm };
    },
  };
}

const NO_TAPE: Length = { mm: 0, wrote: '0', unit: 'mm' };

function plainDiameterAt(spot: Spot, of: 'tube' | 'header'): Length | undefined {
  const text = isScalar(spot.node) && typeof spot.node.value === 'string' ? spot.node.value : '';
  if (spot.misread || !namesPipe(text)) return lengthAt(spot, 'positive', of);
  const pipe = readPipe(text, spot.desk.bareUnit);
  const od = pipe.ok ? pipe.value.od.mm : undefined;
  // No flag names a header by its pipe.
  const byName = of === 'tube' || spot.desk.say === IN_A_FILE;
  const inPlace = byName ? spot.desk.say.setting('pipe', text.trim()) : undefined;
  return complain(spot, 'length', spot.desk.words.tubes.nameInPlace(od, inPlace));
}
