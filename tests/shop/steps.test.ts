import { describe, expect, test } from 'vitest';
import { gapOf } from '../../src/fit/gap.ts';
import { fitUpFacts } from '../../src/leaf/card/fit-up-facts.ts';
import { radians } from '../../src/measure/units.ts';
import { solveJob } from '../../src/saddle/solve.ts';
import { firstEnds, orderOfWork } from '../../src/shop/lists/order.ts';
import { ticketsOf } from '../../src/shop/ticket/ticket.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { someOf } from '../count.ts';
import { readSample } from '../job/sample.ts';

function ticketsFor(job: string, footprints = false) {
  const solutions = solveJob(readSample(`copeleaf: 1\n${job}`));
  return ticketsOf(solutions, firstEnds(orderOfWork(solutions)), footprints, ENGLISH);
}

function stepsFor(tube: string, footprints = false): string {
  return (
    ticketsFor(`tube:\n  name: stay\n  od: 30\n  wall: 2\n${tube}`, footprints)[0]
      ?.steps.map(({ text }) => text)
      .join('\n') ?? ''
  );
}

const ROUND = 'onto: { od: 42.4 }';
const BY_NUMBERS = `  between: 600\n  ends: { A: { ${ROUND}, angle: 60 }, B: { ${ROUND}, angle: 50, clock: 35 } }\n`;
const FITTED = `  between: mark\n  ends: { A: { ${ROUND}, angle: 60 }, B: { ${ROUND}, angle: 50, clock: mark } }\n`;
const ONE_END = `  ends: { A: { ${ROUND}, angle: 60 } }\n`;
const SQUARE_B = `  between: 600\n  ends: { A: { ${ROUND}, angle: 60 }, B: plain }\n`;
const MITRED =
  '  between: 600\n  ends: { A: { onto: { mitre: { turn: 90 } } }, B: { onto: { mitre: { turn: 90 } } } }\n';
const KNIFE = `  ends: { A: { onto: { od: 30 }, angle: 90 } }\n`;

/** Words of a step, and which tubes need it. */
const NEEDED: readonly (readonly [string, readonly string[]])[] = [
  ['Scribe the spine (one straight line along the tube, 0°)', [BY_NUMBERS, MITRED]],
  [
    'its spine (one straight line along the tube, 0°) anywhere round the tube',
    [FITTED, ONE_END, SQUARE_B, KNIFE],
  ],
  ['Scribe the rotation mark', [FITTED]],
  ['take the leaf off and cut end A', [BY_NUMBERS, FITTED, ONE_END, SQUARE_B, MITRED, KNIFE]],
  ['take the leaf off and cut end B', [BY_NUMBERS, FITTED, MITRED]],
  ['mark the length', [FITTED]],
  ['Check which way end', [BY_NUMBERS, FITTED, MITRED]],
  // A workshop's "off square" is out of square: no step asks for that.
  ['Cut end B square', [SQUARE_B]],
  ['off square', []],
  ['feather edge', [KNIFE]],
  ['footprint', [BY_NUMBERS, FITTED, ONE_END, SQUARE_B, KNIFE]],
  ['Drill one vent', [BY_NUMBERS, FITTED]],
  ['do not spring the frame', [BY_NUMBERS, FITTED]],
  ['Tack, and check again', [BY_NUMBERS, FITTED]],
  ['Tack, check the angle', [ONE_END, SQUARE_B, KNIFE]],
  ['on a scrap', [BY_NUMBERS, FITTED, ONE_END, SQUARE_B, MITRED, KNIFE]],
  ['Deburr', [BY_NUMBERS, FITTED, ONE_END, SQUARE_B, MITRED, KNIFE]],
  ['Clean bright', [BY_NUMBERS, FITTED, ONE_END, SQUARE_B, MITRED, KNIFE]],
];

describe('a ticket has the steps that its tube needs, and no others', () => {
  test.each(NEEDED)('%s', (words, tubes) => {
    for (const tube of [BY_NUMBERS, FITTED, ONE_END, SQUARE_B, MITRED, KNIFE]) {
      expect(stepsFor(tube).includes(words), tube).toBe(tubes.includes(tube));
    }
  });
});

describe('the steps carry this tube’s numbers', () => {
  test('its blank, how much longer that is, and why', () => {
    // Square onto the header's middle, each end's long points lie where its sides touch, 90° round: at a header of
    // 42.4 and a tube of 30 sqrt(21.2^2 - 15^2) = 14.98 from the work point, and never nearer the body than that
    // at the angles 60 and 50: (x cos t + sqrt(R^2 - y^2)) / sin t is least at the toe's side.
    const blank = /Cut the blank 610 mm long: ([\d.]+) mm/.exec(stepsFor(BY_NUMBERS));
    const least = (angle: number) => {
      const [c, s] = [Math.cos(radians(angle)), Math.sin(radians(angle))];
      const at = (phi: number) =>
        (15 * Math.cos(phi) * c + Math.sqrt(21.2 ** 2 - (15 * Math.sin(phi)) ** 2)) / s;
      return Math.min(...Array.from({ length: 7200 }, (_, i) => at((i * Math.PI) / 3600)));
    };
    const finished = 600 - least(60) - least(50);
    expect(Number(blank?.[1])).toBeCloseTo(610 - finished, 1);
    const slant = stepsFor(
      '  between: 600\n  ends: { A: { onto: { plate: {} }, angle: 35 }, B: { onto: { plate: {} }, angle: 35 } }\n',
    );
    // Each toe reaches 15 / tan 35 = 21.42 mm beyond, and the saw is set to the next half millimetre of 652.84.
    expect(slant).toContain('Cut the blank 653 mm');
    expect(slant).toContain('long: 10.16 mm');
  });

  test('the way round by tape, and which end is first and why', () => {
    expect(stepsFor(BY_NUMBERS)).toContain(`a tape reads ${(30 * Math.PI).toFixed(2)} mm`);
    expect(stepsFor(BY_NUMBERS)).toContain(
      'Lay the leaf of end A first. Its cut is shallower: a mistake there wastes less. Printed side out',
    );
    expect(stepsFor(FITTED)).toContain(
      'Lay the leaf of end A first. The other is marked with this one seated.',
    );
  });

  test('on which side the second end turns, the other way round for the opposite hand', () => {
    const [drawn, opposite] = ticketsFor(`pair: true\ntube:\n  od: 30\n${BY_NUMBERS}`);
    const wordsOf = (ticket: typeof drawn) => ticket?.steps.map(({ text }) => text).join();
    expect(wordsOf(drawn)).toContain('35° to the right');
    expect(wordsOf(opposite)).toContain('35° to the left');
    expect(wordsOf(opposite)).toContain('This tube is the opposite hand');
  });

  test('its edge', () => {
    expect(stepsFor(BY_NUMBERS)).toContain(
      'where the dashed line lies in the waste, angle the cut so the inside edge stays long',
    );
    expect(stepsFor(`  edge: square\n${BY_NUMBERS}`)).toContain('leave the face square');
    expect(stepsFor(`  land: 1\n${BY_NUMBERS}`)).toContain('a land of 1 mm');
  });
});

describe('the numbers for the saw', () => {
  const sawFor = (tube: string) => ticketsFor(`tube:\n  od: 30\n  wall: 2\n${tube}`)[0]?.saw;

  test('are the blank, what the leaves lie apart, and the twist', () => {
    expect(sawFor(BY_NUMBERS)?.map(({ label }) => label)).toEqual([
      'blank',
      'base edge to base edge',
      'rotation A to B',
    ]);
    expect(sawFor(BY_NUMBERS)?.map(({ text }) => text)).toContain('35° right');
    expect(sawFor(`  copies: 3\n${BY_NUMBERS}`)?.[0]?.text).toMatch(/^3 x 610 mm/);
  });

  test('say of what the leaves lie apart the same as the step that lays the second one', () => {
    for (const tube of [BY_NUMBERS, SQUARE_B]) {
      // The step has it in the job's unit alone.
      const apart = sawFor(tube)?.find(({ label }) => label.startsWith('base edge'))?.text ?? 'none';
      expect(stepsFor(tube)).toContain(`its base edge ${apart.replace(/ \(.*/, '')} from`);
    }
  });

  test('are none where the length is marked on the tube', () => {
    expect(sawFor(FITTED)).toEqual([]);
  });
});

test('a leaf is tried on scrap once, however many tubes are made of it', () => {
  const steps = ticketsFor(`tube:\n  od: 30\n  wall: 2\n  copies: 4\n${BY_NUMBERS}`)[0]?.steps ?? [];
  expect(steps.filter(({ once }) => once).map(({ text }) => text.slice(0, 12))).toEqual(['Try the leaf']);
});

test('the leaf is tried before anything is cut', () => {
  for (const tube of [BY_NUMBERS, FITTED, ONE_END, SQUARE_B, MITRED, KNIFE])
    expect(stepsFor(tube).startsWith('Try the leaf')).toBe(true);
});

describe('why an end is cut first', () => {
  const why = (A: string, B: string) =>
    /first\. ([^.]*)\./.exec(stepsFor(`  between: 600\n  ends: { A: { ${A} }, B: { ${B} } }\n`))?.[1];

  test('two ends are alike only onto like headers at like angles', () => {
    expect(why(`${ROUND}, angle: 60`, `${ROUND}, angle: 60, clock: 90`)).toBe('Both ends are alike');
    expect(why(`${ROUND}, angle: 60`, `${ROUND}, angle: 120`)).toBe('Both ends are alike');
  });

  test('of two that are only as deep as each other that is said, and no more', () => {
    // From heel to toe a cut is the tube's width by the cotangent of its angle deep, whatever it lands on.
    const said = why('onto: { plate: {} }, angle: 55', 'onto: { od: 60.3 }, angle: 55');
    expect(said).toContain('equally deep');
    expect(said).not.toContain('alike');
  });
});

describe('an end that is left square', () => {
  const seat = (onto: string, more = '') =>
    /Seat end A .*/.exec(stepsFor(`  edge: square\n${more}  ends: { A: { ${onto} } }\n`))?.[0] ?? '';

  test('touches with its inner edge alone only where no side of the joint is acute', () => {
    expect(seat('onto: { od: 42.4 }, angle: 90')).toContain('its inside edge touches all round');
    expect(seat('onto: { plate: {} }, angle: 90')).toContain('its face touches all round');
    // At an acute heel the outside lies deeper than the inside by the wall by the cotangent: it touches first.
    for (const onto of ['onto: { od: 42.4 }, angle: 60', 'onto: { plate: {} }, angle: 60'])
      expect(seat(onto)).toContain(
        'its outside edge touches where the dashes run on the line, its inside edge elsewhere',
      );
  });

  test('held radially to the inside line is held off by its outer edge', () => {
    // Onto a plate at 60: the outer edge lies wall / tan 60 = 2 / 1.732 = 1.15 deeper at the heel.
    expect(seat('onto: { plate: {} }, angle: 60', '  from: inside\n')).toContain('holds it off by 1.15 mm');
  });

  test('names a gap that a rod goes into, and where; and what the wrong line would cost', () => {
    const mast = ticketsFor(
      'tube: { od: 114.3, wall: 3.6, edge: square, between: 640, ends: { A: { onto: { od: 139.7 }, angle: 60 }, B: plain } }\n',
    )[0]?.steps.map(({ text }) => text);
    expect(mast?.join('\n')).toMatch(
      /A gap of up to 2\.92 mm stays outside, widest at stations 103° and 257°: make the legs of the weld longer by as much\./,
    );
    // An offset joint is not the same on both sides of its heel.
    const aside = ticketsFor(
      'tube: { od: 114.3, wall: 3.6, edge: square, between: 640, ends: { A: { onto: { od: 139.7 }, angle: 60, offset: 3 }, B: plain } }\n',
    )[0]?.steps.map(({ text }) => text);
    expect(aside?.join('\n')).toMatch(/widest at station \d+°:/);
    expect(mast?.join('\n')).toContain('cut on the dashed line it would stand off 5.52 mm');
    expect(seat('onto: { od: 42.4 }, angle: 90')).not.toContain('A gap of up to');
  });
});

describe('twins are never taken for one another', () => {
  const [drawn, opposite, other] = ticketsFor(
    `tubes:\n  - { name: stay, od: 30, pair: true, between: 600, ends: { A: { ${ROUND}, angle: 60 }, B: { ${ROUND}, angle: 50, clock: 35 } } }\n` +
      `  - { name: rung, od: 30, between: 600, ends: { A: { ${ROUND}, angle: 90 }, B: { ${ROUND}, angle: 90 } } }\n`,
  );

  test('each is named by its hand and tells its twin’s ticket; a tube without one tells neither', () => {
    expect(drawn?.hand).toEqual({ own: 'as-drawn', twin: 2 });
    expect(opposite?.hand).toEqual({ own: 'opposite', twin: 1 });
    expect(other).not.toHaveProperty('hand');
    expect([drawn, opposite, other].map((ticket) => [ticket?.number, ticket?.of])).toEqual([
      [1, 3],
      [2, 3],
      [3, 3],
    ]);
  });
});

test('an end with a land names a gap where `check` finds one that a rod goes into, and no other', () => {
  const lands = [35, 50, 65, 90].flatMap((angle) => [0.5, 1, 1.5, 2, 3].map((land) => ({ angle, land })));
  const found = new Set<boolean>();
  for (const { angle, land } of someOf(lands, { short: 3 })) {
    const tube = `{ od: 42.4, wall: 4, land: ${land}, ends: { A: { onto: { od: 48.3 }, angle: ${angle} } } }`;
    const [solution] = solveJob(readSample(`copeleaf: 1\ntube: ${tube}\n`));
    const cope = solution?.ends.A;
    if (cope?.kind !== 'coped') throw new Error('not coped');
    const { mm } = gapOf(cope, 4);
    const seat = ticketsFor(`tube: ${tube}\n`)[0]?.steps.find(({ text }) => text.startsWith('Seat'));
    expect(seat?.text.includes('A gap of up to'), `${angle} ${land} ${mm}`).toBe(mm > 1.6);
    found.add(mm > 1.6);
  }
  expect(found.size).toBe(2);
});

describe('of a pair whose heels lie alike in both hands the ticket tells', () => {
  const checks = (ends: string) =>
    ticketsFor(`pair: true\ntube: { od: 42.4, wall: 2.6, between: 720, ends: ${ends} }\n`).map(
      ({ steps }) => steps.find(({ text }) => text.startsWith('Check which way'))?.text ?? '',
    );

  // Seen from outside at the heel with B up, stations grow to the right; a roll turns the face towards clock + 90.
  test('which way a box is rolled', () => {
    const [drawn = '', opposite = ''] = checks(
      '{ A: { onto: { od: 60 }, angle: 40 }, B: { onto: { box: { wide: 70, deep: 70, wall: 3, roll: 10 } }, angle: 50, clock: 180 } }',
    );
    expect(drawn).toContain('near face rolled 10° to the right of its heel');
    expect(opposite).toContain('near face rolled 10° to the left of its heel');
  });

  test('on which side a header passes; at an obtuse angle the heel is on the other side', () => {
    const ends = (angle: number) =>
      `{ A: { onto: { od: 60 }, angle: 40 }, B: { onto: { od: 60 }, angle: ${angle}, offset: 3 } }`;
    expect(checks(ends(50)).map((text) => /passes to the (\w+)/.exec(text)?.[1])).toEqual(['right', 'left']);
    expect(checks(ends(130)).map((text) => /passes to the (\w+)/.exec(text)?.[1])).toEqual(['left', 'right']);
  });

  test('that nothing tells them apart where nothing does', () => {
    for (const text of checks('{ A: { onto: { od: 60 }, angle: 40 }, B: { onto: { od: 60 }, angle: 50 } }'))
      expect(text).toContain('its twin comes out the same');
  });
});

describe('where a tube lands is marked by its footprint where that is printed', () => {
  const PLATE_A =
    '  between: 600\n  ends: { A: { onto: { plate: {} }, angle: 60 }, B: { onto: { od: 42.4 }, angle: 50 } }\n';

  test('else the tube is held in place and scribed round', () => {
    expect(stepsFor(BY_NUMBERS)).toContain('Hold the tube in place and scribe both footprints round it.');
    expect(stepsFor(BY_NUMBERS)).not.toContain('as its card says');
    expect(stepsFor(BY_NUMBERS, true)).not.toContain('Hold the tube in place');
  });

  test('wrapped round what is round, laid where one is flat', () => {
    expect(stepsFor(BY_NUMBERS, true)).toContain(
      'Wrap each end’s footprint round its header, as its card says, and scribe by it.',
    );
    expect(stepsFor(PLATE_A, true)).toContain('Lay each end’s footprint on its header, as');
    expect(stepsFor(ONE_END, true)).toContain(
      'Wrap the footprint of end A round the 42.4 mm header, as its card',
    );
    expect(stepsFor(MITRED, true)).not.toContain('footprint');
  });

  test('and one vent, at an end that is named, into what is hollow', () => {
    expect(stepsFor(BY_NUMBERS)).toContain('Drill one vent, inside end A’s footprint');
    expect(stepsFor(PLATE_A)).toContain('Drill one vent, inside end B’s footprint');
    const plates = '{ onto: { plate: {} }, angle: 60 }';
    expect(stepsFor(`  between: 600\n  ends: { A: ${plates}, B: ${plates} }\n`)).toContain(
      'Drill one vent, in the tube itself',
    );
  });
});

test('a blank of no known length is left longer by what the cut takes up, rounded up', () => {
  // From heel to toe the cut is the tube's width by the cotangent of its angle deep: 30 cot 35° = 42.84 mm, 1.687 in.
  const slant = (units: string, od: string) =>
    ticketsFor(
      `units: ${units}\ntube: { od: ${od}, wall: 2mm, ends: { A: { onto: { plate: {} }, angle: 35 } } }\n`,
    )[0]?.steps[1]?.text;
  expect(slant('mm', '30mm')).toContain('leave at least 43 mm extra');
  // 1-1/4 in cot 35° = 1.785 in, over 28 sixteenths.
  expect(slant('in', '1-1/4in')).toContain('leave at least 1-13/16 in extra');
});

test('a gap that a square face leaves is added to the weld, but for one over 5 mm', () => {
  const seat = (od: number, wall: number, onto: number) =>
    ticketsFor(
      `tube: { od: ${od}, wall: ${wall}, edge: square, between: 900, ends: { A: { onto: { od: ${onto} }, angle: 60 }, B: plain } }\n`,
    )[0]?.steps.find(({ text }) => text.startsWith('Seat'))?.text;
  expect(seat(114.3, 3.6, 139.7)).toContain('make the legs of the weld longer by as much');
  expect(seat(168.3, 7.1, 193.7)).toMatch(/A gap of up to 5\.94 mm .* too wide to fill: .* refit\./);
});

test('the second end is filed as the first one, where both are filed until no rod goes in', () => {
  expect(stepsFor(BY_NUMBERS)).toContain("file until a 1.6 mm (1/16 in) rod won't enter the gap anywhere");
  expect(stepsFor(BY_NUMBERS)).toContain('Seat end B on the 42.4 mm header: file as at end A.');
  expect(stepsFor(`  root: 2\n${BY_NUMBERS}`)).not.toContain('file as at end');
});

test('a tube with one joint is set at its angle, to each of its headers', () => {
  expect(stepsFor(ONE_END)).toContain('Set it at 60° to the 42.4 mm header.');
  expect(stepsFor(KNIFE)).toContain('Set it square to the 30 mm header.');
  expect(stepsFor(NODE)).toContain('Set it at 60° to header 1 and at 50° to header 2.');
});

const NODE =
  '  ends:\n    A:\n      - { onto: { od: 42.4 }, angle: 60 }\n      - { onto: { od: 42.4 }, angle: 50, clock: 180, offset: 2 }\n';

test('of several headers it is said whose clock and offset are told', () => {
  const [ticket] = ticketsFor(`tube:\n  od: 30\n${NODE}`);
  const facts = ticket?.ends[0]?.facts.map(({ label, text }) => `${label} ${text}`) ?? [];
  expect(facts).toContain('clocking header 2: opposite the spine, at 180°');
  expect(facts.filter((text) => text.startsWith('offset header 2: 2 mm'))).toHaveLength(1);
  const one = ticketsFor(`tube:\n  od: 30\n${BY_NUMBERS}`)[0]?.ends[1]?.facts;
  expect(one?.find(({ label }) => label === 'clocking')?.text).toBe('35° right of the spine');
});

test('a mark at the frame is told in the same words by the ticket and the leaf’s card', () => {
  const [solution] = solveJob(readSample(`copeleaf: 1\ntube:\n  od: 30\n  wall: 2\n${FITTED}`));
  const cope = solution?.ends.B;
  if (cope?.kind !== 'coped') throw new Error('not coped');
  const card = fitUpFacts(cope, 'mm', ENGLISH).find(({ label }) => label === 'length')?.text ?? '';
  const step = /mark the length: (.*)\./.exec(stepsFor(FITTED))?.[1] ?? 'none';
  expect(card).toContain(step);
});

test('a rotation mark is made on the heel side; a square joint has none, and it is said which side serves', () => {
  const marked = (angle: number, offset: number) =>
    stepsFor(
      `  between: mark\n  ends: { A: { ${ROUND}, angle: 60 }, B: { ${ROUND}, angle: ${angle}, offset: ${offset}, clock: mark } }\n`,
    );
  expect(marked(50, 0)).toContain('its heel side, which faces the acute corner');
  expect(marked(90, 0)).not.toContain('acute');
  expect(marked(90, 0)).toContain('a side that faces along the header: either side');
  expect(marked(90, 3)).toContain('the side from which the header passes 3 mm (~1/8 in) to the right');
});
