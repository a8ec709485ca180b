import { brokenTo, type Measured, measured, wordsIn } from '../../draw/breaking.ts';
import { type Block, extentOf, lettered } from '../../draw/lettering.ts';
import { type Candidate, type Field, withRoom } from '../../draw/placer.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import { type Flat, height, stationAt } from './flat.ts';

/** The part of a leaf that stays on the tube while it is marked: between the cut and the base edge. */
export interface Body {
  readonly flat: Flat;
  readonly cope: Cope;
  readonly field: Field;
  /** Setback of the base edge. */
  readonly base: Mm;
}

/** A stretch of the girth, between guide lines or across some. */
interface Span {
  readonly left: Mm;
  readonly right: Mm;
  readonly overGuides: boolean;
}

/** Room between words and the ends of their span. */
const INSET: Mm = 1.3;
const ROW: Mm = 1.5;
const DEEPEST: Mm = 70;

/** Between notes in one row where no guide line parts them. */
const APART: Mm = 1.3;

/** Wider lines than this are tiring to read at arm's length. */
const LONGEST_LINE: Mm = 58;

/**
 * Places for a thing of this width and height: rows from the base edge towards the cut, in the stretch between two
 * guide lines nearest to `near`, then in the next; at last across guide lines.
 */
export function* placesFor(
  body: Body,
  near: Mm,
  width: Mm,
  high: Mm,
  draw: Candidate['draw'],
): Iterable<Candidate> {
  for (const span of spansOf(body, near)) {
    if (span.right - span.left < width + 2 * INSET) continue;
    yield* rows(body, span, width, high, draw);
  }
}

/** Places for words, folded to the width of the stretch they stand in; turned where none is wide enough. */
export function* placesForWords(
  body: Body,
  near: Mm,
  paragraphs: readonly string[],
  size: Mm,
): Iterable<Candidate> {
  const texts = paragraphs.map((paragraph) => measured(wordsIn(paragraph), size));
  const spans = spansOf(body, near);
  const most = paragraphs.length + 4;
  const fits = spans
    .filter(({ left, right }) => right - left - 2 * INSET > NARROWEST)
    .map((span) => {
      const room = Math.min(LONGEST_LINE, span.right - span.left - 2 * INSET);
      return { span, block: blockOf(texts, size, room) };
    })
    .filter(({ block }) => block.lines.length <= most);
  // Fewer lines first; the sort keeps what is nearer, and what is between guide lines, before the rest.
  fits.sort(
    (a, b) =>
      Number(a.span.overGuides) - Number(b.span.overGuides) || a.block.lines.length - b.block.lines.length,
  );
  for (const { span, block } of fits) {
    const { width, height: high } = extentOf(block);
    const places = rows(body, span, width, high, (left, bottom) => lettered(block, left, bottom));
    // Between two guide lines words have room at both ends already.
    if (!span.overGuides) yield* places;
    else for (const words of places) yield withRoom(words, APART, 0);
  }
  for (const length of [16, 22, 30, 42]) {
    const block = blockOf(texts, size, length);
    if (block.lines.length > most) continue;
    const { width, height: high } = extentOf(block);
    for (const span of spans) {
      if (span.right - span.left < high + 2 * INSET) continue;
      yield* rows(body, span, high, width, (left, bottom) => lettered(block, left, bottom, 1));
    }
  }
}

const NARROWEST: Mm = 9;

function blockOf(paragraphs: readonly Measured[], size: Mm, room: Mm): Block {
  return { lines: paragraphs.flatMap((paragraph) => brokenTo(paragraph, room)), size };
}

function* rows(body: Body, span: Span, width: Mm, high: Mm, draw: Candidate['draw']): Iterable<Candidate> {
  const { flat, cope, base } = body;
  const left = span.left + INSET;
  const shallow = cope.cut(stationAt(flat, left + width / 2)).setback;
  for (let down = ROW; down < DEEPEST && base - down - high > shallow; down += ROW) {
    const bottom = flat.bodyWay === 1 ? base - down - high : -base + down;
    const box = { left, bottom, right: left + width, top: bottom + high };
    yield { box, overGuides: span.overGuides, draw };
  }
}

function spansOf({ flat, field }: Body, near: Mm): Span[] {
  const stops = [0, ...field.guides.map((guide) => guide.x), flat.width].sort((a, b) => a - b);
  const firm = field.guides.filter((guide) => guide.firm).map((guide) => guide.x);
  const away = ({ left, right }: Span): Mm => Math.abs((left + right) / 2 - near);
  const most = flat.section.corners.length === 0 ? 3 : MOST_FACES;
  return Array.from({ length: most }, (_, i) => i + 1).flatMap((count) => {
    const spans: Span[] = [];
    for (let i = 0; i + count < stops.length; i++) {
      const left = stops[i] ?? 0;
      const right = stops[i + count] ?? flat.width;
      const blocked = firm.some((x) => x > left + 1e-6 && x < right - 1e-6);
      if (!blocked) spans.push({ left, right, overGuides: count > 1 });
    }
    return spans.sort((a, b) => away(a) - away(b));
  });
}

/** Of a rectangular tube: a face and its corners are four stretches, so words may go across two. */
const MOST_FACES = 7;

/** Where the base edge lies, mm from the work point's line, up. */
export function baseHeight({ flat, base }: Pick<Body, 'flat' | 'base'>): Mm {
  return height(flat, base);
}
