import type { Mm } from '../../measure/units.ts';
import { dot, unitOf, type Vector, wayTo } from '../../space/vector.ts';
import type { Language } from '../../words/language.ts';
import { IN_LINE, USUAL_SNAP } from '../nearness.ts';
import type { JoinedLines, LineTube } from './joined-ends.ts';
import { onceEach, safeName, yamlWord } from './line-names.ts';
import { writtenLength } from './written-length.ts';

/** A tube and its end at a point. */
type MeetingEnd = readonly [LineTube, 'A' | 'B'];

export interface FrameTextAsk {
  readonly unit: 'mm' | 'in';
  readonly snap: Mm;
  /** The file that the lines were read from. */
  readonly file: string;
  readonly words: Language;
}

/** A frame's file: its points, each named by the tube that first ends there, and its tubes. */
export function frameText(joined: JoinedLines, ask: FrameTextAsk): string {
  const { unit, words } = ask;
  const names = barNames(joined.bars, ask);
  const meeting = new Map<number, MeetingEnd[]>();
  for (const bar of joined.bars) {
    for (const [i, point] of bar.ends.entries()) {
      meeting.set(point, [...(meeting.get(point) ?? []), [bar, i === 0 ? 'A' : 'B']]);
    }
  }
  const once = onceEach();
  const nameOf = (bar: LineTube): string => names.get(bar) ?? '';
  const points = [...meeting].map(([point, [first, ...others]]) => {
    const lying = joined.points.get(point);
    const [bar, end] = first ?? [undefined, 'A'];
    const own = bar ? nameOf(bar) : '';
    const host = lying?.on && nameOf(lying.on.bar);
    const name = once(host === undefined ? `${own} ${end}` : shortened(own, host));
    const place = lying?.place.map((mm) => writtenLength(mm, unit).text).join(', ') ?? '';
    const value =
      lying?.on && host !== undefined
        ? `{ on: ${yamlWord(host)}, at: ${writtenLength(lying.on.at, unit).text} }`
        : `[${place}]`;
    const also = others.map(([each, its]) => `${nameOf(each)} ${its}`).join(', ');
    return { point, name, line: `    ${yamlWord(name)}: ${value}${also === '' ? '' : `  # ${also}`}` };
  });
  const named = new Map(points.map(({ point, name }) => [point, name]));
  const tubes = joined.bars.map((bar) => {
    const along = bar.ends.map((point) => yamlWord(named.get(point) ?? '')).join(', ');
    const { size } = bar.pieces[0];
    const ends = bar.ends.flatMap((point, i) => {
      const host = facing(bar, point, meeting.get(point) ?? [], joined) && joined.points.get(point)?.on?.bar;
      return host ? [`${i === 0 ? 'A' : 'B'}: { onto: [${yamlWord(nameOf(host))}] }`] : [];
    });
    const keys = [size, ...(ends.length > 0 ? [`ends: { ${ends.join(', ')} }`] : [])].filter(
      (key) => key !== '',
    );
    return `    - { ${[`name: ${yamlWord(nameOf(bar))}`, `along: [${along}]`, ...keys].join(', ')} }`;
  });
  const snap = writtenLength(ask.snap, unit);
  return [
    ...words.lines.head(safeName(ask.file), joined.bars.length).map((line) => `# ${line}`),
    'copeleaf: 1',
    `units: ${unit}`,
    'frame:',
    ...(ask.snap === USUAL_SNAP ? [] : [`  snap: ${snap.text}`]),
    '  points:',
    ...points.map(({ line }) => line),
    '  tubes:',
    ...tubes,
    '',
  ].join('\n');
}

/** Whether another of a tube's size goes on in line at a point: on a tube that runs through it these would be taken for one splice. */
function facing(
  bar: LineTube,
  point: number,
  meeting: readonly MeetingEnd[],
  { points }: JoinedLines,
): boolean {
  const body = ({ ends: [a, b] }: LineTube): Vector | undefined => {
    const [from, to] = [points.get(point), points.get(a === point ? b : a)];
    return from && to && unitOf(wayTo(from.place, to.place));
  };
  const own = body(bar);
  return meeting.some(([other]) => {
    const its = other.pieces[0].size === bar.pieces[0].size ? body(other) : undefined;
    return own !== undefined && its !== undefined && dot(own, its) <= -IN_LINE;
  });
}

/** A name for each tube: its own or, of one without, by its place. */
function barNames(bars: readonly LineTube[], { words }: FrameTextAsk): ReadonlyMap<LineTube, string> {
  const once = onceEach();
  return new Map(bars.map((bar, i) => [bar, once(safeName(bar.pieces[0].name) || words.job.unnamed(i + 1))]));
}

/** The two names of a point on a tube, short enough together. */
function shortened(own: string, host: string): string {
  const [a, b] =
    own.length + host.length > 70 ? [own.slice(0, 34).trim(), host.slice(0, 34).trim()] : [own, host];
  return `${a} on ${b}`;
}
