/** Where a phrase can stand. */
export type Place = 'leaf' | 'card' | 'footprint' | 'ticket' | 'list' | 'sheet';

/**
 * What a drawn phrase states, and where in a file it stands: in one place, with the leaf, or on the ticket where that has it. A card
 * stands only where no ticket is printed.
 */
export const FACTS = {
  // With the leaf in hand.
  end: ['leaf', 'ticket', 'card'],
  hand: ['leaf', 'ticket'],
  name: ['leaf', 'card', 'footprint', 'ticket', 'list'],
  copies: ['ticket', 'card', 'list'],
  'to-joint': ['leaf'],
  waste: ['leaf'],
  heel: ['leaf', 'footprint'],
  part: ['leaf'],
  spine: ['leaf'],
  station: ['leaf'],
  fold: ['leaf', 'footprint'],
  seam: ['leaf'],
  tab: ['leaf'],
  dashes: ['leaf'],
  mark: ['leaf', 'footprint', 'ticket'],
  'base-distance': ['leaf'],
  'rotation-mark': ['leaf'],
  'length-mark': ['leaf'],
  beside: ['card'],
  // On the header.
  footprint: ['footprint', 'card'],
  // Of the tube and its ends.
  job: ['card'],
  date: ['card'],
  tube: ['ticket', 'card', 'list'],
  wall: ['ticket', 'card'],
  header: ['ticket', 'card', 'list'],
  angle: ['ticket', 'card', 'list'],
  clocking: ['ticket', 'card'],
  offset: ['ticket', 'card'],
  shift: ['ticket', 'card'],
  mitre: ['ticket', 'card'],
  pieces: ['ticket', 'card', 'list'],
  twist: ['ticket', 'card', 'list'],
  'work-points': ['ticket', 'card', 'list'],
  'long-points': ['ticket', 'card', 'list'],
  blank: ['ticket', 'card', 'list'],
  edge: ['ticket', 'card'],
  'weld-angle': ['card'],
  root: ['ticket', 'card'],
  marks: ['ticket', 'card'],
  picture: ['ticket', 'card', 'list'],
  about: ['ticket'],
  'step:tape': ['ticket'],
  place: ['ticket'],
  landing: ['ticket'],
  'step:scrap': ['ticket'],
  'step:blank': ['ticket'],
  'step:square': ['ticket'],
  'step:spine': ['ticket'],
  'step:lay': ['ticket'],
  'step:cut': ['ticket'],
  'step:seat': ['ticket'],
  'step:mark': ['ticket'],
  'step:length': ['ticket'],
  'step:facing': ['ticket'],
  'step:footprint': ['ticket'],
  'step:vent': ['ticket'],
  'step:clean': ['ticket'],
  'step:set': ['ticket'],
  'step:first': ['ticket'],
  'step:second': ['ticket'],
  warning: ['ticket'],
  // Of the job.
  heading: ['list', 'ticket'],
  note: ['ticket', 'list'],
  caution: ['list', 'sheet'],
  order: ['list'],
  stock: ['list'],
  // At the foot of each sheet, and at the head of a tile.
  sheet: ['sheet'],
  tile: ['sheet', 'card'],
  aid: ['sheet'],
} as const satisfies Record<string, readonly [Place, ...Place[]]>;

export type FactName = keyof typeof FACTS;

/** What stands more than once by intent: the table in DEVELOPERS.md says why. */
export const REPEATED: { readonly [fact in FactName]?: true } = {
  end: true,
  name: true,
  copies: true,
  blank: true,
  tube: true,
  picture: true,
  heel: true,
  footprint: true,
  waste: true,
  station: true,
  part: true,
  mark: true,
  heading: true,
  note: true,
  caution: true,
  warning: true,
  place: true,
  landing: true,
  order: true,
  stock: true,
  sheet: true,
  tile: true,
};

/** What marks tell of, where what they are drawn on does not say it. */
export interface Subject {
  readonly place?: Place;
  readonly tube?: string;
  readonly hand?: 'as-drawn' | 'opposite';
  readonly end?: 'A' | 'B';
  /** Which of an end's headers, counted from 0. */
  readonly part?: number;
}
