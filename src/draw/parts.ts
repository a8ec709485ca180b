import type { Point } from './drawing.ts';

/** The parts of a line through points, in order, of which every point passes a test; a lone point is no part. */
export function partsWhere(line: readonly Point[], passes: (at: Point) => boolean): [Point, ...Point[]][] {
  const parts: [Point, ...Point[]][] = [];
  let open: [Point, ...Point[]] | undefined;
  for (const at of line) {
    if (!passes(at)) {
      open = undefined;
    } else if (open) {
      open.push(at);
    } else {
      open = [at];
      parts.push(open);
    }
  }
  return parts.filter((part) => part.length > 1);
}
