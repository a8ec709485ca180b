import type { Said } from '../../../measure/said.ts';
import { MM_PER_INCH, type Mm, type Units } from '../../../measure/units.ts';
import { inchFraction, millimetres } from '../../../measure/write.ts';
import { asWritten, say } from '../../said.ts';

/** What follows from a job: leaf, sheets, numbers, the joint in space. */
export const pageViews = {
  name: say`Views`,
  tabs: {
    leaf: say`Leaf`,
    sheets: say`Sheets`,
    space: say`3D`,
    numbers: say`Numbers`,
    file: say`Job file`,
  },
  stale: say`Below is the last joint that could be read.`,
  /** For those who have never seen a leaf. */
  opening: say`The leaf (wrap template) appears here as soon as the joint is known. Print it at 100 %, wrap it round the tube and cut along its line: the end then fits what it meets.`,
  noSigns: (signs: Said): Said => say`The sheets’ font has no ${signs}: printed as a code instead.`,
  end: (end: 'A' | 'B'): Said => say`End ${end}`,
  cautions: {
    summary: say`Before you cut: measure the bars on the sheet, protect yourself, mind what it carries`,
    all: say`Print at 100 % (actual size), one-sided, and measure the bars. Wear eye, ear, hand and lung protection. Keep hot work away from what burns. Zinc and plating give off poisonous fume. Vent sealed tube before welding. Cut edges are sharp. What carries people or loads (cages, trailers, pressure, lifting) follows the governing rules and local code: designers are licensed for it, welders qualified. A paper template proves neither strength nor weld.`,
  },
  leaf: {
    name: say`The leaf`,
    none: say`No end is coped, so there is no leaf. The length to cut is under Numbers.`,
    ofEnd: (end: 'A' | 'B'): Said => say`End ${end}’s leaf`,
    readable: say`Large enough to read`,
    wrap: (title: Said): Said => say`Leaf: ${title}`,
    card: (title: Said): Said => say`Card: ${title}`,
  },
  sheets: {
    laying: say`Laying out the sheets`,
    one: (number: number, count: number): Said => say`Sheet ${number} of ${count}`,
    /** How many there are, and how many of them are shown where that is not all. */
    count: (count: number, most: number): Said =>
      say`${count} ${count === 1 ? say`sheet` : say`sheets`}${count > most ? say`, of which the first ${most} are shown` : say``}`,
  },
  numbers: {
    ofEnd: (end: 'A' | 'B'): Said => say`Setbacks of end ${end}`,
    caption: (end: 'A' | 'B', units: Units): Said =>
      say`End ${end}: setbacks in ${units === 'in' ? say`inches` : say`mm`} from the work point, positive towards the tube’s body`,
    station: say`station`,
    around: say`mm round`,
    outside: say`outside`,
    inside: say`inside`,
    square: say`square`,
    cutTo: say`cut to`,
    /** In degrees, else in mm round the tube. */
    place: (place: number, inDegrees: boolean): Said =>
      say`${asWritten(millimetres(place))}${inDegrees ? say`°` : say``}`,
    setback: (mm: Mm, units: Units): Said => setback(mm, units),
    /** On the line to cut to: inches as a fraction, and whether the tube meets the header there. */
    cut: (mm: Mm, units: Units, contact: boolean): Said => {
      const there = units === 'in' ? asWritten(inchFraction(mm)) : setback(mm, units);
      return contact ? there : say`${there} misses`;
    },
  },
  space: {
    none: say`This browser shows nothing in three dimensions: it has no WebGL.`,
    whole: say`Whole`,
    lookAt: (end: 'A' | 'B'): Said => say`Look at end ${end}`,
    onSpine: say`On the spine`,
    steps: {
      left: { sign: say`←`, name: say`turn left` },
      right: { sign: say`→`, name: say`turn right` },
      up: { sign: say`↑`, name: say`turn up` },
      down: { sign: say`↓`, name: say`turn down` },
      nearer: { sign: say`+`, name: say`nearer` },
      farther: { sign: say`−`, name: say`farther` },
    },
    picture: say`The joint in three dimensions. Arrow keys turn it, plus and minus come nearer.`,
    short: say`The tube is shown shorter than it is. `,
    how: say`Drag or use the arrow keys to turn it, + and − to come nearer. Orange is waste; the blue line is the spine.`,
    spine: say`spine`,
    waste: say`waste`,
    heel: say`heel`,
  },
  file: {
    label: say`The job file`,
    wrong: (why: Said): Said => say`${why} The joint shown is the last that could be read.`,
  },
};

/** Without a sign before nothing. */
function setback(mm: Mm, units: Units): Said {
  const places = units === 'in' ? 3 : 2;
  const size = Number((units === 'in' ? mm / MM_PER_INCH : mm).toFixed(places)) + 0;
  return asWritten(size.toFixed(places));
}
