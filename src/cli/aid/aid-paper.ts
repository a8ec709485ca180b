import type { SheetAsk } from '../../job/job.ts';
import { readPaper, tooSmall } from '../../job/paper/paper.ts';
import type { Printer } from '../../job/paper/printer.ts';
import { DEFAULT_MARGINS, DEFAULT_THICKNESS, THICKEST_PAPER } from '../../job/paper/sheet.ts';
import { type Complaint, Refusal } from '../../job/text/complaint.ts';
import { readLength } from '../../measure/length.ts';
import { type Reading, refused, taken } from '../../measure/reading.ts';
import type { Length, Mm } from '../../measure/units.ts';
import type { Wording } from '../../words/language.ts';
import { regionalPaper } from '../region.ts';
import type { Shell } from '../shell.ts';
import { refuseArgument } from '../trouble.ts';

/** What an aid is printed on, in the words of the person. */
export interface AidPaper {
  readonly paper?: string;
  readonly margin?: string;
  readonly paperThickness?: string;
}

/**
 * The sheet that the flags ask for; bare numbers are in mm. Throws `Refusal` with every flag that can't be read, or
 * where the margins leave too little of the paper.
 */
export function askForAid(
  flags: AidPaper,
  { env, words }: Pick<Shell, 'env' | 'words'>,
  printer?: Printer,
): SheetAsk {
  const wrong: Complaint[] = [];
  const given = <Value>(
    flag: string,
    text: string | undefined,
    otherwise: Value,
    read: (text: string) => Reading<Value, Wording>,
  ): Value => {
    if (text === undefined) return otherwise;
    const reading = read(text);
    if (reading.ok) return reading.value;
    wrong.push(...refuseArgument(flag, `--${flag} ${text}`, reading.fault(words), words).complaints);
    return otherwise;
  };
  const paper = given('paper', flags.paper, regionalPaper(env), (text) => readPaper(text, 'mm'));
  const margins = given('margin', flags.margin, DEFAULT_MARGINS, (text) => {
    const all = upTo(text, Number.POSITIVE_INFINITY);
    return all.ok ? taken({ left: all.value, right: all.value, top: all.value, bottom: all.value }) : all;
  });
  const paperThickness = given('paper-thickness', flags.paperThickness, DEFAULT_THICKNESS, (text) =>
    upTo(text, THICKEST_PAPER),
  );
  const [first, ...rest] = wrong;
  if (first !== undefined) throw new Refusal([first, ...rest]);
  const small = tooSmall(paper, margins, printer)?.(words);
  if (small) {
    const read = flags.margin === undefined ? `--paper ${paper.name}` : `--margin ${flags.margin}`;
    throw refuseArgument('paper-small', read, small, words);
  }
  return { paper, margins, paperThickness };
}

function upTo(text: string, most: Mm): Reading<Length, Wording> {
  const reading = readLength(text, 'mm');
  if (!reading.ok) return refused(text, ({ faults }) => faults.said(reading.fault));
  if (reading.value.mm < 0) return refused(text, ({ paper }) => paper.negative());
  if (reading.value.mm > most) return refused(text, ({ paper }) => paper.over(most));
  return reading;
}
