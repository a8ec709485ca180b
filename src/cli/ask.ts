import { basename, extname } from 'node:path';
import { readFrame } from '../frame/read-frame.ts';
import type { EndFlags } from '../job/end-flags.ts';
import { jobFromFlags } from '../job/flags.ts';
import type { Job } from '../job/job.ts';
import { type Paper, readPaper } from '../job/paper/paper.ts';
import type { JobDefaults } from '../job/read-job.ts';
import { jobWithSeated } from '../job/ways/seated.ts';
import type { Language } from '../words/language.ts';
import { readText } from './files.ts';
import { regionalPaper } from './region.ts';
import type { Shell } from './shell.ts';
import { refuseArgument } from './trouble.ts';

/** A job and the name that its results take. */
export interface Ask {
  readonly job: Job;
  /** The job file's name without its ending; `cope` for flags and standard input. */
  readonly name: string;
}

/**
 * Reads the job from its file, from standard input for `-`, or from flags that stand in place of it; with `seated`, what
 * was measured after its first cut, as it then is.
 */
export async function readAsk(
  path: string | undefined,
  flags: EndFlags,
  shell: Shell,
  seated?: string,
): Promise<Ask> {
  const ask = path === undefined ? askFromFlags(flags, shell) : await askFromFile(path, flags, shell);
  return seated === undefined ? ask : { ...ask, job: jobWithSeated(ask.job, seated) };
}

function askFromFlags(flags: EndFlags, shell: Shell): Ask {
  const { noJob } = shell.words.commandFaults;
  if (given(flags).every(([flag]) => flag === 'paper'))
    throw refuseArgument('usage', noJob.read, noJob, shell.words);
  return { job: jobFromFlags(flags, regional(shell)), name: 'cope' };
}

async function askFromFile(path: string, flags: EndFlags, shell: Shell): Promise<Ask> {
  const { words } = shell;
  const { commandFaults: faults } = words;
  const stray = given(flags).find(([flag]) => flag !== 'paper');
  if (stray) {
    const read = `--${stray[0]} ${stray[1]}`;
    throw refuseArgument('usage', read, faults.jobAndFlags(path), words);
  }
  const source = await readText(path, shell);
  const file = path === '-' ? faults.standardInput : path;
  const job = readFrame(source, file, defaults(flags.paper, shell));
  return { job, name: path === '-' ? 'cope' : basename(path, extname(path)) };
}

function given(flags: EndFlags): readonly [string, string][] {
  return Object.entries(flags).filter(([, value]) => value !== undefined);
}

function defaults(paper: string | undefined, shell: Shell): JobDefaults {
  if (paper === undefined) return regional(shell);
  const insistOnPaper = namedPaper(paper, shell.words);
  return { words: shell.words, paper: insistOnPaper, insistOnPaper };
}

/** The system's region is looked up only where no paper is named: it takes as long as drawing a leaf. */
function regional(shell: Shell): JobDefaults {
  return {
    words: shell.words,
    get paper() {
      return regionalPaper(shell.env);
    },
  };
}

function namedPaper(text: string, words: Language): Paper {
  const reading = readPaper(text, 'mm');
  if (reading.ok) return reading.value;
  throw refuseArgument('paper', `--paper ${text}`, reading.fault(words), words);
}
