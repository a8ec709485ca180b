import type { Said } from '../../../measure/said.ts';
import type { Mm, Radians } from '../../../measure/units.ts';
import { inchFraction } from '../../../measure/write.ts';
import { asWritten, joined, say } from '../../said.ts';
import { quantities } from '../quantities.ts';

const { mm } = quantities;

/** What a value is called, and one that may be written there, by the unit of numbers without one. */
type Field = {
  readonly label: Said;
  readonly example: { readonly mm: Said; readonly in: Said };
};

/** What is asked for in the page's form, and how it may have been measured. */
export const pageMeasures = {
  fields: {
    tubeSize: field(say`size`),
    headerSize: field(say`size of the header`),
    diameter: length(say`outside diameter`, say`38.1`, say`1-1/2`),
    girth: length(say`girth`, say`120`, say`4-3/4`),
    tape: field(say`tape’s thickness`, say`0`),
    pipe: field(say`pipe size`, say`NPS 1-1/2 sch 40`),
    wall: length(say`wall`, say`2.4`, say`.095`),
    wide: length(say`width`, say`50`, say`2`),
    deep: length(say`depth`, say`30`, say`1`),
    corner: field(say`corner radius`, say`by default`),
    boxWall: length(say`wall of the box`, say`4`, say`.125`),
    roll: field(say`rotation on its axis`, say`0`),
    turn: field(say`change of direction`, say`90`),
    pieces: field(say`number of pieces`, say`2`),
    radius: length(say`centre line radius`, say`150`, say`6`),
    centre: field(say`centre of the bend at`, say`0`),
    angle: field(say`angle`, say`60`),
    notch: length(say`lengths to the cut edge`, say`248.5, 251, 263.5, ...`, say`9-3/4, 9-7/8, 10-3/8, ...`),
    lean: field(say`lean from square`, say`30`),
    rise: length(say`rise`, say`175`, say`7`),
    run: length(say`run along the header`, say`300`, say`12`),
    alongTube: length(say`along the tube`, say`200`, say`8`),
    alongHeader: length(say`along the header`, say`200`, say`8`),
    betweenMarks: length(say`between the marks`, say`208`, say`8-5/16`),
    acute: field(say`acute angle`, say`62`),
    readAt: field(say`read at`),
    clock: field(say`clocking`, say`0`),
    arc: length(say`round the tube from the spine`, say`9.7`, say`3/8`),
    offset: field(say`offset`, say`0`),
    shift: field(say`shift along the tube`, say`0`),
    length: field(say`length`),
    workPoints: length(say`between work points`, say`600`, say`24`),
    faces: length(say`header to header`, say`560`, say`22`),
    straightedge: length(say`along the outside`, say`560`, say`22`),
    station: field(say`at station`, say`90`),
    overall: length(say`overall`, say`620`, say`24-1/2`),
    seated: length(say`edge A to the mark`, say`587`, say`23-1/8`),
    seam: field(say`seam at`, say`automatic`),
    edge: field(say`edge`),
    land: field(say`land`, say`none`),
    from: field(say`cut square from`),
    root: field(say`root gap`, say`0`),
    to: field(say`cut to`),
    allowance: length(say`allowance`, say`10`, say`3/8`),
    name: field(say`name`, say`bunk stay`),
    copies: field(say`quantity`, say`1`),
    note: field(say`note on its ticket`, say`drill 8 mm for the pin`),
    title: field(say`title`, say`sea kayak trailer`),
    paper: field(say`paper`, say`A4`),
    margin: length(say`margin`, say`10`, say`3/8`),
    marginLeft: length(say`margin left`, say`10`, say`3/8`),
    marginRight: length(say`margin right`, say`10`, say`3/8`),
    marginTop: length(say`margin top`, say`10`, say`3/8`),
    marginBottom: length(say`margin bottom`, say`17`, say`11/16`),
    paperThickness: length(say`paper thickness`, say`0.1`, say`.004`),
    stock: length(say`stock length`, say`6000 x 3`, say`240 x 3`),
    kerf: length(say`kerf`, say`3`, say`1/8`),
  },
  /** How a value was measured. */
  ways: {
    number: say`as a number`,
    diameter: say`outside diameter`,
    girth: say`girth, by a tape`,
    pipe: say`pipe, by its name`,
    angle: say`angle to the header`,
    notch: say`lengths to a cut edge`,
    lean: say`lean off square`,
    riseAndRun: say`rise and run`,
    tapeLengths: say`three tape lengths`,
    acute: say`acute angle`,
    clock: say`clocking of the heel`,
    arc: say`arc from the spine`,
    workPoints: say`between work points`,
    faces: say`between the faces`,
    straightedge: say`along a straightedge`,
    overall: say`overall length`,
    seated: say`from the seated end A`,
    marked: say`marked at the frame`,
    several: say`in several ways, compared`,
  },
  /** What a value is chosen from. */
  choices: {
    '': say`by default`,
    bevel: say`bevel`,
    square: say`square`,
    outside: say`outside`,
    inside: say`inside`,
    flat: say`the box's flat`,
    heel: say`heel`,
    toe: say`toe`,
  },
  /** A value by its key, where it is spoken of away from its field. */
  keys: {
    copeleaf: say`version`,
    units: say`numbers without a unit`,
    job: say`title`,
    tube: say`tube`,
    tubes: say`tubes`,
    pair: say`opposite hand`,
    copies: say`quantity`,
    stock: say`stock`,
    kerf: say`kerf`,
    paper: say`paper`,
    margin: say`margin`,
    'paper-thickness': say`paper thickness`,
    name: say`name`,
    od: say`size`,
    pipe: say`pipe`,
    section: say`section`,
    wall: say`wall`,
    between: say`length`,
    edge: say`edge`,
    land: say`land`,
    from: say`cut square from`,
    root: say`root gap`,
    to: say`cut to`,
    allowance: say`allowance`,
    note: say`note`,
    ends: say`ends`,
    A: say`end A`,
    B: say`end B`,
    onto: say`header`,
    angle: say`angle`,
    notch: say`lengths to a cut edge`,
    clock: say`clocking`,
    offset: say`offset`,
    seam: say`seam`,
    shift: say`shift`,
    plate: say`plate`,
    mitre: say`mitre`,
    box: say`box`,
    bend: say`bend`,
    wide: say`width`,
    deep: say`depth`,
    corner: say`corner radius`,
    turn: say`change of direction`,
    pieces: say`number of pieces`,
    radius: say`centre line radius`,
    roll: say`rotation on its axis`,
    centre: say`centre of the bend`,
    left: say`left`,
    right: say`right`,
    top: say`top`,
    bottom: say`bottom`,
    girth: say`girth`,
    tape: say`tape’s thickness`,
    'off-square': say`lean from square`,
    rise: say`rise`,
    run: say`run`,
    triangle: say`tape lengths`,
    acute: say`acute angle`,
    'read-at': say`read at`,
    arc: say`arc from the spine`,
    faces: say`header to header`,
    straightedge: say`along the outside`,
    at: say`station`,
    overall: say`overall`,
    seated: say`edge A to the mark`,
    frame: say`frame`,
  },
  /** A value, as it is written in its field. */
  setting: (key: Said, value: Said): Said => say`${value} as the ${key}`,
  /** Where a value stands, from the outside in. */
  place: (steps: readonly Said[]): Said => joined(steps, ', '),
  /** One of a list, counted from 1, by what the list holds. */
  items: {
    tube: (number: number): Said => say`tube ${number}`,
    header: (number: number): Said => say`header ${number}`,
    side: (number: number): Said => say`side ${number}`,
    stock: (number: number): Said => say`length ${number}`,
    reading: (number: number): Said => say`reading ${number}`,
  },
  /** In what a number without a unit is, in its field. */
  units: { mm: say`mm`, in: say`in`, deg: say`°` },
  /** What was understood of a value, beside its field. */
  echo: {
    mm,
    angle: (angle: Radians): Said => quantities.angle(angle),
    inBoth: (length: Mm): Said => {
      const inches = inchFraction(length);
      const close = inches.startsWith('~');
      return say`${mm(length)} ${close ? say`≈` : say`=`} ${asWritten(close ? inches.slice(1) : inches)} in`;
    },
    pipe: (od: Mm, wall: Mm | undefined): Said =>
      wall === undefined ? mm(od) : say`${mm(od)}, wall ${mm(wall)}`,
  },
};

function field(label: Said, example: Said = say``): Field {
  return length(label, example, example);
}

function length(label: Said, metric: Said, inches: Said): Field {
  return { label, example: { mm: metric, in: inches } };
}
