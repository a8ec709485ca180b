import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { howMany } from '../count.ts';
import { type Random, randomFrom } from '../outside/random-joints.ts';
import { wrongCombinations } from './malformed-combinations.ts';
import { goodJob, type Malformed, written } from './malformed-draw.ts';
import { wrongFlags } from './malformed-flags.ts';
import { messagesIn } from './malformed-messages.ts';
import { badPaper } from './malformed-paper.ts';
import { binary, damagedYaml, huge, slips } from './malformed-text.ts';
import { geometry, wrongKeys, wrongQuantities, wrongTypes } from './malformed-values.ts';
import { asProcess, type BytesRun, folderWith, inProcess } from './run-command.ts';

// The full count takes minutes: MALFORMED=10000 MALFORMED_PROCESSES=50 npx vitest run tests/cli/malformed.test.ts
const COUNT = howMany({ short: 20, deep: 300, asked: 'MALFORMED' });
const PROCESSES = howMany({ short: 0, deep: 2, asked: 'MALFORMED_PROCESSES' });
const SEED = Number(process.env.MALFORMED_SEED ?? 20_240_611);
const LIMIT = 1_800_000;

const KINDS: Readonly<Record<string, (random: Random) => Malformed>> = {
  'damaged YAML': damagedYaml,
  'values of the wrong type': wrongTypes,
  'wrong keys': wrongKeys,
  'wrong quantities': wrongQuantities,
  'wrong flags': wrongFlags,
  'wrong combinations': wrongCombinations,
  'bytes that are no text': binary,
  'huge input': huge,
  'geometry out of range': geometry,
  'paper and margins that will not do': badPaper,
};

function newFolder(): string {
  const folder = folderWith({ 'job.yaml': '' });
  mkdirSync(join(folder, 'there'));
  return folder;
}

/** What the folder of a run holds before and after it. */
const FILES = ['job.yaml', 'there'];

function setUp(folder: string, { args, job }: Malformed, byPipe: boolean): { args: string[]; input: string } {
  if (job !== undefined && !byPipe) writeFileSync(join(folder, 'job.yaml'), job);
  const path = byPipe ? '-' : 'job.yaml';
  const input = job === undefined || !byPipe ? '' : Buffer.from(job).toString('utf8');
  return { args: args.map((arg) => (arg === 'JOB' ? path : arg)), input };
}

const TRACE = /\n\s+at .*[:(]\d+|node:internal|\bundefined\b|\[object |the program failed/;

/** What is not as it has to be about a run with something wrong, or undefined. */
function faultIn(run: BytesRun, { messages, says }: Malformed, files: readonly string[]): string | undefined {
  if (run.code !== 2) return `exit ${run.code}`;
  if (run.bytes.length > 0) return 'something on standard output';
  if (files.join() !== FILES.join()) return `files: ${files}`;
  if (TRACE.test(run.err)) return 'a trace';
  const found = messagesIn(run.err);
  if (typeof found === 'string') return found;
  if (found.length === 0 || (messages !== undefined && found.length !== messages))
    return `${found.length} messages`;
  if (says !== undefined && !run.err.includes(says)) return `it does not say ${says}`;
  return undefined;
}

function report(kind: string, i: number, bad: Malformed, run: BytesRun, fault: string): string {
  const job = bad.job === undefined ? '' : `\n${Buffer.from(bad.job).toString('utf8').slice(0, 900)}`;
  return `${kind} ${i}, seed ${SEED}, ${bad.what}: ${fault}\n${bad.args.join(' ').slice(0, 300)}${job}\n--- ${run.err.slice(0, 900)}`;
}

/** Each case has its own seed, so that it can be drawn again without those before it. */
function draw(kind: string, make: (random: Random) => Malformed, i: number): Malformed {
  return make(randomFrom(SEED + Object.keys(KINDS).indexOf(kind) * 1_000_003 + i * 7_919));
}

function filesOf(folder: string): readonly string[] {
  return [...readdirSync(folder).sort(), ...readdirSync(join(folder, 'there'))];
}

describe(`malformed input, ${COUNT} of each kind in process and ${PROCESSES} as processes, seed ${SEED}`, () => {
  test('what is damaged is good before', { timeout: LIMIT }, async () => {
    const folder = newFolder();
    for (let i = 0; i < howMany({ short: 15, deep: 100 }); i++) {
      const random = randomFrom(SEED + i);
      const run = await inProcess(folder, ['ordinates', '--every=90', '-'], {
        input: written(goodJob(random), random),
      });
      expect([run.code, run.err]).toEqual([0, '']);
    }
  });

  for (const [kind, make] of Object.entries(KINDS)) {
    test(`${kind}: one clear message for each mistake, exit 2, nothing written`, {
      timeout: LIMIT,
    }, async () => {
      const faults: string[] = [];
      let folder = newFolder();
      for (let i = 0; i < COUNT + PROCESSES && faults.length < 5; i++) {
        const bad = draw(kind, make, i);
        const { args, input } = setUp(folder, bad, i % 2 === 0);
        const run = await (i < COUNT ? inProcess : asProcess)(folder, args, { input });
        const fault = faultIn(run, bad, filesOf(folder));
        if (fault === undefined) continue;
        faults.push(report(kind, i, bad, run, fault));
        folder = newFolder();
      }
      expect(faults).toEqual([]);
    });
  }

  test('slips of the keys: read, or refused like the rest', { timeout: LIMIT }, async () => {
    const folder = newFolder();
    const faults: string[] = [];
    let refused = 0;
    for (let i = 0; i < COUNT && faults.length < 5; i++) {
      const bad = draw('slips', slips, i);
      const { args, input } = setUp(folder, bad, true);
      const run = await inProcess(folder, args, { input });
      if (run.code !== 0) refused++;
      const fault = run.code === 0 && run.err === '' ? undefined : faultIn(run, bad, filesOf(folder));
      if (fault !== undefined) faults.push(report('slips', i, bad, run, fault));
    }
    expect(faults).toEqual([]);
    expect(refused).toBeGreaterThan(COUNT / 2);
  });
});
