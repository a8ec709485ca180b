import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pick, whole } from '../cli/malformed-draw.ts';
import { inProcess } from '../cli/run-command.ts';
import type { Random } from '../outside/random-joints.ts';
import type { Attack, Outcome } from './attack.ts';
import { damaged } from './damage.ts';
import { outcomeOf } from './told.ts';

const FLAGS = ['--od', '30', '--onto', '40', '--angle', '70', '--out', '-'];

/** The file of saved printers: as it is written, and damaged in any way, under each command that reads it. */
export function printerFile(random: Random, folder: string): Attack {
  const settings = join(folder, 'copeleaf');
  const file = join(settings, 'printers.json');
  const whole = random() < 0.2;
  const text = whole ? Buffer.from(saved(random)) : wrong(random);
  const args = command(random);
  return {
    what: `${args.slice(0, 2).join(' ')} on ${JSON.stringify(text.toString('utf8').slice(0, 80))}`,
    async run() {
      mkdirSync(settings, { recursive: true });
      writeFileSync(file, text);
      const run = await inProcess(folder, args, { env: { XDG_CONFIG_HOME: folder } });
      const outcome = outcomeOf(run, whole ? [0, 2] : [0, 1, 2]);
      return outcome.fault === undefined ? kept(outcome, run.code, text, readFileSync(file)) : outcome;
    },
  };
}

/** A file that is not understood stays as it is; one that was changed is understood. */
function kept(outcome: Outcome, code: number | null, before: Buffer, after: Buffer): Outcome {
  if (code !== 0 && !after.equals(before)) return { ...outcome, fault: 'refused, and written all the same' };
  if (code === 0 && !Array.isArray(JSON.parse(after.toString('utf8')).printers))
    return { ...outcome, fault: 'no printers' };
  return outcome;
}

function command(random: Random): readonly string[] {
  const name = pick(random, ['workshop', 'Büro', 'none', 'x'.repeat(40), '\u001b[31m', '__proto__']);
  return pick(random, [
    ['printer', 'list'],
    ['printer', 'add', name, '--across', '99.3mm', '--up', pick(random, ['100.1mm', '3.97in', '94mm', ''])],
    ['printer', 'remove', name],
    ['print', ...FLAGS, '--printer', name],
    ['aid', 'ruler', '--out', '-', '--printer', name],
  ]);
}

function saved(random: Random): string {
  const names = ['workshop', 'Büro', 'laser'].slice(0, whole(random, 0, 3));
  const printers = names.map((name) => ({
    name,
    across: pick(random, ['99.3mm/100mm', '3.97in/4in']),
    up: '100.1mm/100mm',
  }));
  return `${JSON.stringify({ printers }, null, 2)}\n`;
}

const OTHERS = [
  '',
  'null',
  '[]',
  '"printers"',
  '{"printers":[null]}',
  '{"printers":[{"name":"a\\u001b[31m","across":"99.3mm/100mm","up":"100mm/100mm"}]}',
  '{"printers":[{"__proto__":1}]}',
  '{"printers":[{"name":{},"across":[],"up":1e999}]}',
  `${'['.repeat(20_000)}`,
  `{"printers":[${'{"name":"a","across":"99.3mm/100mm","up":"100mm/100mm"},'.repeat(2000)}{}]}`,
  `{"printers":[{"name":"${'x'.repeat(100_000)}","across":"${'9'.repeat(50_000)}","up":"${'1/'.repeat(50_000)}"}]}`,
];

function wrong(random: Random): Buffer {
  return random() < 0.2 ? Buffer.from(pick(random, OTHERS)) : damaged(Buffer.from(saved(random)), random);
}
