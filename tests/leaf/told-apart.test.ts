import { readFileSync } from 'node:fs';
import { createSVGWindow } from 'svgdom';
import { describe, expect, it } from 'vitest';
import type { Drawing, Words } from '../../src/draw/drawing.ts';
import { widthOf } from '../../src/draw/letters.ts';
import { inkDxf } from '../../src/ink/dxf.ts';
import { inkSvg } from '../../src/ink/svg.ts';
import { drawLeaf } from '../../src/leaf/draw-leaf.ts';
import { contextOf } from '../../src/leaf/leaves-of.ts';
import { viewsOf } from '../../src/leaf/picture/side-view.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { solvePieces } from '../../src/together/pieces.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { readText } from '../frame/read-lines.ts';
import { readSample } from '../job/sample.ts';
import { boxOfWords, strokesOf } from './collisions.ts';
import { kindCasesOf, partOf, rectangle, tubeOnto } from './random-kinds.ts';
import { type Ask, type Case, casesOf, length } from './random-tubes.ts';

/** The throat is 4.4 degrees from the heel: 1.2 mm on this leaf. */
const OFFSET: Ask = {
  name: 'bunk stay',
  od: 31.75,
  wall: 2.41,
  between: 619,
  A: { header: 38.1, angle: 62 },
  B: { header: 44.45, angle: 48, offset: 2.38, clock: 35 },
};

function endB(): Case {
  const [, b] = casesOf(OFFSET);
  if (!b) throw new Error('two ends');
  return b;
}

function wordOf(drawing: Drawing, start: string): Words {
  const found = drawing.marks.find(
    (mark): mark is Words => mark.kind === 'words' && mark.text.startsWith(start),
  );
  if (!found) throw new Error(`no ${start}`);
  return found;
}

it('of heel and short point, too near for two lines to be told apart, the heel has the line and the other is set off from a tick', () => {
  const { leaf } = endB();
  const [heel, throat] = ['heel', 'short point'].map((name) => boxOfWords(wordOf(leaf.wrap, name)));
  if (!heel || !throat) throw new Error('two names');
  const lines = strokesOf(leaf.wrap, 'guide').flatMap(({ path: { start, pieces } }) =>
    pieces.map(({ to }) => ({ start, to, long: Math.hypot(to.x - start.x, to.y - start.y) })),
  );
  const upright = lines.filter(
    ({ start, to }) => start.x === to.x && start.x > heel.right && start.x < throat.left,
  );
  const [own] = upright.toSorted((a, b) => b.long - a.long);
  if (!own) throw new Error('a line at the heel');
  expect(own.start.x - heel.right).toBeLessThan(1);
  // The body lies below at end B: the line comes down as far as its name.
  expect(Math.min(own.start.y, own.to.y)).toBeLessThan(heel.bottom + 0.01);
  const others = upright.filter(({ start }) => start.x !== own.start.x);
  expect(others).toHaveLength(1);
  const [tick] = others;
  if (!tick) throw new Error('a tick');
  expect(tick.start.x - own.start.x).toBeCloseTo((4.4 / 360) * Math.PI * 31.85, 1);
  expect(tick.long).toBeLessThan(2);
  // From where the tick ends a line leads aslant, away from the heel's, to the name.
  const foot = Math.min(tick.start.y, tick.to.y);
  const [leader] = lines.filter(({ start }) => start.x === tick.start.x && start.y === foot);
  expect(leader?.to.x).toBeGreaterThan(own.start.x + 3 - 0.01);
  expect(throat.left - (leader?.to.x ?? 0)).toBeLessThan(1);
});

describe('a fold is told from an edge at a glance', () => {
  const onto = { kind: 'round', od: length(76.1) } as const;
  const [box] = kindCasesOf(tubeOnto(rectangle(50, 30, 5), [partOf(onto, 65)], 2.5));
  if (!box) throw new Error('one end');
  const { leaf } = box;

  it('by a line of its own', () => {
    expect(strokesOf(leaf.wrap, 'fold').length).toBeGreaterThanOrEqual(4);
    expect(strokesOf(leaf.wrap, 'other-edge')).toHaveLength(1);
  });

  it('in SVG: an edge has one length of dash, a fold long ones and dots', () => {
    const svg = inkSvg([leaf], createSVGWindow());
    const dashesOf = (purpose: string): number[] => {
      const group = new RegExp(`<g[^>]*class="${purpose}"[^>]*>`).exec(svg)?.[0] ?? '';
      return (/stroke-dasharray="([^"]*)"/.exec(group)?.[1] ?? '').split(' ').map(Number);
    };
    expect(dashesOf('other-edge')).toHaveLength(2);
    const fold = dashesOf('fold').filter((_, i) => i % 2 === 0);
    expect(Math.max(...fold) / Math.min(...fold)).toBeGreaterThan(5);
  });

  it('in DXF: on layers of their own, with line types of their own', () => {
    const dxf = inkDxf([leaf])
      .split(/\r?\n/)
      .map((line) => line.trim());
    const lengthsOf = (name: string): number => {
      const start = dxf.findIndex((line, i) => line === 'LTYPE' && dxf[i + 2] === name);
      const count = dxf.indexOf('73', start);
      return Number(dxf[count + 1]);
    };
    expect([lengthsOf('OTHER_EDGE'), lengthsOf('FOLD')]).toEqual([2, 6]);
    expect(dxf.filter((line) => line === 'FOLD').length).toBeGreaterThan(8);
  });
});

describe("a joint's picture", () => {
  const cards = casesOf(OFFSET).map(({ leaf }) => leaf.card);

  it('has its angle apart from the heel', () => {
    const angles = ['62°', '48°'];
    cards.forEach((card, i) => {
      const heel = boxOfWords(wordOf(card, 'heel'));
      const texts = card.marks.filter(
        (mark): mark is Words => mark.kind === 'words' && mark.text === angles[i],
      );
      const angle = texts.map(boxOfWords).sort((a, b) => b.left - a.left)[0] ?? heel;
      const aside = Math.max(heel.left - angle.right, angle.left - heel.right);
      const above = Math.max(heel.bottom - angle.top, angle.bottom - heel.top);
      expect(Math.max(aside - 1.5, above)).toBeGreaterThan(0.3);
    });
  });

  it('has its caption close under it', () => {
    for (const card of cards) {
      const caption = boxOfWords(wordOf(card, 'seen from'));
      const lines = strokesOf(card, 'picture').filter(({ path }) => path.start.y > caption.top);
      const words = card.marks.filter(
        (mark): mark is Words => mark.kind === 'words' && mark.at.y > caption.top && mark.at.x > caption.left,
      );
      const foot = Math.min(
        ...lines.flatMap(({ path }) => [path.start.y, ...path.pieces.map(({ to }) => to.y)]),
        ...words.map((word) => boxOfWords(word).bottom),
      );
      expect(foot - caption.top).toBeGreaterThan(0);
      expect(foot - caption.top).toBeLessThan(1);
    }
  });
});

it('notes that stand in one row are further apart than words of one note', () => {
  const job = readSample(readFileSync(new URL('../../samples/brace.yaml', import.meta.url), 'utf8'));
  let rows = 0;
  for (const solution of solveHands(job))
    for (const end of ['A', 'B'] as const) {
      const { wrap } = drawLeaf(solution, end, contextOf(job));
      const level = wrap.marks.filter((mark): mark is Words => mark.kind === 'words' && mark.turn === 0);
      for (const one of level)
        for (const other of level) {
          const [left, right] = [boxOfWords(one), boxOfWords(other)];
          const shared = Math.min(left.top, right.top) - Math.max(left.bottom, right.bottom);
          if (right.left < left.right || shared < 0.5 * Math.min(one.size, other.size)) continue;
          rows++;
          const space = widthOf(' ', Math.max(one.size, other.size));
          expect(right.left - left.right, `${one.text} and ${other.text}`).toBeGreaterThan(1.2 * space);
        }
    }
  expect(rows).toBeGreaterThan(8);
});

it.each(['A', 'B'] as const)(
  'the angle of end %s is never named on the far side of the tube, where it would be the other one',
  (end) => {
    let named = 0;
    for (let degrees = 30; degrees <= 75; degrees += 5) {
      const other = end === 'A' ? '' : 'A: plain, ';
      const job = readSample(
        `copeleaf: 1\ntube: { od: 42.4, between: 500, ends: { ${other}${end}: { onto: { box: { wide: 80, deep: 60, corner: 6 } }, angle: ${degrees} } } }\n`,
      );
      const [cope] = solveHands(job).map(({ ends }) => ends[end]);
      if (cope?.kind !== 'coped') throw new Error('one end');
      // As wide and as high as a ticket's panels.
      for (const [right, top] of [26, 29, 32].flatMap((wide) =>
        [21, 24.5, 28].map((high) => [wide, high] as const),
      )) {
        const marks = viewsOf(cope, end, ENGLISH)[0].draw({ left: 0, right, bottom: 0, top });
        const words = marks.filter((mark): mark is Words => mark.kind === 'words');
        const angle = words.find(({ text }) => text === `${degrees}°`);
        if (!angle) continue;
        named++;
        // The only upright lines of this picture are the tube's sides and its axis.
        const sides = marks.flatMap((mark) =>
          mark.kind === 'stroke' &&
          mark.path.pieces.length === 1 &&
          mark.path.pieces[0]?.to.x === mark.path.start.x
            ? [mark.path.start.x]
            : [],
        );
        expect(sides.length).toBeGreaterThan(2);
        expect(boxOfWords(angle).left, `${degrees}° in ${right} x ${top} mm`).toBeGreaterThan(
          Math.max(...sides) - 0.1,
        );
      }
    }
    expect(named).toBeGreaterThan(15);
  },
);

it('each stretch of the cut into a corner of three tubes is named on the leaf, within the stretch, however narrow', () => {
  const rack = readText(readFileSync(new URL('../../samples/kayak-rack.yaml', import.meta.url), 'utf8'));
  const stays = solvePieces(rack).filter(({ tube }) => tube.name === 'deck stay');
  expect(stays).toHaveLength(2);
  for (const stay of stays) {
    const cope = stay.ends.A;
    if (cope?.kind !== 'coped') throw new Error('end A is coped');
    const { wrap, beside } = drawLeaf(stay, 'A', { ...contextOf(rack), ticketed: true });
    expect(beside).toBe(false);
    // The spine's name stands 0.8 mm to the right of its line; paper goes pi times the tube and its own thickness round.
    const spine = boxOfWords(wordOf(wrap, 'spine')).left - 0.8;
    const round = Math.PI * (33.7 + 0.1);
    const named = wrap.marks.filter(
      (mark): mark is Words => mark.kind === 'words' && /^header \d$/.test(mark.text),
    );
    for (const word of named) {
      const { left, right } = boxOfWords(word);
      const station = (2 * Math.PI * ((left + right) / 2 - spine)) / round;
      expect(`header ${(cope.cut(station).part ?? -1) + 1}`, `${word.text} at ${left}`).toBe(word.text);
    }
    expect(new Set(named.map(({ text }) => `${text}`))).toEqual(
      new Set(['header 1', 'header 2', 'header 3']),
    );
  }
});
