import { readLength } from '../../measure/length.ts';
import type { Said } from '../../measure/said.ts';
import type { LengthUnit, Mm } from '../../measure/units.ts';
import { USUAL_SNAP } from '../nearness.ts';
import { linesOfCsv } from './csv-lines.ts';
import { type DrawnLine, type DrawnLines, type LinesDesk, refuseLine, writtenUnit } from './drawn-line.ts';
import { linesOfDxf } from './dxf-lines.ts';
import { frameText } from './frame-text.ts';
import { joinedLines } from './joined-ends.ts';
import { sizeReader } from './line-size.ts';

export interface LinesAsk extends LinesDesk {
  readonly format: 'csv' | 'dxf';
  /** Ends nearer than this are one point; in the person's words. */
  readonly snap?: string;
  readonly keepPieces: boolean;
}

/** A frame's file, how many tubes and points it has, and what its maker should know. */
export interface FrameOfLines {
  readonly text: string;
  readonly tubes: number;
  readonly points: number;
  readonly told: readonly Said[];
}

/**
 * Makes a frame's file from the straight lines of a table or a drawing, to 0.001 mm. Throws `Refusal` with the first mistake and its place.
 */
export function frameOfLines(source: string, ask: LinesAsk): FrameOfLines {
  if (ask.format === 'csv') refuseOwnSize(ask, ask.units ?? 'mm');
  const drawn = ask.format === 'csv' ? linesOfCsv(source, ask) : linesOfDxf(source, ask);
  refuseOwnSize(ask, drawn.units);
  const unit = writtenUnit(drawn.units);
  const snap = snapOf(ask, unit);
  const joined = joinedLines(drawn.lines, { snap, unit, keepPieces: ask.keepPieces });
  if (joined.bars.length === 0) refuseLine(ask, 0, 'empty', ask.file, ask.words.lines.noLines);
  const text = frameText(joined, { unit, snap, file: ask.file, words: ask.words });
  return { text, tubes: joined.bars.length, points: joined.points.size, told: toldOf(drawn, joined, ask) };
}

/** The size for tubes that have none is judged where it was given. */
function refuseOwnSize({ od, wall, words }: LinesAsk, units: LengthUnit): void {
  if (od === undefined) return;
  const size = sizeReader(writtenUnit(units), words)(od, wall ?? '');
  const desk = { words, file: words.commandFaults.commandLine };
  if (!size.ok)
    refuseLine(desk, 0, 'size', `--od ${od}${wall === undefined ? '' : ` --wall ${wall}`}`, size.fault);
}

/** More than this would join what is apart. */
const MOST_SNAP: Mm = 50;

function snapOf(ask: LinesAsk, unit: 'mm' | 'in'): Mm {
  const { snap: text, words } = ask;
  if (text === undefined) return USUAL_SNAP;
  const read = readLength(text, unit);
  const desk = { words, file: words.commandFaults.commandLine };
  if (!read.ok) return refuseLine(desk, 0, 'length', `--snap ${text}`, words.faults.said(read.fault));
  const { mm } = read.value;
  return mm >= 0 && mm <= MOST_SNAP
    ? mm
    : refuseLine(desk, 0, 'length', `--snap ${text}`, words.lines.noSnap(MOST_SNAP));
}

function toldOf(
  drawn: DrawnLines,
  { bars, short, doubles }: ReturnType<typeof joinedLines>,
  { words }: LinesAsk,
): Said[] {
  const { lines: said } = words;
  const labels = (lines: readonly DrawnLine[]): readonly Said[] => lines.map(({ label }) => label);
  const whole = bars.filter(({ pieces }) => pieces.length > 1);
  const sizeless = bars.filter(({ pieces: [{ size }] }) => size === '');
  return [
    ...drawn.told,
    ...(short.length > 0 ? [said.short(labels(short))] : []),
    ...(doubles.length > 0 ? [said.doubles(labels(doubles))] : []),
    ...whole.map(({ pieces }) => said.inOnePiece(labels(pieces))),
    ...(sizeless.length > 0 ? [said.sizeless(sizeless.length, bars.length)] : []),
  ];
}
