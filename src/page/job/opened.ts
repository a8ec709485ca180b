import { isMap } from 'yaml';
import { attachedJob } from '../../ink/attached.ts';
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
  if (isMap(contents) && contents.has('copeleaf')) return { ok: true, text };
  return { ok: false, why: notices.noJobFile };
}

/** Reads a job file, or a PDF that was printed from one. */
export async function openFile(file: Blob, words: Language): Promise<Opened> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const isPdf = new TextDecoder('latin1').decode(bytes.subarray(0, 1024)).includes('%PDF-');
  if (!isPdf) return takeJob(new TextDecoder().decode(bytes), words);
  const job = attachedJob(bytes);
  return job === undefined ? { ok: false, why: words.page.notices.noJobInPdf } : takeJob(job, words);
}
