import { Document, isMap, type Pair, parseDocument, Scalar, type YAMLMap, YAMLSeq } from 'yaml';
import type { End, EndName, Job, Part, TicketNote, Tube } from '../job/job.ts';
import { type Angle, degrees, MM_PER_INCH, type Mm } from '../measure/units.ts';
import { headWithout, inBraces, pairsOf, writtenTube, type Yaml, yamlMap, yamlPair } from './written-tube.ts';

/** Keys of an end that a list of headers has no place for. */
const OF_AN_END = ['edge', 'land', 'from', 'root', 'to'];
const OF_A_TUBE = ['od', 'pipe', 'section', 'wall', 'edge', 'land', 'from', 'root', 'to', 'allowance'];

/** What a tube is made as besides: how many of each hand, and what its ticket says of where they go. */
export interface MadeAs extends Pick<Tube, 'copies' | 'pair'> {
  readonly note: TicketNote;
}

/**
 * A tube of a frame as a job file of its own: its size and edge in the words of the frame's file, its angles, clocks, offsets and length
 * as they follow from the points, to 1e-10 mm and 1e-12 degrees. Undefined where a header of it stops, or where its ends can't be told so.
 */
export function jobOfTube(job: Job, place: number, { copies, pair, note }: MadeAs): string | undefined {
  const { tubes, frame } = job;
  const tube = tubes[place];
  const seat = frame?.seats[place];
  const source = parseDocument(job.source, { schema: 'failsafe' });
  const root = source.contents;
  const written = tube && writtenTube(root, tube.name, job);
  if (!tube || !seat || !written || !isMap(root)) return undefined;
  const end = (name: EndName): Yaml | undefined => {
    const asked = written.getIn(['ends', name]);
    const headers = seat.ends[name].headers.map((header) =>
      writtenTube(root, tubes[header]?.name ?? '', job),
    );
    return endOf(tube.ends[name], isMap(asked) ? asked : undefined, headers, job);
  };
  const [A, B] = [end('A'), end('B')];
  if (!A || !B) return undefined;
  const onBox = [tube.ends.A, tube.ends.B].some(
    (each) => each?.kind === 'coped' && each.parts.some(({ onto }) => onto.kind === 'box'),
  );
  const copied = OF_A_TUBE.filter((key) => key !== 'to' || onBox).flatMap((key) => pairsOf(written, key));
  const between = tube.between && 'mm' in tube.between ? tube.between.mm : 0;
  const own = yamlMap([
    yamlPair('name', tube.name),
    ...copied,
    yamlPair('between', lengthText(between, job)),
    ...(pair ? [yamlPair('pair', 'true')] : []),
    ...(copies > 1 ? [yamlPair('copies', `${copies}`)] : []),
    ...(note.length > 0 ? [yamlPair('note', noteOf(note))] : []),
    yamlPair('ends', yamlMap([yamlPair('A', A), yamlPair('B', B)])),
  ]);
  const head = headWithout(root, ['frame', 'copies']);
  const document = new Document(yamlMap([...head, yamlPair('tube', own)]), { schema: 'failsafe' });
  return document.toString({ lineWidth: 0, flowCollectionPadding: true });
}

/** A list of lines, each of which may have some that hang under it. */
function noteOf(note: TicketNote): YAMLSeq {
  const list = new YAMLSeq();
  list.items = note.map((lines) => {
    const [{ of, says }] = lines;
    if (of === undefined) return new Scalar(says);
    return yamlMap(lines.map((line) => yamlPair(line.of ?? '', line.says)));
  });
  return list;
}

function endOf(
  end: End | undefined,
  asked: YAMLMap | undefined,
  headers: readonly (YAMLMap | undefined)[],
  job: Job,
): Yaml | undefined {
  if (!end || end.kind === 'plain') return new Scalar('plain');
  if (end.parts.some(({ stops }) => stops)) return undefined;
  const own = OF_AN_END.flatMap((key) => (asked ? pairsOf(asked, key) : []));
  const seam = end.seam
    ? [yamlPair('seam', 'rad' in end.seam ? angleText(end.seam) : lengthText(end.seam.mm, job))]
    : [];
  const parts = end.parts.map((part, i) => partOf(part, headers[i], job));
  if (parts.length === 1) return inBraces(yamlMap([...(parts[0] ?? []), ...own, ...seam]));
  if (own.length + seam.length > 0) return undefined;
  const list = new YAMLSeq();
  list.items = parts.map((each) => inBraces(yamlMap(each)));
  return list;
}

function partOf({ onto, angle, clock, offset, shift }: Part, header: YAMLMap | undefined, job: Job): Pair[] {
  const isMitre = onto.kind === 'mitre';
  return [
    yamlPair('onto', inBraces(yamlMap(ontoOf(onto, header)))),
    ...(isMitre ? [] : [yamlPair('angle', angleText(angle))]),
    ...(clock.rad === 0 ? [] : [yamlPair('clock', angleText(clock))]),
    ...(offset.mm === 0 ? [] : [yamlPair('offset', lengthText(offset.mm, job))]),
    ...(shift.mm === 0 ? [] : [yamlPair('shift', lengthText(shift.mm, job))]),
  ];
}

/** What an end lands on, its size in the words of that tube. */
function ontoOf(onto: Part['onto'], header: YAMLMap | undefined): Pair[] {
  switch (onto.kind) {
    case 'mitre':
      return [yamlPair('mitre', inBraces(yamlMap([yamlPair('turn', angleText(onto.turn))])))];
    case 'plate':
      return [yamlPair('plate', inBraces(yamlMap([])))];
    case 'box': {
      const section = header?.get('section');
      const sides = isMap(section) ? ['wide', 'deep', 'corner'].flatMap((key) => pairsOf(section, key)) : [];
      const wall = isMap(section) && !section.has('corner') && header ? pairsOf(header, 'wall') : [];
      const roll = onto.roll.rad === 0 ? [] : [yamlPair('roll', angleText(onto.roll))];
      return [yamlPair('box', inBraces(yamlMap([...sides, ...wall, ...roll])))];
    }
    default:
      return header ? ['od', 'pipe'].flatMap((key) => pairsOf(header, key)) : [];
  }
}

/** To so many decimals that it is seen to be computed, unless it comes out even. */
function lengthText(mm: Mm, { units }: Job): string {
  if (units === 'in') return `${(mm / MM_PER_INCH).toFixed(12)} in`;
  return `${evenOr(mm, 10)} mm`;
}

function angleText({ rad }: Angle): string {
  return evenOr(degrees(rad), 12);
}

function evenOr(value: number, decimals: number): string {
  const even = Number(value.toFixed(2));
  return Math.abs(value - even) < 10 ** -decimals ? `${even}` : value.toFixed(decimals);
}
