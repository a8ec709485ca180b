/** In letters. */
export const LONGEST_PRINTER_NAME = 40;

/** Why a name does not stand on one line of a sheet; undefined where it does. */
export function wrongWithName(name: string): 'nameless' | 'longName' | 'brokenName' | undefined {
  if (name.trim() === '') return 'nameless';
  if (name.length > LONGEST_PRINTER_NAME) return 'longName';
  return /[\p{Cc}\p{Cs}\u2028\u2029]/u.test(name) ? 'brokenName' : undefined;
}
