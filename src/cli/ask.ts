import { basename, extname } from 'node:path';
import { type EndFlags, jobFromFlags } from '../job/flags.ts';
import type { Job } from '../job/job.ts';
import { type Paper, readPaper } from '../job/paper/paper.ts';
import { type JobDefaults, readJob } from '../job/read-job.ts';
import type { Language } from '../words/language.ts';
import { readText } from './files.ts';
import { regionalPaper } from './region.ts';
import type { Shell } from './shell.ts';
import { objectTo, refuse } from './trouble.ts';

/** A job and the name that its results take. */
export interface Ask {
  readonly job: Job;
  /** The job file's name without its ending; `cope` for flags and standard input. */
  readonly name: string;
}

/** Reads the job from its file, from standard input for `-`, or from flags that stand in place of it. */
export async function readAsk(path: string | undefined, flags: EndFlags, shell: Shell): Promise<Ask> {
  const given = Object.entries(flags).filter(([, value]) => value !== undefined);
  if (path === undefined) {
    if (given.every(([flag]) => flag === 'paper')) {
      const instead = 'the path of a job file, or flags such as --od 38.1 --onto 44.5 --angle 60';
      throw refuse(
        'usage',
        'command line',
        'neither a job nor flags',
        'there is nothing to work on',
        instead,
      );
    }
    return { job: jobFromFlags(flags, regional(shell)), name: 'cope' };
  }
  const stray = given.find(([flag]) => flag !== 'paper');
  if (stray) {
    const why = `${path} is a job already, and a job file says what its ends are`;
    throw refuse('usage', 'command line', `--${stray[0]} ${stray[1]}`, why, 'either the job or the flags');
  }
  const source = await readText(path, shell);
  const file = path === '-' ? 'standard input' : path;
  const job = readJob(source, file, defaults(flags.paper, shell));
  return { job, name: path === '-' ? 'cope' : basename(path, extname(path)) };
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
  throw objectTo('paper', 'command line', `--paper ${text}`, reading.fault(words));
}
