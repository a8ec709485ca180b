import { isMap } from 'yaml';
import type { Length } from '../../measure/units.ts';
import { asWritten } from '../../words/said.ts';
import type { Margins, SheetAsk } from '../job.ts';
import { complain, complainOf, type Spot } from '../text/desk.ts';
import { type Fields, fieldsOf, textOf } from '../text/fields.ts';
import { lengthAt, lengthUpTo } from '../text/values.ts';
import { PAPER_NAMES, type Paper, readPaper, tooSmall } from './paper.ts';

/** What is kept free on each edge unless told: 17 mm at the foot, where printers reach least. */
export const DEFAULT_MARGINS: Margins = {
  left: millimetresOf('10'),
  right: millimetresOf('10'),
  top: millimetresOf('10'),
  bottom: millimetresOf('17'),
};
/** Office paper. */
export const DEFAULT_THICKNESS = millimetresOf('0.10');

/** Card is half a millimetre; what is thicker does not wrap. */
export const THICKEST_PAPER = 2;

function millimetresOf(number: string): Length {
  return { mm: Number(number), wrote: `${number} mm`, unit: 'mm' };
}

/** The paper where the file names none, and the one that is taken whatever it names. */
export interface PaperDefaults {
  readonly paper: Paper;
  readonly insistOnPaper?: Paper;
}

/** Reads paper, margins and the paper's thickness. */
export function readSheet(fields: Fields, defaults: PaperDefaults): SheetAsk {
  const insisted = defaults.insistOnPaper;
  const named = readPaperAt(fields.get('paper'));
  const margins = readMargins(fields.get('margin'));
  const thickness = lengthUpTo(fields.get('paper-thickness'), 'zero-or-more', THICKEST_PAPER, 'paper');
  const chosen = insisted ?? named ?? defaults.paper;
  const unclear = fields.has('paper') && named === undefined && insisted === undefined;
  if (margins !== undefined && !unclear) {
    const small = tooSmall(chosen, margins)?.(fields.desk.words);
    const spot = fields.get('margin') ?? fields.get('paper');
    if (small && spot) complain(spot, 'paper-small', small);
    else if (small)
      complainOf(fields.desk, fields.spot.at, {
        code: 'paper-small',
        read: asWritten(chosen.name),
        ...small,
      });
  }
  return {
    paper: chosen,
    margins: margins ?? DEFAULT_MARGINS,
    paperThickness: thickness ?? DEFAULT_THICKNESS,
  };
}

function readPaperAt(spot: Spot | undefined): Paper | undefined {
  const text = spot && textOf(spot, spot.desk.words.paper.wanted(PAPER_NAMES));
  if (spot === undefined || text === undefined) return undefined;
  const reading = readPaper(text, spot.desk.bareUnit);
  return reading.ok ? reading.value : complain(spot, 'paper', reading.fault(spot.desk.words));
}

/** One length for all four edges, or a map with some of them; undefined where it can't be read. */
function readMargins(spot: Spot | undefined): Margins | undefined {
  if (spot === undefined) return DEFAULT_MARGINS;
  if (!isMap(spot.node)) {
    const all = lengthAt(spot, 'zero-or-more', 'margin');
    return all && { left: all, right: all, top: all, bottom: all };
  }
  const fields = fieldsOf(spot, 'margin');
  if (fields === undefined) return undefined;
  const edge = (name: keyof Margins) =>
    fields.has(name) ? lengthAt(fields.get(name), 'zero-or-more', 'margin') : DEFAULT_MARGINS[name];
  const [left, right, top, bottom] = [edge('left'), edge('right'), edge('top'), edge('bottom')];
  return left && right && top && bottom && { left, right, top, bottom };
}
