import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Refusal } from '../../src/job/text/complaint.ts';
import { anySign } from '../any-sign.ts';
import { howMany } from '../count.ts';
import { drawing, flatIn, lineIn, polylineIn } from './drawing.ts';
import { framed } from './lines.ts';

const TABLE = `name,x1,y1,z1,x2,y2,z2,od,wall
rail,0,0,0,1200,0,0,44.5,2
"post, left",300,0.2,0,300,0,510,38.1,2
,300,0,510,620,410,500,NPS 1 sch 40,
brace,1200,0,0,620,410,500,60x40x3,
`;
const SEMICOLONS = TABLE.replaceAll(',', ';').replaceAll('.', ',').replaceAll('\n', '\r\n');

const DRAWING = drawing([
  lineIn('38.1x2', [0, 0, 0], [1200, 0, 0]),
  flatIn(
    [
      [300, 0],
      [900, 0],
      [900, 500],
    ],
    { closed: true, elevation: 50, up: [0, 0, -1] },
  ),
  polylineIn(
    [
      [0, 900, 0],
      [0, 900, 700],
    ],
    8,
  ),
  '0\nARC\n8\n0\n10\n5\n40\n3\n',
]);

/** Signs that mean something in a table, a drawing, a length or YAML, and some that mean nothing anywhere. */
const sign = fc.oneof(
  fc.constantFrom(...',;"\'\t\n\r 0123456789.-+eE×x/#:{}[]&*!|>%@`½é\u0000\u2028\uFEFF\uFFFD'),
  fc.constantFrom(
    '1e99',
    'NaN',
    '-0',
    '\nEOF\n',
    '0\nSECTION\n',
    '1\n',
    'ENDSEC',
    'SEQEND',
    '""',
    '99999999999',
  ),
  fc.string({ unit: anySign, maxLength: 3 }),
);

/** A cut, a doubling, a swap or new signs at some place. */
const damage = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  length: fc.nat(30),
  way: fc.constantFrom('cut', 'double', 'put', 'end', 'line'),
  sign,
});

function damaged(source: string, how: { at: number; length: number; way: string; sign: string }): string {
  const at = Math.floor(how.at * source.length);
  const [before, own, behind] = [
    source.slice(0, at),
    source.slice(at, at + how.length),
    source.slice(at + how.length),
  ];
  switch (how.way) {
    case 'cut':
      return before + behind;
    case 'double':
      return before + own + own + behind;
    case 'put':
      return before + how.sign + own + behind;
    case 'end':
      return before;
    default: {
      const lines = source.split('\n');
      lines.splice(Math.floor(how.at * lines.length), 1 + (how.length % 3));
      return lines.join('\n');
    }
  }
}

/** Every number of a text, and what a drawing's own axes make of one. */
function numbersOf(text: string): ReadonlySet<number> {
  const found = [...text.replaceAll(',', ' ').matchAll(/[-+]?\d*\.?\d+(?:e[-+]?\d+)?/gi)].map(([each]) =>
    Number(each),
  );
  const decimals = [...text.matchAll(/[-+]?\d*,\d+/g)].map(([each]) => Number(each.replace(',', '.')));
  return new Set(
    [...found, ...decimals, 0].flatMap((each) => [each, -each]).map((each) => Math.round(each * 1000)),
  );
}

test.each([
  ['tables', [TABLE, SEMICOLONS], 'csv'],
  ['drawings', [DRAWING, DRAWING.replaceAll('\n', '\r\n')], 'dxf'],
] as const)('damaged %s: one mistake with its place, or the lines that are there', (_, sources, format) => {
  let refused = 0;
  let taken = 0;
  fc.assert(
    fc.property(
      fc.constantFrom(...sources),
      fc.array(damage, { minLength: 1, maxLength: 3 }),
      (source, how) => {
        const text = how.reduce(damaged, source);
        try {
          const made = framed(text, { format, file: 'lines', units: 'mm', keepPieces: true });
          taken += 1;
          // In a plane that damage has turned, places are no numbers of the file.
          if (format === 'dxf' && !/210\r?\n0\r?\n220\r?\n0\r?\n230\r?\n-1\r?\n0/.test(text)) return;
          const numbers = numbersOf(text);
          const places = [...made.text.matchAll(/^ {4}.*: \[([-\d., ]+)\]/gm)];
          const written = places.flatMap(([, mm = '']) =>
            mm.split(', ').map((each) => Math.round(Number(each) * 1000)),
          );
          for (const each of written) expect(numbers, `${each} of ${JSON.stringify(text)}`).toContain(each);
        } catch (error) {
          if (!(error instanceof Refusal)) throw error;
          refused += 1;
          const [complaint, ...more] = error.complaints;
          expect(more).toEqual([]);
          expect(complaint.file).toBe('lines');
          expect(complaint.read).not.toBe('');
          expect(complaint.why).not.toBe('');
          expect(complaint.instead).not.toBe('');
          const lines = text.split(/\r\n|\r|\n/).length;
          if (complaint.line !== undefined) expect(complaint.line).toBeLessThanOrEqual(lines);
          else expect(complaint.code).toMatch(/^(empty|units)$/);
        }
      },
    ),
    { numRuns: howMany({ short: 200, deep: 2000, asked: 'MALFORMED' }) },
  );
  expect(refused).toBeGreaterThan(0);
  expect(taken).toBeGreaterThan(0);
});
