import { isMap } from 'yaml';
import { attachedJob } from '../../ink/attached.ts';
import { MOST_OF_A_JOB } from '../../job/text/limits.ts';
import { parseJobText } from '../../job/text/text.ts';
import type { Said } from '../../measure/said.ts';
import type { Language } from '../../words/language.ts';

/** The text of a job that can be shown, or why there is none. */
export type Opened =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly why: Said };

/** Takes the text of a job file if it is one that a form can show, with whatever mistakes. */
export function takeJob(text: string, words: Language): Opened {
  const { notices } = words.page;
  const parsed = parseJobText(text, 'job.yaml');
  if (!parsed.ok) {
    const { line = 1, why, instead } = parsed.fault(words);
    return { ok: false, why: notices.atLine(line, why, instead) };
  }
  const { contents } = parsed.value.document;
  if (isMap(contents) && contents.has('copeleaf')) return { ok: true, text: parsed.value.source };
  return { ok: false, why: notices.noJobFile };
}

/** Reads a job file, or a PDF that was printed from one. */
export async function openFile(file: Blob, words: Language): Promise<Opened> {
  const { notices } = words.page;
  const head = new TextDecoder('latin1').decode(await file.slice(0, 1024).arrayBuffer());
  if (head.includes('%PDF-')) {
    const job = attachedJob(new Uint8Array(await file.arrayBuffer()));
    return job === undefined ? { ok: false, why: notices.noJobInPdf } : takeJob(job, words);
  }
  const { why, instead } = words.job.text.tooLarge;
  if (file.size > MOST_OF_A_JOB) return { ok: false, why: notices.atLine(1, why, instead) };
  return takeJob(await file.text(), words);
}
