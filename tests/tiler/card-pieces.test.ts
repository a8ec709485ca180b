import { describe, expect, it } from 'vitest';
import type { Box, Drawing, Mark } from '../../src/draw/drawing.ts';
import { cardPieces } from '../../src/tiler/card-pieces.ts';
import { asWritten } from '../../src/words/said.ts';
import { boxAround, pointsOf } from './ink-boxes.ts';

const MORE = asWritten('rung, end A: more');

function fact(x: number, y: number, text = 'fact'): Mark {
  return {
    kind: 'words',
    purpose: 'words',
    text: asWritten(text),
    fact: 'sheet',
    size: 3,
    at: { x, y },
    turn: 0,
  };
}

function level(from: number, to: number, y: number): Mark {
  return {
    kind: 'stroke',
    purpose: 'outline',
    path: { start: { x: from, y }, pieces: [{ kind: 'line', to: { x: to, y } }], closed: false },
  };
}

function upright(x: number, from: number, to: number): Mark {
  const path = {
    start: { x, y: from },
    pieces: [{ kind: 'line', to: { x, y: to } }],
    closed: false,
  } as const;
  return { kind: 'stroke', purpose: 'outline', path };
}

function card(marks: readonly Mark[], box: Box): Drawing {
  return { name: 'card', box, marks };
}

/** Ten facts of one column, one every 8 mm. */
const COLUMN = card(
  Array.from({ length: 10 }, (_, i) => fact(2, 76 - 8 * i)),
  { left: 0, bottom: 0, right: 40, top: 80 },
);

describe('a card that is larger than the sheet’s room', () => {
  it('comes in pieces that hold each of its marks once, and fit', () => {
    const room = { width: 30, height: 40 };
    const pieces = cardPieces(COLUMN, MORE, room);
    expect(pieces.length).toBeGreaterThan(1);
    expect(pieces.flatMap(({ marks }) => marks).filter((mark) => COLUMN.marks.includes(mark))).toHaveLength(
      10,
    );
    for (const { box } of pieces) {
      const [wide, high] = [box.right - box.left, box.top - box.bottom];
      expect((wide <= 30 && high <= 40) || (wide <= 40 && high <= 30)).toBe(true);
    }
  });

  it('has its leaf’s name on each piece but the first, above what the piece holds and within it', () => {
    const [first, ...others] = cardPieces(COLUMN, MORE, { width: 30, height: 40 });
    expect(first?.marks.filter((mark) => !COLUMN.marks.includes(mark))).toEqual([]);
    expect(others.length).toBeGreaterThan(0);
    for (const { box, marks } of others) {
      const [label, ...strange] = marks.filter((mark) => !COLUMN.marks.includes(mark));
      if (label?.kind !== 'words') throw new Error('a piece with no name');
      expect(strange).toEqual([]);
      const tops = marks.flatMap((mark) =>
        mark.kind === 'words' && mark !== label ? [mark.at.y + mark.size * 0.7] : [],
      );
      expect(label.at.y).toBeGreaterThan(Math.max(...tops));
      expect(label.at.y).toBeLessThan(box.top);
      expect(label.at.x).toBeCloseTo(box.left, 9);
    }
  });

  // Two columns, which a rule right across holds together and a line under one of them does not.
  it('is cut between its columns; a rule right across them is left out, a line of one column is kept', () => {
    const [rule, line] = [level(0, 60, 41), level(0, 22, 30)];
    const columns = [59, 45, 20, 1].map((x) => upright(x, 0, 40));
    const pieces = cardPieces(
      card([rule, line, ...columns], { left: 0, bottom: 0, right: 60, top: 42 }),
      MORE,
      {
        width: 32,
        height: 50,
      },
    );
    expect(pieces).toHaveLength(2);
    const kept = pieces.flatMap(({ marks }) => marks);
    for (const mark of [line, ...columns]) expect(kept).toContain(mark);
    expect(kept).not.toContain(rule);
  });

  it('stays whole where no white parts it', () => {
    const boxed = card([level(0, 60, 0), level(0, 60, 1), upright(30, 0, 60)], {
      left: 0,
      bottom: 0,
      right: 60,
      top: 60,
    });
    expect(cardPieces(boxed, MORE, { width: 30, height: 30 })).toEqual([boxed]);
  });
});

it('boxes of pieces hold their ink', () => {
  for (const { box, marks } of cardPieces(COLUMN, MORE, { width: 30, height: 40 })) {
    const ink = boxAround(marks.flatMap((mark) => (mark.kind === 'words' ? [mark.at] : pointsOf(mark.path))));
    expect(
      ink.left >= box.left && ink.right <= box.right && ink.top <= box.top && ink.bottom >= box.bottom,
    ).toBe(true);
  }
});

it('comes in pieces that fit with the name over them in any room, upright or turned, or stays whole', () => {
  let divided = 0;
  for (const width of [12, 15, 19, 24, 30, 60]) {
    for (let height = 12; height <= 45; height += 0.1) {
      const pieces = cardPieces(COLUMN, MORE, { width, height });
      if (pieces.length === 1) continue;
      divided++;
      for (const { box } of pieces) {
        const [wide, high] = [box.right - box.left, box.top - box.bottom];
        const fits = (wide <= width && high <= height) || (wide <= height && high <= width);
        expect(fits, `${wide} x ${high} in ${width} x ${height}`).toBe(true);
      }
    }
  }
  expect(divided).toBeGreaterThan(100);
});
