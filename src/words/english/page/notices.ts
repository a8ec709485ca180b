import type { Said } from '../../../measure/said.ts';
import { say } from '../../said.ts';

/** What was just done, what did not come off, and how the job stands. */
export const pageNotices = {
  saved: (file: Said): Said => say`${file} is saved.`,
  making: (drawn: number, of: number): Said => say`Making the PDF: ${drawn} of ${of} tubes are drawn.`,
  inNewTab: say`The PDF is in a new tab: print it at 100 %.`,
  noNewTab: say`The browser blocked the tab: save the PDF.`,
  cantPrint: (why: Said): Said => say`Can’t print this: ${why}`,
  opened: (file: Said, wrong: number): Said =>
    wrong === 0
      ? say`${file} is open.`
      : say`${file} is open, but ${counted(wrong, 'value')} in it can’t be read.`,
  cantOpen: (file: Said, why: Said): Said => say`${file} can’t be opened. ${why}`,
  lastJobAgain: say`This is your last job again.`,
  guestKept: say`This job is kept in place of your last one.`,
  damagedLink: say`The job in this link can’t be read: it was cut off or changed on its way.`,
  linkThatHeldUp: say`The job in this link stopped the page last time: it is left out now.`,
  noJobFile: say`This is not a job file: it does not begin with \`copeleaf: 1\`.`,
  noJobInPdf: say`There is no job inside this PDF.`,
  /** A mistake and what to write in its place; its line where it has one. */
  atLine: (line: number, why: Said, instead: Said): Said => say`Line ${line}: ${why}. Write ${instead}.`,
  wrong: (read: Said, why: Said, instead: Said): Said =>
    say`${read === '' ? say`` : say`${read}: `}${why}. Write ${instead}.`,
  unread: (count: number): Said => say`${counted(count, 'value')} can’t be read.`,
  unfilled: (count: number): Said => say`${counted(count, 'value')} still to fill in.`,
  drawn: (warnings: number): Said =>
    say`The leaf is drawn. ${warnings === 0 ? say`No warnings.` : say`${counted(warnings, 'warning')}.`}`,
};

function counted(count: number, what: 'value' | 'warning'): Said {
  const one = { value: say`value`, warning: say`warning` }[what];
  return count === 1 ? say`${count} ${one}` : say`${count} ${one}s`;
}
