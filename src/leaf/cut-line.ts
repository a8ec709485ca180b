import type { Curve } from '../saddle/curve.ts';
import type { Piece, Purpose, Stroke } from './drawing.ts';
import { type Flat, placeOn } from './flat.ts';

/** A line round the end, from seam edge to seam edge. Béziers stay Béziers: the flat only scales and turns over. */
export function curveStroke(purpose: Purpose, flat: Flat, curve: Curve): Stroke {
  const pieces: Piece[] = [];
  let start = { x: 0, y: 0 };
  let end = start;
  for (const { stations, setbacks } of curve) {
    const from = placeOn(flat, stations[0], setbacks[0]);
    if (pieces.length === 0) start = from;
    else if (Math.abs(from.y - end.y) > STEP) pieces.push({ kind: 'line', to: from });
    end = placeOn(flat, stations[3], setbacks[3]);
    const c1 = placeOn(flat, stations[1], setbacks[1]);
    const c2 = placeOn(flat, stations[2], setbacks[2]);
    pieces.push({ kind: 'cubic', c1, c2, to: end });
  }
  return { kind: 'stroke', purpose, path: { start, pieces, closed: false } };
}

/** Where two pieces meet further apart than this, mm, the line steps. */
const STEP = 1e-6;
