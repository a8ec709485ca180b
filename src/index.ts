/**
 * What a program needs to go from a job's text to bytes. Lengths are mm, angles radians. `readJob` and `solveJob` throw `Refusal` with
 * every mistake and its place; nothing else here throws for what a person wrote.
 */

export type { Drawing, Mark } from './draw/drawing.ts';
export { reportTube, type TubeReport } from './fit/report.ts';
export type { Warning, WarningCode } from './fit/warnings.ts';
export { readFrame } from './frame/read-frame.ts';
export { inkDxf } from './ink/dxf.ts';
export { inkPdf, type PdfInfo } from './ink/pdf.ts';
export { inkStl } from './ink/stl.ts';
export { inkSvg, type SvgWindow } from './ink/svg.ts';
export type { EndFlags } from './job/end-flags.ts';
export { jobFromFlags } from './job/flags.ts';
export type { Job, Tube } from './job/job.ts';
export { PAPERS, type Paper, readPaper } from './job/paper/paper.ts';
export type { Printer } from './job/paper/printer.ts';
export { paperOfRegion } from './job/paper/regional-paper.ts';
export { type JobDefaults, readJob } from './job/read-job.ts';
export { type Complaint, Refusal } from './job/text/complaint.ts';
export { jobWithSeated } from './job/ways/seated.ts';
export { drawLeaf, type LeafContext } from './leaf/draw-leaf.ts';
export type { Leaf } from './leaf/leaf.ts';
export { contextOf, leavesOf } from './leaf/leaves-of.ts';
export { readAngle } from './measure/angle.ts';
export { readLength } from './measure/length.ts';
export type { Said } from './measure/said.ts';
export {
  type Angle,
  degrees,
  type Length,
  MM_PER_INCH,
  type Mm,
  type Radians,
  radians,
} from './measure/units.ts';
export { inchFraction, millimetres, writeAngle } from './measure/write.ts';
export { solveTube, type TubeSolution } from './saddle/solve.ts';
export { type CutRow, cutList } from './shop/lists/cut-list.ts';
export { orderOfWork, type Stage } from './shop/lists/order.ts';
export { type StockPlan, stockPlan } from './shop/lists/stock.ts';
export { shopPack } from './shop/pack.ts';
export { laySheets } from './tiler/lay-sheets.ts';
export type { SheetSet } from './tiler/sheets.ts';
export { solvePieces as solveJob } from './together/pieces.ts';
export { reportJob } from './together/report-job.ts';
export { solidsOf } from './together/solids.ts';
export { ENGLISH } from './words/english.ts';
export type { Language } from './words/language.ts';
