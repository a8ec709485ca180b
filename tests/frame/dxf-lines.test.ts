import DxfParser, { type ILineEntity } from 'dxf-parser';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { someOf } from '../count.ts';
import { at, drawing, flatIn, lineIn, polylineIn } from './drawing.ts';
import { axesOf, far, framed, type Place, readBack, refusalOf } from './lines.ts';

const SIZED = { od: '30', wall: '2' };

function fromDrawing(source: string, more: Parameters<typeof framed>[1] = {}) {
  return framed(source, { file: 'rack.dxf', format: 'dxf', ...SIZED, ...more });
}

function axes(source: string, more: Parameters<typeof framed>[1] = {}): readonly (readonly [Place, Place])[] {
  return [...axesOf(readBack(fromDrawing(source, more).text)).values()].map(({ from, to }) => [from, to]);
}

/** Near enough for what is written to 0.001 mm. */
function expectAxes(
  found: readonly (readonly [Place, Place])[],
  wanted: readonly (readonly [Place, Place])[],
): void {
  expect(found.length).toBe(wanted.length);
  for (const [i, [from, to]] of wanted.entries()) {
    expect(far(found[i]?.[0] ?? [9, 9, 9], from)).toBeLessThan(0.002);
    expect(far(found[i]?.[1] ?? [9, 9, 9], to)).toBeLessThan(0.002);
  }
}

test('lines, and polylines open, closed and in space, are tubes', () => {
  const source = drawing([
    lineIn('0', [0, 0, 0], [0, 0, 900]),
    flatIn(
      [
        [100, 0],
        [900, 0],
        [900, 500],
      ],
      { closed: true, elevation: 50, behind: '91\n7\n42\n0.0\n' },
    ),
    polylineIn(
      [
        [0, 900, 0],
        [0, 900, 700],
        [400, 900, 1100],
      ],
      8,
    ),
  ]);
  expectAxes(axes(source), [
    [
      [0, 0, 0],
      [0, 0, 900],
    ],
    [
      [100, 0, 50],
      [900, 0, 50],
    ],
    [
      [900, 0, 50],
      [900, 500, 50],
    ],
    [
      [900, 500, 50],
      [100, 0, 50],
    ],
    [
      [0, 900, 0],
      [0, 900, 700],
    ],
    [
      [0, 900, 700],
      [400, 900, 1100],
    ],
  ]);
});

// The arbitrary axis algorithm by hand: of an extrusion along x the entity's x is the world's y, its y the world's z; of one along -z
// its x is the world's -x.
test.each<[Place, Place]>([
  [
    [1, 0, 0],
    [7, 300, 400],
  ],
  [
    [0, 0, -1],
    [-300, 400, -7],
  ],
  [
    [0, -1, 0],
    [300, -7, 400],
  ],
])('a polyline in the plane square to %j lies where it was drawn', (up, corner) => {
  const source = drawing([
    flatIn(
      [
        [0, 0],
        [300, 400],
      ],
      { up, elevation: 7 },
    ),
  ]);
  const start: Place = [up[0] * 7, up[1] * 7, up[2] * 7];
  expectAxes(axes(source), [[start, corner]]);
});

test('random lines are those that another reader of drawings finds', () => {
  const number = fc.integer({ min: -9e6, max: 9e6 }).map((n) => n / 1000);
  const place = fc.tuple(number, number, number);
  fc.assert(
    fc.property(fc.array(fc.tuple(place, place), { minLength: 1, maxLength: 8 }), (lines) => {
      const source = drawing(lines.map(([from, to], i) => lineIn(`L${i}`, from, to)));
      const others = new DxfParser().parseSync(source)?.entities.map((entity) => {
        const [from, to] = (entity as ILineEntity).vertices.map(({ x, y, z }): Place => [x, y, z]);
        return [from ?? [0, 0, 0], to ?? [0, 0, 0]] as const;
      });
      const { text } = fromDrawing(source, { keepPieces: true, snap: '0' });
      const written = [...text.matchAll(/^ {4}L\d+ [AB]: \[(.*)\]/gm)].map(([, mm]) =>
        mm?.split(', ').map(Number),
      );
      expect(written).toEqual((others ?? []).flat());
    }),
    { numRuns: 50 },
  );
});

test('layers that are sizes give sizes, others names; the unit is the drawing’s, or as told', () => {
  const source = drawing(
    [
      lineIn('1.5x.095', [0, 0, 0], [0, 0, 30]),
      lineIn('stays', [9, 0, 0], [9, 0, 30]),
      lineIn('stays', [19, 0, 0], [19, 0, 30]),
      lineIn('40mm', [29, 0, 0], [29, 0, 30]),
    ],
    '9\n$INSUNITS\n70\n1\n',
  );
  const { text, told } = framed(source, { format: 'dxf', od: '1-1/4' });
  expect(text.split('\n').filter((line) => line.startsWith('    - '))).toEqual([
    '    - { name: tube 1, along: [tube 1 A, tube 1 B], od: 1.5, wall: .095 }',
    '    - { name: stays, along: [stays A, stays B], od: 1-1/4 }',
    '    - { name: stays 2, along: [stays 2 A, stays 2 B], od: 1-1/4 }',
    '    - { name: tube 4, along: [tube 4 A, tube 4 B], od: 40mm }',
  ]);
  expect(text).toContain('units: in');
  expect(told.join('\n')).toContain('Layer 1.5x.095 is a size: od: 1.5, wall: .095.');
  expectAxes(axes(source.replaceAll('1.5x.095', 'x'), { units: 'cm', isUp: 'y' }).slice(0, 1), [
    [
      [0, 0, 0],
      [0, -300, 0],
    ],
  ]);
});

test('what is no straight line is counted and told', () => {
  const others = ['ARC', 'SPLINE', 'INSERT', 'INSERT', 'CIRCLE'].map((kind) => `0\n${kind}\n8\n0\n`);
  const paper = lineIn('0', [5, 5, 5], [900, 5, 5]).replace('8\n0', '67\n1\n8\n0');
  const mesh = polylineIn(
    [
      [0, 0, 0],
      [9, 9, 9],
    ],
    64,
  );
  const { tubes, told } = fromDrawing(drawing([...others, paper, mesh, lineIn('0', [0, 0, 0], [0, 0, 900])]));
  expect(tubes).toBe(1);
  expect(told).toEqual([expect.stringContaining('1 ARC, 1 SPLINE, 2 INSERT, 1 CIRCLE, 1 LINE, 1 POLYLINE.')]);
});

const CORNERS = [
  [0, 0],
  [9, 9],
] as const;
const LINE = lineIn('0', [0, 0, 0], [0, 0, 900]);

test.each([
  ['of no unit', drawing([LINE], ''), '', '$INSUNITS'],
  ['of miles', drawing([LINE], '9\n$INSUNITS\n70\n3\n'), '', '$INSUNITS 3'],
  ['with a bulge', drawing([LINE, flatIn(CORNERS, { behind: '42\n0.5\n' })]), 'LWPOLYLINE', 'LWPOLYLINE 30'],
  ['with a fitted curve', drawing([polylineIn([[0, 0, 0]], 2)]), 'POLYLINE', 'POLYLINE'],
  ['with a place cut away', drawing([LINE.replace(at(11, [0, 0, 900]), '')]), 'LINE', 'LINE 2F'],
  ['with letters for a number', drawing([LINE.replace('900', '9oo')]), '9oo', '9oo'],
  ['of one corner', drawing([flatIn([[0, 0]])]), 'LWPOLYLINE', 'LWPOLYLINE 30'],
  ['that is cut off', drawing([LINE]).replace('0\nENDSEC\n0\nEOF\n', ''), '900', '900'],
  ['that ends in a section', drawing([LINE]).replace('0\nENDSEC\n0\nEOF\n', '0\nEOF\n'), 'EOF', 'EOF'],
  ['without vertices', drawing([polylineIn([], 8), LINE]), 'POLYLINE', 'POLYLINE'],
  ['that slipped by a line', drawing([LINE]).replace('2\nENTITIES', '2\nENTITIES\nx'), 'x', 'x'],
  ['with nothing in it', drawing([]), '', 'rack.dxf'],
  ['that is none', 'name,x1', 'name,x1', 'name,x1'],
  ['further than a kilometre away', drawing([lineIn('0', [0, 0, 0], [0, 0, 2e6])]), 'LINE', 'LINE 2F'],
])('a drawing %s: one mistake, at the line where %j stands', (_, source, standing, read) => {
  const complaint = refusalOf(() => fromDrawing(source));
  const line = standing === '' ? undefined : 1 + source.split('\n').lastIndexOf(standing);
  expect([complaint.file, complaint.line, complaint.read.trim()]).toEqual(['rack.dxf', line, read]);
});

/** More corners than can be handed to a function at once. */
const MANY = 150_000;

test.each(
  someOf<readonly [string, () => string]>(
    [
      ['flat', () => flatIn(Array.from({ length: MANY }, (_, i) => [i, 0] as const))],
      [
        'in space',
        () =>
          polylineIn(
            Array.from({ length: MANY }, (_, i): Place => [i, 0, 0]),
            8,
          ),
      ],
    ],
    { short: 1 },
  ),
)('one polyline %s of more corners than a frame has tubes is refused as that', (_, polyline) => {
  const { why } = refusalOf(() => fromDrawing(drawing([polyline()])));
  expect(why).toContain('more than 20,000 lines');
});
