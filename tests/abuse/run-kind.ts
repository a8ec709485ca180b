import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { folderWith } from '../cli/run-command.ts';
import { randomFrom } from '../outside/random-joints.ts';
import type { Kind, Outcome, Tally } from './attack.ts';
import { drawnLines, table } from './drawn-lines.ts';
import { flags } from './flags.ts';
import { jobText } from './job-texts.ts';
import { link } from './links.ts';
import { pdf } from './pdfs.ts';
import { printerFile } from './printer-files.ts';

/** By what they are called where they are asked for. */
const KINDS: Readonly<Record<string, Kind>> = {
  'job-texts': jobText,
  flags,
  links: link,
  pdfs: pdf,
  'printer-files': printerFile,
  tables: table,
  drawings: drawnLines,
};

const MOST_FAULTS = 20;

/** What is loaded and compiled when it is first asked for is not measured. */
const WARM_UP = 20;

/** A folder as a stranger's command line may look for it. */
function ground(): string {
  const folder = folderWith({ 'job.yaml': '' });
  mkdirSync(join(folder, 'there'));
  mkdirSync(join(folder, 'copeleaf'));
  writeFileSync(join(folder, 'copeleaf', 'printers.json'), '{"printers":[]}');
  return folder;
}

function filesIn(folder: string): string {
  return readdirSync(folder, { recursive: true }).sort().join(' ');
}

/** Runs so many attacks of one kind. Each has its own seed, so that it can be drawn again without those before it. */
async function tallyOf(kind: Kind, count: number, seed: number): Promise<Tally> {
  let folder = ground();
  for (let i = 0; i < WARM_UP; i++) await kind(randomFrom(i), folder).run();
  folder = ground();
  const files = filesIn(folder);
  const came: Record<string, number> = {};
  const faults: string[] = [];
  let [slowest, hungriest] = [
    { ms: 0, what: '' },
    { mib: 0, what: '' },
  ];
  const begun = performance.now();
  let peak = peakMib();
  for (let i = 0; i < count && faults.length < MOST_FAULTS; i++) {
    const attack = kind(randomFrom(seed + i * 7_919), folder);
    const start = process.cpuUsage();
    const outcome = await attack
      .run()
      .catch((error: unknown): Outcome => ({ came: 'thrown', fault: `${error}` }));
    const { user, system } = process.cpuUsage(start);
    const ms = (user + system) / 1000;
    const what = `no. ${i}: ${attack.what}`;
    came[outcome.came] = (came[outcome.came] ?? 0) + 1;
    if (outcome.fault !== undefined) faults.push(`${what}\n    ${outcome.fault}`);
    if (ms > slowest.ms) slowest = { ms, what };
    const mib = peakMib() - peak;
    peak += mib;
    if (mib > hungriest.mib) hungriest = { mib, what };
    if (filesIn(folder) === files) continue;
    faults.push(`${what}\n    left behind: ${filesIn(folder)}`);
    folder = ground();
  }
  return { came, faults, seconds: (performance.now() - begun) / 1000, slowest, peak, hungriest };
}

function peakMib(): number {
  return process.resourceUsage().maxRSS / 1024;
}

const [, , name = '', count = '0', seed = '0'] = process.argv;
const kind = KINDS[name];
if (kind === undefined) throw new Error(`no kind of attack is called ${name}`);
process.stdout.write(JSON.stringify(await tallyOf(kind, Number(count), Number(seed))));
