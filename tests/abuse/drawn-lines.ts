import { frameOfLines } from '../../src/frame/lines/frame-of-lines.ts';
import { readFrame } from '../../src/frame/read-frame.ts';
import { type Complaint, Refusal } from '../../src/job/text/complaint.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { pick, whole } from '../cli/malformed-draw.ts';
import { drawing, flatIn, lineIn, polylineIn } from '../frame/drawing.ts';
import type { Place } from '../frame/lines.ts';
import type { Random } from '../outside/random-joints.ts';
import type { Attack, Outcome } from './attack.ts';
import { damaged } from './damage.ts';

/** Tables of lines: as a spreadsheet writes them, and with bytes anywhere. What becomes a frame is read as one. */
export function table(random: Random): Attack {
  const sign = pick(random, [',', ';', '\t']);
  return lines('csv', tableOf(random, sign), random);
}

/** Drawings of lines: as a program for drawing writes them, and with bytes anywhere. */
export function drawnLines(random: Random): Attack {
  return lines('dxf', drawingOf(random), random);
}

function lines(format: 'csv' | 'dxf', written: string, random: Random): Attack {
  const good = random() < 0.2;
  const text = good ? written : damaged(Buffer.from(written), random).toString('utf8');
  const ask = {
    file: `lines.${format}`,
    format,
    words: ENGLISH,
    units: good ? ('mm' as const) : pick(random, ['mm', 'in', 'm', undefined] as const),
    isUp: pick(random, ['y', 'z'] as const),
    keepPieces: random() < 0.5,
    od: '30mm',
    wall: '2mm',
  };
  return {
    what: `${text.length} signs of ${format}`,
    async run() {
      try {
        return read(frameOfLines(text, ask).text);
      } catch (error) {
        return refused(error, good ? 'good lines are refused' : undefined);
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

function drawingOf(random: Random): string {
  const place = (): Place => [
    whole(random, -20, 20) * 100,
    whole(random, -20, 20) * 100,
    whole(random, -20, 20) * 100,
  ];
  const entities = Array.from({ length: whole(random, 1, 15) }, (_, i) => {
    const from = place();
    const to: Place = [from[0] + 100 + i, from[1], from[2]];
    const [a, b]: readonly [number, number][] = [
      [from[0], from[1]],
      [to[0], to[1] + 300],
    ];
    return pick(random, [
      lineIn(pick(random, ['0', 'rails', 'rack 33.7 x 2.6']), from, to),
      a && b
        ? flatIn([a, b, [b[0] + 500, b[1]]], { closed: random() < 0.3, elevation: whole(random, 0, 3) * 100 })
        : '',
      polylineIn([from, to, [to[0], to[1], to[2] + 200]], pick(random, [8, 9])),
    ]);
  });
  return drawing(entities);
}
