import { aids } from './english/aids.ts';
import { card } from './english/card.ts';
import { checkWords } from './english/check.ts';
import { commandAnswers } from './english/command/answers.ts';
import { commandFaults } from './english/command/faults.ts';
import { command } from './english/command/help.ts';
import { ordinatesWords } from './english/command/ordinates.ts';
import { file } from './english/file.ts';
import { footprint } from './english/footprint.ts';
import { frameWords } from './english/frame.ts';
import { headers } from './english/headers.ts';
import { faults } from './english/job/faults.ts';
import { job } from './english/job/job.ts';
import { paper } from './english/job/paper.ts';
import { leaf } from './english/leaf.ts';
import { lines } from './english/lines.ts';
import { pageWords } from './english/page/page.ts';
import { picture } from './english/picture.ts';
import { quantities } from './english/quantities.ts';
import { sheets } from './english/sheets.ts';
import { lists } from './english/shop/lists.ts';
import { stepWords } from './english/shop/steps.ts';
import { ticket } from './english/shop/ticket.ts';
import { tubes } from './english/tubes.ts';
import { warnings } from './english/warnings.ts';

/** English, the first language: every phrase by its subject. */
export const ENGLISH = {
  aids,
  card,
  check: checkWords,
  command,
  commandAnswers,
  commandFaults,
  faults,
  file,
  footprint,
  frame: frameWords,
  headers,
  job,
  leaf,
  lines,
  lists,
  ordinates: ordinatesWords,
  page: pageWords,
  paper,
  picture,
  quantities,
  sheets,
  steps: stepWords,
  ticket,
  tubes,
  warnings,
};
