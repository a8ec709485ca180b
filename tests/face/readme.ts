import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** The blocks of code of this language in README, in its order. */
export async function blocks(language: string): Promise<readonly string[]> {
  const text = await readFile(`${ROOT}README.md`, 'utf8');
  return [...text.matchAll(/```(\w+)\n([\s\S]*?)```/g)].flatMap(([, each, body = '']) =>
    each === language ? body : [],
  );
}

/** The one of them that holds this mark. */
export async function block(language: string, mark: string): Promise<string> {
  const found = (await blocks(language)).find((body) => body.includes(mark));
  if (found === undefined) throw new Error(`README has no ${language} with ${mark}`);
  return found;
}
