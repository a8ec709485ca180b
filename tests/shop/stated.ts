import type { Words } from '../../src/draw/drawing.ts';
import type { FactName, Place, Subject } from '../../src/draw/facts.ts';
import type { SheetSet } from '../../src/tiler/sheets.ts';

/** A phrase as it stands in a file. */
export interface Stated {
  readonly fact: FactName;
  readonly of: Subject;
  readonly place: Place;
  readonly text: string;
}

/** Every phrase of a set of sheets, in full by its first line; one that several sheets show a part of, once. */
export function statedIn({ sheets }: SheetSet): Stated[] {
  const seen = new Set<string>();
  const found: Stated[] = [];
  for (const { placements } of sheets) {
    for (const { drawing } of placements) {
      if (seen.has(drawing.name)) continue;
      seen.add(drawing.name);
      const words = drawing.marks.filter((mark): mark is Words => mark.kind === 'words');
      for (const { fact, text, of, more } of words) {
        const whole = { ...drawing.of, ...of };
        const before = more ? found.pop() : undefined;
        if (before) found.push({ ...before, text: `${before.text} ${text}` });
        else found.push({ fact, of: whole, place: whole.place ?? 'sheet', text });
      }
    }
  }
  return found;
}

const HANDS = ['as-drawn', 'opposite'] as const;

/** The phrases by what they state of what. What is said of a tube and no hand is said of both. */
export function byFact(stated: readonly Stated[]): Map<string, Stated[]> {
  const groups = new Map<string, Stated[]>();
  for (const each of stated) {
    const { tube = '', end = '', part = '', hand } = each.of;
    for (const one of hand || tube === '' ? [hand ?? ''] : HANDS) {
      const key = [each.fact, tube, one, end, part].join(' | ');
      groups.set(key, [...(groups.get(key) ?? []), each]);
    }
  }
  return groups;
}
