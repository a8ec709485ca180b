import fc from 'fast-check';
import { expect, test } from 'vitest';
import { jobFromFlags } from '../../src/job/flags.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { anySign } from '../any-sign.ts';
import { howMany } from '../count.ts';
import { A4, complaintsAbout, refusalOf, SAMPLE } from './sample.ts';

const TUBES = `copeleaf: 1
job: kayak trailer
margin: { left: 12mm, bottom: 20 }
paper: 11x17in
tubes:
  - name: "rung, aft"
    od: 1½"
    wall: 2,4
    edge: square
    from: inside
    between: 2' 3-1/4"
    copies: 4
    ends:
      A: { onto: { od: 60.3 }, angle: 90° }
      B: plain
  - od: 31.75
    ends: { B: { onto: { od: 38.1 }, angle: 60°30', offset: -3/32in, seam: 180 } }
`;

/** Signs that mean something in YAML or in a length, and a few that mean nothing anywhere. */
const piece = fc.oneof(
  fc.constantFrom(...`:,-{}[]"'#&*!|>%@?\t\n \r0123456789./x½°−`),
  fc.constantFrom(
    ': ',
    '- ',
    '\n  ',
    '---\n',
    '*a',
    '&a ',
    '<<: *a',
    '1e9',
    '.nan',
    '0x1',
    '-0',
    'null',
    '~',
    '[[',
    '{{',
  ),
  fc.constantFrom(
    'tube:',
    'ends: ',
    'A: ',
    'plain',
    'od: ',
    'angle: 0',
    'wall: 9',
    '__proto__: ',
    'constructor: 1',
  ),
  fc.string({ unit: anySign, maxLength: 3 }),
);

const slip = fc.record({ at: fc.nat(), drop: fc.nat({ max: 6 }), put: fc.oneof(fc.constant(''), piece) });

const malformed = fc
  .tuple(fc.constantFrom(SAMPLE, TUBES), fc.array(slip, { minLength: 1, maxLength: 4 }))
  .map(([text, slips]) => slips.reduce(slipped, text));

function slipped(text: string, { at, drop, put }: { at: number; drop: number; put: string }): string {
  const place = at % (text.length + 1);
  return text.slice(0, place) + put + text.slice(place + drop);
}

/** Whether anything was said; throws where what was said lacks its words or its place. Thousands of `expect` are slow. */
function tellsAll(text: string): boolean {
  // A line ends with a return too (YAML 1.2, 5.4).
  const lines = text.replace(/\r(?!\n)/g, '\n').split('\n');
  const complaints = complaintsAbout(text);
  for (const complaint of complaints) {
    const { line = 0, column = 0, read, why, instead, code } = complaint;
    const inWords = [code, read, why, instead].every(
      (words) => words !== '' && !/[\p{Cc}\u202E]/u.test(words),
    );
    const short = read.length < 250 && why.length < 250;
    const inText = line >= 1 && line <= lines.length && column >= 1;
    const inLine = column <= (lines[line - 1]?.length ?? 0) + 1;
    if (!(inWords && short && inText && inLine)) throw new Error(`badly told: ${JSON.stringify(complaint)}`);
  }
  return complaints.length > 0;
}

const DAMAGED = howMany({ short: 300, deep: 10_000 });
const TEXTS = howMany({ short: 150, deep: 3_000 });

test(`${DAMAGED} damaged jobs are read or refused, each mistake with its place and its way out`, () => {
  let refused = 0;
  const check = fc.property(malformed, (text) => {
    if (tellsAll(text)) refused++;
  });
  fc.assert(check, { numRuns: DAMAGED });
  // Damage to a comment or a name does no harm; most other damage does.
  expect(refused).toBeGreaterThan(DAMAGED / 2);
});

test('texts of any kind are refused', () => {
  const any = fc.oneof(
    fc.string({ unit: anySign, maxLength: 60 }),
    fc.array(piece, { maxLength: 30 }).map((all) => all.join('')),
  );
  fc.assert(
    fc.property(any, (text) => {
      if (!tellsAll(text)) throw new Error('it was read');
    }),
    { numRuns: TEXTS },
  );
});

test('aliases of aliases do not grow', () => {
  const layers = Array.from(
    { length: 30 },
    (_, i) => `a${i + 1}: &a${i + 1} [${`*a${i}, `.repeat(9)}*a${i}]`,
  );
  const text = `copeleaf: 1\na0: &a0 [x]\n${layers.join('\n')}\ntubes: *a30\n`;
  // Ten to the thirtieth, if they did: it would never end.
  expect(complaintsAbout(text).length).toBeGreaterThan(0);
});

test('flags of any words are read or refused by name', () => {
  const words = fc.oneof(
    fc.constantFrom('38.1', '1-1/2in', '60', '0', 'square', 'B', ': {', '- ', '# 5', '"', '\n', ''),
    fc.string(),
  );
  const optional = { requiredKeys: [] };
  const flags = fc.record(
    {
      od: words,
      wall: words,
      onto: words,
      angle: words,
      offset: words,
      clock: words,
      edge: words,
      land: words,
    },
    optional,
  );
  fc.assert(
    fc.property(flags, (asked) => {
      for (const complaint of refusalOf(() => jobFromFlags(asked, { words: ENGLISH, paper: A4 }))) {
        const { file, line, read, why, instead } = complaint;
        const told = file === 'flags' && line === undefined && read.includes('--') && read.length < 80;
        if (!told || why === '' || instead === '')
          throw new Error(`badly told: ${JSON.stringify(complaint)}`);
      }
    }),
    { numRuns: TEXTS },
  );
});
