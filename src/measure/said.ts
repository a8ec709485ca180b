declare const said: unique symbol;

/**
 * Words that are drawn, shown or written. Made only in words/, so that every phrase can be read, and said otherwise, there; what is
 * cut out of something said is said too (`partOf`).
 */
export type Said = string & { readonly [said]: true };

/** What is cut out of something said, or put in place of signs of it: a line of a paragraph, a shortened name. */
export function partOf(_whole: Said, part: string): Said {
  return part as Said;
}
