import { describe, expect, it, test } from 'vitest';
import type { Box, Mark, Words } from '../../src/draw/drawing.ts';
import { PAPERS, type Paper, readPaper } from '../../src/job/paper/paper.ts';
import { bevelSheet } from '../../src/tiler/aids/bevel.ts';
import { girthSheet } from '../../src/tiler/aids/girth.ts';
import { rulerSheet } from '../../src/tiler/aids/ruler.ts';
import type { LaidSheets } from '../../src/tiler/lay-sheets.ts';
import type { Placement } from '../../src/tiler/sheets.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { boxAround, inkBox, onSheet, pointsOf } from './ink-boxes.ts';
import { printerOf } from './measured-printer.ts';
import { ask } from './synthetic.ts';

const SMALLEST: Paper = { name: 'smallest', width: 130, height: 137 };
const ROLL = readPaper('roll 610mm', 'mm');
if (!ROLL.ok) throw new Error(ROLL.read);
const ALL = [...PAPERS, ROLL.value, SMALLEST];
const [, A4] = PAPERS;
if (!A4) throw new Error('A4 is a paper to begin with');
const INCH = 25.4;

interface Inked {
  readonly mark: Mark;
  readonly box: Box;
  readonly of: Placement;
}

function inked({ sheets }: LaidSheets): Inked[] {
  return [...sheets].flatMap(({ placements }) =>
    placements.flatMap((of) => of.drawing.marks.map((mark) => ({ mark, box: inkBox(of, mark), of }))),
  );
}

function wordsIn(set: LaidSheets): { words: Words; box: Box }[] {
  return inked(set).flatMap(({ mark, box }) => (mark.kind === 'words' ? [{ words: mark, box }] : []));
}

const middle = ({ left, bottom, right, top }: Box) => ({ x: (left + right) / 2, y: (bottom + top) / 2 });

/** Straight strokes of one purpose, by their boxes on the sheet. */
function straight(set: LaidSheets, purpose: string): Box[] {
  return inked(set)
    .filter(({ mark }) => mark.kind === 'stroke' && mark.purpose === purpose)
    .filter(({ mark }) => mark.kind === 'stroke' && mark.path.pieces.every(({ kind }) => kind === 'line'))
    .map(({ mark, of }) =>
      boxAround(mark.kind === 'stroke' ? pointsOf(mark.path).map((point) => onSheet(of, point)) : []),
    );
}

const AIDS = [
  ['ruler', rulerSheet],
  ['girth', girthSheet],
  ['bevel', bevelSheet],
] as const;

describe.each(AIDS)('the sheet of `aid %s`', (_, lay) => {
  it.each(ALL)('keeps inside the margins of $name, whichever way the printer turns it', (paper) => {
    const set = lay(ask(paper), ENGLISH);
    const sideways = !paper.roll && set.width !== paper.width;
    const [left, bottom, top] = sideways ? [17, 10, 10] : [10, 17, 10];
    const beyond = inked(set).filter(
      ({ box }) =>
        box.left < left - 1e-9 ||
        box.bottom < bottom - 1e-9 ||
        box.right > set.width - left + 1e-9 ||
        box.top > set.height - top + 1e-9,
    );
    expect(beyond).toEqual([]);
  });

  it.each(ALL)('sets no word over another or over a line on $name', (paper) => {
    for (const printer of paper === SMALLEST ? [undefined] : [undefined, printerOf('99.3mm', '100.3mm')]) {
      const all = inked(lay(ask(paper), ENGLISH, printer));
      const overlap = (a: Box, b: Box) =>
        Math.min(
          Math.min(a.right, b.right) - Math.max(a.left, b.left),
          Math.min(a.top, b.top) - Math.max(a.bottom, b.bottom),
        );
      const words = all.filter(({ mark }) => mark.kind === 'words');
      // An arc's box says nothing of where its ink is.
      const others = all.filter(
        ({ mark }) => mark.kind === 'words' || mark.path.pieces.every(({ kind }) => kind === 'line'),
      );
      const hits = words.flatMap((word) =>
        others
          .filter((other) => other !== word && overlap(word.box, other.box) > 0.05)
          .map((other) => [word.mark, other.mark]),
      );
      expect(hits).toEqual([]);
    }
  });

  it('is one sheet, with the bars and the words of every sheet', () => {
    const set = lay(ask(A4), ENGLISH);
    expect(set.count).toBe(1);
    const text = wordsIn(set)
      .map(({ words }) => words.text)
      .join(' ');
    for (const part of ['100 mm across', '4 in across', '100 mm up', '4 in up', '100 %', 'Sheet 1 of 1 · A4'])
      expect(text).toContain(part);
  });
});

test.each(AIDS)(
  'all words of the sheet of `aid %s` but its furniture’s state the fact that they are an aid’s',
  (_, lay) => {
    const furniture = new Set(['bar', 'sheet', 'before-cutting', 'caution', 'job', 'printer']);
    const facts = inked(lay(ask(A4), ENGLISH)).flatMap(({ mark }) =>
      mark.kind === 'words' ? [mark.fact] : [],
    );
    const own = facts.filter((fact) => !furniture.has(fact));
    expect(own.length).toBeGreaterThan(5);
    expect(new Set(own)).toEqual(new Set(['aid']));
  },
);

describe('the scale sheet', () => {
  it.each([...PAPERS, ROLL.value])('has bars on $name as long as they say, and as long as goes', (paper) => {
    const set = rulerSheet(ask(paper), ENGLISH);
    expect(set.width).toBe(paper.width);
    for (const [axis, room] of [
      ['across', set.width - 20],
      // The strip of the bars across at the head is not to be had.
      ['up', set.height - 27 - 13],
    ] as const) {
      const long = [...set.sheets][0]?.placements.find(({ drawing }) => drawing.name === `long-bars-${axis}`);
      if (!long) throw new Error('no long bars');
      const along = (box: Box) => (axis === 'across' ? box.right - box.left : box.top - box.bottom);
      const names = long.drawing.marks.flatMap((mark) => (mark.kind === 'words' ? [mark.text] : []));
      const lengths = long.drawing.marks
        .map((mark) => along(inkBox(long, mark)))
        .filter((length) => length > 50);
      const said = names.map((name) => Number.parseFloat(name) * (name.includes(' in ') ? INCH : 1));
      expect(names.every((name) => name.endsWith(axis))).toBe(true);
      expect(lengths).toHaveLength(2);
      lengths.forEach((length, index) => {
        expect(length).toBeCloseTo(said[index] ?? 0, 9);
        expect(length).toBeLessThanOrEqual(room);
      });
      expect((said[0] ?? 0) + 10).toBeGreaterThan(room - 1.6);
      expect((said[1] ?? 0) + INCH).toBeGreaterThan(room - 1.6);
    }
  });

  it('says what to type, with the bars that it has', () => {
    const text = wordsIn(rulerSheet(ask(A4), ENGLISH))
      .map(({ words }) => words.text)
      .join(' ');
    expect(text).toContain('copeleaf printer add "my printer" --across 179.5mm/180mm --up 250mm/250mm');
  });

  it('has its bars stretched with the rest for a printer, and says so', () => {
    const set = rulerSheet(ask(A4), ENGLISH, printerOf('99.3mm', '100.3mm'));
    expect(set.stretch?.across).toBeCloseTo(1 / 0.993, 12);
    expect(set.stretch?.up).toBeCloseTo(1 / 1.003, 12);
    const text = wordsIn(set)
      .map(({ words }) => words.text)
      .join(' ');
    expect(text).toContain('Drawn for the printer “workshop”');
  });
});

/** A mark of a girth scale: how far it stands from the zero edge when the strips are laid, and what its number says. */
function marksOfStrips(set: LaidSheets): { girth: number; long: boolean; upper: boolean; number?: string }[] {
  const edges = straight(set, 'outline').filter((box) => box.right - box.left > 20);
  const rows = [...new Set(edges.map(({ top }) => top))].sort((a, b) => b - a);
  const [zero] = straight(set, 'cut');
  if (!zero) throw new Error('no zero edge');
  const seams = straight(set, 'registration');
  const numbers = wordsIn(set);
  let start = 0;
  const marks = [];
  for (let row = 0; row < rows.length; row += 2) {
    const [top = 0, foot = 0] = [rows[row], rows[row + 1]];
    const own = seams.filter((box) => box.top > top && box.bottom < foot).map(({ left }) => left);
    const from = row === 0 ? zero.left : Math.min(...own);
    for (const box of straight(set, 'guide')) {
      if (box.bottom < foot - 1e-9 || box.top > top + 1e-9) continue;
      const upper = Math.abs(box.top - top) < 1e-9;
      const near = numbers.find(
        ({ words, box: at }) =>
          /^\d/.test(words.text) &&
          Math.abs(middle(at).x - box.left) < 0.01 &&
          middle(at).y < top &&
          middle(at).y > foot &&
          (upper ? middle(at).y > (top + foot) / 2 : middle(at).y < (top + foot) / 2),
      );
      const long = box.top - box.bottom > 4.5;
      marks.push({
        girth: start + box.left - from,
        long,
        upper,
        ...(near && long && { number: near.words.text }),
      });
    }
    start += Math.max(...own) - from;
  }
  return marks;
}

/** Whole inches and a fraction, as written on a scale. */
function inches(text: string): number {
  const [, whole = '0', top = '0', bottom = '1'] = /^(?:(\d+)(?:-|$))?(?:(\d+)\/(\d+))?$/.exec(text) ?? [];
  return Number(whole) + Number(top) / Number(bottom);
}

describe('the girth strip', () => {
  it.each([0.1, 0.3])('reads D where paper of %s mm round a tube of D ends: C = pi (D + t)', (thickness) => {
    const asked = {
      ...ask(A4),
      paperThickness: { mm: thickness, wrote: `${thickness}mm`, unit: 'mm' } as const,
    };
    const marks = marksOfStrips(girthSheet(asked, ENGLISH));
    const numbered = marks.filter(({ number }) => number !== undefined);
    expect(numbered.length).toBeGreaterThan(80);
    for (const { girth, upper, number = '' } of numbered) {
      const diameter = upper ? Number(number) : inches(number) * INCH;
      expect(girth).toBeCloseTo(Math.PI * (diameter + thickness), 6);
    }
    // Between numbers the marks stand at every half millimetre, and at every 32nd of an inch.
    for (const { girth, upper } of marks) {
      const steps = (girth / Math.PI - thickness) / (upper ? 0.5 : INCH / 32);
      expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-6);
    }
  });

  it('reads tubes from 10 mm to over 220 mm on A4 and letter, strips taped together', () => {
    for (const paper of PAPERS.slice(0, 2)) {
      const diameters = marksOfStrips(girthSheet(ask(paper), ENGLISH))
        .filter(({ upper }) => upper)
        .map(({ girth }) => girth / Math.PI - 0.1);
      expect(Math.min(...diameters)).toBeCloseTo(10, 6);
      expect(Math.max(...diameters)).toBeGreaterThan(220);
      const whole = new Set(diameters.map((each) => Math.round(each * 2)));
      for (let half = 20; half <= 440; half += 1) expect(whole.has(half)).toBe(true);
    }
  });
});

/** The words that send the next strip to its line, and the tip of the arrow after them. */
function sendings(set: LaidSheets): { number: number; words: Box; tip: { x: number; y: number } }[] {
  const heads = inked(set).flatMap(({ mark, of }) =>
    mark.kind === 'fill' && mark.path.pieces.length === 2 ? [onSheet(of, mark.path.start)] : [],
  );
  return wordsIn(set).flatMap(({ words, box }) => {
    const [, number] = /^lay strip (\d) on this line$/.exec(words.text) ?? [];
    const tip = heads.find(({ y }) => y > box.bottom && y < box.top);
    return number && tip ? [{ number: Number(number), words: box, tip }] : [];
  });
}

describe.each(PAPERS)('on $name the words that send a further strip to its line', (paper) => {
  it('point at that line with an arrow, and not at the end of the strip', () => {
    const set = girthSheet(ask(paper), ENGLISH);
    const rows = [...new Set(straight(set, 'outline').map(({ top }) => top))].sort((a, b) => b - a);
    const tops = rows.filter((_, index) => index % 2 === 0);
    const lines = straight(set, 'registration').filter(({ bottom, top }) => top - bottom > 20);
    const sent = sendings(set);
    expect(sent.map(({ number }) => number)).toEqual(tops.slice(1).map((_, index) => index + 2));
    for (const { words, tip } of sent) {
      const crossing = lines.filter(({ bottom, top }) => tip.y > bottom && tip.y < top);
      const line = Math.max(...crossing.map(({ left }) => left));
      expect(line - tip.x).toBeGreaterThan(0);
      expect(line - tip.x).toBeLessThan(0.5);
      expect(tip.x - words.right).toBeGreaterThan(0);
      expect(tip.x - words.right).toBeLessThan(10);
    }
  });
});

describe('the bevel card', () => {
  const set = bevelSheet(ask(A4), ENGLISH);
  const [edge] = straight(set, 'cut');
  if (!edge) throw new Error('no edge for the stock');
  const centre = middle(edge);
  const polar = ({ x, y }: { x: number; y: number }) => ({
    radius: Math.hypot(x - centre.x, y - centre.y),
    angle: (Math.atan2(y - centre.y, x - centre.x) * 180) / Math.PI,
  });
  const marks = inked(set).flatMap(({ mark, of }) => {
    if (mark.kind !== 'stroke' || mark.purpose !== 'guide') return [];
    const [from, to, ...more] = pointsOf(mark.path).map((point) => polar(onSheet(of, point)));
    return from && to && more.length === 0 && from.radius > 1 ? [{ from, to }] : [];
  });

  it('has a mark for every degree on both arcs, and each points at the middle of the edge', () => {
    const radii = [...new Set(marks.map(({ to }) => to.radius.toFixed(6)))];
    expect(radii).toHaveLength(2);
    for (const radius of radii) {
      const angles = marks.filter(({ to }) => to.radius.toFixed(6) === radius);
      expect(angles.map(({ to }) => Math.round(to.angle)).sort((a, b) => a - b)).toEqual(
        Array.from({ length: 179 }, (_, index) => index + 1),
      );
      for (const { from, to } of angles) {
        expect(to.angle).toBeCloseTo(Math.round(to.angle), 9);
        expect(from.angle).toBeCloseTo(to.angle, 9);
      }
    }
  });

  it('reads the angle outside each arc and its supplement inside', () => {
    const radii = [...new Set(marks.map(({ to }) => Math.round(to.radius * 1e6) / 1e6))].sort(
      (a, b) => b - a,
    );
    const numbers = wordsIn(set)
      .filter(({ words }) => /^\d+$/.test(words.text))
      .map(({ words, box }) => ({ number: Number(words.text), ...polar(middle(box)) }))
      .filter(({ angle }) => angle > 0);
    const [outer = 0, inner = 0] = radii;
    const supplements = numbers.filter(
      ({ radius }) => radius < inner || (radius < outer && radius > (outer + inner) / 2),
    );
    const direct = numbers.filter((each) => !supplements.includes(each));
    expect(supplements).toHaveLength(2 * 17);
    expect(direct).toHaveLength(17 + 35);
    for (const { number, angle } of direct) expect(Math.abs(number - angle)).toBeLessThan(1);
    for (const { number, angle } of supplements) expect(Math.abs(number - (180 - angle))).toBeLessThan(1);
  });
});
