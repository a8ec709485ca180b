import type { Box, Mark } from '../../src/draw/drawing.ts';
import { PENS } from '../../src/draw/pens.ts';
import { laySheets } from '../../src/tiler/lay-sheets.ts';
import type { Placement } from '../../src/tiler/sheets.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { faultsOf, pointsAlong, strokesOf, textsOf } from '../leaf/collisions.ts';
import type { AnyJob } from './any-job.ts';
import { inkBox, onSheet } from './ink-boxes.ts';
import { ask } from './synthetic.ts';

const MARGINS = { left: 10, right: 10, top: 10, bottom: 17 };
/** Of a sideways page the paper's foot may be either side. */
const TURNED = { left: 17, right: 17, top: 10, bottom: 10 };

/** A mark of one placement on its sheet. */
interface Inked {
  readonly placement: Placement;
  readonly mark: Mark;
  readonly box: Box;
}

function inkOf(placements: readonly Placement[]): Inked[] {
  return placements
    .flatMap((placement) =>
      placement.drawing.marks.map((mark) => ({ placement, mark, box: inkBox(placement, mark) })),
    )
    .filter(({ box }) => box.left <= box.right && box.bottom <= box.top);
}

function said(mark: Mark): string {
  return mark.kind === 'words' ? `"${mark.text}"` : `a ${mark.purpose} ${mark.kind}`;
}

/** The control points of a long curve may lie far beyond it: where they are beyond a margin, the curve itself is looked at. */
function beyondMargins(inks: readonly Inked[], inside: Box): string[] {
  const isBeyond = (box: Box): boolean =>
    box.left < inside.left - 1e-9 ||
    box.right > inside.right + 1e-9 ||
    box.bottom < inside.bottom - 1e-9 ||
    box.top > inside.top + 1e-9;
  return inks
    .filter(({ box, mark, placement }) => {
      if (!isBeyond(box)) return false;
      if (mark.kind === 'words') return true;
      return pointsAlong(mark.path, 0.1)
        .map((point) => onSheet(placement, point))
        .filter(({ x, y }) => !placement.clip || isWithin(x, y, placement.clip))
        .some(({ x, y }) => isBeyond({ left: x, right: x, bottom: y, top: y }));
    })
    .map(({ mark }) => `${said(mark)} beyond the margin`);
}

/**
 * Words of one drawing on a mark of another. What lies on one drawing is looked at where that is drawn. A seam may have to run
 * through words, which are read when the tiles are laid: those its marks may touch too.
 */
function clashes(inks: readonly Inked[]): string[] {
  const words = inks.filter(({ mark }) => mark.kind === 'words');
  return words.flatMap((word) => {
    const touched = inks.filter((other) => other.placement !== word.placement && touches(word, other));
    const isCut = touched.some(({ mark }) => isSeamLine(mark));
    return touched
      .filter(({ mark }) => !(isCut && mark.purpose === 'registration'))
      .map(({ mark }) => `${said(word.mark)} on ${said(mark)}`);
  });
}

/** A line that runs a whole seam. */
function isSeamLine(mark: Mark): boolean {
  if (mark.kind !== 'stroke' || mark.purpose !== 'registration' || mark.path.closed) return false;
  const [piece] = mark.path.pieces;
  return (
    piece !== undefined && Math.hypot(piece.to.x - mark.path.start.x, piece.to.y - mark.path.start.y) > 20
  );
}

function touches(word: Inked, { placement, mark, box }: Inked): boolean {
  const half = mark.kind === 'stroke' ? PENS[mark.purpose].width / 2 : 0;
  if (!overlaps(word.box, box, half)) return false;
  if (mark.kind === 'words') return true;
  return pointsAlong(mark.path, 0.3)
    .map((point) => onSheet(placement, point))
    .filter(({ x, y }) => isWithin(x, y, box))
    .some(({ x, y }) => overlaps({ left: x, right: x, bottom: y, top: y }, word.box, half));
}

/** On its rim too: the box of a level line has no height. */
function isWithin(x: number, y: number, { left, right, bottom, top }: Box): boolean {
  const hair = 1e-6;
  return x >= left - hair && x <= right + hair && y >= bottom - hair && y <= top + hair;
}

function overlaps(a: Box, b: Box, more: number): boolean {
  const hair = 1e-6;
  return (
    a.left < b.right + more - hair &&
    b.left < a.right + more - hair &&
    a.bottom < b.top + more - hair &&
    b.bottom < a.top + more - hair
  );
}

function faultsOfSheets({ leaves, paper, name }: AnyJob): string[] {
  const set = laySheets(leaves, ask(paper), { job: name, words: ENGLISH });
  const sideways = !paper.roll && set.width !== paper.width;
  const margins = sideways ? TURNED : MARGINS;
  const inside = {
    left: margins.left,
    bottom: margins.bottom,
    right: set.width - margins.right,
    top: set.height - margins.top,
  };
  return [...set.sheets].flatMap(({ placements }, index) => {
    const inks = inkOf(placements);
    const bars = placements.filter(({ drawing }) => drawing.name.startsWith('bars'));
    const turns = new Set(bars.map(({ turn }) => turn));
    return [
      ...beyondMargins(inks, inside),
      ...clashes(inks),
      ...(turns.size === 2 ? [] : ['a bar is missing']),
    ].map((fault) => `sheet ${index + 1}: ${fault}`);
  });
}

/** What every wrap that is cut by has to have. */
function lacks({ leaves }: AnyJob): string[] {
  return leaves
    .filter(({ wrap }) => strokesOf(wrap, 'cut').length > 0)
    .flatMap(({ title, wrap }) => {
      const texts = textsOf(wrap);
      return [
        ...(wrap.marks.some(({ kind }) => kind === 'fill') ? [] : ['no arrow']),
        ...(texts.some((text) => text.startsWith('spine 0') || text === 'rotation mark 0°')
          ? []
          : ['no spine']),
        ...(strokesOf(wrap, 'outline').length > 0 ? [] : ['no base edge']),
        ...(texts.includes('waste') ? [] : ['no waste']),
      ].map((fault) => `${title}: ${fault}`);
    });
}

/** Everything of a job's leaves and sheets that should not be, and everything that should be and is not. */
export function faultsOfJob(job: AnyJob): string[] {
  return [
    ...job.leaves.flatMap(({ wrap, card }) => [...faultsOf(wrap), ...faultsOf(card)]),
    ...lacks(job),
    ...faultsOfSheets(job),
  ];
}
