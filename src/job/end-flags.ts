/** The flags for one end, and what each takes. Names are the command's grammar, and the same in every language. */
export const END_FLAGS = [
  ['od', 'length'],
  ['wall', 'length'],
  // In place of `od`, and of `wall` where its name says the wall.
  ['pipe', 'size'],
  ['onto', 'length'],
  ['angle', 'angle'],
  ['offset', 'length'],
  ['clock', 'angle'],
  ['edge', 'way'],
  ['land', 'length'],
  ['from', 'side'],
  ['root', 'length'],
  ['end', 'name'],
  ['units', 'unit'],
  ['margin', 'length'],
  ['paper', 'name'],
] as const;

/** One end asked for by flags, each in the words of the person; `blunt` is the land, as it was called before. */
export type EndFlags = { readonly [Flag in (typeof END_FLAGS)[number][0] | 'blunt']?: string };
