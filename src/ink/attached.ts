import { unzlibSync } from 'fflate';

/**
 * The job that travels inside a PDF of ours: the bytes of its embedded file (ISO 32000-1, 7.11.4), deflated or as they are.
 * Undefined where there is none. Does not throw. A PDF that another program has written anew may hold it in a way that is not read here.
 */
export function attachedJob(pdf: Uint8Array): string | undefined {
  // One sign a byte, so that places in the text are places in the file.
  const text = new TextDecoder('latin1').decode(pdf);
  for (const { index } of text.matchAll(/\/Type\s*\/EmbeddedFile\b/g)) {
    const from = text.lastIndexOf('obj', index);
    const begin = /stream\r?\n/g;
    begin.lastIndex = index;
    const opened = begin.exec(text);
    if (!opened || from < 0) continue;
    const entries = text.slice(from, opened.index);
    const start = opened.index + opened[0].length;
    const length = /\/Length\s+(\d+)(?!\s+\d+\s+R)\b/.exec(entries)?.[1];
    const end = length === undefined ? text.indexOf('endstream', start) : start + Number(length);
    if (end < start) continue;
    const job = contentOf(pdf.subarray(start, end), entries.includes('/FlateDecode'));
    if (job !== undefined) return job;
  }
  return undefined;
}

function contentOf(stored: Uint8Array, deflated: boolean): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(deflated ? unzlibSync(stored) : stored);
  } catch {
    return undefined;
  }
}
