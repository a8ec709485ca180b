import type { Box, Mark } from '../draw/drawing.ts';
import { TEXT, words } from '../draw/lettering.ts';
import { widthOf } from '../draw/letters.ts';
import { offWords } from '../draw/off-words.ts';
import { line, outline, solid } from '../draw/strokes.ts';
import type { Mm } from '../measure/units.ts';
import type { Language } from '../words/language.ts';
import { OVERLAP } from './seams.ts';
import type { Neighbours } from './tile-head.ts';
import { onSeam, type Seam, seamsOf } from './tile-seams.ts';
import type { Tile, Tiling } from './tiling.ts';

/** A registration mark: a diamond astride the seam, with a line through it square to the seam that reaches a third further. */
const DIAMOND: Mm = 3;
const LINE_BEYOND = 1.33;
/** White round marks, where the leaf has words near them. */
const AIR: Mm = 0.5;
const SMALLEST: Mm = 0.1;
/**
 * Where a seam is so full of words that there is no place for one, it is smaller, with no more white at last than keeps its ink off
 * theirs; where two lines of words leave no more than that between them, it is a dot.
 */
const DIAMONDS = [
  { half: DIAMOND, air: AIR },
  { half: 1.5, air: AIR },
  { half: 0.8, air: AIR },
  { half: 0.8, air: 0.15 },
  { half: 0.4, air: 0.15 },
  { half: 0.2, air: 0.05 },
  { half: SMALLEST, air: 0.05 },
] as const;
/** A mark is moved off the leaf's words by up to this part of its seam: the two stay well apart. */
const MOST_MOVED = 0.4;
/** How near they come at the most, as a part of it, where one of them finds no place on its half. */
const LEAST_APART = 0.1;
/** An arrow from the lay-on words to their line keeps this far from the words' ends. */
const ARROW_BESIDE: Mm = 2.5;
const ARROW_HALF: Mm = 0.6;
const ARROW_TAIL: Mm = OVERLAP + 3;

/**
 * Trim lines, lay-on lines, registration marks and their words of one tile, in the coordinates of the turned wrap. A trim line
 * and the lay-on line it belongs to lie at the same place of the wrap, and so do their marks.
 */
export function seamMarks(tiling: Tiling, tile: Tile, beside: Neighbours, language: Language): Mark[] {
  const { words } = tiling;
  return seamsOf(tiling, tile, beside, language).flatMap((whole) => {
    const [from, to] = marksOff(words, whole);
    const seam = { ...whole, marks: { from: from.along, to: to.along } };
    return [
      line('registration', onSeam(seam, seam.at, seam.along.from), onSeam(seam, seam.at, seam.along.to)),
      ...diamond(seam, from),
      ...diamond(seam, to),
      ...named(seam, words),
    ];
  });
}

/** Where on its seam a registration mark lies, and how far it reaches. */
interface Diamond {
  readonly along: Mm;
  readonly half: Mm;
}

/**
 * A seam's two marks, moved towards its middle where the leaf has words; beyond it where one finds no place before. Both its
 * tiles move them alike.
 */
function marksOff(words: readonly Box[], seam: Seam): [Diamond, Diamond] {
  const { from, to } = seam.marks;
  const [most, least] = [(to - from) * MOST_MOVED, (to - from) * LEAST_APART];
  const first = diamondOff(words, seam, from, from + most);
  const last = diamondOff(words, seam, to, to - most);
  return [
    first ?? diamondOff(words, seam, from, (last?.along ?? to) - least) ?? { along: from, half: SMALLEST },
    last ?? diamondOff(words, seam, to, (first?.along ?? from) + least) ?? { along: to, half: SMALLEST },
  ];
}

/** The largest mark that is clear of words between two places of its seam, as near the first as it can be. */
function diamondOff(words: readonly Box[], seam: Seam, wish: Mm, last: Mm): Diamond | undefined {
  for (const { half, air } of DIAMONDS) {
    const reach = half * LINE_BEYOND + air;
    const along = offWords(words, (at) => boxOn(seam, -reach, reach, at, half + air), wish, last);
    if (along !== undefined) return { along, half };
  }
  return undefined;
}

/** Trim words stand in the strip that is cut off; lay-on words beyond the part that is laid over, with arrows to their line. */
function named(seam: Seam, leafWords: readonly Box[]): Mark[] {
  const free = seam.marks.to - seam.marks.from - 2 * (DIAMOND + 1);
  const arrows = seam.role === 'lay' ? 2 * (ARROW_BESIDE + 1) : 0;
  const text = seam.texts.find((each) => widthOf(each, TEXT) + arrows <= free) ?? seam.texts.at(-1);
  if (text === undefined) return [];
  const half = widthOf(text, TEXT) / 2;
  const middle = (seam.marks.from + seam.marks.to) / 2;
  const base = baseLine(seam);
  const set = words(text, 'tile', TEXT, onSeam(seam, base, middle - half), seam.upright ? 1 : 0);
  if (seam.role === 'trim') return [set];
  return [set, ...arrowsBeside(seam, middle - half, middle + half, leafWords)];
}

/**
 * An arrow on either side of the lay-on words, off the leaf's words; one of them where the other finds no place, and both short of
 * the leaf where neither does.
 */
function arrowsBeside(seam: Seam, from: Mm, to: Mm, leafWords: readonly Box[]): Mark[] {
  const inked = (along: Mm) => boxOn(seam, -AIR, ARROW_TAIL, along, ARROW_HALF + AIR);
  const [before, after] = [from - ARROW_BESIDE, to + ARROW_BESIDE];
  const reach = DIAMOND + ARROW_HALF + AIR;
  const places = [
    offWords(leafWords, inked, before, Math.min(before, seam.marks.from + reach)),
    offWords(leafWords, inked, after, Math.max(after, seam.marks.to - reach)),
  ].filter((place) => place !== undefined);
  if (places.length === 0) return [before, after].flatMap((place) => arrow(seam, place, OVERLAP + AIR));
  return places.flatMap((place) => arrow(seam, place, 0));
}

/** Words beside an upright seam read upwards, so that their letters reach to the left of their base line. */
function baseLine(seam: Seam): Mm {
  if (seam.role === 'trim') return seam.at - (seam.upright ? 1.6 : 3.4);
  return seam.at + OVERLAP + (seam.upright ? 3.6 : 1.6);
}

/** An arrow to the line from beyond the overlap, its tip so far short of it. */
function arrow(seam: Seam, along: Mm, short: Mm): Mark[] {
  const tip = onSeam(seam, seam.at + short, along);
  return [
    line('registration', onSeam(seam, seam.at + ARROW_TAIL, along), tip),
    solid(
      'registration',
      tip,
      onSeam(seam, seam.at + short + 2, along - ARROW_HALF),
      onSeam(seam, seam.at + short + 2, along + ARROW_HALF),
    ),
  ];
}

function diamond(seam: Seam, { along, half }: Diamond): Mark[] {
  const corner = (across: Mm, up: Mm) => onSeam(seam, seam.at + across, along + up);
  const reach = half * LINE_BEYOND;
  return [
    outline('registration', corner(-half, 0), corner(0, -half), corner(half, 0), corner(0, half)),
    line('registration', corner(-reach, 0), corner(reach, 0)),
  ];
}

/** A box about a place on a seam: from so far before it to so far beyond it, and half as long along it. */
function boxOn(seam: Seam, before: Mm, beyond: Mm, along: Mm, half: Mm): Box {
  const [low, high] = [
    onSeam(seam, seam.at + before, along - half),
    onSeam(seam, seam.at + beyond, along + half),
  ];
  return { left: low.x, bottom: low.y, right: high.x, top: high.y };
}
