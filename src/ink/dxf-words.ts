/**
 * A text as DXF writes it, all ASCII: degree and diameter by their control codes, what else is not ASCII by its UTF-16 codes as
 * `\U+0416`. What would be read as a code itself is spelled out.
 */
export function dxfText(text: string): string {
  return text
    .replace(/%{2,}/g, (run) => '%%%'.repeat(run.length))
    .replace(/[^ -[\]-~]/g, (unit) => CONTROL.get(unit) ?? unicode(unit));
}

const CONTROL: ReadonlyMap<string, string> = new Map([
  ['°', '%%d'],
  ['⌀', '%%c'],
]);

function unicode(unit: string): string {
  return `\\U+${unit.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`;
}
