import type { Said } from '../../../measure/said.ts';
import type { Length } from '../../../measure/units.ts';
import { asWritten, say } from '../../said.ts';
import { quantities } from '../quantities.ts';

const { mm } = quantities;

/** The bar at the top of the page, its menu, its windows. */
export const pageBar = {
  name: say`Copeleaf`,
  /** Where scripts are switched off. */
  noScript: say`Copeleaf computes in your browser, so it needs JavaScript.`,
  units: {
    name: say`Numbers without a unit are in`,
    mm: say`mm`,
    in: say`inches`,
    /** How to go over to the other unit, and what becomes of one of the sizes in either way. */
    title: { mm: say`Go over to mm`, in: say`Go over to inches` },
    /** What has no unit of its own: how many, and the first of them. */
    bare: (count: number, first: Said): Said =>
      say`${count === 1 ? say`One size has` : say`${count} sizes have`} no unit of ${count === 1 ? say`its` : say`their`} own: ${first}${count > 3 ? say` ...` : say``}.`,
    keep: say`Keep the sizes`,
    kept: (wrote: Said, length: Length): Said =>
      say`${wrote} stays ${mm(length.mm)}, and is written ${asWritten(length.wrote)}.`,
    reread: { mm: say`Read the numbers as mm`, in: say`Read the numbers as inches` },
    becomes: (wrote: Said, { mm: size, unit }: Length): Said =>
      unit === 'mm' ? say`${wrote} becomes ${mm(size)}.` : say`${wrote} becomes ${wrote} in (${mm(size)}).`,
  },
  undo: say`Undo`,
  redo: say`Redo`,
  print: say`Print`,
  savePdf: say`Save PDF`,
  warnings: (count: number): Said => say`${count} ${count === 1 ? say`warning` : say`warnings`}`,
  close: say`Close`,
  menu: {
    name: say`Job`,
    newJob: say`New job`,
    open: say`Open a job file or PDF`,
    saveJob: say`Save job file`,
    link: say`Link to this job`,
    saveSvg: say`Save SVG`,
    saveDxf: say`Save DXF`,
    printer: say`Printer set-up`,
    licences: say`Licences`,
    footprints: say`with the headers’ footprints`,
  },
  link: {
    title: say`Link to this job`,
    carries: say`The whole job is in the link itself, after the #. Whoever opens it with the same page sees this job.`,
    label: say`link`,
    copy: say`Copy`,
    copied: say`Copied.`,
    cantCopy: say`The browser blocked copying: select the link and copy it.`,
  },
  printer: {
    title: say`Printer`,
    drawFor: say`draw sheets for`,
    none: say`a printer that prints true`,
    one: (name: Said, across: Said, up: Said): Said => say`${name}: across ${across}, up ${up}`,
    forget: (name: Said): Said => say`Forget ${name}`,
    off: say`A printer that is off`,
    measure: say`Print the scale sheet at 100 %, measure one bar each way with a steel rule, and type what you read.`,
    openSheet: say`Open the scale sheet`,
    sheet: say`Scale sheet`,
    nameOf: say`name of the printer`,
    across: say`bar across`,
    up: say`bar up`,
    examples: { name: say`workshop`, across: say`99.3mm`, up: say`100.1mm` },
    save: say`Save this printer`,
    saved: (name: Said): Said => say`${name} is saved, and sheets are now drawn for it.`,
    kept: say`Kept in this browser; no job, link or file carries it.`,
    badName: {
      why: say`a printer needs a name of up to 40 letters`,
      instead: say`a few words, such as workshop laser`,
    },
  },
  licences: {
    title: say`Licences`,
    ours: say`Copeleaf is under the MIT licence. In this page are also, each under its own:`,
  },
  guest: {
    came: say`This job came by a link. Your own last job is kept as it was.`,
    back: say`Back to my last job`,
    keep: say`Keep this one in its place`,
  },
};
