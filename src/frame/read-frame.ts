import { isMap } from 'yaml';
import type { EndName, Frame, FrameNote, Job, Seat, SeatEnd, Tube } from '../job/job.ts';
import { complainOfIdleAsk } from '../job/preparation.ts';
import { type FileBody, type JobDefaults, readJobIn, readTubes } from '../job/read-job.ts';
import { complain, type Desk, type Dialect, IN_A_FILE, placeOf, type Spot } from '../job/text/desk.ts';
import { type Fields, fieldsOf, textOf } from '../job/text/fields.ts';
import { copiesAt, lengthAt, missing } from '../job/text/values.ts';
import { asWritten } from '../words/said.ts';
import type { AskedFrame, MirrorPlane } from './asked.ts';
import { askewNotes } from './askew.ts';
import type { CutEnd } from './ends/cut-end.ts';
import { endsOf } from './ends/ends.ts';
import { lengthOf } from './meeting.ts';
import { unknownName } from './names.ts';
import { USUAL_SNAP } from './nearness.ts';
import { nodesOf } from './nodes.ts';
import { otherSenseNotes } from './other-sense.ts';
import { type Places, placesOfFrame } from './places.ts';
import { readPoints } from './read-points.ts';
import { readFrameTubes } from './read-tubes.ts';
import { type Stood, standingsOf } from './stood.ts';
import { askUnitOfPoints } from './which-unit.ts';

/**
 * Reads a job file whose tubes are told one by one, or as a frame of points from which each tube's length, angles, clocks and
 * offsets follow. Throws `Refusal` with all its mistakes, in the order of the file; `file` is its name in them.
 */
export function readFrame(source: string, file: string, defaults: JobDefaults): Job {
  return readFrameIn(IN_A_FILE, source, file, defaults);
}

/** The same, with messages that name keys in another way. */
export function readFrameIn(say: Dialect, source: string, file: string, defaults: JobDefaults): Job {
  return readJobIn(say, source, file, defaults, (fields) =>
    fields.has('frame') ? readFramed(fields) : readTubes(fields),
  );
}

function readFramed(fields: Fields): FileBody {
  const { desk } = fields;
  const { frame: words } = desk.words.job;
  for (const key of ['tube', 'tubes', 'pair']) {
    const spot = fields.get(key);
    if (spot) complain(spot, 'frame-key', key === 'pair' ? words.noCopies('pair') : words.noTubesBeside);
  }
  const copies = copiesAt(fields.get('copies')) ?? 1;
  const spot = fields.get('frame');
  const asked = spot && readAsked(spot);
  // What is half read would make more mistakes than the person did.
  if (!asked || desk.complaints.size > 0) return { tubes: [] };
  return built(desk, asked, copies);
}

const STEEL = 7.85;

function readAsked(spot: Spot): AskedFrame | undefined {
  const { frame: words } = spot.desk.words.job;
  const fields = fieldsOf(spot, 'frame');
  if (fields === undefined) return undefined;
  const tapes = fields.get('tapes');
  if (tapes) complain(tapes, 'not-yet', words.notYet);
  const list = fields.get('tubes');
  if (!list) return missing(spot, 'tubes', words.noTubes);
  const [points, plane] = [fields.get('points'), readMirror(fields.get('mirror'))];
  const snap = lengthAt(fields.get('snap'), 'zero-or-more');
  return {
    points: points ? readPoints(points) : [],
    tubes: readFrameTubes(list),
    ...(plane && { plane }),
    snap: snap?.mm ?? USUAL_SNAP,
    density: densityAt(fields.get('density')) ?? STEEL,
  };
}

function readMirror(spot: Spot | undefined): MirrorPlane | undefined {
  const fields = spot && fieldsOf(spot, 'mirror');
  if (!spot || !fields) return undefined;
  const given = (['x', 'y', 'z'] as const).filter((key) => fields.has(key));
  const [key, another] = given;
  if (key === undefined || another !== undefined) {
    return fields.strange ? undefined : complain(spot, 'mirror', spot.desk.words.job.frame.onePlane);
  }
  const at = lengthAt(fields.get(key), 'any');
  return at && { axis: ({ x: 0, y: 1, z: 2 } as const)[key], at: at.mm };
}

function densityAt(spot: Spot | undefined): number | undefined {
  if (spot === undefined) return undefined;
  const { frame } = spot.desk.words.job;
  const text = textOf(spot, frame.aDensity)?.trim();
  if (text === undefined) return undefined;
  const density = /^\d{1,2}(\.\d+)?$/.test(text) ? Number(text) : 0;
  return density > 0 ? density : complain(spot, 'density', frame.noDensity);
}

function built(desk: Desk, asked: AskedFrame, copies: number): FileBody {
  const places = placesOfFrame(asked);
  const standing = standingsOf(asked, places);
  if (desk.complaints.size > 0) return { tubes: [] };
  complainOfUnknownAfter(standing);
  const nodes = nodesOf(standing, asked.snap);
  if (askUnitOfPoints(asked, standing, nodes)) return { tubes: [] };
  const find = endsOf(standing, nodes);
  const tubes = standing.flatMap((tube) => {
    const [A, B] = [find({ tube, end: 'A' }), find({ tube, end: 'B' })];
    const made = A && B && tubeOf(tube, A, B, copies);
    return A && B && made ? [{ tube, A, B, made }] : [];
  });
  if (desk.complaints.size > 0) return { tubes: [] };
  for (const { tube } of tubes) keepPlaces(tube);
  const frame: Frame = {
    points: places.points,
    seats: tubes.map(({ tube, A, B }) => seatOf(tube, A, B)),
    notes: [
      ...joinedNotes(desk, places),
      ...otherSenseNotes(desk, asked, standing),
      ...askewNotes(desk, asked, standing),
      ...tubes.flatMap(({ tube, A, B }) => nearNotes(desk, tube, { A, B })),
    ],
    density: asked.density,
  };
  return { tubes: tubes.map(({ made }) => made), frame };
}

function complainOfUnknownAfter(standing: readonly Stood[]): void {
  const names = new Set(standing.map(({ name }) => name));
  for (const named of standing.flatMap(({ asked }) => asked.after)) {
    if (!names.has(named.name)) unknownName(named, 'tube', names);
  }
}

function tubeOf(tube: Stood, A: CutEnd, B: CutEnd, copies: number): Tube | undefined {
  const { asked, name } = tube;
  const { words, bareUnit } = asked.spot.desk;
  const between = B.workPoint - A.workPoint;
  if (between <= 0)
    return complain(asked.spot, 'too-short', words.job.frame.nothingBetween(between, bareUnit));
  const preparations = [A, B].flatMap(({ end }) => (end.kind === 'coped' ? [end.preparation] : []));
  complainOfIdleAsk(asked.edges, preparations);
  return {
    name,
    section: asked.section,
    ...(typeof asked.wall !== 'string' && { wall: asked.wall }),
    between: lengthOf(between, bareUnit),
    allowance: asked.allowance,
    pair: false,
    copies,
    ...(asked.note && { note: asked.note }),
    ends: { A: A.end, B: B.end },
  };
}

/** What later stages have to say of a tube is told at its place in the frame's file. */
function keepPlaces({ asked, place }: Stood): void {
  const { places, text } = asked.spot.desk;
  const at = (spot: Spot) =>
    placeOf(text.lines, isMap(spot.node) ? (spot.node.range?.[0] ?? spot.at) : spot.at);
  places.set(`tubes[${place}]`, at(asked.spot));
  for (const end of ['A', 'B'] as const) places.set(`tubes[${place}].ends.${end}`, at(asked.ends[end].spot));
}

function seatOf(tube: Stood, A: CutEnd, B: CutEnd): Seat {
  const { along, from, axis, length, spine } = tube;
  return { along, from, axis, length, spine, ends: { A: seatEnd(A), B: seatEnd(B) } };
}

function seatEnd({ workPoint, headers, past, open, inside }: CutEnd): SeatEnd {
  return {
    workPoint,
    headers: headers.map(({ place }) => place),
    ...(past !== undefined && { past }),
    ...(open && { open }),
    ...(inside && { inside: inside.place }),
  };
}

function joinedNotes({ words }: Desk, { joined }: Places): FrameNote[] {
  return [...joined].map(([name, to]) => ({
    code: 'joined',
    tubes: [],
    text: words.frame.joined(asWritten(name), asWritten(to)),
  }));
}

function nearNotes({ words }: Desk, tube: Stood, ends: Readonly<Record<EndName, CutEnd>>): FrameNote[] {
  return (['A', 'B'] as const).flatMap((end) =>
    ends[end].near.map((header) => ({
      code: 'near' as const,
      tubes: [tube.place, header.place],
      text: words.frame.near(end, asWritten(tube.name), asWritten(header.name)),
    })),
  );
}
