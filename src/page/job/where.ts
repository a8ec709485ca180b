import { isMap, isScalar, isSeq, LineCounter, parseDocument } from 'yaml';
import type { Complaint } from '../../job/text/complaint.ts';
import { presentName } from '../../job/text/keys.ts';
import type { DocPath } from './job-doc.ts';

/** A mistake and the value of the job file that it is about. */
export interface Problem {
  readonly complaint: Complaint;
  readonly path: DocPath;
  /** Nothing was written there yet: no mistake of anybody who is still writing. */
  readonly missing: boolean;
}

/** Finds the value that each complaint about this text is about, by its line and column. */
export function problemsOf(text: string, complaints: readonly Complaint[]): readonly Problem[] {
  const lineCounter = new LineCounter();
  const doc = parseDocument(text, { schema: 'failsafe', uniqueKeys: false, lineCounter });
  const paths = pathsByOffset(doc.contents);
  return complaints.map((complaint) => {
    const offset = (lineCounter.lineStarts[(complaint.line ?? 1) - 1] ?? 0) + (complaint.column ?? 1) - 1;
    const there = paths.get(offset) ?? [[]];
    const [outermost = [], innermost = []] = [there[0], there.at(-1)];
    const { code, key, missing = false } = complaint;
    if (code === 'missing') {
      // A header that is lacking altogether is waited for at its size, which is what most begin with.
      const lacks = key === undefined ? [] : key === 'onto' ? ['onto', 'od'] : [key];
      return { complaint, path: [...outermost, ...lacks], missing };
    }
    // What is left empty and stands in another value's way is no place to fill in.
    return { complaint, path: innermost, missing: missing && code === 'shape' };
  });
}

/** What begins at each place of the text, the outermost first. */
function pathsByOffset(root: unknown): Map<number, DocPath[]> {
  const found = new Map<number, DocPath[]>();
  const note = (offset: number | undefined, path: DocPath): void => {
    if (offset !== undefined) found.set(offset, [...(found.get(offset) ?? []), path]);
  };
  const walk = (node: unknown, path: DocPath): void => {
    if (isMap(node)) {
      for (const { key, value } of node.items) {
        if (!isScalar(key)) continue;
        const inner = [...path, presentName(String(key.value))];
        note(key.range?.[0], inner);
        walk(value, inner);
      }
    } else if (isSeq(node)) {
      for (const [i, item] of node.items.entries()) {
        const inner = [...path, i];
        if (isMap(item) || isScalar(item) || isSeq(item)) note(item.range?.[0], inner);
        walk(item, inner);
      }
    }
  };
  if (isMap(root)) note(root.range?.[0], []);
  walk(root, []);
  return found;
}
