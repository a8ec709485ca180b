import type { Said } from '../../measure/said.ts';
import { asWritten, joined, say } from '../said.ts';

type Neighbours = Readonly<Record<'left' | 'right' | 'above' | 'below', number | undefined>>;

/** What stands on every sheet, and on the tiles of a leaf that takes several. */
export const sheets = {
  /** What must hold before anything is cut. */
  beforeCutting: [
    say`Print at 100 % (actual size), one-sided, borderless off.`,
    say`Before cutting, measure the bars between the middles of their end ticks.`,
    say`Cut to the middle of the line.`,
  ],
  cautions: say`Guard eyes, ears, hands, lungs; hot work sets things alight; cut edges are sharp. Zinc fume is poisonous. Vent a sealed tube before welding. What carries people or loads follows its rules and is designed and welded by those licensed for it: a paper template proves no strength.`,
  /** Across and up are saved as they are on upright paper. */
  sideways: say`This sheet lies sideways: correct a printer by “copeleaf aid ruler”.`,
  /** Of a card's further pieces, and over what of a ticket goes on on another sheet. */
  more: (title: Said): Said => say`${title}, more`,
  number: (sheet: number, of: number, paper: Said): Said => say`Sheet ${sheet} of ${of} · ${paper}`,
  drawnFor: (printer: string, across: Said, up: Said): Said =>
    say`Drawn for the printer “${asWritten(printer)}”, which made ${across} across, ${up} up.`,
  /** Where there is no room for more. */
  forPrinter: (paper: Said, printer: string): Said => say`${paper} · for the printer “${asWritten(printer)}”`,
  metricBar: (mm: number, axis: 'across' | 'up'): Said => say`${mm} mm ${asWritten(axis)}`,
  inchBar: (inches: number, axis: 'across' | 'up'): Said => say`${inches} in ${asWritten(axis)}`,

  tile: {
    /** Where there is only one row or one column, that is not told. */
    place: (row: number, rows: number, column: number, columns: number): Said =>
      joined(
        [
          ...(rows > 1 ? [say`row ${row} of ${rows}`] : []),
          ...(columns > 1 ? [say`column ${column} of ${columns}`] : []),
        ],
        ', ',
      ),
    /** `arrow` points the way on the sheet. */
    toJoint: (place: Said, arrow: string): Said => say`${place} · ${asWritten(arrow)} to joint`,
    titled: (place: Said, title: Said): Said => say`${place} · ${title}`,
    neighbours: (beside: Neighbours): Said =>
      joined(
        (['left', 'right', 'above', 'below'] as const).flatMap((side) => {
          const sheet = beside[side];
          return sheet === undefined ? [] : [say`${asWritten(side)}: sheet ${sheet}`];
        }),
        ' · ',
      ),
    taping: (rows: number, columns: number, alone: boolean): Said =>
      alone ? taping(rows, columns) : say`Trim off other items first. ${taping(rows, columns)}`,
    /** Longest first. */
    trim: (sheet: number, rowFirst: boolean): readonly Said[] => {
      const first = rowFirst ? say`tape the row first, then ` : say``;
      return [
        say`✂ ${first}trim here: this edge lies on sheet ${sheet}`,
        say`✂ ${first}trim here`,
        say`✂ trim here`,
        say`✂ trim`,
      ];
    },
    /** Longest first. */
    layOn: (sheet: number): readonly Said[] => [
      say`lay sheet ${sheet}’s trimmed edge on this line`,
      say`lay sheet ${sheet} here`,
      say`sheet ${sheet}`,
    ],
  },
};

function taping(rows: number, columns: number): Said {
  if (rows === 1)
    return say`Tape from left to right: trim on the trim line, tape to the marked line, diamonds whole.`;
  if (columns === 1)
    return say`Tape from the foot up: trim on the trim line, tape to the marked line, diamonds whole.`;
  return say`Tape each row from left to right; then trim its foot and lay it on the row below, diamonds whole.`;
}
