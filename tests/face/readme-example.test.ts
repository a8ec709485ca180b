import { execFile } from 'node:child_process';
import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { promisify } from 'node:util';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { block, ROOT } from './readme.ts';

const run = promisify(execFile);
// Inside the package, so that its own name leads to its own built face.
const FOLDER = `${ROOT}out/readme-example/`;

beforeAll(async () => {
  await mkdir(FOLDER, { recursive: true });
  await writeFile(`${FOLDER}bunk-stay.yaml`, await block('yaml', 'bunk stay'));
  await writeFile(`${FOLDER}example.mjs`, await block('js', "from 'copeleaf'"));
});
afterAll(() => rm(FOLDER, { recursive: true, force: true }));

it("README's program makes the files that it names", async () => {
  await run(process.execPath, ['example.mjs'], { cwd: FOLDER });
  expect((await readFile(`${FOLDER}bunk-stay.pdf`)).subarray(0, 5).toString()).toBe('%PDF-');
  const dxf = await readFile(`${FOLDER}bunk-stay.dxf`, 'utf8');
  expect(dxf).toContain('AC1009');
  expect(dxf.trimEnd().endsWith('EOF')).toBe(true);
});
