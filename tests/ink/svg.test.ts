import { type Element, Path, SVG, withWindow } from '@svgdotjs/svg.js';
import { createSVGWindow } from 'svgdom';
import { describe, expect, it } from 'vitest';
import type { Mark, Point } from '../../src/draw/drawing.ts';
import { widthOf } from '../../src/draw/letters.ts';
import { PENS } from '../../src/draw/pens.ts';
import { inkSvg } from '../../src/ink/svg.ts';
import { casesOf, PAPER } from '../leaf/random-tubes.ts';
import { BRACE, type Edges, exactCut, worstStray } from './exact-cut.ts';

const cases = casesOf(BRACE, 'kayak trailer');
const leaves = cases.map(({ leaf }) => leaf);
const marks: Mark[] = leaves.flatMap(({ wrap, card }) => [...wrap.marks, ...card.marks]);
const source = inkSvg(leaves, createSVGWindow());

/** The file in a DOM by svgdom's XML reader. */
function reading<Value>(ask: (root: Element) => Value): Value {
  return withWindow(createSVGWindow(), () => ask(SVG(source.replace(/^<\?xml.*\?>\s*/, ''))));
}

function sizeOf(root: Element): { width: number; height: number } {
  const [, , width, height] = String(root.attr('viewBox')).split(' ').map(Number);
  return { width: width ?? Number.NaN, height: height ?? Number.NaN };
}

function pathsIn(root: Element, group: string): Path[] {
  return root.find(`#${group} path`).flatMap((element) => (element instanceof Path ? [element] : []));
}

const STEPS = 600;

/** Points along a path by svgdom's reading of it, turned over so that y runs up. */
function along(path: Path, height: number): Point[] {
  const length = path.length();
  return Array.from({ length: STEPS + 1 }, (_, i) => {
    const { x, y } = path.pointAt((length * i) / STEPS);
    return { x, y: height - y };
  });
}

/** The outermost lines of the seam's group are the seam edges; the outline's first line is the base edge. */
function edgesOf(root: Element, leaf: number, height: number): Edges {
  const xs = pathsIn(root, `leaf-${leaf}-seam`).flatMap((path) =>
    path.array().map((step) => Number(step[1])),
  );
  const base = pathsIn(root, `leaf-${leaf}-outline`)[0]?.array();
  expect(base?.[0]?.[2]).toBe(base?.[1]?.[2]);
  return { left: Math.min(...xs), right: Math.max(...xs), baseEdge: height - Number(base?.[0]?.[2]) };
}

describe('a brace cut at both ends as SVG, read by svgdom', () => {
  it('is as many millimetres wide and high as its view box has units', () => {
    reading((root) => {
      const { width, height } = sizeOf(root);
      expect(root.attr('viewBox')).toBe(`0 0 ${width} ${height}`);
      expect([root.attr('width'), root.attr('height')]).toEqual([`${width}mm`, `${height}mm`]);
    });
  });

  it('shows each cut line within 0.01 mm of the exact one, all the way round', () => {
    reading((root) => {
      const { height } = sizeOf(root);
      cases.forEach((each, i) => {
        const edges = edgesOf(root, i + 1, height);
        expect(edges.right - edges.left).toBeCloseTo(Math.PI * (BRACE.od + PAPER), 3);
        const cuts = pathsIn(root, `leaf-${i + 1}-cut`);
        expect(cuts).toHaveLength(1);
        const drawn = cuts.flatMap((cut) => along(cut, height));
        const exact = exactCut(each, edges);
        expect(worstStray(drawn, exact)).toBeLessThan(0.01);
        expect(worstStray(exact, drawn)).toBeLessThan(0.01);
      });
    });
  });

  it('has a group for each leaf and purpose, drawn with the pen of that purpose', () => {
    reading((root) => {
      leaves.forEach(({ wrap, card }, i) => {
        for (const purpose of new Set([...wrap.marks, ...card.marks].map((mark) => mark.purpose))) {
          const group = root.findOne(`#leaf-${i + 1}-${purpose}`);
          const pen = [
            group?.attr('class'),
            group?.attr('stroke-width'),
            group?.node.getAttribute('stroke-dasharray'),
          ];
          const { width, dash } = PENS[purpose];
          expect(pen).toEqual([purpose, width, dash.length > 0 ? dash.join(' ') : null]);
        }
      });
      expect(root.find('path')).toHaveLength(marks.filter(({ kind }) => kind !== 'words').length);
    });
  });

  it('closes what the drawings close', () => {
    const closed = marks.filter((mark) => mark.kind !== 'words' && mark.path.closed);
    reading((root) => {
      const ds = root.find('path').map((path) => String(path.attr('d')));
      expect(ds.filter((d) => d.endsWith('Z'))).toHaveLength(closed.length);
    });
  });

  it('says every word of the leaves, as wide as the sheets print it', () => {
    const words = marks.filter((mark) => mark.kind === 'words');
    reading((root) => {
      const read = root
        .find('text')
        .map(({ node }) => [node.textContent, Number(node.getAttribute('textLength'))]);
      const said = words.map(({ text, size }) => [text, Math.round(widthOf(text, size) * 1e4) / 1e4]);
      expect(read.sort()).toEqual(said.sort());
    });
    expect(words.some(({ text }) => text.includes('поперечина Ø'))).toBe(true);
  });

  it('inks nothing beyond its page', () => {
    reading((root) => {
      const { width, height } = sizeOf(root);
      for (const element of root.find('path')) {
        const { x, y, x2, y2 } = element.bbox();
        expect(Math.min(x, y, width - x2, height - y2)).toBeGreaterThanOrEqual(0);
      }
    });
  });

  it('is the same for the same leaves', () => {
    const again = casesOf(BRACE, 'kayak trailer').map(({ leaf }) => leaf);
    expect(inkSvg(again, createSVGWindow())).toBe(source);
  });
});
