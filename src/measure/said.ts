/** Words that are drawn, shown or written. Made only in words/, so that every phrase can be read, and said otherwise, there. */
export type Said = string;

/** What is cut out of something said, or put in place of signs of it, is said: a line of a paragraph, a shortened name. */
export function partOf(_whole: Said, part: string): Said {
  return part as Said;
}
