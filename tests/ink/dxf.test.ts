import DxfParser, { type IEntity, type IPolylineEntity, type ITextEntity } from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { inkDxf } from '../../src/ink/dxf.ts';
import { casesOf, PAPER } from '../leaf/random-tubes.ts';
import { BRACE, type Edges, exactCut, worstStray } from './exact-cut.ts';

const cases = casesOf(BRACE, 'kayak trailer');
const leaves = cases.map(({ leaf }) => leaf);
const source = inkDxf(leaves);
const read = new DxfParser().parseSync(source);
if (!read) throw new Error('unread');
const lines = read.entities.filter(isPolyline);
const texts = read.entities.filter(isText);

function isPolyline(entity: IEntity): entity is IPolylineEntity {
  return entity.type === 'POLYLINE';
}

function isText(entity: IEntity): entity is ITextEntity {
  return entity.type === 'TEXT';
}

function on(layer: string): IPolylineEntity[] {
  return lines.filter((line) => line.layer === layer);
}

/** The reader says `shape` of a closed polyline. */
function closed({ shape }: IPolylineEntity): boolean {
  return shape;
}

/** What a reader shows for the codes of a text: `\U+0416`, `%%d`, `%%c`, and `%%%` for a single per cent (from memory). */
function shown({ text }: ITextEntity): string {
  return text
    .replace(/%%([dc%])/g, (_, code: string) => ({ d: '°', c: '⌀' })[code] ?? '%')
    .replace(/\\U\+([0-9A-F]{4})/g, (_, unit: string) => String.fromCharCode(Number.parseInt(unit, 16)));
}

/** Of the lines as high as the pattern: the outermost upright ones are the seam edges, the first level outline is the base edge. */
function edgesOf(i: number): Edges {
  const pattern = on('PATTERN')[i]?.vertices ?? [];
  const ys = pattern.map(({ y }) => y);
  const inside = (line: IPolylineEntity) =>
    line.vertices.every(({ y }) => y >= Math.min(...ys) - 1e-3 && y <= Math.max(...ys) + 1e-3);
  const seams = on('SEAM')
    .filter(({ vertices: [a, b] }) => a?.x === b?.x)
    .filter(inside);
  const levels = on('OUTLINE')
    .filter(inside)
    .filter(({ vertices: [a, b, c] }) => a?.y === b?.y && !c);
  const xs = seams.flatMap(({ vertices }) => vertices.map(({ x }) => x));
  return { left: Math.min(...xs), right: Math.max(...xs), baseEdge: levels[0]?.vertices[0]?.y ?? Number.NaN };
}

describe('a brace cut at both ends as DXF, read by dxf-parser', () => {
  it('shows each cut line within 0.01 mm of the exact one, all the way round', () => {
    const cuts = on('CUT');
    expect(cuts).toHaveLength(2);
    cases.forEach((each, i) => {
      const edges = edgesOf(i);
      expect(edges.right - edges.left).toBeCloseTo(Math.PI * (BRACE.od + PAPER), 3);
      const exact = exactCut(each, edges);
      const drawn = cuts[i]?.vertices ?? [];
      expect(worstStray(drawn, exact)).toBeLessThan(0.01);
      expect(worstStray(exact, drawn)).toBeLessThan(0.01);
    });
  });

  it('holds each whole pattern as one closed contour: cut line, seam edges, base edge', () => {
    const patterns = on('PATTERN');
    expect(patterns).toHaveLength(2);
    patterns.forEach((pattern, i) => {
      const cut = on('CUT')[i]?.vertices ?? [];
      const { left, right, baseEdge } = edgesOf(i);
      expect(closed(pattern)).toBe(true);
      const rest = pattern.vertices.slice(cut.length).map(({ x, y }) => [x, y]);
      expect(pattern.vertices.slice(0, cut.length).map(({ x, y }) => [x, y])).toEqual(
        cut.map(({ x, y }) => [x, y]),
      );
      expect(rest).toEqual([
        [right, baseEdge],
        [left, baseEdge],
      ]);
    });
  });

  it('repeats no corner, neither in a row nor the first at the end of a closed line', () => {
    for (const line of lines) {
      const corners = line.vertices.map(({ x, y }) => `${x} ${y}`);
      expect(corners.length).toBeGreaterThan(1);
      corners.forEach((corner, i) => {
        const next = corners[i + 1] ?? (closed(line) ? corners[0] : undefined);
        expect(corner).not.toBe(next);
      });
    }
  });

  it('closes what the drawings close, and leaves the cut lines open', () => {
    const paths = leaves.flatMap(({ wrap, card }) =>
      [...wrap.marks, ...card.marks].flatMap((mark) => (mark.kind === 'words' ? [] : [mark.path])),
    );
    expect(lines.filter(closed)).toHaveLength(paths.filter((path) => path.closed).length + leaves.length);
    expect(on('CUT').some(closed)).toBe(false);
  });

  it('says millimetres in its header, and by a bar of 100 mm with its length beside it', () => {
    expect(read.header).toMatchObject({ $ACADVER: 'AC1009', $MEASUREMENT: 1, $LUNITS: 2, $INSUNITS: 4 });
    const lengths = on('SCALE_BAR').map(({ vertices: [a, b] }) => (b?.x ?? 0) - (a?.x ?? 0));
    expect(lengths).toEqual([100, 0, 0]);
    expect(texts.filter(({ layer }) => layer === 'SCALE_BAR').map(shown)).toEqual(['100 mm']);
  });

  it('keeps the bar and its label clear below all that the leaves draw', () => {
    const ys = (isBar: boolean): number[] => [
      ...lines
        .filter(({ layer }) => (layer === 'SCALE_BAR') === isBar)
        .flatMap(({ vertices }) => vertices.map(({ y }) => y)),
      ...texts
        .filter(({ layer }) => (layer === 'SCALE_BAR') === isBar)
        .flatMap(({ startPoint, textHeight }) => [startPoint.y, startPoint.y + textHeight]),
    ];
    expect(Math.min(...ys(false)) - Math.max(...ys(true))).toBeGreaterThan(5);
  });

  it('names every layer it uses in its table, in capitals, and dashes the other edge', () => {
    const { layers } = read.tables.layer;
    for (const { layer } of read.entities) {
      expect(layer).toMatch(/^[A-Z_]+$/);
      expect(Object.keys(layers)).toContain(layer);
    }
    expect(read.tables.lineType.lineTypes.OTHER_EDGE?.pattern).toEqual([3, -1.5]);
    const dashed = on('OTHER_EDGE').map(({ hasContinuousLinetypePattern }) => hasContinuousLinetypePattern);
    expect(new Set(dashed)).toEqual(new Set([true]));
  });

  it('is ASCII throughout, and shows every word of the leaves', () => {
    expect(source).toMatch(/^[\r\n -~]*$/);
    const drawn = leaves.flatMap(({ wrap, card }) =>
      [...wrap.marks, ...card.marks].flatMap((mark) => (mark.kind === 'words' ? [mark.text] : [])),
    );
    expect(texts.map(shown).sort()).toEqual([...drawn, '100 mm'].sort());
    expect(drawn.some((text) => text.includes('поперечина Ø'))).toBe(true);
  });

  it('is the same for the same leaves', () => {
    expect(inkDxf(casesOf(BRACE, 'kayak trailer').map(({ leaf }) => leaf))).toBe(source);
  });
});
