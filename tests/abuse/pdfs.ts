import { zlibSync } from 'fflate';
import { attachedJob } from '../../src/ink/attached.ts';
import { openFile } from '../../src/page/job/opened.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { goodJob, pick, whole, written } from '../cli/malformed-draw.ts';
import { copeleafBytes, inProcess } from '../cli/run-command.ts';
import { type Random, randomFrom } from '../outside/random-joints.ts';
import type { Attack, Outcome } from './attack.ts';
import { damaged } from './damage.ts';
import { outcomeOf } from './told.ts';

interface Printed {
  readonly job: string;
  readonly pdf: Buffer;
}

const OURS: Promise<readonly Printed[]> = Promise.all(
  [1, 2, 3].map(async (seed) => {
    const job = written(goodJob(randomFrom(seed)));
    const { bytes } = await copeleafBytes('.', ['print', '-', '--out', '-'], { input: job });
    return { job, pdf: bytes };
  }),
);

const BOMB = zlibSync(new Uint8Array(50_000_000).fill(0xff), { level: 9 });

/** PDFs: ours, ours damaged, and others that pretend to hold jobs. */
export function pdf(random: Random, folder: string): Attack {
  const [what, make] = pick(random, KINDS);
  return {
    what,
    async run() {
      const { bytes, job } = make(pick(random, await OURS), random);
      // The command takes none, and says what to do with it.
      if (random() < 0.1) {
        return outcomeOf(await inProcess(folder, ['check', '-'], { input: bytes.toString('latin1') }), [2]);
      }
      const opened = await openFile(new Blob([new Uint8Array(bytes)]), ENGLISH);
      if (job !== undefined && !(opened.ok && opened.text === job))
        return { came: 'lost', fault: 'its job is not found' };
      return told(opened.ok, bytes);
    },
  };
}

function told(ok: boolean, bytes: Buffer): Outcome {
  const attached = attachedJob(bytes);
  if (ok) return { came: 'a job', ...(attached === undefined && { fault: 'a job out of nothing' }) };
  return { came: attached === undefined ? 'no job' : 'no job that can be shown' };
}

interface Made {
  readonly bytes: Buffer;
  /** What has to come out of it; left out where that is open. */
  readonly job?: string;
}

type Make = (printed: Printed, random: Random) => Made;

const embedded = (bytes: Uint8Array, length = bytes.length): Buffer =>
  Buffer.concat([
    Buffer.from(`9 0 obj << /Type /EmbeddedFile /Filter /FlateDecode /Length ${length} >> stream\n`),
    bytes,
    Buffer.from('\nendstream endobj\n'),
  ]);

const HEAD = Buffer.from('%PDF-1.7\n');

const KINDS: readonly (readonly [string, Make])[] = [
  ['ours', ({ pdf: bytes, job }) => ({ bytes, job })],
  ['ours, damaged', ({ pdf: bytes }, random) => ({ bytes: damaged(bytes, random) })],
  [
    'ours, damaged where its job is',
    ({ pdf: bytes }, random) => {
      const at = bytes.indexOf('/EmbeddedFile');
      const [from, to] = [Math.max(0, at - 60), Math.min(bytes.length, at + 900)];
      const middle = damaged(bytes.subarray(from, to), random);
      return { bytes: Buffer.concat([bytes.subarray(0, from), middle, bytes.subarray(to)]) };
    },
  ],
  [
    'a deflated job',
    ({ job }, random) => {
      const bytes = zlibSync(Buffer.from(job), { level: pick(random, [0, 1, 6, 9]) });
      return { bytes: Buffer.concat([HEAD, embedded(bytes, pick(random, [bytes.length, 5, 1e15]))]), job };
    },
  ],
  [
    'a deflated job, damaged',
    ({ job }, random) => ({
      bytes: Buffer.concat([HEAD, embedded(damaged(zlibSync(Buffer.from(job)), random))]),
    }),
  ],
  [
    'false marks',
    (_, random) => {
      const mark = pick(random, [
        '/Type /EmbeddedFile ',
        '1 0 obj /Type /EmbeddedFile stream\n',
        'obj stream\n',
        'endstream ',
      ]);
      return {
        bytes: Buffer.concat([
          HEAD,
          Buffer.from(mark.repeat(whole(random, 1, random() < 0.01 ? 40_000 : 400))),
        ]),
      };
    },
  ],
  [
    'millions of bytes out of few',
    ({ job }, random) => {
      const few = random() < 0.05 ? [embedded(BOMB)] : [];
      return { bytes: Buffer.concat([HEAD, ...few, embedded(zlibSync(Buffer.from(job)))]), job };
    },
  ],
];
