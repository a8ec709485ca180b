import { copyFileSync, existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { PLOTS, readmePicture } from './gallery.ts';
import { compareWithKept, keptFile } from './kept.ts';
import { pngOf } from './png.ts';

const SIDE_BY_SIDE = new URL('../../out/plots/', import.meta.url);

/** Renews the kept plots, and leaves before, after and difference of each that changed for a person to judge. */
async function renew(): Promise<void> {
  rmSync(SIDE_BY_SIDE, { recursive: true, force: true });
  mkdirSync(SIDE_BY_SIDE, { recursive: true });
  let changed = 0;
  for (const { name, draw } of PLOTS) {
    const fresh = await draw();
    const comparison = compareWithKept(name, fresh);
    if (comparison?.apart === 0) continue;
    changed += 1;
    const beside = (what: string): string => fileURLToPath(new URL(`${name}.${what}.png`, SIDE_BY_SIDE));
    if (existsSync(keptFile(name))) copyFileSync(keptFile(name), beside('before'));
    writeFileSync(beside('after'), pngOf(fresh));
    if (comparison?.difference) writeFileSync(beside('difference'), comparison.difference);
    writeFileSync(keptFile(name), pngOf(fresh));
  }
  writeFileSync(keptFile('readme-leaf'), pngOf(await readmePicture()));
  process.stdout.write(`${changed} of ${PLOTS.length} plots changed; see ${fileURLToPath(SIDE_BY_SIDE)}\n`);
}

await renew();
