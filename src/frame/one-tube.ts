import { Document, isMap, type Pair, parseDocument, Scalar, type YAMLMap, YAMLSeq } from 'yaml';
import type { End, EndName, Job, Part, TicketNote, Tube } from '../job/job.ts';
import { exactAngle, exactLength } from './exact-text.ts';
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
 * as they follow from the points, to the last bit, for where a line only grazes its header each counts. Undefined where a header of it stops, or where its ends can't be told so.
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
    yamlPair('between', exactLength(between, job.units)),
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
    ? [yamlPair('seam', 'rad' in end.seam ? exactAngle(end.seam.rad) : exactLength(end.seam.mm, job.units))]
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
    ...(isMitre ? [] : [yamlPair('angle', exactAngle(angle.rad))]),
    ...(clock.rad === 0 ? [] : [yamlPair('clock', exactAngle(clock.rad))]),
    ...(offset.mm === 0 ? [] : [yamlPair('offset', exactLength(offset.mm, job.units))]),
    ...(shift.mm === 0 ? [] : [yamlPair('shift', exactLength(shift.mm, job.units))]),
  ];
}

/** What an end lands on, its size in the words of that tube. */
function ontoOf(onto: Part['onto'], header: YAMLMap | undefined): Pair[] {
  switch (onto.kind) {
    case 'mitre':
      return [yamlPair('mitre', inBraces(yamlMap([yamlPair('turn', exactAngle(onto.turn.rad))])))];
    case 'plate':
      return [yamlPair('plate', inBraces(yamlMap([])))];
    case 'box': {
      const section = header?.get('section');
      const sides = isMap(section) ? ['wide', 'deep', 'corner'].flatMap((key) => pairsOf(section, key)) : [];
      const wall = isMap(section) && !section.has('corner') && header ? pairsOf(header, 'wall') : [];
      const roll = onto.roll.rad === 0 ? [] : [yamlPair('roll', exactAngle(onto.roll.rad))];
      return [yamlPair('box', inBraces(yamlMap([...sides, ...wall, ...roll])))];
    }
    default:
      return header ? ['od', 'pipe'].flatMap((key) => pairsOf(header, key)) : [];
  }
}
