import { brokenTo, type MeasuredWords, measured, wordsIn } from '../../draw/breaking.ts';
import { inTurn, type Label, type Level, labelOf, liftSteps, offLevel } from '../../draw/candidates.ts';
import type { FactName } from '../../draw/facts.ts';
import type { Block } from '../../draw/lettering.ts';
import { type Candidate, type Field, withRoom } from '../../draw/placer.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import type { Language } from '../../words/language.ts';
import { type Flat, height, stationAt } from './flat.ts';

/** The part of a leaf that stays on the tube while it is marked: between the cut and the base edge. */
export interface Body {
  readonly flat: Flat;
  readonly cope: Cope;
  readonly field: Field;
  /** Setback of the base edge. */
  readonly base: Mm;
  readonly words: Language;
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

/** Between notes in one row where no guide line parts them: with no more than a space between, two read as one. */
const APART: Mm = 1.3;

/** Wider lines than this are tiring to read at arm's length. */
const LONGEST_LINE: Mm = 58;

/**
 * Places for a label: rows from the base edge towards the cut, in the stretch between two guide lines nearest to `near`, then in the
 * next; at last across guide lines.
 */
export function placesFor(body: Body, near: Mm, label: Label): Iterable<Candidate> {
  return inTurn(spansOf(body, near), (span) => rows(body, span, label));
}

/**
 * Places for words, folded to the width of the stretch they stand in; turned where none is wide enough; at last with a word in pieces.
 * Those come first that no other words stand near in the same row.
 */
export function* placesForWords(
  body: Body,
  near: Mm,
  fact: FactName,
  paragraphs: readonly Said[],
  size: Mm,
  apart: Mm = APART,
): Iterable<Candidate> {
  const texts = paragraphs.map((paragraph) => measured(wordsIn(paragraph), size));
  const spans = spansOf(body, near);
  const most = paragraphs.length + 4;
  const fits = spans
    .map((span) => ({ span, room: span.right - span.left - 2 * INSET }))
    .filter(({ room }) => room > NARROWEST)
    .map(({ span, room }) => ({ span, block: blockOf(fact, texts, size, Math.min(LONGEST_LINE, room)) }))
    .filter(({ block }) => block.lines.length <= most);
  // Fewer lines first; the sort keeps what is nearer, and what is between guide lines, before the rest.
  fits.sort(
    (a, b) =>
      Number(a.span.overGuides) - Number(b.span.overGuides) || a.block.lines.length - b.block.lines.length,
  );
  const whole = texts.flatMap(({ words }) => words.map(({ text }) => text)).join(' ');
  const isWhole = ({ lines }: Block): boolean => lines.join(' ') === whole;
  yield* levelPlaces(
    body,
    fits.filter(({ block }) => isWhole(block)),
    apart,
  );
  for (const length of [16, 22, 30, 42]) {
    const block = blockOf(fact, texts, size, length);
    if (block.lines.length > most) continue;
    for (const span of spans) yield* rows(body, span, labelOf(block, 1));
  }
  yield* levelPlaces(
    body,
    fits.filter(({ block }) => !isWhole(block)),
    apart,
  );
  if (apart > 0) yield* placesForWords(body, near, fact, paragraphs, size, 0);
}

function* levelPlaces(
  body: Body,
  fits: readonly { readonly span: Span; readonly block: Block }[],
  apart: Mm,
): Iterable<Candidate> {
  for (const { span, block } of fits)
    for (const words of rows(body, span, labelOf(block)))
      yield span.overGuides ? withRoom(words, APART, 0) : roomAfter(words, apart, span.right - OFF_GUIDES);
}

/** Between two guide lines words begin beside the first: others in their row come after them, and the second guide is no such. */
function roomAfter(words: Candidate, by: Mm, most: Mm): Candidate {
  const { box } = words;
  return { ...words, box: { ...box, right: Math.max(box.right, Math.min(box.right + by, most)) } };
}

/** As near as words come to a guide line. */
const OFF_GUIDES: Mm = 0.7;

const NARROWEST: Mm = 9;

function blockOf(fact: FactName, paragraphs: readonly MeasuredWords[], size: Mm, room: Mm): Block {
  return { fact, lines: paragraphs.flatMap((paragraph) => brokenTo(paragraph, room)), size };
}

/** Rows in one stretch, from the base edge on; none where it is too narrow. */
function rows(body: Body, { left, right, overGuides }: Span, label: Label): Iterable<Candidate> {
  const { flat, cope, base } = body;
  if (right - left < label.width + 2 * INSET) return [];
  const shallow = cope.cut(stationAt(flat, left + INSET + label.width / 2)).setback;
  const lifts = liftSteps(ROW, Math.min(DEEPEST, base - label.height - shallow), ROW);
  const tried = { label, lefts: [left + INSET] };
  return offLevel(inFromBase(body), [{ turn: 0, lifts, overGuides }], () => tried);
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

/** Of a tube with corners: a face and its corners are four stretches, so words may go across two. */
const MOST_FACES = 7;

/** Where the base edge lies, mm from the work point's line, up. */
export function baseHeight({ flat, base }: Pick<Body, 'flat' | 'base'>): Mm {
  return height(flat, base);
}

/** Where the cut lies at x mm from the left edge, mm from the work point's line, up. */
export function cutAt({ flat, cope }: Pick<Body, 'flat' | 'cope'>, x: Mm): Mm {
  return height(flat, cope.cut(stationAt(flat, x)).setback);
}

/** The cut, for what stands off it at x, on the body's side or on that of the waste. */
export function offCut(body: Body, x: Mm, where: 'body' | 'waste' = 'body'): Level {
  return { y: cutAt(body, x), up: (body.flat.bodyWay === 1) === (where === 'body') ? 1 : -1 };
}

/** The base edge, for what stands on the leaf's side of it. */
export function inFromBase(body: Body): Level {
  return { y: baseHeight(body), up: body.flat.bodyWay === 1 ? -1 : 1 };
}
