import { readGauge } from '../measure/gauge.ts';
import { type PipeSize, readPipe } from '../measure/pipe.ts';
import type { Length } from '../measure/units.ts';
import { lengthAsWritten, millimetres } from '../measure/write.ts';
import { diameterAt } from './diameter.ts';
import type { Section } from './job.ts';
import type { Wall } from './preparation.ts';
import { type Rectangle, readRectangle } from './rectangle.ts';
import { complain, type Desk, type Spot } from './text/desk.ts';
import { type Fields, fieldsOf, textOf } from './text/fields.ts';
import { lengthAt, misread, missing } from './text/values.ts';

export interface TubeSize {
  readonly section: Section | undefined;
  readonly wall: Wall;
}

/** The tube's size, by its outside diameter or by the name of a pipe, and its wall. */
export function readSize(desk: Desk, tube: Spot, fields: Fields): TubeSize {
  const [od, named, section0] = [fields.get('od'), fields.get('pipe'), fields.get('section')];
  if (section0) return readRectangularTube(desk, fields, section0, od ?? named);
  if (od && named) {
    const why = `${desk.say.key('od')} says the size already`;
    complain(desk, named, 'size-twice', why, 'one of the two');
    return { section: undefined, wall: 'unclear' };
  }
  if (named) return readPipeTube(desk, fields, named);
  const section = od ? sectionOf(diameterAt(desk, od, 'tube')) : sizeMissing(desk, tube);
  return { section, wall: readWall(desk, fields, section) };
}

function readRectangularTube(desk: Desk, fields: Fields, spot: Spot, another: Spot | undefined): TubeSize {
  if (another) {
    complain(
      desk,
      another,
      'size-twice',
      `${desk.say.key('section')} says the size already`,
      'one of the two',
    );
    return { section: undefined, wall: 'unclear' };
  }
  const wallSpot = fields.get('wall');
  const wall = wallSpot && wallAt(desk, wallSpot);
  const within = fieldsOf(desk, spot, 'section');
  const size = within && readRectangle(desk, spot, within, wall);
  if (!size) return { section: undefined, wall: 'unclear' };
  const section: Section = { kind: 'rectangular', ...size };
  if (!wallSpot) return { section, wall: 'none' };
  return { section, wall: wall ? withinTube(desk, wallSpot, wall, narrowSide(size)) : 'unclear' };
}

function narrowSide({ wide, deep }: Rectangle): Length {
  return wide.mm < deep.mm ? wide : deep;
}

function readPipeTube(desk: Desk, fields: Fields, spot: Spot): TubeSize {
  const pipe = pipeAt(desk, spot);
  const section = sectionOf(pipe?.od);
  const wall = fields.get('wall');
  if (pipe?.wall === undefined) {
    const own = readWall(desk, fields, section);
    return { section, wall: pipe === undefined ? 'unclear' : own };
  }
  if (wall) {
    const why = `${desk.say.key('pipe')} says the wall already, ${lengthAsWritten(pipe.wall)}`;
    complain(desk, wall, 'wall-twice', why, `${desk.say.setting('pipe', pipe.od.wrote)}, or no wall`);
    return { section, wall: 'unclear' };
  }
  return { section, wall: withinTube(desk, spot, pipe.wall, pipe.od) };
}

function sectionOf(od: Length | undefined): Section | undefined {
  return od && { kind: 'round', od };
}

function sizeMissing(desk: Desk, tube: Spot): undefined {
  const instead = `its outside diameter, as in 38.1mm or 1-1/2in, or ${desk.say.setting('pipe', 'NPS 1-1/2')}`;
  return missing(desk, tube, 'od', 'the tube needs a size', instead);
}

/** A pipe by the name of its size. */
export function pipeAt(desk: Desk, spot: Spot | undefined): PipeSize | undefined {
  const text = spot && textOf(desk, spot, 'the name of a size, as in NPS 1-1/2 sch 40 or EN 48.3 x 2.6');
  if (spot === undefined || text === undefined) return undefined;
  const reading = readPipe(text, desk.bareUnit);
  return reading.ok ? reading.value : misread(desk, spot, 'pipe', reading.fault);
}

function readWall(desk: Desk, fields: Fields, section: Section | undefined): Wall {
  const spot = fields.get('wall');
  if (spot === undefined) return 'none';
  const wall = wallAt(desk, spot);
  if (wall === undefined || section?.kind !== 'round') return 'unclear';
  return withinTube(desk, spot, wall, section.od);
}

/** A wall by its thickness or its gauge. */
function wallAt(desk: Desk, spot: Spot): Length | undefined {
  const text = textOf(desk, spot, 'a length such as 2.4mm or .095in, or a gauge such as 16 BWG');
  if (text === undefined) return undefined;
  const gauge = readGauge(text, desk.bareUnit);
  if (gauge === undefined) return lengthAt(desk, spot, 'positive');
  return gauge.ok ? gauge.value : misread(desk, spot, 'gauge', gauge.fault);
}

function withinTube(desk: Desk, spot: Spot, wall: Length, od: Length): Wall {
  const radius = od.mm / 2;
  if (wall.mm < radius - 1e-9) return wall;
  const why = `the wall fills the tube: half of ${lengthAsWritten(od)} is ${millimetres(radius)} mm`;
  complain(desk, spot, 'wall', why, `a wall under ${millimetres(radius)} mm`);
  return 'unclear';
}
