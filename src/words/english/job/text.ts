import type { Said } from '../../../measure/said.ts';
import { asWritten, joined, type Objection, say } from '../../said.ts';

const A_JOB = say`a job that begins with \`copeleaf: 1\`; \`copeleaf starter\` lists some to begin from`;
const FIRST_LINE = say`\`copeleaf: 1\` as the first line`;
const IN_QUOTES = say`the value in quotes`;

/** What is wrong with a job file as a text, before it is known what its values mean. */
export const text = {
  /** What is read where nothing is written. */
  nothing: say`nothing`,
  empty: { why: say`the file is empty`, instead: A_JOB },
  onlyComments: { why: say`the file holds only comments`, instead: A_JOB },
  pdf: {
    why: say`this is a PDF and not a job file`,
    instead: say`the job file; one that was printed is attached to its PDF`,
  },
  notText: {
    why: say`the file is not plain text in UTF-8`,
    instead: say`a job file saved as UTF-8 text`,
  },
  tooLarge: { why: say`the file is too large for a job`, instead: say`several smaller jobs` },
  strangeKeys: { why: say`thousands of its keys are none of a job`, instead: A_JOB },
  strangeSigns: {
    why: say`thousands of its signs are none of a job: \`&\`, \`!\`, \`%\`, \`?\`, a comma with nothing before it, or a key said again`,
    instead: A_JOB,
  },
  tooManyItems: (count: number, most: number): Objection => ({
    why: say`these are ${count}, and a job has ${most} at the most`,
    instead: say`several smaller jobs`,
  }),
  tooManyValues: { why: say`it holds more values than a job`, instead: say`several smaller jobs` },
  tooManyLines: { why: say`it has more lines than a job`, instead: say`several smaller jobs` },
  valueTooLong: (most: number): Objection => ({
    why: say`a value of more than ${most} letters is none of a job`,
    instead: say`a few words, or one number`,
  }),
  tooDeep: { why: say`it is nested too deeply for a job`, instead: say`the few levels that a job has` },
  /** By the code that the YAML parser gives a mistake. */
  notYaml: (code: string): Objection =>
    YAML_MISTAKES[code] ?? {
      why: say`this is not written as YAML`,
      instead: say`lines of the form \`key: value\``,
    },

  notAMap: { why: say`a job is a map of keys`, instead: FIRST_LINE },
  noVersion: { why: say`a job begins with the version of its format`, instead: FIRST_LINE },
  otherVersion: (known: Said): Objection => ({
    why: say`only version ${known} of the job file is known here`,
    instead: FIRST_LINE,
  }),
  versionNotFirst: { why: say`the version comes before everything else`, instead: FIRST_LINE },

  noKey: (key: Said): Said => say`no ${key}`,
  keyTwice: (key: string, line: number): Objection => ({
    why: say`\`${asWritten(key)}\` is there already, at line ${line}`,
    instead: say`it once`,
  }),
  /** One key under its name of today and under its former one. */
  twoNames: (key: Said, first: Said, present: Said): Objection => ({
    why: say`${key} and ${first} are the same thing`,
    instead: say`${present} alone`,
  }),
  /** `quoted` is the key as a message can hold it; the places are the keys that others stand under. */
  unknownKey: (quoted: Said, key: string, place: string, known: KnownKeys): Objection => ({
    why: say`\`${quoted}\` is not a key ${placeName(place)}`,
    instead: insteadOfKey(asWritten(key), known),
  }),
  keyIsNoWord: {
    read: say`a key that is no word`,
    why: say`keys are single words`,
    instead: say`a word`,
  },
  decimalsSplitOff: (key: string, joined: string, misread: Said | undefined): Objection => ({
    why: say`inside { } a comma ends the value, so the decimals were split off`,
    instead:
      misread ??
      say`\`${asWritten(key)}: "${asWritten(joined)}"\` with quotes, or \`${asWritten(key)}: ${asWritten(joined.replace(',', '.'))}\``,
  }),
  byReference: {
    why: say`a job does not take values by reference`,
    instead: say`the value written out`,
  },
  mapOf: (keys: readonly string[]): Said =>
    say`a map with ${joined(
      keys.slice(0, 4).map((key) => say`\`${asWritten(key)}\``),
      ', ',
    )}${keys.length > 4 ? say` ...` : say``}`,
  shape: (shape: 'map' | 'list' | 'value' | 'nothing' | 'comment'): Said => SHAPES[shape],
};

/** Where else a key that is not known at its place may stand, what was probably meant, and all that may stand there. */
type KnownKeys = {
  readonly elsewhere: readonly string[];
  readonly meant: string | undefined;
  readonly here: readonly string[];
};

function insteadOfKey(key: Said, { elsewhere, meant, here }: KnownKeys): Said {
  if (elsewhere.length > 0) return say`\`${key}\` belongs ${joined(elsewhere.map(placeName), ' or ')}`;
  return meant === undefined
    ? say`one of ${joined(here.map(asWritten), ', ')}`
    : say`\`${asWritten(meant)}\`, if that is meant`;
}

function placeName(place: string): Said {
  return PLACES[place] ?? say`under \`${asWritten(place)}\``;
}

/** Of a place that is not under a key of its own name. */
const PLACES: Readonly<Record<string, Said>> = {
  file: say`at the head of the file`,
  tube: say`on the tube`,
  end: say`on an end`,
  part: say`on a header of a list`,
  girth: say`under \`od\``,
  point: say`on a point of a frame`,
  'frame-tube': say`on a tube of a frame`,
  'frame-end': say`on an end of a frame's tube`,
};

const SHAPES = {
  map: say`there is a map`,
  list: say`there is a list`,
  value: say`there is a single value`,
  nothing: say`there is no value`,
  comment: say`there is no value; what follows # is a comment unless it is quoted`,
};

const YAML_MISTAKES: Readonly<Record<string, Objection>> = {
  TAB_AS_INDENT: { why: say`YAML does not take tabs at the start of a line`, instead: say`spaces` },
  MULTIPLE_DOCS: { why: say`\`---\` begins a second document`, instead: say`one job in one file` },
  BAD_SCALAR_START: {
    why: say`a value can't begin with this sign unless it is quoted`,
    instead: IN_QUOTES,
  },
  MULTILINE_IMPLICIT_KEY: {
    why: say`the line has no \`key: value\``,
    instead: say`a colon and a space after the key`,
  },
  BLOCK_AS_IMPLICIT_KEY: {
    why: say`there is a second colon in the value`,
    instead: say`one \`key: value\` a line, or the value in quotes`,
  },
  BAD_ALIAS: {
    why: say`\`*\` and \`&\` at the start of a value have a meaning in YAML`,
    instead: say`the value in quotes, or written out`,
  },
  TAG_RESOLVE_FAILED: {
    why: say`\`!\` at the start of a value has a meaning in YAML`,
    instead: IN_QUOTES,
  },
  BAD_DIRECTIVE: {
    why: say`\`%\` at the start of a line has a meaning in YAML`,
    instead: say`the line without it`,
  },
  MISSING_CHAR: {
    why: say`a closing sign or a separator is missing`,
    instead: say`the missing quote, bracket, comma or colon`,
  },
  BAD_INDENT: {
    why: say`the lines are not indented alike, or a bracket is not closed`,
    instead: say`the same indent for keys of one level`,
  },
  UNEXPECTED_TOKEN: {
    why: say`something follows where the value should be over`,
    instead: say`the whole value in one pair of quotes`,
  },
};
