import { execFile } from 'node:child_process';
import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { afterAll, beforeAll, expect, it } from 'vitest';

const run = promisify(execFile);
const ROOT = fileURLToPath(new URL('../../', import.meta.url));
// Inside the package, so that its own name leads to its own built face.
const FOLDER = `${ROOT}out/readme-example/`;

/** The first block of this language in a text. */
function block(text: string, language: string, mark: string): string {
  const found = [...text.matchAll(/```(\w+)\n([\s\S]*?)```/g)].find(
    ([, each, body]) => each === language && body?.includes(mark),
  );
  if (!found?.[2]) throw new Error(`README has no ${language} with ${mark}`);
  return found[2];
}

beforeAll(async () => {
  await mkdir(FOLDER, { recursive: true });
  const readme = await readFile(`${ROOT}README.md`, 'utf8');
  await writeFile(`${FOLDER}bunk-stay.yaml`, block(readme, 'yaml', 'bunk stay'));
  await writeFile(`${FOLDER}example.mjs`, block(readme, 'js', "from 'copeleaf'"));
});
afterAll(() => rm(FOLDER, { recursive: true, force: true }));

it("README's program makes the files that it names", async () => {
  await run(process.execPath, ['example.mjs'], { cwd: FOLDER });
  expect((await readFile(`${FOLDER}bunk-stay.pdf`)).subarray(0, 5).toString()).toBe('%PDF-');
  const dxf = await readFile(`${FOLDER}bunk-stay.dxf`, 'utf8');
  expect(dxf).toContain('AC1009');
  expect(dxf.trimEnd().endsWith('EOF')).toBe(true);
});
