import { readFileSync } from 'node:fs';
import { bevelSheet } from '../../src/tiler/aids/bevel.ts';
import { girthSheet } from '../../src/tiler/aids/girth.ts';
import { rulerSheet } from '../../src/tiler/aids/ruler.ts';
import type { Raster } from '../ink/raster.ts';
import {
  aidPlot,
  drawingPlot,
  footprintPlot,
  leafPicture,
  leafPlot,
  type Plot,
  packPlot,
  sheetPlot,
} from './draw-plot.ts';
import { rootGapDrawing } from './root-gap-plot.ts';

const TUBE = '  name: bunk stay\n  od: 31.75\n  wall: 2.4\n';
const one = (end: string, tube = TUBE): string =>
  `copeleaf: 1\npaper: A4\ntube:\n${tube}  ends: { A: ${end} }\n`;
const ROUND = 'onto: { od: 38.1 }, angle: 48';

/** Three tubes, one of them a pair, and stock to cut them from. */
const LISTED = `copeleaf: 1
paper: A4
stock: [6m x 2, 2.4m]
tubes:
${TUBE.replace('  name', '  - name').replaceAll('\n  ', '\n    ')}    between: 710
    pair: true
    copies: 2
    ends: { A: { ${ROUND} }, B: { onto: { od: 44.5 }, angle: 60, clock: 90 } }
  - name: deck rung
    od: 25.4
    wall: 2
    between: 420
    copies: 4
    ends: { A: { onto: { od: 44.5 }, angle: 90 }, B: { onto: { od: 44.5 }, angle: 90 } }
  - name: winch stay
    od: 31.75
    wall: 2.4
    between: mark
    ends: { A: { onto: { od: 38.1 }, angle: 62 }, B: { onto: { od: 38.1 }, angle: 48, clock: mark } }
`;

/** One question each; what to look for stands in reference-plots/README.md. */
export const PLOTS: readonly Plot[] = [
  leafPlot('rung', sample('rung'), 'A'),
  leafPlot('brace-a', sample('brace'), 'A'),
  leafPlot('brace-b', sample('brace'), 'B'),
  leafPlot('brace-b-opposite', sample('brace'), 'B', 'opposite'),
  leafPlot('square-edge', one(`{ ${ROUND}, edge: square }`), 'A'),
  leafPlot('misses', one('{ onto: { od: 25 }, angle: 60, offset: 4 }'), 'A'),
  leafPlot('tiny', one('{ onto: { od: 12 }, angle: 60 }', '  name: pin\n  od: 10\n  wall: 1\n'), 'A'),
  leafPlot(
    'stay-16',
    one(
      '{ onto: { od: 25 }, angle: 60, offset: 2 }',
      '  name: fender stay\n  od: 16\n  wall: 1.5\n  pair: true\n',
    ),
    'A',
    'opposite',
  ),
  leafPlot('greek-and-cyrillic', one(`{ ${ROUND} }`, TUBE.replace('bunk stay', 'Στήριγμα, распорка ⌀')), 'A'),
  leafPlot('plate', one('{ onto: { plate: {} }, angle: 60 }'), 'A'),
  leafPlot('mitre', one('{ onto: { mitre: { turn: 90, pieces: 5, radius: 150 } } }'), 'A'),
  leafPlot('box', one('{ onto: { box: { wide: 50, deep: 30, wall: 3 } }, angle: 60 }'), 'A'),
  leafPlot(
    'kinks',
    one(
      '{ onto: { box: { wide: 40, deep: 40, wall: 3 } }, angle: 60, clock: 20 }',
      '  od: 48.3\n  wall: 2.6\n',
    ),
    'A',
  ),
  leafPlot('bend', one('{ onto: { bend: { od: 44.5, radius: 150, centre: 90 } }, angle: 80 }'), 'A'),
  leafPlot('union', one(`[ { ${ROUND} }, { onto: { od: 50 }, angle: 80, clock: 100 } ]`), 'A'),
  leafPlot(
    'rectangular',
    one('{ onto: { od: 76.1 }, angle: 60, clock: 30 }', '  section: { wide: 50, deep: 30 }\n  wall: 3\n'),
    'A',
  ),
  leafPlot(
    'fit-up',
    `copeleaf: 1\npaper: A4\ntube:\n${TUBE}  between: mark\n  ends: { A: { ${ROUND} }, B: { ${ROUND}, offset: 2, clock: mark } }\n`,
    'B',
  ),
  drawingPlot('root', rootGapDrawing),
  footprintPlot('footprint', one(`{ ${ROUND}, offset: 3 }`)),
  sheetPlot('sheet-a4', sample('rung'), 0),
  sheetPlot('sheet-letter', sample('brace'), 0),
  sheetPlot('tile-1', sample('mast-foot'), 0),
  sheetPlot('tile-2', sample('mast-foot'), 1),
  packPlot('frame-views', sample('kayak-rack'), 0),
  packPlot('ticket', sample('drawbar-brace').replace('A4', 'legal'), 0),
  packPlot('ticket-sideways', sample('brace'), 0),
  packPlot('lists', LISTED, 0),
  aidPlot('aid-ruler', one(`{ ${ROUND} }`), rulerSheet),
  aidPlot('aid-girth', one(`{ ${ROUND} }`), girthSheet),
  aidPlot('aid-bevel', one(`{ ${ROUND} }`), bevelSheet),
];

/** The picture at the head of README.md: one leaf and its card, crisp. */
export function readmePicture(): Promise<Raster> {
  return leafPicture(sample('brace'), 'B', 110);
}

/** The source of a job in samples/. */
export function sample(name: string): string {
  return readFileSync(new URL(`../../samples/${name}.yaml`, import.meta.url), 'utf8');
}
