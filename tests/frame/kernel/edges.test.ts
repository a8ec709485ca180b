import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import type { EndName, Job } from '../../../src/job/job.ts';
import { jointOf } from '../../../src/saddle/joint.ts';
import { wallLine } from '../../../src/saddle/lines.ts';
import { DEEP, howMany } from '../../count.ts';
import { fileOfStrung, strungFrames } from '../rails-and-stays.ts';
import { drawnFrames, fannedFrames } from '../random-frames.ts';
import { along, crossOf, dotOf, minus, type Place } from '../ray-march.ts';
import { fileOf, readText } from '../read-lines.ts';
import { bodyOf, type Kernel, loadKernel, pointOf, seatOf } from './bars.ts';
import { meshHeaders } from './headers.ts';
import type { SeenByRays } from './ray-spans.ts';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const mirrored = (text: string, plane: string): string =>
  text.replace('frame:\n', `frame:\n  mirror: ${plane}\n`);

/** Nodes of three to five tubes, and stays between rails; half of them mirrored. */
const frames: fc.Arbitrary<string> = fc
  .tuple(
    fc.oneof(
      { weight: 3, arbitrary: drawnFrames.map(({ text }) => [text, '{ x: -2000 }'] as const) },
      { weight: 2, arbitrary: fannedFrames.map(({ text }) => [text, '{ x: -2000 }'] as const) },
      { weight: 4, arbitrary: strungFrames.map((tubes) => [fileOfStrung(tubes), '{ y: -700 }'] as const) },
    ),
    fc.boolean(),
  )
  .map(([[text, plane], isMirrored]) => (isMirrored ? mirrored(text, plane) : text));

/** A wall line of an end: its foot on the plane square to the tube through the work point. */
interface WallRay {
  readonly foot: Place;
  readonly body: Place;
}

/** Where rays run: from further up the tube than any header reaches to below all that is to be met, mm. */
const [UP, DOWN] = [200, 120];

/** Where the wall line first meets a header, and how square to it the header's surface is there. */
function firstMet(headers: readonly SeenByRays[], { foot, body }: WallRay): Met | undefined {
  const ray = { from: along(foot, UP, body), way: along([0, 0, 0], -1, body), length: UP + DOWN };
  const met = headers.flatMap((header): Met[] => {
    const [first] = header(ray);
    return first ? [{ setback: UP - first.into.at, square: Math.abs(dotOf(first.into.normal, body)) }] : [];
  });
  return met.toSorted((a, b) => b.setback - a.setback)[0];
}

interface Met {
  readonly setback: number;
  readonly square: number;
}

/** What is nearer than this to crossing, or to square, mm and degrees, is taken for that, as frames.md has it. */
const [CROSSING, SQUARE] = [0.01, 0.001];

/** Whether one of an end's headers lies so nearly across or square that the program takes it to be: the kernel has it where it is. */
function isRounded(job: Job, tube: number, end: EndName): boolean {
  const seat = seatOf(job, tube);
  const [body, point] = [bodyOf(seat, end), pointOf(seat, end)];
  return seat.ends[end].headers.some((header) => {
    const { from, axis } = seatOf(job, header);
    const normal = crossOf(body, axis);
    const way = minus(from, point);
    const cos = dotOf(body, axis);
    const sin2 = dotOf(normal, normal);
    if (sin2 < 1e-9) return false;
    const offset = Math.abs(dotOf(way, normal)) / Math.sqrt(sin2);
    const shift = Math.abs(dotOf(way, body) - dotOf(way, axis) * cos) / sin2;
    const off = (Math.abs(Math.asin(cos)) * 180) / Math.PI;
    const isSo = (is: number, under: number): boolean => is > 1e-6 && is < under;
    return isSo(offset, CROSSING) || isSo(shift, CROSSING) || isSo(off, SQUARE);
  });
}

/** Of doubles that went through turns and hulls, mm. */
const ROUNDING = 2e-6;
/** What a full-contact edge may leave open, mm; where the kernel's two sizes lie further apart than that it can't tell. */
const GAP = 0.01;

type Verdict = 'borne out' | 'missed by both' | 'untold' | 'wrong';

/** Our setback, none where nothing is met, between what the kernel's header within the true one and that beyond it come to. */
function judged(told: number | undefined, low: Met | undefined, high: Met | undefined): Verdict {
  const isBetween =
    (told ?? Number.NEGATIVE_INFINITY) >= (low?.setback ?? Number.NEGATIVE_INFINITY) - ROUNDING &&
    (told ?? Number.NEGATIVE_INFINITY) <= (high?.setback ?? Number.NEGATIVE_INFINITY) + ROUNDING;
  if (!isBetween) return 'wrong';
  if (!low) return high ? 'untold' : 'missed by both';
  return (apart(low, high) ?? GAP) < GAP ? 'borne out' : 'untold';
}

/** How far the kernel's two sizes lie from one another, square to the surface that is met. */
function apart(low: Met | undefined, high: Met | undefined): number | undefined {
  return low && high && (high.setback - low.setback) * low.square;
}

/** Round the outside line of an end, and as many round the inside line. */
const LOOKS = 4;

interface WallLook {
  readonly place: string;
  readonly told: number | undefined;
  readonly ray: WallRay;
}

/** Wall lines of a coped end, and our setback on each. */
function looksAt(job: Job, tube: number, end: EndName, turned: number): readonly WallLook[] {
  const { section: ask, wall, name, ends } = job.tubes[tube] ?? {};
  const cut = ends?.[end];
  if (!ask || cut?.kind !== 'coped') return [];
  const [seat, joint] = [seatOf(job, tube), jointOf(ask, cut)];
  const { section } = joint;
  const [beside, body] = [crossOf(seat.axis, seat.spine), bodyOf(seat, end)];
  const work = along(seat.from, seat.ends[end].workPoint, seat.axis);
  return [0, wall?.mm ?? 0].flatMap((depth) =>
    Array.from({ length: LOOKS }, (_, look): WallLook => {
      const station = ((look + turned) * section.turn) / LOOKS;
      const { x, y, nx, ny } = section.at(station);
      const foot = along(along(work, x - depth * nx, seat.spine), y - depth * ny, beside);
      const { contact, setback } = wallLine(joint, depth)(station);
      return {
        place: `${name} ${end}, ${depth} mm in at ${station}`,
        told: contact ? setback : undefined,
        ray: { foot, body },
      };
    }),
  );
}

/** What kinds of end there were: each counts for its union, for what it lands on, and for its own section. */
function kindsOf({ tubes }: Job, tube: number, end: EndName): readonly string[] {
  const cut = tubes[tube]?.ends[end];
  if (cut?.kind !== 'coped') return [];
  return [
    `onto ${cut.parts.length}`,
    ...new Set(cut.parts.flatMap(({ onto, stops }) => [onto.kind, ...(stops ? ['stopped'] : [])])),
    ...(tubes[tube]?.section.kind === 'rectangular' ? ['of rectangular tube'] : []),
  ];
}

/** What came of the ends of some frames: how often each verdict and each kind of end, and the most in mm. */
interface Tally {
  readonly counts: Map<string, number>;
  ends: number;
  looks: number;
  gap: number;
  bias: number;
}

const emptyTally = (): Tally => ({ counts: new Map(), ends: 0, looks: 0, gap: 0, bias: 0 });

function count({ counts }: Tally, what: string): void {
  counts.set(what, (counts.get(what) ?? 0) + 1);
}

/** Holds every coped end of a frame to the kernel. */
function judgeEnds(tally: Tally, text: string, turned: number): void {
  const job = readText(text);
  const mesh = meshHeaders(kernel, job);
  for (const [tube, end] of job.tubes.flatMap((_, i) => [[i, 'A'] as const, [i, 'B'] as const])) {
    const looks = looksAt(job, tube, end, turned);
    if (looks.length === 0) continue;
    tally.ends++;
    const [within, beyond] = [mesh.at(tube, end, 'within'), mesh.at(tube, end, 'beyond')];
    if (isRounded(job, tube, end)) count(tally, 'taken for crossing or square');
    else if (within === 'too deep' || beyond === 'too deep') count(tally, 'cut too often');
    else {
      for (const kind of kindsOf(job, tube, end)) count(tally, kind);
      for (const look of looks) judgeLook(tally, look, [within, beyond], text);
    }
  }
  mesh.drop();
}

function judgeLook(
  tally: Tally,
  { place, told, ray }: WallLook,
  [within, beyond]: readonly [readonly SeenByRays[], readonly SeenByRays[]],
  text: string,
): void {
  const [low, high] = [firstMet(within, ray), firstMet(beyond, ray)];
  const verdict = judged(told, low, high);
  const said = `${place}: ${told}, ${low?.setback} to ${high?.setback}\n${text}`;
  expect(verdict, said).not.toBe('wrong');
  tally.looks++;
  count(tally, verdict);
  if (verdict !== 'borne out' || told === undefined || !low) return;
  tally.gap = Math.max(tally.gap, (told - low.setback) * low.square);
  tally.bias = Math.max(tally.bias, apart(low, high) ?? 0);
}

const EVERY_KIND = [
  ...[1, 2, 3, 4].map((many) => `onto ${many}`),
  ...['stopped', 'mitre', 'round', 'box', 'of rectangular tube'],
];

/** What four minutes of a processor take. */
const FRAMES = howMany({ short: 1, deep: 250, asked: 'FRAMES' });

test('every end of random frames lies between headers of the mesh kernel that are a hair too small and a hair too large', () => {
  const tally = emptyTally();
  fc.assert(
    fc.property(fc.noBias(frames), fc.nat(96), (text, turned) => judgeEnds(tally, text, turned / 97)),
    { numRuns: FRAMES, seed: Number(process.env.FRAME_SEED ?? 6), endOnFailure: true },
  );
  const { counts, ends, looks, gap, bias } = tally;
  const told = [...counts].map(([what, many]) => `${many} ${what}`).join(', ');
  console.info(
    `${FRAMES} frames: ${ends} ends, ${looks} looks: ${told}; gap ${gap} mm, the kernel's own bias ${bias} mm`,
  );
  const of = (what: string): number => counts.get(what) ?? 0;
  expect(of('borne out') + of('missed by both')).toBeGreaterThan(0.95 * looks);
  expect(of('taken for crossing or square') + of('cut too often')).toBeLessThan(0.1 * ends);
  for (const kind of DEEP ? EVERY_KIND : []) expect(of(kind), kind).toBeGreaterThan(FRAMES / 20);
}, 1_800_000);

test('so do two halves that end at the middle of a brace', () => {
  const [size, x] = ['od: 26.9, wall: 2.6', '{ middle: [a, c] }'];
  const text = fileOf({ a: '[0, 0, 0]', b: '[0, 0, 1100]', c: '[1400, 300, 1100]', d: '[1400, 300, 0]', x }, [
    'name: brace, along: [a, c], od: 42.4, wall: 2.6',
    ...['d', 'b'].map((to) => `name: half ${to}, along: [x, ${to}], ${size}`),
  ]);
  const tally = emptyTally();
  judgeEnds(tally, text, 0.3);
  expect([tally.ends, tally.counts.get('borne out')]).toEqual([2, 2 * 2 * LOOKS]);
});
