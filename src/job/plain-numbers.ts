const NO_NUMBERS: ReadonlySet<string> = new Set([
  'name',
  'note',
  'wrote',
  'unit',
  'bare',
  'byName',
  'readings',
]);

/** The numbers of what was asked for, in mm and radians to so many decimals, as a text; but for those under one more key. */
export function plainNumbers(asked: unknown, decimals: number, leftOut?: 'stops'): string {
  return JSON.stringify(asked, (key, value: unknown) => {
    if (NO_NUMBERS.has(key) || key === leftOut) return undefined;
    return typeof value === 'number' ? Number(value.toFixed(decimals)) + 0 : value;
  });
}
