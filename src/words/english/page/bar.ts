import type { Said } from '../../../measure/said.ts';
import { say } from '../../said.ts';

/** The bar at the top of the page, its menu, its windows. */
export const pageBar = {
  name: say`Copeleaf`,
  /** Where scripts are switched off. */
  noScript: say`Copeleaf computes in your browser, so it needs JavaScript.`,
  undo: say`Undo`,
  redo: say`Redo`,
  print: say`Print`,
  savePdf: say`Save PDF`,
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
  guest: {
    came: say`This job came by a link. Your own last job is kept as it was.`,
    back: say`Back to my last job`,
    keep: say`Keep this one in its place`,
  },
};
