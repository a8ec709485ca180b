import { isMap, isScalar } from 'yaml';
import type { Said } from '../measure/said.ts';
import type { Language } from '../words/language.ts';
import { asWritten } from '../words/said.ts';
import type { Job, Tube } from './job.ts';
import type { Paper } from './paper/paper.ts';
import { readSheet } from './paper/sheet.ts';
import { readStock } from './stock.ts';
import { Refusal } from './text/complaint.ts';
import { complain, complainOf, type Desk, type Dialect, IN_A_FILE, type Spot } from './text/desk.ts';
import { type Fields, fieldsOf, itemsOf } from './text/fields.ts';
import { firstLine, type JobText, parseJobText } from './text/text.ts';
import { choiceAt, copiesAt, missing, wordsAt, yesOrNoAt } from './text/values.ts';
import { readTube } from './tube.ts';

export interface JobDefaults {
  /** The language in which all that follows from the job is said. */
  readonly words: Language;
  /** Printed on where the file names no paper. Asked for only then, as the system's region is slow to tell. */
  readonly paper: Paper;
  /** Printed on whatever the file names. */
  readonly insistOnPaper?: Paper;
}

/**
 * Reads a job file. Throws `Refusal` with all its mistakes, in the order of the file; `file` is its name in them.
 */
export function readJob(source: string, file: string, defaults: JobDefaults): Job {
  return readJobIn(IN_A_FILE, source, file, defaults);
}

/** What a file holds besides its head: its tubes as they are told or, of a frame, as its reader makes them. */
export type FileBody = Pick<Job, 'tubes' | 'frame'>;
export type ReadFileBody = (fields: Fields) => FileBody;

/** The same, with messages that name keys in another way, or of tubes that are told in another way. */
export function readJobIn(
  say: Dialect,
  source: string,
  file: string,
  defaults: JobDefaults,
  readBody: ReadFileBody = readTubes,
): Job {
  const parsed = parseJobText(source, file);
  if (!parsed.ok) throw new Refusal([parsed.fault(defaults.words)]);
  const text = parsed.value;
  const desk: Desk = {
    text,
    say,
    words: defaults.words,
    bareUnit: bareUnitOf(text),
    complaints: new Map(),
    places: new Map(),
  };
  desk.places.set('', { line: 1, column: 1 });
  const node = text.document.contents;
  const root: Spot = { desk, path: '', key: '', node, at: node?.range?.[0] ?? 0, misread: false };
  const job = checkVersion(root) ? readWhole(root, defaults, readBody) : undefined;
  const [first, ...rest] = [...desk.complaints.values()].sort(
    (a, b) => (a.line ?? 0) - (b.line ?? 0) || (a.column ?? 0) - (b.column ?? 0),
  );
  if (first !== undefined) throw new Refusal([first, ...rest]);
  if (job === undefined) throw new Error('a job was not read and nothing was said about why');
  return job;
}

/** The unit of bare numbers has to be known before any is read; whether it is well written is checked later. */
function bareUnitOf({ document: { contents } }: JobText): 'mm' | 'in' {
  const units: unknown = isMap(contents) ? contents.get('units') : undefined;
  return typeof units === 'string' && /^\s*("|in)/i.test(units) ? 'in' : 'mm';
}

const VERSION = '1';

/** Whether the file is of the version that is read here. One of another version is not read any further. */
function checkVersion(root: Spot): boolean {
  const { desk } = root;
  const words = desk.words.job.text;
  const lineAt = (at: number): Said => asWritten(firstLine(desk.text.source, at)) || words.nothing;
  if (!isMap(root.node)) {
    complainOf(desk, root.at, { code: 'not-a-map', read: lineAt(root.at), ...words.notAMap });
    return false;
  }
  const keys = root.node.items.map(({ key }) => (isScalar(key) ? key.value : undefined));
  const place = keys.indexOf('copeleaf');
  const pair = root.node.items[place];
  if (pair === undefined) {
    missing(root, 'copeleaf', words.noVersion);
    return true;
  }
  const { key, value } = pair;
  const at = isScalar(key) ? (key.range?.[0] ?? 0) : 0;
  const wrote = isScalar(value) && typeof value.value === 'string' ? value.value.trim() : '';
  if (wrote !== VERSION) {
    const mistake = { code: 'version', read: lineAt(at), key: 'copeleaf' };
    complainOf(desk, at, { ...mistake, ...words.otherVersion(asWritten(VERSION)) });
    return false;
  }
  if (place > 0) {
    const mistake = { code: 'version-first', read: lineAt(at), key: 'copeleaf' };
    complainOf(desk, at, { ...mistake, ...words.versionNotFirst });
  }
  return true;
}

function readWhole(root: Spot, defaults: JobDefaults, readBody: ReadFileBody): Job | undefined {
  const fields = fieldsOf(root, 'file');
  if (fields === undefined) return undefined;
  choiceAt(fields.get('units'), ['mm', 'in']);
  const title = wordsAt(fields.get('job'));
  const sheet = readSheet(fields, defaults);
  const body = readBody(fields);
  const stock = readStock(fields);
  const { words, bareUnit, text, places } = root.desk;
  return {
    ...(title !== undefined && { title }),
    words,
    units: bareUnit,
    sheet,
    ...body,
    ...(stock && { stock }),
    source: text.source,
    origin: { file: text.file, places },
  };
}

/** The tubes of a job whose ends are told one by one. */
export function readTubes(fields: Fields): FileBody {
  const forAll = {
    pair: yesOrNoAt(fields.get('pair')) ?? false,
    copies: copiesAt(fields.get('copies')) ?? 1,
  };
  const spots = tubeSpots(fields);
  const tubes = spots.map((spot, i) => readTube(spot, i + 1, forAll));
  complainOfSameNames(spots, tubes);
  return { tubes: tubes.filter((tube) => tube !== undefined) };
}

function tubeSpots(fields: Fields): readonly Spot[] {
  const {
    places,
    words: { job: words },
  } = fields.desk;
  const [one, list] = [fields.get('tube'), fields.get('tubes')];
  if (one && list) complain(list, 'tube-twice', words.tubeTwice);
  if (one) {
    places.set('tubes[0]', places.get('tube') ?? { line: 1, column: 1 });
    return [{ ...one, path: 'tubes[0]' }];
  }
  const frame = fields.get('frame');
  if (frame) {
    complain(frame, 'frame', words.frame.notRead);
    return [];
  }
  if (list === undefined) {
    missing(fields.spot, 'tube', words.noTube);
    return [];
  }
  const items = itemsOf(list, words.tubes);
  if (items?.length === 0) complain(list, 'no-tube', words.noTubeInList);
  return items ?? [];
}

/** Two leaves with one name can't be told apart at the bench. */
function complainOfSameNames(spots: readonly Spot[], tubes: readonly (Tube | undefined)[]): void {
  const seen = new Set<string>();
  for (const [i, tube] of tubes.entries()) {
    const spot = spots[i];
    if (tube === undefined || spot === undefined) continue;
    const name = tube.name.normalize('NFC').replace(/\s+/g, ' ');
    if (seen.has(name)) sameName(spot, tube.name);
    seen.add(name);
  }
}

function sameName(spot: Spot, name: string): void {
  const at = isMap(spot.node)
    ? spot.node.items.map(({ key }) => (isScalar(key) && key.value === 'name' ? key.range?.[0] : undefined))
    : [];
  const place = at.find((each) => each !== undefined) ?? spot.at;
  const mistake = { code: 'same-name', read: asWritten(`name: ${name}`), key: 'name' };
  complainOf(spot.desk, place, { ...mistake, ...spot.desk.words.job.sameName });
}
