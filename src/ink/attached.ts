import { MOST_OF_A_JOB } from '../job/text/limits.ts';
import { inflated } from './inflated.ts';

/** Jobs that may come of one file: other things are attached to a file of somebody else's. */
const MOST_JOBS = 4;

/** To set about it costs as much as to inflate so many bytes. */
const COST = 1 << 12;

/**
 * The job that travels inside a PDF of ours: the bytes of its embedded file (ISO 32000-1, 7.11.4), deflated or as they are, of as much as
 * a job may have. Undefined where there is none. Does not throw. A PDF that another program has written anew may hold it in a way that is
 * not read here.
 */
export function attachedJob(pdf: Uint8Array): string | undefined {
  let left = MOST_JOBS * MOST_OF_A_JOB;
  for (const { stored, deflated } of embeddedFiles(pdf)) {
    const most = Math.min(left, MOST_OF_A_JOB);
    const allowance = { left: most };
    const job = textOf(() => (deflated ? inflated(stored, allowance) : stored));
    if (job !== undefined) return job;
    left -= Math.max(COST, most - allowance.left);
    if (left <= 0) break;
  }
  return undefined;
}

function textOf(content: () => Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(content());
  } catch {
    return undefined;
  }
}

interface Embedded {
  readonly stored: Uint8Array;
  readonly deflated: boolean;
}

/** In one pass: where a stream ends the next object is looked for, so that nothing is looked at twice, whatever a file pretends. */
function* embeddedFiles(pdf: Uint8Array): Generator<Embedded> {
  // One sign a byte, so that places in the text are places in the file.
  const text = new TextDecoder('latin1').decode(pdf);
  const word = /\bobj\b|\/Type\s*\/EmbeddedFile\b|\bstream\r?\n/g;
  let object = 0;
  let embedded = false;
  for (let found = word.exec(text); found; found = word.exec(text)) {
    const [sign] = found;
    if (sign === 'obj') [object, embedded] = [found.index, false];
    else if (sign.startsWith('/')) embedded = true;
    else if (embedded) {
      const entries = text.slice(object, found.index);
      const start = word.lastIndex;
      const end = endOf(text, start, entries);
      if (end < 0) return;
      yield { stored: pdf.subarray(start, end), deflated: entries.includes('/FlateDecode') };
      [word.lastIndex, object, embedded] = [end, end, false];
    }
  }
}

/** Where a stream ends: after its length where that is right, else at the word that ends it; -1 where there is none. */
function endOf(text: string, start: number, entries: string): number {
  const length = /\/Length\s+(\d+)(?!\s+\d+\s+R)\b/.exec(entries)?.[1];
  const end = start + Number(length ?? Number.NaN);
  return /^\s{0,2}endstream/.test(text.slice(end, end + 11)) ? end : text.indexOf('endstream', start);
}
