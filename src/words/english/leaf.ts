import type { Said } from '../../measure/said.ts';
import type { Mm, Units } from '../../measure/units.ts';
import { asWritten, joined, say } from '../said.ts';
import { quantities } from './quantities.ts';

/** How far along the spine a base edge lies from what it is measured to, mm; below nought it lies back. */
type FromBase = {
  readonly distance: Mm;
  readonly to: 'work-point' | 'length-mark' | 'square-end' | 'other-base' | 'same-base' | 'first-cut';
  /** The tube's other end. */
  readonly other: 'A' | 'B';
};

const { one, oneToATenth } = quantities;

/** The flat pattern of one end. */
export const leaf = {
  hands: { 'as-drawn': say`as drawn`, opposite: say`opposite hand`, both: say`both hands` },
  /** `bunk stay, end A, opposite hand`. */
  title: (tube: Said, end: 'A' | 'B', opposite: boolean): Said =>
    say`${tube}, end ${end}${opposite ? say`, opposite hand` : say``}`,
  letter: (end: 'A' | 'B'): Said => say`${end}`,
  /** Of a bend's one leaf. */
  forEnds: (ends: number): Said => say`for ${ends} ends`,
  toJoint: say`to joint`,
  waste: say`waste`,
  throat: say`short point`,
  longPoint: say`long point`,
  spine: say`spine 0°`,
  /** Where stations are mm round the outside. */
  spineMm: say`spine 0 mm`,
  rotationMark: say`rotation mark 0°`,
  fold: say`fold`,
  /** Of what the numbers are that a leaf or a ticket is made from; no mark on paper, for those are made on tubes. */
  mark: (mark: Said): Said => say`code ${mark}`,
  marked: (title: Said, mark: Said): Said => say`${title} (${mark})`,
  seam: (girth: Mm, units: Units): Said => say`The seam's edges meet: ${oneToATenth(girth, units)} round.`,
  /** Longest first. */
  tab: [say`tape or glue under the other edge`, say`tape under the other edge`, say`tape under`, say`tab`],
  dashes: (edge: 'bevel' | 'square'): Said =>
    edge === 'bevel' ? say`dashed: inside edge` : say`dashed: outside edge`,
  side: say`side`,
  passesBeside: (name: Said): Said => say`${name}: passes beside`,
  /** `heel 48–61°`. */
  zone: (name: Said, least: number, most: number): Said =>
    least === most ? say`${name} ${least}°` : say`${name} ${least}–${most}°`,
  zones: (zones: readonly Said[]): Said => joined(zones, ', '),
  change: (left: Said, right: Said): Said => say`${left} | ${right}`,
  fromLeftEdge: (name: Said, across: Mm): Said =>
    say`${name}: ${asWritten(across.toFixed(1))} mm from the left edge`,

  /** Its one distance, longest first. */
  fromBase: (edge: FromBase, units: Units): readonly [Said, ...Said[]] => {
    const { distance, to } = edge;
    const away = one(Math.abs(distance), units);
    if (to === 'first-cut') return [say`second cut: base edge ${away} past the first cut`];
    if (to === 'same-base')
      return [say`second cut: base edges ${distance < 0 ? say`overlap ${away}` : say`${away} apart`}`];
    const back = distance < 0 ? say` back` : say``;
    const short = say`${away}${back} to ${measuredTo(edge)}`;
    return [say`base edge: ${short}`, short];
  },

  /** Fit-up: longest first. */
  onLengthMark: [say`length mark: lay this line on it`, say`on the length mark`, say`length mark`],
  lengthMarkHere: [say`the length mark lies on this line`, say`length mark on this line`],
};

function measuredTo({ to, other }: FromBase): Said {
  const places = {
    'work-point': say`the work point`,
    'length-mark': say`the length mark`,
    'square-end': say`end ${other}, cut square`,
    'other-base': say`base edge ${other}`,
  };
  return to === 'same-base' || to === 'first-cut' ? say`` : places[to];
}
