import { across, boundsOf, upright } from '../../draw/boxes.ts';
import type { Box, Mark, Point } from '../../draw/drawing.ts';
import { point } from '../../draw/path.ts';
import { line } from '../../draw/strokes.ts';
import type { End, Header, Part } from '../../job/job.ts';
import { headerFactsOf } from '../../job/kinds.ts';
import { circleRing } from '../../space/outline.ts';
import { lineOf, type PictureLine } from './picture.ts';

/** What an end lands on, seen end on, as a small sign: a ring, a box, a plate edge on; a square cut as a stump. Several beside one another, those alike once, as the setting's name has them. */
export function headerSign(end: End, box: Box): Mark[] {
  const outlines = end.kind === 'plain' ? [STUMP] : unlike(end.parts).map(linesOf);
  const share = across(box) / outlines.length;
  return outlines.flatMap((lines, i) => {
    const bounds = boundsOf(lines.flat());
    const scale = Math.min((0.9 * share) / across(bounds), upright(box) / (upright(bounds) || 1));
    const middle = point((bounds.left + bounds.right) / 2, (bounds.bottom + bounds.top) / 2);
    const onPage = ({ x, y }: Point): Point =>
      point(
        box.left + (i + 0.5) * share + scale * (x - middle.x),
        (box.bottom + box.top) / 2 + scale * (y - middle.y),
      );
    return lines.map((each) => {
      const [first, ...others] = lineOf(each.map(onPage));
      return line('picture', first, ...others);
    });
  });
}

function unlike(parts: readonly Part[]): readonly Header[] {
  return [...new Map(parts.map(({ onto }) => [headerFactsOf(onto).setting, onto])).values()];
}

const STUMP: readonly PictureLine[] = [[point(-1, -2), point(-1, 0), point(1, 0), point(1, -2)]];

/** A plate's edge with strokes on its far side; a mitre's without. */
const EDGE: PictureLine = [point(-3, 0), point(3, 0)];
const STROKES = [-2, 0, 2].map((x): PictureLine => [point(x + 1, 0), point(x, -1)]);

function linesOf(onto: Header): readonly PictureLine[] {
  const shape = headerFactsOf(onto).shape();
  if (shape.kind === 'plane') return shape.filled ? [EDGE, ...STROKES] : [EDGE, [point(0, -1), point(0, 1)]];
  const ring = shape.kind === 'bar' ? shape.ring : circleRing(1);
  return [lineOf(ring.map(([off, side]) => point(side, off)))];
}
