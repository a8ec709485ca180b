import { type Fraction, fraction, plus } from './fraction.ts';
import { type Reading, refused, taken } from './reading.ts';

/**
 * Reads a number without sign or unit, in plain spelling: `38.1`, `38,1`, `.095`, `1/2`, `1 1/2`, `1-1/2`.
 * A spelling that means one thing in one country and another elsewhere is refused with both meanings.
 */
export function readNumber(text: string): Reading<Fraction> {
  if (text === '') return refused(text, { kind: 'no-number' });
  const mixed = /^(?:(\d+)(?: |-))?(\d+) ?\/ ?(\d+)$/.exec(text);
  if (mixed) return readMixed(text, mixed[1], mixed[2] ?? '', mixed[3] ?? '');
  if (/^\d+$/.test(text)) return taken(fraction(BigInt(text)));
  return ambiguous(text) ?? readDecimal(text) ?? strange(text);
}

function readMixed(text: string, whole: string | undefined, top: string, bottom: string): Reading<Fraction> {
  const part = fraction(BigInt(top), BigInt(bottom));
  if (part.bottom === 0n) return refused(text, { kind: 'divided-by-zero' });
  if (whole === undefined) return improperAlone(text, top, part) ?? taken(part);
  if (part.top >= part.bottom) return refused(text, { kind: 'improper-fraction', part: `${top}/${bottom}` });
  return taken(plus(fraction(BigInt(whole)), part));
}

/** `11/2` is 5-1/2, or 1-1/2 whose sign between was left out. */
function improperAlone(
  text: string,
  top: string,
  { top: parts, bottom }: Fraction,
): Reading<Fraction> | undefined {
  if (parts < bottom) return;
  const mixed = (whole: bigint, over: bigint): string =>
    over === 0n ? `${whole}` : `${whole}-${over}/${bottom}`;
  const value = mixed(parts / bottom, parts % bottom);
  const split = Array.from(
    { length: top.length - 1 },
    (_, i) => [top.slice(0, i + 1), top.slice(i + 1)] as const,
  )
    .filter(([, rest]) => BigInt(rest) > 0n && BigInt(rest) < bottom && !rest.startsWith('0'))
    .map(([whole, rest]) => mixed(BigInt(whole), BigInt(rest)));
  return refused(text, { kind: 'improper-alone', readings: [...new Set([...split, value])] });
}

/** `0,125` and `1234,567` can only be decimals; `1,500` can be two things, and so can `1.234,5`. */
function ambiguous(text: string): Reading<Fraction> | undefined {
  const groups = text.split(/[.,]/);
  if (groups.length < 2 || groups.some((group, i) => !/^\d+$/.test(group) && !(i === 0 && group === '')))
    return;
  const [first = '', ...rest] = groups;
  const last = rest.at(-1) ?? '';
  if (rest.length === 1) {
    if (!text.includes(',') || !/^[1-9]\d{0,2}$/.test(first) || last.length !== 3) return;
    return refused(text, {
      kind: 'decimals-or-thousands',
      decimal: `${first}.${last}`,
      grouped: `${first}${last}`,
    });
  }
  const oneSign = !(text.includes(',') && text.includes('.'));
  const thousands = (oneSign ? rest : rest.slice(0, -1)).every((group) => group.length === 3);
  if (!thousands) return refused(text, { kind: 'several-points' });
  const grouped = oneSign ? groups.join('') : `${groups.slice(0, -1).join('')}.${last}`;
  return refused(text, {
    kind: 'decimals-or-thousands',
    decimal: `${first || '0'}.${rest.join('')}`,
    grouped,
  });
}

function readDecimal(text: string): Reading<Fraction> | undefined {
  const decimal = /^(\d*)[.,](\d+)$/.exec(text);
  if (!decimal) return;
  const [, whole = '', decimals = ''] = decimal;
  return taken(fraction(BigInt(whole + decimals), 10n ** BigInt(decimals.length)));
}

function strange(text: string): Reading<Fraction> {
  if (/\d ?- ?\d/.test(text)) return refused(text, { kind: 'sum' });
  if (/^\d{1,3}( \d{3})+$/.test(text)) {
    return refused(text, { kind: 'spaced-number', joined: text.replaceAll(' ', '') });
  }
  if (/^\d+( \d+)+$/.test(text)) return refused(text, { kind: 'several-numbers' });
  if (/\/ ?$/.test(text)) return refused(text, { kind: 'unfinished-fraction' });
  return refused(text, { kind: 'not-a-number' });
}
