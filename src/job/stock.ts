import { isSeq } from 'yaml';
import { readLength } from '../measure/length.ts';
import type { Length } from '../measure/units.ts';
import type { Stock, StockLength } from './job.ts';
import { complain, type Spot } from './text/desk.ts';
import { type Fields, itemsOf, textOf } from './text/fields.ts';
import { lengthAt, usualSize } from './text/values.ts';

/** What a chop saw's or a grinder's disc takes: common practice. */
const KERF: Length = { mm: 3, wrote: '3 mm', unit: 'mm' };

const MOST_OF_ONE = 9999;
const MOST_LENGTHS = 99;

/** The lengths that the shop has, and what a cut takes; undefined where no stock is told, or it was misread. */
export function readStock(fields: Fields): Stock | undefined {
  const kerf = fields.has('kerf') ? lengthAt(fields.get('kerf'), 'zero-or-more', 'kerf') : KERF;
  const spot = fields.get('stock');
  if (spot === undefined || spot.misread) return undefined;
  const spots = isSeq(spot.node) ? itemsOf(spot, fields.desk.words.job.stock.list) : [spot];
  if (spots === undefined) return undefined;
  if (spots.length === 0 || spots.length > MOST_LENGTHS) {
    return complain(spot, 'stock', fields.desk.words.job.stock.count(spots.length, MOST_LENGTHS));
  }
  const read = spots.map((each) => stockLengthAt({ ...each, key: spot.key }));
  const lengths = read.filter((each) => each !== undefined);
  return kerf && lengths.length === spots.length ? { lengths, kerf } : undefined;
}

/** What stands before and behind the last sign for how many times. */
function sizeAndCount(text: string): [size: string, many?: string] {
  const many = text.split(/[x×*]/iu).at(-1) ?? '';
  return many.length < text.length ? [text.slice(0, -many.length - 1).trimEnd(), many.trimStart()] : [text];
}

/** `6m x 3`: three lengths of six metres; `2.4m`: one. */
function stockLengthAt(spot: Spot): StockLength | undefined {
  const words = spot.desk.words.job.stock;
  const text = textOf(spot, words.length);
  if (text === undefined) return undefined;
  const [size, many] = sizeAndCount(text.trim());
  const reading = readLength(size, spot.desk.bareUnit);
  if (!reading.ok) {
    return complain(spot, 'length', words.misread(spot.desk.words.faults.said(reading.fault).why));
  }
  if (reading.value.mm <= 0) return complain(spot, 'not-positive', words.notPositive);
  const count = many === undefined ? 1 : /^\d{1,6}$/.test(many.trim()) ? Number(many) : 0;
  if (count >= 1 && count <= MOST_OF_ONE) {
    const length = usualSize(spot, reading.value, 'stock');
    return length && { length, count };
  }
  const isLength = readLength(many ?? '', spot.desk.bareUnit).ok && /[\p{L}"']/u.test(many ?? '');
  return complain(spot, 'stock', isLength ? words.lengthFirst : words.noCount(MOST_OF_ONE));
}
