const SAME_SIGN: readonly (readonly [RegExp, string])[] = [
  [/[\u200B\u200E\u200F\u2060\uFEFF]/g, ''],
  [/\s+/g, ' '],
  [/[\u2010-\u2015\u2212\uFE58\uFE63]/g, '-'],
  [/[\u2044\u2215]/g, '/'],
  [/[\u02DD\u201C-\u201F\u2033\u2036\u3003]/g, '"'],
  [/[\u0060\u00B4\u02B9\u02BC\u2018-\u201B\u2032\u2035]/g, "'"],
  [/''/g, '"'],
  [/[\u00BA\u02DA]/g, '°'],
];

const VULGAR_FRACTIONS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/**
 * The same text with one sign for each thing: a plain hyphen for every minus, straight quotes for primes and curly
 * quotes, plain spaces and digits for wide ones, `1/2` for a half in one sign. Unicode's own folding (NFKC) would
 * join the whole to the fraction, `1½` to `11/2`, and is not used.
 */
export function plainSpelling(text: string): string {
  let plain = text.replace(/[\uFF01-\uFF5E]/g, halfWidth);
  for (const [sign, same] of SAME_SIGN) plain = plain.replace(sign, same);
  return plain.replace(/(\d?)-?\s?([½⅓⅔¼¾⅕-⅞])/g, withFraction).trim();
}

function halfWidth(sign: string): string {
  return String.fromCharCode(sign.charCodeAt(0) - 0xfee0);
}

function withFraction(found: string, whole: string, sign: string): string {
  const fraction = VULGAR_FRACTIONS[sign] ?? sign;
  if (whole !== '') return `${whole} ${fraction}`;
  return found.slice(0, -1) + fraction;
}
