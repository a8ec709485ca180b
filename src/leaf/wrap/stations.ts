import { inTurn, liftSteps, offLevel, type Side, waysAt, wordsBeside } from '../../draw/candidates.ts';
import type { Mark } from '../../draw/drawing.ts';
import type { FactName } from '../../draw/facts.ts';
import { type Block, TEXT } from '../../draw/lettering.ts';
import {
  type Candidate,
  type Field,
  type Guide,
  openParts,
  type Placed,
  placeAll,
} from '../../draw/placer.ts';
import { line } from '../../draw/strokes.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import { type Body, inFromBase } from './body.ts';
import { type Flat, height, xAt } from './flat.ts';
import { foldStations } from './folds.ts';

/** Places nearer to one another than this on the paper are one, mm. */
export const ONE_PLACE: Mm = 0.3;

/** The spine and the other three quarter lines, as stations. */
export function quarters(turn: number): number[] {
  return [0, turn / 4, turn / 2, (3 * turn) / 4];
}

/** The quarter lines and the lines to fold on that do not lie on the seam, from the cut to the base edge. */
export function guidesOf(flat: Flat, cope: Cope, base: Mm): Guide[] {
  const lines = [
    ...quarters(flat.turn).map((station) => ({ station, fold: false })),
    ...foldStations(flat.section).map((station) => ({ station, fold: true })),
  ];
  return lines
    .map(({ station, fold }) => ({ station, fold, x: xAt(flat, station) }))
    .filter(({ x }) => x > ONE_PLACE && x < flat.width - ONE_PLACE)
    .map(({ station, fold, x }) => {
      const ends = [height(flat, cope.cut(station).setback), height(flat, base)];
      const firm = station === 0 && !fold;
      return { x, bottom: Math.min(...ends), top: Math.max(...ends), firm, fold };
    });
}

/** The guide lines, interrupted where words lie across them. Drawn when all words are placed. */
export function guideMarks(field: Field): Mark[] {
  return field.guides.flatMap((guide) =>
    openParts(field, guide).map((part) => line(guide.fold ? 'fold' : 'guide', ...part)),
  );
}

/** The spine's name, beside it at the base edge. */
export function spineLabel(body: Body, worth: Mm): Placed {
  const fact = body.cope.fitUp?.clock ? 'rotation-mark' : 'spine';
  // To the left it could be taken for the name of the line before it.
  const places = inTurn(['right', 'left'] as const, (side) =>
    inTurn([worth, TEXT], (size) => atStation(body, 0, fact, size, [side])),
  );
  return placeAll(body.field, [{ places }]);
}

/** The other quarter lines' stations, likewise. */
export function quarterLabels(body: Body): Placed {
  const [, ...others] = quarters(body.flat.turn);
  return placeAll(
    body.field,
    others.map((station) => ({ places: atStation(body, station, 'station', TEXT) })),
  );
}

function atStation(
  body: Body,
  station: number,
  fact: FactName,
  size: Mm,
  sides?: readonly Side[],
): Iterable<Candidate> {
  const block = { fact, lines: [quarterName(body, station)], size };
  return besideAtBase(body, xAt(body.flat, station), block, sides);
}

function quarterName({ flat: { section }, cope, words: { leaf, quantities } }: Body, station: number): Said {
  // An end whose rotation is marked at the frame counts its stations from that mark.
  if (station === 0 && cope.fitUp?.clock) return leaf.rotationMark;
  if (section.stations === 'angles') return station === 0 ? leaf.spine : quantities.angle(station);
  return station === 0 ? leaf.spineMm : quantities.station(station, section.stations);
}

/** Says once what the lines at a tube's corners are. */
export function foldLabel(body: Body): Placed {
  const xs = foldStations(body.flat.section).map((station) => xAt(body.flat, station));
  const block: Block = { fact: 'fold', lines: [body.words.leaf.fold], size: TEXT };
  return placeAll(body.field, [{ places: inTurn(xs, (x) => besideAtBase(body, x, block)) }]);
}

/** Where they stand off the base edge: hard by it as long as it can be, mm. */
const AT_BASE = [...waysAt([0.9], [false]), ...waysAt(liftSteps(0.9, 24, 1.5))];

function besideAtBase(body: Body, x: Mm, block: Block, sides?: readonly Side[]): Iterable<Candidate> {
  return offLevel(inFromBase(body), AT_BASE, wordsBeside(block, x, sides));
}
