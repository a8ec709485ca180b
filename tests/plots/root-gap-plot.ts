import type { Drawing, Purpose, Stroke, Words } from '../../src/draw/drawing.ts';
import { point } from '../../src/draw/path.ts';
import { line } from '../../src/draw/strokes.ts';
import { asWritten } from '../../src/words/said.ts';
import type { AskedEnd } from '../outside/asked-end.ts';
import { copeUnderTest, length } from '../outside/end-under-test.ts';
import { partAt, wallOf } from '../outside/solids/implicit-headers.ts';

const DEGREE = Math.PI / 180;
const ROOT = 2;

/** A tube of 40 on a round header of 44.5 at 60 degrees. */
const END: AskedEnd = {
  tube: { kind: 'round', radius: 20 },
  wall: 2,
  parts: [{ header: { kind: 'round', radius: 22.25 }, angle: 60 * DEGREE, clock: 0, offset: 0, shift: 0 }],
};

/** How wide one turn and how high a millimetre of gap is drawn. */
const WIDE = 180;
const HIGH = 15;

/**
 * The gap from the cut's outer edge to the header, square to its surface, once round the tube: of a root gap of 2 mm
 * solid, and dashed of the line with no gap drawn back along the tube by as much as opens 2 mm at the heel.
 */
export function rootGapDrawing(): Drawing {
  const rooted = copeUnderTest(END, { root: length(ROOT) });
  const closed = copeUnderTest(END);
  const back = rooted.cut(0).setback - closed.cut(0).setback;
  const marks = [
    ...[0, 1, 2, 3].map((mm) => line('guide', at(0, mm), at(360, mm))),
    ...[0, 90, 180, 270, 360].map((phi) => line('guide', at(phi, 0), at(phi, 3))),
    curve('other-edge', (station) => gapAt(station, closed.cut(station).setback + back)),
    curve('cut', (station) => gapAt(station, rooted.cut(station).setback)),
    ...[0, 1, 2, 3].map((mm) => words(`${mm} mm`, -14, mm * HIGH - 1.2)),
    ...[0, 90, 180, 270, 360].map((phi) => words(`${phi}°`, (phi / 360) * WIDE - 2, -6)),
  ];
  return { name: 'root', box: { left: -16, bottom: -8, right: WIDE + 8, top: 3 * HIGH + 4 }, marks };
}

function gapAt(station: number, setback: number): number {
  const { at: wallAt } = wallOf(END);
  const [x, y] = wallAt(station, 0);
  return partAt('A', END.parts[0]).solid([x, y, setback]);
}

function curve(purpose: Purpose, gap: (station: number) => number): Stroke {
  const points = Array.from({ length: 361 }, (_, phi) => at(phi, gap(phi * DEGREE)));
  const [first = at(0, 0), ...others] = points;
  return line(purpose, first, ...others);
}

function at(phi: number, mm: number) {
  return point((phi / 360) * WIDE, mm * HIGH);
}

function words(text: string, x: number, y: number): Words {
  return {
    kind: 'words',
    purpose: 'words',
    fact: 'station',
    text: asWritten(text),
    size: 3.5,
    at: point(x, y),
    turn: 0,
  };
}
