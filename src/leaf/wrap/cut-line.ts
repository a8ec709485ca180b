import type { PathPiece, Purpose, Stroke } from '../../draw/drawing.ts';
import { distance } from '../../draw/path.ts';
import type { Curve } from '../../saddle/curve.ts';
import { type Flat, placesOn } from './flat.ts';

/** A line round the end, from seam edge to seam edge. Béziers stay Béziers: the flat only scales and turns over. */
export function curveStroke(purpose: Purpose, flat: Flat, curve: Curve): Stroke {
  const pieces: PathPiece[] = [];
  let start = { x: 0, y: 0 };
  let end = start;
  for (const { stations, setbacks } of curve) {
    const [from, c1, c2, to] = placesOn(flat, stations, setbacks);
    if (pieces.length === 0) start = from;
    else if (distance(from, end) > STEP) pieces.push({ kind: 'line', to: from });
    end = to;
    pieces.push({ kind: 'cubic', c1, c2, to });
  }
  return { kind: 'stroke', purpose, path: { start, pieces, closed: false } };
}

/** Where two pieces meet further apart than this, mm, the line steps. */
const STEP = 1e-6;
