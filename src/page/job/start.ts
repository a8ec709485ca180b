import type { SheetAsk } from '../../job/job.ts';
import { paperOfRegion } from '../../job/paper/regional-paper.ts';
import { DEFAULT_MARGINS, DEFAULT_THICKNESS } from '../../job/paper/sheet.ts';
import type { Language } from '../../words/language.ts';
import type { NoticeWords } from '../bar/notice.tsx';
import { emptyJob } from './edit.ts';
import { jobInFragment } from './link.ts';
import { takeJob } from './opened.ts';

/** What the page begins with. */
export interface Start {
  readonly text: string;
  /** The job of a link, while another one is kept. */
  readonly guest: boolean;
  readonly kept?: string;
  /** A new job. */
  readonly empty: string;
  /** What a scale sheet is printed on where no job says. */
  readonly sheet: SheetAsk;
  readonly notice?: NoticeWords;
}

/** A link's job, else the one that was kept, else an empty one in the units and on the paper of the region. */
export function startOf(fragment: string, kept: string | undefined, locale: string, words: Language): Start {
  const region = regionOf(locale);
  const paper = paperOfRegion(region);
  const empty = emptyJob(region === 'US' ? 'in' : 'mm', paper.name);
  const sheet: SheetAsk = { paper, margins: DEFAULT_MARGINS, paperThickness: DEFAULT_THICKNESS };
  const own = kept !== undefined && takeJob(kept, words).ok ? kept : undefined;
  const rest = { empty, sheet, ...(own !== undefined && { kept: own }) };
  const linked = jobInFragment(fragment);
  if (linked === undefined) return { text: own ?? empty, guest: false, ...rest };
  const taken = linked === 'damaged' ? undefined : takeJob(linked, words);
  if (!taken?.ok) {
    const notice = { words: words.page.notices.damagedLink, bad: true };
    return { text: own ?? empty, guest: false, ...rest, notice };
  }
  return { text: taken.text, guest: own !== undefined && own !== taken.text && own !== empty, ...rest };
}

function regionOf(locale: string): string {
  try {
    return new Intl.Locale(locale).region ?? '';
  } catch {
    return '';
  }
}
