import { readAngle } from '../../measure/angle.ts';
import { readGauge } from '../../measure/gauge.ts';
import { readLength } from '../../measure/length.ts';
import { readPipe } from '../../measure/pipe.ts';
import type { Said } from '../../measure/said.ts';
import { isMetric } from '../../measure/write.ts';
import type { Language } from '../../words/language.ts';
import type { Reads } from './measure.ts';

type Echo = Language['page']['measures']['echo'];

/** What was understood of the text in a field, in the other unit; undefined where nothing was. */
export function echoOf(text: string, reads: Reads, bareUnit: 'mm' | 'in', echo: Echo): Said | undefined {
  if (text.trim() === '') return undefined;
  switch (reads) {
    case 'length':
      return lengthEcho(text, bareUnit, echo);
    case 'wall': {
      const gauge = readGauge(text, bareUnit);
      if (gauge === undefined) return lengthEcho(text, bareUnit, echo);
      return gauge.ok ? echo.mm(gauge.value.mm) : undefined;
    }
    case 'angle':
      return angleEcho(text, echo);
    case 'station':
      return angleEcho(text, echo) ?? lengthEcho(text, bareUnit, echo);
    case 'pipe': {
      const pipe = readPipe(text, bareUnit);
      return pipe.ok ? echo.pipe(pipe.value.od.mm, pipe.value.wall?.mm) : undefined;
    }
    default:
      return undefined;
  }
}

function lengthEcho(text: string, bareUnit: 'mm' | 'in', echo: Echo): Said | undefined {
  const reading = readLength(text, bareUnit);
  if (!reading.ok) return undefined;
  const { mm, unit } = reading.value;
  return isMetric(unit) ? echo.inBoth(mm) : echo.mm(mm);
}

function angleEcho(text: string, echo: Echo): Said | undefined {
  const reading = readAngle(text);
  return reading.ok ? echo.angle(reading.value.rad) : undefined;
}
