import type { Box, Mark, Point } from '../../draw/drawing.ts';
import { SMALL, words } from '../../draw/lettering.ts';
import { widthOf } from '../../draw/letters.ts';
import { line } from '../../draw/strokes.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { EndSolution } from '../../saddle/cope.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import type { Section } from '../../space/section.ts';
import type { Language } from '../../words/language.ts';

const STEPS = 72;
const LETTERS: Mm = 2.8;
/** Room for a letter, and how far a heel's line stands out, in radii. */
const BESIDE: Mm = 3.4;
const OUT = 0.2;
/** In a smaller circle the word would lie on the line; the words under the picture say it too. */
const ROOM_FOR_WORD: Mm = 6;

/**
 * The tube seen from end A along its axis, its spine up, with a line at each end's heel: a turn to the right is one to the right in
 * it too, so that a tube and its opposite hand can't be taken for one another. Undefined where an end has no heel or its rotation is not known.
 */
export function twistPicture(
  { ends, twist, section }: TubeSolution,
  { ticket }: Language,
): ((box: Box) => Mark[]) | undefined {
  const [heelA, heelB] = [heelOf(ends.A), heelOf(ends.B)];
  if (twist === undefined || heelA === undefined || heelB === undefined) return undefined;
  const same = Math.abs(twist) < 1e-9;
  const heels = same
    ? [{ at: heelA, name: ticket.heel('A', 'B') }]
    : [
        { at: heelA, name: ticket.heel('A') },
        { at: heelB, name: ticket.heel('B') },
      ];
  return (box) => drawn(section, heels, ticket.spineUp, box);
}

interface Heel {
  readonly at: number;
  readonly name: Said;
}

function drawn(section: Section, heels: readonly Heel[], spineUp: Said, box: Box): Mark[] {
  const centre = { x: (box.left + box.right) / 2, y: (box.bottom + box.top) / 2 };
  const scale =
    (Math.min(box.right - box.left, box.top - box.bottom) / 2 - BESIDE) / ((1 + OUT) * section.reach);
  // Looking from A to B with the spine up, stations grow to the right: they are right-handed about that way.
  const onPage = (x: number, y: number): Point => ({ x: centre.x + scale * y, y: centre.y + scale * x });
  const outline = Array.from({ length: STEPS }, (_, i) => {
    const [from, to] = [i, i + 1].map((n) => section.at((n * section.turn) / STEPS));
    return line('picture', onPage(from?.x ?? 0, from?.y ?? 0), onPage(to?.x ?? 0, to?.y ?? 0));
  });
  return [
    ...outline,
    ...heels.flatMap((heel) => pointer(section, heel, onPage)),
    line('picture', onPage(0.86 * section.at(0).x, 0), onPage(section.at(0).x, 0)),
    ...(scale * section.reach > ROOM_FOR_WORD ? [spineWord(spineUp, onPage)] : []),
  ];
}

function spineWord(text: Said, onPage: (x: number, y: number) => Point): Mark {
  const at = onPage(0, 0);
  return words(text, 'picture', SMALL, { x: at.x - widthOf(text, SMALL) / 2, y: at.y - 0.7 });
}

function heelOf(end: EndSolution | undefined): number | undefined {
  return end?.kind === 'coped' ? end.heel : undefined;
}

/** A line outwards from the tube, with the end's letter beyond. */
function pointer(
  section: Section,
  { at: heel, name }: Heel,
  onPage: (x: number, y: number) => Point,
): Mark[] {
  const { x, y } = section.at(section.towards(heel));
  const near = Math.hypot(x, y);
  const out = (far: Mm): Point => onPage(far * Math.cos(heel), far * Math.sin(heel));
  const [from, to] = [out(near), out(near + OUT * section.reach)];
  const [dx, dy] = [Math.sign(Math.round((to.x - from.x) * 100)), to.y - from.y];
  const wide = widthOf(name, LETTERS);
  const aside = dx < 0 ? -wide - 0.6 : dx > 0 ? 0.6 : -wide / 2;
  const up = Math.abs(to.x - from.x) > Math.abs(dy) ? -1 : dy > 0 ? 0.8 : -2.9;
  return [line('picture', from, to), words(name, 'picture', LETTERS, { x: to.x + aside, y: to.y + up })];
}
