import type { SheetAsk } from '../../job/job.ts';
import { paperOfRegion } from '../../job/paper/regional-paper.ts';
import { DEFAULT_MARGINS, DEFAULT_THICKNESS } from '../../job/paper/sheet.ts';
import type { Said } from '../../measure/said.ts';
import type { Language } from '../../words/language.ts';
import { emptyJob } from './edit.ts';
import { takeJob } from './opened.ts';

/** What is told at the top of the page. */
export interface NoticeWords {
  readonly words: Said;
  /** Something did not come off. */
  readonly bad: boolean;
}

/** What the page begins with. */
export interface Start {
  readonly text: string;
  /** The job of a link: it is not kept until it is changed or that is asked for. */
  readonly linked: boolean;
  /** The same, while another one is kept. */
  readonly guest: boolean;
  readonly kept?: string;
  /** A new job. */
  readonly empty: string;
  /** What a scale sheet is printed on where no job says. */
  readonly sheet: SheetAsk;
  readonly notice?: NoticeWords;
}

/** What came with the page's address: the text of a job, or why there is none. */
export type Linked = string | 'damaged' | 'held-up' | undefined;

/** A link's job, else the one that was kept, else an empty one in the units and on the paper of the region. */
export function startOf(linked: Linked, kept: string | undefined, locale: string, words: Language): Start {
  const region = regionOf(locale);
  const paper = paperOfRegion(region);
  const empty = emptyJob(region === 'US' ? 'in' : 'mm', paper.name);
  const sheet: SheetAsk = { paper, margins: DEFAULT_MARGINS, paperThickness: DEFAULT_THICKNESS };
  const own = kept !== undefined && takeJob(kept, words).ok ? kept : undefined;
  const without = { text: own ?? empty, linked: false, guest: false };
  const rest = { empty, sheet, ...(own !== undefined && { kept: own }) };
  if (linked === undefined) return { ...without, ...rest };
  const taken = takeJob(linked, words);
  if (!taken.ok) {
    const { damagedLink, linkThatHeldUp } = words.page.notices;
    const notice = { words: linked === 'held-up' ? linkThatHeldUp : damagedLink, bad: true };
    return { ...without, ...rest, notice };
  }
  const guest = own !== undefined && own !== taken.text && own !== empty;
  return { text: taken.text, linked: true, guest, ...rest };
}

function regionOf(locale: string): string {
  try {
    return new Intl.Locale(locale).region ?? '';
  } catch {
    return '';
  }
}
