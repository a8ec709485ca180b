import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { PLOTS, readmePicture } from './gallery.ts';
import { compareWithKept, keptFile } from './kept.ts';
import { pictureOf, pngOf, rowOf } from './png.ts';

const SIDE_BY_SIDE = new URL('../../out/plots/', import.meta.url);

/** Renews the kept plots, and leaves before, after and difference of each that changed in one picture for a person to judge. */
async function renew(): Promise<void> {
  rmSync(SIDE_BY_SIDE, { recursive: true, force: true });
  mkdirSync(SIDE_BY_SIDE, { recursive: true });
  let changed = 0;
  for (const { name, draw } of PLOTS) {
    const fresh = await draw();
    const comparison = compareWithKept(name, fresh);
    if (comparison?.apart === 0) continue;
    changed += 1;
    const panels = comparison
      ? [comparison.before, comparison.after, comparison.difference]
      : [pictureOf(fresh)];
    writeFileSync(new URL(`${name}.png`, SIDE_BY_SIDE), rowOf(panels));
    writeFileSync(keptFile(name), pngOf(fresh));
    process.stdout.write(`${name}: ${comparison ? `${comparison.apart} pixels apart` : 'new'}\n`);
  }
  writeFileSync(keptFile('readme-leaf'), pngOf(await readmePicture()));
  process.stdout.write(`${changed} of ${PLOTS.length} plots changed; see ${fileURLToPath(SIDE_BY_SIDE)}\n`);
}

await renew();
