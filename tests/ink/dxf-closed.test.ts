import DxfParser, { type IEntity, type IPolylineEntity } from 'dxf-parser';
import { expect, it } from 'vitest';
import type { Path, Point } from '../../src/draw/drawing.ts';
import { inkDxf } from '../../src/ink/dxf.ts';
import { asWritten } from '../../src/words/said.ts';
import { drawing } from './drawn.ts';

/** Corners of the only outline of a leaf, as dxf-parser reads them, and whether it is closed. */
function readBack(path: Path): { corners: Point[]; closed: boolean } {
  const card = drawing('card', { kind: 'stroke', purpose: 'outline', path });
  const leaf = { title: asWritten('leaf'), wrap: drawing('wrap'), card, numbers: '', keepWhole: [] };
  const read = new DxfParser().parseSync(inkDxf([leaf]));
  const found = (read?.entities ?? []).filter(isPolyline).filter(({ layer }) => layer === 'OUTLINE');
  expect(found).toHaveLength(1);
  const corners = found.flatMap(({ vertices }) => vertices.map(({ x, y }) => ({ x, y })));
  return { corners, closed: found.every(({ shape }) => shape) };
}

function isPolyline(entity: IEntity): entity is IPolylineEntity {
  return entity.type === 'POLYLINE';
}

const SQUARE: readonly Point[] = [
  { x: 10, y: 10 },
  { x: 30, y: 10 },
  { x: 30, y: 30 },
  { x: 10, y: 30 },
];

function through([start, ...rest]: readonly Point[], closed: boolean): Path {
  if (!start) throw new Error('no start');
  return { start, pieces: rest.map((to) => ({ kind: 'line', to })), closed };
}

it('a closed line drawn back to its start has that corner once', () => {
  const [start] = SQUARE;
  if (!start) throw new Error('no start');
  for (const drawn of [SQUARE, [...SQUARE, start], [...SQUARE, { x: 10.00001, y: 10 }]]) {
    const { corners, closed } = readBack(through(drawn, true));
    expect(closed).toBe(true);
    expect(corners).toHaveLength(4);
  }
});

it('a line drawn back to its start but not closed keeps both ends', () => {
  const [start] = SQUARE;
  if (!start) throw new Error('no start');
  const { corners, closed } = readBack(through([...SQUARE, start], false));
  expect(closed).toBe(false);
  expect(corners).toHaveLength(5);
  expect(corners[4]).toEqual(corners[0]);
});
