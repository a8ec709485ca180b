import { execFile } from 'node:child_process';
import { mkdir, readdir } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const run = promisify(execFile);
const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** Prints every sample into out/ with the built command, as a person would, and names the files. */
async function demo(): Promise<void> {
  await mkdir(`${ROOT}out`, { recursive: true });
  const jobs = (await readdir(`${ROOT}samples`)).filter((file) => file.endsWith('.yaml')).sort();
  for (const job of jobs) {
    const target = `out/${job.replace(/\.yaml$/, '.pdf')}`;
    const { stderr } = await run(
      process.execPath,
      ['dist/copeleaf.js', 'print', `samples/${job}`, '--out', target],
      { cwd: ROOT },
    );
    process.stdout.write(stderr);
  }
}

await demo();
