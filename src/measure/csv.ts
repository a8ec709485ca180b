/**
 * One cell of a CSV, quoted where it holds a comma, a quote or a line's end (RFC 4180). Words that a spreadsheet would run as a
 * formula, as those of a name that begins with `=`, are led by an apostrophe, which spreadsheets take as the mark of text.
 */
export function csvCell(text: string): string {
  const formula = /^[=+\-@\t\r]/.test(text) && !/^[-+]?\d+(?:\.\d+)?(?:e[-+]?\d+)?$/i.test(text);
  const safe = formula ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
