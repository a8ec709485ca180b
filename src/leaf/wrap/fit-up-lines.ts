import { BESIDE, inTurn, liftSteps, offLevel, wordsBeside } from '../../draw/candidates.ts';
import type { Mark } from '../../draw/drawing.ts';
import type { FactName } from '../../draw/facts.ts';
import { type Block, TEXT } from '../../draw/lettering.ts';
import { point, type Segment } from '../../draw/path.ts';
import { addBarrier, type Candidate, type Placed, placeAll, type Wish } from '../../draw/placer.ts';
import { linesAlong } from '../../draw/strokes.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import { type Body, baseHeight, inFromBase } from './body.ts';
import { height, stationAt, xAt } from './flat.ts';
import { ONE_PLACE } from './stations.ts';

/** The lines of a leaf that are laid on marks made at the frame. */
export interface FitUpLines {
  /** On the line along the tube that both marks are made on. */
  readonly along: Segment;
  /** On the length mark; none where the length is a number. */
  readonly round: readonly Segment[];
  readonly marks: readonly Mark[];
}

/**
 * The line along the tube that goes on the rotation mark, and the line round it that goes on the length mark, kept free of
 * words that are placed later. Undefined on a leaf that is laid by numbers.
 */
export function fitUpLines(body: Body): FitUpLines | undefined {
  const { fitUp } = body.cope;
  if (!fitUp) return undefined;
  const along = alongTube(body, fitUp.markStation);
  const round = fitUp.lengthSetback === undefined ? [] : roundTube(body, fitUp.lengthSetback);
  addBarrier(body.field, [along, ...round], CLEAR);
  const drawn = body.field.guides.some(({ x }) => Math.abs(x - along.from.x) < ONE_PLACE);
  const marks = linesAlong('guide', [...(drawn ? [] : [along]), ...round]);
  return { along, round, marks };
}

/** The names of the lines, each beside its own, and what of them found no room. */
export function fitUpNames(body: Body, { along, round }: FitUpLines): Placed {
  const { clock } = body.cope.fitUp ?? {};
  const { leaf } = body.words;
  const name = (texts: readonly Said[], places: (text: Said) => Iterable<Candidate>): Wish => ({
    places: inTurn(texts, places),
    ...(texts[0] && { otherwise: texts[0] }),
  });
  return placeAll(body.field, [
    ...round
      .slice(0, 1)
      .map((line) => name(leaf.onLengthMark, (text) => beyondLevel(body, along, line, text))),
    // The line of a rotation mark is named where others have the spine's name.
    ...(clock ? [] : [name(leaf.lengthMarkHere, (text) => besideUpright(body, along, text))]),
  ]);
}

const CLEAR: Mm = 0.5;

/** From the cut to the base edge. */
function alongTube(body: Body, station: number): Segment {
  const { flat, cope } = body;
  const x = xAt(flat, station);
  return { from: point(x, height(flat, cope.cut(station).setback)), to: point(x, baseHeight(body)) };
}

/** Steps at which it is looked where the line leaves the waste. */
const LOOKS = 360;

/** The stretches of the line round the tube that stay on the paper when the waste is cut off; all of it where none does. */
function roundTube({ flat, cope }: Body, setback: Mm): Segment[] {
  const y = height(flat, setback);
  const segments: Segment[] = [];
  let from: Mm | undefined;
  for (let i = 0; i <= LOOKS; i++) {
    const x = (i * flat.width) / LOOKS;
    const stays = i < LOOKS && cope.cut(stationAt(flat, x)).setback <= setback;
    if (stays) from ??= x;
    else if (from !== undefined) {
      segments.push({ from: point(from, y), to: point(x, y) });
      from = undefined;
    }
  }
  return segments.length > 0 ? segments : [{ from: point(0, y), to: point(flat.width, y) }];
}

/** Places over the line round the tube, on the body's side, the nearest to the mark first. */
function beyondLevel({ flat }: Body, along: Segment, round: Segment, text: Said): Iterable<Candidate> {
  const tried = wordsBeside(
    blockOf('length-mark', text),
    along.from.x,
    ['right', 'left'],
    liftSteps(BESIDE, flat.width, 2),
  );
  return offLevel({ y: round.from.y, up: flat.bodyWay }, ALONG_ROUND, tried);
}

/** Hard by the line round the tube first, whether guide lines are in the way or not. */
const ALONG_ROUND = liftSteps(BESIDE, 2.4, 0.7).flatMap((lift) =>
  [false, true].map((overGuides) => ({ turn: 0, lifts: [lift], overGuides }) as const),
);

/** Places beside the line along the tube, written along it, from the base edge towards the cut. */
function besideUpright(body: Body, { to }: Segment, text: Said): Iterable<Candidate> {
  return offLevel(inFromBase(body), ALONG_TUBE, wordsBeside(blockOf('rotation-mark', text), to.x));
}

const ALONG_TUBE = [{ turn: 1, lifts: liftSteps(1, 60, 1.5) }] as const;

function blockOf(fact: FactName, text: Said): Block {
  return { fact, lines: [text], size: TEXT };
}
