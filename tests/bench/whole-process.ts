import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { resolve } from 'node:path';

/** What one run of a process took: its wall time in ms, and its largest resident set in MiB. */
export interface ProcessRun {
  readonly ms: number;
  readonly mib: number;
  readonly out: string;
}

/** Tells a process's own peak on its way out; loaded before the program. */
const TELL_PEAK = resolve('out/bench/tell-peak.mjs');

/** Runs a script by node as a whole process. Throws where it fails. */
export function runNode(script: string, args: readonly string[]): ProcessRun {
  writeFileSync(
    TELL_PEAK,
    "process.on('exit', () => process.stderr.write('\\npeak ' + process.resourceUsage().maxRSS / 1024 + '\\n'));\n",
  );
  const start = performance.now();
  const run = spawnSync(process.execPath, ['--import', TELL_PEAK, script, ...args], {
    encoding: 'utf8',
    maxBuffer: 2 ** 27,
  });
  const ms = performance.now() - start;
  if (run.status !== 0) throw new Error(`${script} ended with ${run.status}: ${run.stderr}`);
  const peak = /peak ([\d.]+)/.exec(run.stderr)?.[1];
  return { ms, mib: Number(peak), out: `${run.stdout}${run.stderr}` };
}

/** Builds the command from today's source, as a user would. */
export function buildCommand(): void {
  const { status, stderr } = spawnSync('npm', ['run', '-s', 'build'], { encoding: 'utf8' });
  if (status !== 0) throw new Error(`the command can not be built: ${stderr}`);
}
