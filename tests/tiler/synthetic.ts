import type { Box, Drawing, Mark } from '../../src/draw/drawing.ts';
import type { SheetAsk } from '../../src/job/job.ts';
import type { Paper } from '../../src/job/paper/paper.ts';
import type { CardedLeaf } from '../../src/leaf/leaf.ts';
import type { Length } from '../../src/measure/units.ts';
import { asWritten } from '../../src/words/said.ts';

/** Leaves with no geometry in them: a frame, a wave for the cut, a card with a line of words. */
export function leafOf(
  title: string,
  wrap: readonly [width: number, height: number],
  card: readonly [width: number, height: number] = [60, 40],
  keepWhole: readonly Box[] = [],
): CardedLeaf {
  return {
    title: asWritten(title),
    wrap: wrapOf(`${title}, wrap`, ...wrap),
    card: cardOf(`${title}, card`, ...card),
    beside: false,
    numbers: title,
    keepWhole,
  };
}

function wrapOf(name: string, width: number, height: number): Drawing {
  // The origin lies inside, as it does where the spine is zero.
  const box = { left: -width / 3, bottom: -height / 4, right: (2 * width) / 3, top: (3 * height) / 4 };
  const wave = Array.from({ length: 73 }, (_, step) => ({
    x: box.left + (width * step) / 72,
    y: box.bottom + height * (0.35 - 0.3 * Math.cos((step / 72) * 2 * Math.PI)),
  }));
  const [start, ...rest] = wave;
  if (start === undefined) throw new Error('no wave');
  const cut: Mark = {
    kind: 'stroke',
    purpose: 'cut',
    path: { start, pieces: rest.map((to) => ({ kind: 'line', to })), closed: false },
  };
  return { name, box, marks: [frame(box), cut] };
}

function cardOf(name: string, width: number, height: number): Drawing {
  const box = { left: 0, bottom: 0, right: width, top: height };
  const words: Mark = {
    kind: 'words',
    purpose: 'words',
    text: asWritten('card'),
    fact: 'name',
    size: 3,
    at: { x: 2, y: height - 4 },
    turn: 0,
  };
  return { name, box, marks: [frame(box), words] };
}

function frame({ left, bottom, right, top }: Box): Mark {
  const corners = [
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ];
  return {
    kind: 'stroke',
    purpose: 'outline',
    path: {
      start: { x: left, y: bottom },
      pieces: corners.map((to) => ({ kind: 'line', to })),
      closed: true,
    },
  };
}

export function ask(paper: Paper, margins = { left: 10, right: 10, top: 10, bottom: 17 }): SheetAsk {
  return {
    paper,
    margins: {
      left: mm(margins.left),
      right: mm(margins.right),
      top: mm(margins.top),
      bottom: mm(margins.bottom),
    },
    paperThickness: mm(0.1),
  };
}

function mm(value: number): Length {
  return { mm: value, wrote: `${value} mm`, unit: 'mm' };
}
