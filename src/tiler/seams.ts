import type { Mm } from '../measure/units.ts';

/** How far a tile reaches under the next one, mm: the printed part on which the next one's edge is laid. */
export const OVERLAP: Mm = 10;
/** Beside a trim line, what is cut off; it holds the line's words. */
export const TRIM_STRIP: Mm = 5;
/** Beside the printed part that is laid over, blank paper for the lay-on line's words. */
export const LAY_STRIP: Mm = 5;

/** A seam's marks reach this far from it on the side that is not overlapped. */
const MARKS_REACH: Mm = 4;
/** A tile narrower than this is a nuisance to trim and tape. */
const SLIVER: Mm = 40;
/** What a seam through a place to keep whole weighs beside a millimetre of its overlap lying on it. */
const THROUGH: Mm = 40;
/** And one through a line of words, which can still be read where the tiles are laid well; less in the white beside it. */
const THROUGH_WORDS: Mm = 6;
/** And one whose overlap ends within words: stumps of their letters stand there. */
const STUMPS: Mm = 2;
/** From a seam to words that it keeps off: room for its smallest marks. */
const OFF_WORDS: Mm = 1.6;
const STEP: Mm = 1;

/** A stretch of one axis, mm. */
export interface SeamStretch {
  readonly from: Mm;
  readonly to: Mm;
}

/** The seams of one axis, in rising order, and how much they disturb (0 where they keep off everything). */
export interface Cuts {
  readonly seams: readonly Mm[];
  readonly cost: number;
}

/** Where a leaf had better not be cut along one axis: the places to keep whole, and its lines of words. */
export interface Spared {
  readonly keep: readonly SeamStretch[];
  readonly words: readonly SeamStretch[];
}

/** Tiles about equally large, or the first one as small as may be, so that its sheet has room for more. */
export type Lean = 'even' | 'low';

/** A way of cutting, as far as one seam: the seams so far and their cost. */
interface Way {
  readonly seams: readonly Mm[];
  readonly at: Mm;
  readonly cost: number;
}

/**
 * Cuts `whole` into the fewest tiles that fit `room` mm of sheet: tile i is printed from seam i to `OVERLAP` beyond seam
 * i + 1, is trimmed on its lower seam, and has its neighbour laid on the upper one. Among all such cuts on a grid of a
 * millimetre (and hard against each place to spare), the one that disturbs these places least, then
 * the one that leans as asked.
 * Throws a RangeError where the room is too small to cut in at all.
 */
export function cut(whole: SeamStretch, room: Mm, spared: Spared, lean: Lean): Cuts {
  const count = fewest(whole.to - whole.from, room);
  let ways: Way[] = [{ seams: [], at: whole.from, cost: 0 }];
  for (let index = 1; index < count; index += 1) {
    const previous = ways;
    const wish = lean === 'low' ? whole.from : whole.from + ((whole.to - whole.from) * index) / count;
    ways = candidates(whole, room, spared, index, count).flatMap((seam) => {
      const best = cheapest(previous, seam, printed(room, index - 1, count));
      if (best === undefined) return [];
      const cost = best.cost + disturbance(seam, spared) + Math.abs(seam - wish) / 1e5;
      return [{ seams: [...best.seams, seam], at: seam, cost: cost + sliver(seam - best.at) }];
    });
  }
  const last =
    count === 1 ? ways : ways.map((way) => ({ ...way, cost: way.cost + sliver(whole.to - way.at) }));
  const best = last.sort((a, b) => a.cost - b.cost)[0];
  if (best === undefined) throw new RangeError(`No way to cut ${whole.to - whole.from} mm into ${room} mm.`);
  return { seams: best.seams, cost: best.cost };
}

/** How much of a tile can be printed, mm: the sheet's room less the strips that its place among `count` needs. */
function printed(room: Mm, index: number, count: number): Mm {
  return room - (index > 0 ? TRIM_STRIP : 0) - (index < count - 1 ? LAY_STRIP : 0);
}

function fewest(length: Mm, room: Mm): number {
  if (length <= room + 1e-9) return 1;
  const inner = room - TRIM_STRIP - LAY_STRIP - OVERLAP;
  if (inner < OVERLAP) throw new RangeError(`${room} mm of sheet is too little to cut a leaf into tiles.`);
  const ends = 2 * room - TRIM_STRIP - LAY_STRIP - OVERLAP;
  return 2 + Math.max(0, Math.ceil((length - ends) / inner - 1e-9));
}

/** Where seam `index` may lie so that the tiles before and after it can still hold the whole. */
function candidates(
  whole: SeamStretch,
  room: Mm,
  { keep, words }: Spared,
  index: number,
  count: number,
): Mm[] {
  const reach = (first: number, end: number) => {
    let sum = 0;
    for (let tile = first; tile < end; tile += 1) sum += printed(room, tile, count) - OVERLAP;
    return sum;
  };
  const most = whole.from + reach(0, index);
  const least = Math.max(whole.from, whole.to - OVERLAP - reach(index, count));
  const grid = Array.from(
    { length: Math.floor((most - least) / STEP) + 1 },
    (_, step) => least + step * STEP,
  );
  const beside = [
    ...keep.flatMap(({ from, to }) => [from - OVERLAP, to + MARKS_REACH]),
    ...words.flatMap(({ from, to }) => [from - OFF_WORDS, to + OFF_WORDS]),
    ...whites(words),
  ];
  return [...grid, most, ...beside.filter((seam) => seam > least && seam < most)];
}

/** The cheapest way to come to `seam` with one more tile. */
function cheapest(ways: readonly Way[], seam: Mm, print: Mm): Way | undefined {
  let best: Way | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const way of ways) {
    if (way.at >= seam || seam + OVERLAP - way.at > print + 1e-9) continue;
    const cost = way.cost + sliver(seam - way.at);
    if (cost >= least) continue;
    best = way;
    least = cost;
  }
  return best;
}

function disturbance(seam: Mm, { keep, words }: Spared): number {
  const disturbed = keep.reduce((sum, { from, to }) => {
    const covered = Math.min(seam + OVERLAP, to) - Math.max(seam - MARKS_REACH, from);
    return sum + Math.max(covered, 0) + (from < seam && seam < to ? THROUGH : 0);
  }, 0);
  const through = (at: Mm): number => words.reduce((sum, line) => sum + nearness(at, line), 0);
  return disturbed + THROUGH_WORDS * through(seam) + STUMPS * through(seam + OVERLAP);
}

/** 1 for a seam through a line of words, 0 for one that keeps off it. */
function nearness(seam: Mm, { from, to }: SeamStretch): number {
  const off = Math.max(from - seam, seam - to, 0);
  return Math.max(0, 1 - off / OFF_WORDS);
}

/** The middles between each line of words and the next. */
function whites(words: readonly SeamStretch[]): Mm[] {
  return words.flatMap(({ to }) => {
    const next = Math.min(...words.filter(({ from }) => from > to).map(({ from }) => from));
    return Number.isFinite(next) ? [(to + next) / 2] : [];
  });
}

function sliver(width: Mm): number {
  return width < SLIVER ? 1000 + SLIVER - width : 0;
}
