import { sawLength } from '../../measure/saw-length.ts';
import type { Mm } from '../../measure/units.ts';
import { lengthAsWritten, writeLength } from '../../measure/write.ts';
import { handInWords, lengthless, rowName } from './cut-list.ts';
import type { Blank, PlannedBar, SizePlan, StockPlan } from './stock.ts';

/** A blank's name: the tube's, which piece of it, and the hand where there are two. */
export function blankName({ solution: { tube, hand }, piece }: Omit<Blank, 'length'>): string {
  return `${rowName({ tube: tube.name, piece })}${tube.pair ? `, ${handInWords(hand)}` : ''}`;
}

/** What lies in the rack, and whether each size of tube has it for itself: `In the rack: 3m x 2, 1.2m.` */
export function rackInWords({ rack, sizes }: Pick<StockPlan, 'rack' | 'sizes'>): string {
  const lengths = rack.map(
    ({ length, count }) => `${lengthAsWritten(length)}${count > 1 ? ` x ${count}` : ''}`,
  );
  const whose = sizes.length > 1 ? ', all of these for each size of tube' : '';
  return `In the rack: ${lengths.join(', ')}${whose}.`;
}

/** What is cut from one length, as it is sawn, equal blanks counted: `2 x bunk stay 629.1 mm; offcut 1: 812 mm`. */
export function barInWords({ blanks, offcut, offcutName }: PlannedBar, units: 'mm' | 'in'): string {
  const counted: { text: string; count: number }[] = [];
  let rounded = 0;
  for (const blank of blanks) {
    const sawn = sawLength(blank.length, units);
    rounded += sawn - blank.length;
    const text = `${blankName(blank)} ${shortLength(sawn, units)}`;
    const same = counted.find((each) => each.text === text);
    if (same) same.count++;
    else counted.push({ text, count: 1 });
  }
  const pieces = counted.map(({ text, count }) => (count > 1 ? `${count} x ${text}` : text)).join(', ');
  const left = offcut - rounded;
  const rest = shortLength(left, units);
  if (left <= 0) return `${pieces}; nothing left`;
  return `${pieces}; ${offcutName ? `${offcutName}: ${rest}` : `scrap: ${rest}`}`;
}

/** How the nesting stands against the least that is proved. */
export function boundInWords({ bars, total, least, left }: SizePlan, units: 'mm' | 'in'): string {
  const taken = `${bars.length} ${bars.length === 1 ? 'length' : 'lengths'}, ${shortLength(total, units)} in all`;
  if (left.length > 0) return `${taken}; not every blank has found stock.`;
  if (least === undefined) return `${taken}.`;
  const bound = shortLength(least, units);
  return total - least < 1e-6
    ? `${taken}: it can't be done with less.`
    : `${taken}; it can't be done with less than ${bound}.`;
}

/** What found no stock, and how long it is together. */
export function leftInWords({ left }: SizePlan, units: 'mm' | 'in'): string | undefined {
  if (left.length === 0) return undefined;
  const counted = new Map<string, number>();
  for (const blank of left) {
    const text = `${blankName(blank)} ${shortLength(sawLength(blank.length, units), units)}`;
    counted.set(text, (counted.get(text) ?? 0) + 1);
  }
  const names = [...counted].map(([text, count]) => (count > 1 ? `${count} x ${text}` : text)).join(', ');
  const sum = left.reduce((all, { length }) => all + length, 0);
  return `No stock for: ${names}. That takes ${shortLength(sum, units)} more, and what the cuts lose.`;
}

/** The whole plan for a terminal. */
export function stockAsText(plan: StockPlan, units: 'mm' | 'in'): string {
  const sizes = plan.sizes.flatMap((size) => [
    size.size,
    ...size.bars.map((bar) => `  ${bar.name}: ${barInWords(bar, units)}`),
    `  ${boundInWords(size, units)}`,
    ...(size.left.length > 0 ? [`  ${leftInWords(size, units)}`] : []),
  ]);
  const unknown = plan.unknown.map(
    (solution) =>
      `${blankName({ solution })}: its length is ${lengthless(solution)}, so it is cut from none of these.`,
  );
  return [
    `Stock, ${shortLength(plan.kerf.mm, units)} lost at every cut`,
    rackInWords(plan),
    '',
    ...sizes,
    ...unknown,
    '',
  ].join('\n');
}

/** The plan as JSON data, mm. */
export function stockAsData(plan: StockPlan): object {
  const named = (blank: Blank): object => ({
    tube: blank.solution.tube.name,
    hand: blank.solution.hand,
    ...(blank.piece && { piece: blank.piece }),
    length: blank.length,
  });
  return {
    kerf: plan.kerf.mm,
    sizes: plan.sizes.map(({ size, bars, left, total, least }) => ({
      size,
      bars: bars.map(({ name, length, blanks, offcut, offcutName }) => ({
        name,
        length,
        blanks: blanks.map(named),
        offcut,
        ...(offcutName && { offcutName }),
      })),
      left: left.map(named),
      total,
      ...(least !== undefined && { least }),
    })),
    unknown: plan.unknown.map(({ tube, hand }) => ({ tube: tube.name, hand })),
  };
}

function shortLength(mm: Mm, units: 'mm' | 'in'): string {
  return units === 'mm' ? `${Math.round(mm * 10) / 10} mm` : writeLength(mm, 'in');
}
