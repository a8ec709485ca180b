import type { Said } from '../../measure/said.ts';
import { MM_PER_INCH, type Mm } from '../../measure/units.ts';
import { asWritten, say } from '../said.ts';
import { quantities } from './quantities.ts';

type Bars = { readonly mm: number; readonly inches: number };

/** The sheets to measure with. */
export const aids = {
  bevel: {
    title: say`Bevel card`,
    subject: say`Bevel card: reads an angle and its supplement`,
    steps: (twoArcs: boolean): readonly Said[] => [
      say`1. Cut along the heavy line; glue the card on something stiff.`,
      say`2. Hold the stock against that edge and slide it until the blade’s edge ${twoArcs ? say`reads the same on both arcs` : say`goes through the foot of the short line`}.`,
      say`3. Read the angle outside the arc, its supplement inside: one is that of the tube’s acute side, the other of its obtuse side.`,
    ],
    stock: say`the stock lies along this edge`,
  },

  girth: {
    title: say`Girth strip`,
    subject: say`Girth strip: a tube’s diameter from once round it`,
    steps: (thickness: Mm, strips: number): readonly Said[] => [
      say`1. Cut strip 1 out; at its zero edge, cut to the middle of the heavy line.`,
      say`2. Wrap it round the tube, printed side out, tight and square, with the zero edge on top.`,
      say`3. Read the diameter where the zero edge lies. This paper’s thickness, ${quantities.mm(thickness)} (${asWritten((thickness / MM_PER_INCH).toFixed(4))} in), is allowed for.`,
      ...(strips > 1 ? [FURTHER_STRIPS] : []),
    ],
    zeroEdge: say`zero edge`,
    diameter: say`diameter`,
    scales: say`mm above, in below`,
    trim: (strip: number): Said => say`✂ trim strip ${strip}`,
    layOn: (strip: number): Said => say`lay strip ${strip} on this line`,
  },

  ruler: {
    title: say`Scale sheet`,
    subject: say`Scale sheet of a printer`,
    measureThen: say`Measure, then:`,
    measuring: [
      say`1. Print this sheet at 100 % (actual size) and let it lie for some minutes.`,
      say`2. Measure one bar each way with a steel rule, the longest you can: from the middle of one end tick to the middle of the other. Write down:`,
    ],
    barIs: (axis: 'across' | 'up', { mm, inches }: Bars): Said =>
      say`${direction(axis)}, the bar of ${mm} mm or ${inches} in:`,
    /** `drawn` for a printer that is saved already. */
    save: (drawn: boolean): Said =>
      drawn
        ? say`3. This sheet is drawn for a saved printer, so its bars should read true. If they don’t, print it without --printer, measure, and save anew, as in:`
        : say`3. Save what you read, and what the bar says. Half a millimetre short across and true up would be:`,
    command: (across: Bars, up: Bars): Said =>
      say`copeleaf printer add "my printer" --across ${across.mm - 0.5}mm/${across.mm}mm --up ${up.mm}mm/${up.mm}mm`,
    print: [
      say`4. Print for it, at the same settings and on the same paper:`,
      say`copeleaf print JOB --printer "my printer"`,
    ],
    wrongSetting: say`More than 1.5 % off, or both ways alike by more than 1 %, is a wrong setting of the viewer or the printer: print again.`,
  },
};

const FURTHER_STRIPS = say`For a larger tube: cut strip 2 out, trim it on its long line, lay the trimmed edge on the line of strip 1 that the arrow points to, and tape it; the end of strip 1 lies under it. So on with the others.`;

function direction(axis: 'across' | 'up'): Said {
  return axis === 'across' ? say`across` : say`up`;
}
