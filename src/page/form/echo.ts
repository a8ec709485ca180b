import { readAngle } from '../../measure/angle.ts';
import { readGauge } from '../../measure/gauge.ts';
import { readLength } from '../../measure/length.ts';
import { readPipe } from '../../measure/pipe.ts';
import type { Length } from '../../measure/units.ts';
import { inchFraction, isMetric, millimetres, writeAngle } from '../../measure/write.ts';
import type { Reads } from './measure.ts';

/** What was understood of the words in a field, in the other unit; empty where nothing was. */
export function echoOf(words: string, reads: Reads, bareUnit: 'mm' | 'in'): string {
  if (words.trim() === '') return '';
  switch (reads) {
    case 'length':
      return lengthEcho(words, bareUnit);
    case 'wall': {
      const gauge = readGauge(words, bareUnit);
      if (gauge === undefined) return lengthEcho(words, bareUnit);
      return gauge.ok ? `${millimetres(gauge.value.mm)} mm` : '';
    }
    case 'angle':
      return angleEcho(words);
    case 'station':
      return angleEcho(words) || lengthEcho(words, bareUnit);
    case 'pipe':
      return pipeEcho(words, bareUnit);
    default:
      return '';
  }
}

function lengthEcho(words: string, bareUnit: 'mm' | 'in'): string {
  const reading = readLength(words, bareUnit);
  return reading.ok ? otherUnit(reading.value) : '';
}

function otherUnit({ mm, unit }: Length): string {
  if (!isMetric(unit)) return `${millimetres(mm)} mm`;
  const inches = inchFraction(mm);
  return `${millimetres(mm)} mm ${inches.startsWith('~') ? `≈ ${inches.slice(1)}` : `= ${inches}`} in`;
}

function angleEcho(words: string): string {
  const reading = readAngle(words);
  return reading.ok ? writeAngle(reading.value.rad) : '';
}

function pipeEcho(words: string, bareUnit: 'mm' | 'in'): string {
  const reading = readPipe(words, bareUnit);
  if (!reading.ok) return '';
  const { od, wall } = reading.value;
  return `${millimetres(od.mm)} mm${wall ? `, wall ${millimetres(wall.mm)} mm` : ''}`;
}
