import { frameOfLines } from '../../src/frame/lines/frame-of-lines.ts';
import { readFrame } from '../../src/frame/read-frame.ts';
import { type Complaint, Refusal } from '../../src/job/text/complaint.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { pick, whole } from '../cli/malformed-draw.ts';
import type { Random } from '../outside/random-joints.ts';
import type { Attack, Outcome } from './attack.ts';
import { damaged } from './damage.ts';

/** Tables of lines: as a spreadsheet writes them, and with bytes anywhere. What becomes a frame is read as one. */
export function table(random: Random): Attack {
  const good = random() < 0.2;
  const sign = pick(random, [',', ';', '\t']);
  const written = tableOf(random, sign);
  const text = good ? written : damaged(Buffer.from(written), random).toString('utf8');
  const keepPieces = random() < 0.5;
  const units = good ? 'mm' : pick(random, ['mm', 'in', 'm', undefined] as const);
  const isUp = pick(random, ['y', 'z'] as const);
  return {
    what: `a table of ${text.length} signs`,
    async run() {
      try {
        const frame = frameOfLines(text, {
          file: 'lines.csv',
          format: 'csv',
          words: ENGLISH,
          units,
          isUp,
          keepPieces,
          od: '30mm',
          wall: '2mm',
        });
        return read(frame.text);
      } catch (error) {
        return refused(error, good ? 'a good table is refused' : undefined);
      }
    },
  };
}

/** Whether the frame can be built is another question: it is read, or refused as one. */
function read(frame: string): Outcome {
  if (/NaN|Infinity|undefined/.test(frame)) return { came: 'a frame', fault: frame.slice(0, 300) };
  try {
    readFrame(frame, 'frame.yaml', { words: ENGLISH, paper: { name: 'A4', width: 210, height: 297 } });
    return { came: 'a frame' };
  } catch (error) {
    return { ...refused(error), came: 'a frame that is refused' };
  }
}

function refused(error: unknown, otherwise?: string): Outcome {
  if (!(error instanceof Refusal)) throw error;
  const lacking = error.complaints.find((each) => !isClear(each));
  const fault = lacking === undefined ? otherwise : JSON.stringify(lacking);
  return {
    came: 'refused',
    ...(fault !== undefined && { fault: `${fault}: ${error.message.slice(0, 200)}` }),
  };
}

function isClear({ read: quoted, why, instead }: Complaint): boolean {
  return [quoted, why, instead].every((said) => said !== '' && !/NaN|undefined|\[object|\n/.test(said));
}

function tableOf(random: Random, sign: string): string {
  const rows = Array.from({ length: whole(random, 1, 30) }, (_, i) => {
    const places = Array.from({ length: 6 }, () => whole(random, -20, 20) * 100);
    // No line without a length.
    const [x1 = 0, ...rest] = places;
    return [`rail ${i}`, x1, ...rest.slice(0, 2), x1 + 100 + i, ...rest.slice(3), '33.7', '2.6'].join(sign);
  });
  return [['name', 'x1', 'y1', 'z1', 'x2', 'y2', 'z2', 'od', 'wall'].join(sign), ...rows, ''].join('\n');
}
