import { describe, expect, test } from 'vitest';
import { gapOf } from '../../src/fit/gap.ts';
import { contextOf, leavesOf, printedOf } from '../../src/leaf/leaves-of.ts';
import { heelsPicture } from '../../src/leaf/picture/heels-picture.ts';
import { radians } from '../../src/measure/units.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { firstEnds, orderOfWork } from '../../src/shop/lists/order.ts';
import { ticketsOf } from '../../src/shop/ticket/ticket.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { someOf } from '../count.ts';
import { readSample } from '../job/sample.ts';

function ticketsFor(job: string, footprints = false) {
  const solutions = solveHands(readSample(`copeleaf: 1\n${job}`));
  return ticketsOf(solutions, firstEnds(orderOfWork(solutions)), footprints, ENGLISH);
}

function stepsFor(tube: string, footprints = false): string {
  return (
    ticketsFor(`tube:\n  name: stay\n  od: 30\n  wall: 2\n${tube}`, footprints)[0]
      ?.steps.flatMap(({ text, warnings }) => [text, ...warnings])
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
const BESIDE = `  between: 600\n  ends: { A: { ${ROUND}, angle: 60, offset: -4 }, B: { ${ROUND}, angle: 50, clock: 35 } }\n`;
const KNIFE = `  ends: { A: { onto: { od: 30 }, angle: 90 } }\n`;

/** Words of a step, and which tubes need it. */
const NEEDED: readonly (readonly [string, readonly string[]])[] = [
  ['Scribe the spine (one straight line along the tube, 0°)', [BY_NUMBERS, MITRED]],
  [
    'its spine (one straight line along the tube, 0°) anywhere round the tube',
    [FITTED, ONE_END, SQUARE_B, KNIFE],
  ],
  ['Scribe the rotation mark', [FITTED]],
  // The other end is measured from it.
  ['the solid line and the base edge', [BY_NUMBERS, ONE_END, MITRED, KNIFE]],
  ['Cut end A on the solid line', [BY_NUMBERS, FITTED, ONE_END, SQUARE_B, MITRED, KNIFE]],
  ['Mark and cut end B as you did end A', [BY_NUMBERS, FITTED, MITRED]],
  ['make the length mark', [FITTED]],
  ['Before you cut: ', [BY_NUMBERS, FITTED, SQUARE_B, MITRED]],
  ['The tube’s length is measured from the base edge', [ONE_END, KNIFE]],
  // A workshop's "off square" is out of square: no step asks for that.
  ['Cut end B square', [SQUARE_B]],
  ['off square', []],
  ['feather edge', [KNIFE]],
  ['footprint', [BY_NUMBERS, FITTED, ONE_END, SQUARE_B, KNIFE]],
  ['Drill one 5 mm vent', [BY_NUMBERS, FITTED]],
  ['do not spring the frame', [BY_NUMBERS, FITTED]],
  ['Tack, and check again', [BY_NUMBERS, FITTED]],
  ['Tack, check the angle', [ONE_END, SQUARE_B, KNIFE]],
  ['If end B is capped later, drill a 5 mm vent in the tube or the cap', [SQUARE_B]],
  ['Watch for fire', [BY_NUMBERS, FITTED, ONE_END, SQUARE_B, KNIFE]],
  ['n a scrap', [BY_NUMBERS, FITTED, ONE_END, SQUARE_B, MITRED, KNIFE]],
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
  test('how far beside the middle of its header an end sits, or it would be filed to sit on it', () => {
    expect(stepsFor(BESIDE).match(/It sits 4 mm beside the header’s middle/g)).toHaveLength(1);
    expect(stepsFor(BY_NUMBERS)).not.toContain('beside the header’s middle');
  });

  test('its blank, how much longer that is, and why', () => {
    // Square onto the header's middle, each end's long points lie where its sides touch, 90° round: at a header of
    // 42.4 and a tube of 30 sqrt(21.2^2 - 15^2) = 14.98 from the work point, and never nearer the body than that
    // at the angles 60 and 50: (x cos t + sqrt(R^2 - y^2)) / sin t is least at the toe's side.
    const blank = /Cut the blank: ([\d.]+) mm/.exec(stepsFor(BY_NUMBERS));
    const least = (angle: number) => {
      const [c, s] = [Math.cos(radians(angle)), Math.sin(radians(angle))];
      const at = (phi: number) =>
        (15 * Math.cos(phi) * c + Math.sqrt(21.2 ** 2 - (15 * Math.sin(phi)) ** 2)) / s;
      return Math.min(...Array.from({ length: 7200 }, (_, i) => at((i * Math.PI) / 3600)));
    };
    const finished = 600 - least(60) - least(50);
    // To the half millimetre that a tape is read to.
    expect(Math.abs(Number(blank?.[1]) - (610 - finished))).toBeLessThanOrEqual(0.25);
    const slant = stepsFor(
      '  between: 600\n  ends: { A: { onto: { plate: {} }, angle: 35 }, B: { onto: { plate: {} }, angle: 35 } }\n',
    );
    // Each toe reaches 15 / tan 35 = 21.42 mm beyond, and the saw is set to the next half millimetre of 652.84.
    expect(slant).toContain('Cut the blank: 10 mm is over');
  });

  test('which end is first', () => {
    expect(stepsFor(BY_NUMBERS)).toContain('Lay leaf A first, printed side out');
    expect(stepsFor(ONE_END)).toContain('Lay leaf A, printed side out');
  });

  test('where the paper is cut: no dashes go with the scrap', () => {
    const outside = 'but outside any dashes in the waste';
    const covered = 'prick through the paper what it covers and the dashes';
    // At an acute heel the inside edge lies nearer the joint than the outside one; square on, nowhere.
    const square = `  ends: { A: { ${ROUND}, angle: 90 } }\n`;
    for (const words of [outside, covered]) {
      expect(stepsFor(BY_NUMBERS)).toContain(words);
      expect(stepsFor(square)).not.toContain(words);
      expect(stepsFor(MITRED)).not.toContain(words);
    }
    expect(stepsFor(square)).toContain('prick the dashed one (the inside edge) through the paper');
  });

  test('its edge', () => {
    expect(stepsFor(BY_NUMBERS)).toContain(
      'where the dashes lie in the waste, tilt the cut so the inside edge stays long',
    );
    expect(stepsFor(`  edge: square\n${BY_NUMBERS}`)).toContain(
      'with no bevel: the disc points at the tube’s middle',
    );
    expect(stepsFor(`  land: 1\n${BY_NUMBERS}`)).toContain('a land of 1 mm');
  });
});

test('what lies anywhere round its tube has no clocking to tell, and what goes on several headers has a spine to turn it by', () => {
  const told = (ends: string) => {
    const [ticket] = ticketsFor(`tube:\n  od: 30\n  wall: 2\n  ends: { A: ${ends} }\n`);
    return [ticket?.ends[0]?.facts, ticket?.steps].map((all) => all?.map(({ fact }) => String(fact)));
  };
  const [free, freeSteps] = told(`{ ${ROUND}, angle: 60, clock: 20 }`);
  expect(free).not.toContain('clocking');
  expect(freeSteps).not.toContain('step:spine');
  const [union, unionSteps] = told(
    `[{ ${ROUND}, angle: 60, clock: 20 }, { ${ROUND}, angle: 60, clock: 110 }]`,
  );
  expect(union).toContain('clocking');
  expect(unionSteps).toContain('step:spine');
});

describe('the numbers for the saw', () => {
  const sawFor = (tube: string) => ticketsFor(`tube:\n  od: 30\n  wall: 2\n${tube}`)[0]?.saw;

  test('are the blank and the rotation; what the leaves lie apart is on the leaves', () => {
    expect(sawFor(BY_NUMBERS)?.map(({ label }) => label)).toEqual(['blank', 'rotation A to B']);
    expect(sawFor(BY_NUMBERS)?.map(({ text }) => text)).toEqual(['610 mm', '35° right']);
    expect(sawFor(`  copies: 3\n${BY_NUMBERS}`)?.[0]?.text).toBe('3 x 610 mm');
    expect(stepsFor(BY_NUMBERS)).toContain(
      'its base edge as far from the one marked at end A as the leaf says',
    );
    expect(stepsFor(SQUARE_B)).toContain('its base edge as far from end B as the leaf says');
  });

  test('are none where the length is marked on the tube', () => {
    expect(sawFor(FITTED)).toEqual([]);
  });
});

test('a leaf is tried on scrap once, however many tubes are made of it', () => {
  const steps = ticketsFor(`tube:\n  od: 30\n  wall: 2\n  copies: 4\n${BY_NUMBERS}`)[0]?.steps ?? [];
  expect(steps.filter(({ once }) => once).map(({ text }) => text.slice(0, 12))).toEqual(['Cut out the ']);
});

test('the leaf is tried before anything is cut', () => {
  for (const tube of [BY_NUMBERS, FITTED, ONE_END, SQUARE_B, MITRED, KNIFE])
    expect(stepsFor(tube)).toMatch(
      /^Cut out the (leaf|leaves) .* On a scrap (its|their) seam edges must meet: if not, measure the bars, then round the tube, and print again by that[.]$/m,
    );
});

describe('an end that is left square', () => {
  const seat = (onto: string, more = '') =>
    /Seat it on .*/s.exec(stepsFor(`  edge: square\n${more}  ends: { A: { ${onto} } }\n`))?.[0] ?? '';

  test('touches with its inner edge alone only where no side of the joint is acute', () => {
    expect(seat('onto: { od: 42.4 }, angle: 90')).toContain('its inside edge touches all round');
    expect(seat('onto: { plate: {} }, angle: 90')).toContain('its face touches all round');
    // At an acute heel the outside lies deeper than the inside by the wall by the cotangent: it touches first.
    for (const onto of ['onto: { od: 42.4 }, angle: 60', 'onto: { plate: {} }, angle: 60'])
      expect(seat(onto)).toContain('everywhere its outside or its inside edge touches');
  });

  test('is seated without its dashes, which went with the scrap', () => {
    for (const onto of ['onto: { od: 42.4 }, angle: 60', 'onto: { plate: {} }, angle: 60'])
      expect(seat(onto)).not.toMatch(/dash/);
  });

  test('held radially to the inside line is held off by its outer edge', () => {
    // Onto a plate at 60: the outer edge lies wall / tan 60 = 2 / 1.732 = 1.15 deeper at the heel, 1.2 to a tenth.
    expect(seat('onto: { plate: {} }, angle: 60', '  from: inside\n')).toContain(
      'Its outside edge holds it off 1.2 mm',
    );
  });

  test('names a gap that a rod goes into, and where; and what the wrong line would cost', () => {
    const warned = (more = '') =>
      ticketsFor(
        `tube: { od: 114.3, wall: 3.6, edge: square, between: 640, ends: { A: { onto: { od: 139.7 }, angle: 60${more} }, B: plain } }\n`,
      )[0]
        ?.steps.flatMap(({ fact, warnings }) => warnings.map((warning) => `${fact} ${warning}`))
        .join('\n');
    expect(warned()).toContain(
      // 103.2° of pi x 114.3 = 359.1 mm round.
      'A gap of 2.9 mm stays outside, widest 103 mm round from the heel on both sides: make the leg of the weld there longer by as much.',
    );
    // An offset joint is not the same on both sides of its heel.
    expect(warned(', offset: 3')).toMatch(
      /widest [\d.]+ mm to the (left|right) of the heel, round the tube:/,
    );
    expect(warned()).toContain('step:scrap Not on the dashed line: there it would stand off 5.5 mm.');
    expect(seat('onto: { od: 42.4 }, angle: 90')).not.toContain('A gap of');
  });
});

describe('what may disappoint stands in its step, with what to do', () => {
  test('a tube that passes beside its header is not filed until no rod goes in there', () => {
    // 30 / 2 + 10 - 42.4 / 2 = 3.8 mm past the side.
    const steps = stepsFor(`  ends: { A: { ${ROUND}, angle: 60, offset: 10 } }\n`);
    expect(steps).toContain(
      'Its edge passes up to 4 mm beside the header and touches nothing there: close that with a plate.',
    );
    expect(steps).toContain("until a 1.6 mm rod won't enter the gap where it touches");
    expect(steps).not.toContain('anywhere.');
  });

  test('a tube wider than the flat of a box is flattened', () => {
    // Corners of twice a wall of 4: 34 - 16 = 18 mm of flat, 12 less than the tube.
    expect(
      stepsFor('  ends: { A: { onto: { box: { wide: 34, deep: 34, wall: 4 } }, angle: 90 } }\n'),
    ).toContain("The tube is 12 mm wider than the flat of the box's face");
  });

  test('the corner of a box that a cut to its flat leaves to be filled', () => {
    // A tube as wide as the box: 0.41 of a corner of 8 at full width.
    const box = 'onto: { box: { wide: 30, deep: 30, corner: 8 } }';
    expect(stepsFor(`  to: flat\n  ends: { A: { ${box}, angle: 90 } }\n`)).toMatch(
      /A gap of 3\.\d mm stays outside/,
    );
  });

  test('a heel under 30°, of its end, before anything is cut', () => {
    const [ticket] = ticketsFor(
      `tube: { od: 30, wall: 2, between: 600, ends: { A: { ${ROUND}, angle: 30 }, B: { ${ROUND}, angle: 151 } } }\n`,
    );
    const warned = ticket?.steps.flatMap(({ fact, warnings }) => warnings.map((text) => `${fact} ${text}`));
    expect(warned?.filter((text) => text.includes('under 30°'))).toEqual([
      expect.stringMatching(/^step:blank End B is under 30°.*open the angle before you cut/),
    ]);
  });

  test('a piece too short to be held, or to be sound', () => {
    const steps = (between: number) =>
      stepsFor(`  between: ${between}\n  ends: { A: { ${ROUND}, angle: 90 }, B: { ${ROUND}, angle: 90 } }\n`);
    expect(steps(200)).not.toContain('Too short to hold');
    expect(steps(150)).toContain('Too short to hold by hand: cope end A on long stock');
    // Less than a diameter between the short points: 70 - 42.4 = 27.6 mm.
    expect(steps(70)).toContain('Only 27.5 mm is left between the short points');
    expect(steps(75)).not.toContain('is left between');
  });
});

describe('both hands of a pair share a ticket', () => {
  const [pair, other] = ticketsFor(
    `tubes:\n  - { name: stay, od: 30, pair: true, between: 600, ends: { A: { ${ROUND}, angle: 60 }, B: { ${ROUND}, angle: 50, clock: 35, offset: 2 } } }\n` +
      `  - { name: rung, od: 30, between: 600, ends: { A: { ${ROUND}, angle: 90 }, B: { ${ROUND}, angle: 90 } } }\n`,
  );

  test('which has what differs twice, and all else once', () => {
    expect([pair, other].map((ticket) => [ticket?.number, ticket?.of, ticket?.make])).toEqual([
      [1, 2, 'make 1 of each hand'],
      [2, 2, 'make 1'],
    ]);
    expect(pair?.hands.map(({ hand, saw }) => [hand, saw.map(({ text }) => text)])).toEqual([
      ['as-drawn', ['35° right']],
      ['opposite', ['35° left']],
    ]);
    expect(pair?.hands.map(({ facts }) => facts.map(({ end, fact }) => [end, fact.fact]))).toEqual(
      [0, 1].map(() => [
        // Its clocking is the tube's rotation, which stands with the numbers for the saw.
        ['B', 'offset'],
      ]),
    );
    expect(pair?.saw.map(({ text }) => text)).toEqual(['2 x 610 mm']);
    expect(pair?.steps.every(({ hand }) => hand === undefined)).toBe(true);
    expect(other?.hands).toHaveLength(1);
  });

  test('a step that differs is told of each hand', () => {
    // Of an offset joint the gap is widest on one side, which is the other side in the other hand.
    const [ticket] = ticketsFor(
      'pair: true\ntube: { od: 114.3, wall: 3.6, edge: square, between: 640, ends: { A: { onto: { od: 139.7 }, angle: 60, offset: 3 }, B: plain } }\n',
    );
    const own = ticket?.steps.filter(({ hand }) => hand) ?? [];
    expect(own.map(({ hand, text }) => [hand, text.slice(0, 9)])).toEqual([
      ['as-drawn', 'As drawn:'],
      ['opposite', 'Opposite '],
    ]);
    const [drawn, opposite] = own.map(
      ({ warnings }) => /widest ([\d.]+ mm) to the (left|right) of the heel/.exec(warnings.join()) ?? [],
    );
    expect(drawn?.[1]).toBe(opposite?.[1]);
    expect([drawn?.[2], opposite?.[2]].sort()).toEqual(['left', 'right']);
  });
});

test('an end with a land names a gap where `check` finds one that a rod goes into, and no other', () => {
  const lands = [35, 50, 65, 90].flatMap((angle) => [0.5, 1, 1.5, 2, 3].map((land) => ({ angle, land })));
  const found = new Set<boolean>();
  for (const { angle, land } of someOf(lands, { short: 3 })) {
    const tube = `{ od: 42.4, wall: 4, land: ${land}, ends: { A: { onto: { od: 48.3 }, angle: ${angle} } } }`;
    const [solution] = solveHands(readSample(`copeleaf: 1\ntube: ${tube}\n`));
    const cope = solution?.ends.A;
    if (cope?.kind !== 'coped') throw new Error('not coped');
    const { mm } = gapOf(cope, 4);
    const seat = ticketsFor(`tube: ${tube}\n`)[0]?.steps.find(({ fact }) => fact === 'step:seat');
    expect(
      seat?.warnings.some((text) => text.startsWith('A gap of')),
      `${angle} ${land} ${mm}`,
    ).toBe(mm > 1.6);
    found.add(mm > 1.6);
  }
  expect(found.size).toBe(2);
});

describe('before the second cut the tube is looked at beside its picture', () => {
  const checks = (ends: string, more = '') =>
    ticketsFor(`${more}tube: { od: 42.4, wall: 2.6, between: 720, ends: ${ends} }\n`)[0]?.steps.filter(
      ({ fact }) => fact === 'step:facing',
    ) ?? [];
  const check = (ends: string, more = '') => checks(ends, more).at(-1)?.text ?? '';
  const SQUARE = '{ onto: { od: 60 }, angle: 90 }';
  const UNION = '[{ onto: { od: 60 }, angle: 60 }, { onto: { od: 48.3 }, angle: 50, clock: 90 }]';
  const PLATE = '{ onto: { plate: {} }, angle: 90 }';
  const MITRE = '{ onto: { mitre: { turn: 90 } } }';

  test.each([
    [`{ A: ${SQUARE}, B: ${SQUARE} }`, 'the heel of leaf B lies at line B of the picture'],
    [
      `{ A: ${SQUARE}, B: ${UNION} }`,
      'Hold leaf B up to its headers, turned as the picture has them: each stretch of its cut lies at the header that it names.',
    ],
    [
      `{ A: ${UNION}, B: ${UNION} }`,
      'Hold leaf B up to its headers, turned as the picture has them: each stretch of its cut lies at the header that it names.',
    ],
    [`{ A: ${MITRE}, B: ${MITRE} }`, 'the inside of leaf B lies at line B of the picture'],
    [
      `{ A: ${SQUARE}, B: { onto: { plate: {} }, angle: 60 } }`,
      'the heel of leaf B lies at line B of the picture',
    ],
  ])('%s', (ends, words) => {
    expect(check(ends)).toContain(words);
    expect(check(ends, 'pair: true\n')).toContain('this hand’s picture');
    const [solution] = solveHands(
      readSample(`copeleaf: 1\ntube: { od: 42.4, between: 720, ends: ${ends} }\n`),
    );
    expect(solution && heelsPicture(solution, ENGLISH)).toBeDefined();
  });

  /** The shallower cut comes first. */
  const DEEPER = '{ onto: { od: 60 }, angle: 50 }';

  // Wrapped inside out, a leaf lies as its mirror image about the spine: only a heel on the spine or opposite stays where it was.
  test.each([
    ['clock: 70', 1],
    ['clock: 180', 0],
    ['clock: 0', 0],
  ])('and before the first, whose heel may lie beside the spine: %s', (clock, before) => {
    const clocked = `{ onto: { od: 60 }, angle: 60, ${clock} }`;
    for (const last of [DEEPER, `{ onto: { od: 60 }, angle: 50, clock: 30 }`]) {
      const looks = checks(`{ A: ${clocked}, B: ${last} }`);
      expect(looks.map(({ end }) => end)).toEqual(before ? ['A', 'B'] : ['B']);
      if (before) expect(looks[0]?.text).toContain('the heel of leaf A lies at line A of the picture');
    }
  });

  test('the first at once before its cut, and not where the second is turned by a mark', () => {
    const clocked = '{ onto: { od: 60 }, angle: 60, clock: 70 }';
    const [ticket] = ticketsFor(
      `tube: { od: 42.4, wall: 2.6, between: 720, ends: { A: ${clocked}, B: ${DEEPER} } }\n`,
    );
    const facts = ticket?.steps.map(({ fact }) => fact) ?? [];
    expect(facts.slice(facts.indexOf('step:lay')).slice(0, 3)).toEqual([
      'step:lay',
      'step:facing',
      'step:cut',
    ]);
    expect(
      checks(`{ A: ${clocked}, B: { onto: { od: 60 }, angle: 60, clock: mark } }`).map(({ end }) => end),
    ).toEqual(['B']);
  });

  test('where the other end is sawn square, the arrow alone shows which way a leaf far from its end faces', () => {
    expect(check(`{ A: ${PLATE}, B: ${SQUARE} }`)).toBe(
      'Before you cut: the arrow of leaf B points away from end A.',
    );
  });

  test('but for a rotation that is marked at the frame, which no picture has', () => {
    expect(stepsFor(FITTED)).toContain('Hold leaf B up to its header: its heel faces the acute corner.');
  });
});

describe('an end that sits square on a flat is sawn, and has no leaf', () => {
  const FLATS = [
    '{ onto: { plate: {} }, angle: 90 }',
    '{ onto: { box: { wide: 60, deep: 50, corner: 6 } }, angle: 90 }',
  ];

  test.each(FLATS)('%s', (flat) => {
    const steps = stepsFor(`  between: 600\n  ends: { A: ${flat}, B: { ${ROUND}, angle: 50 } }\n`);
    expect(steps).toMatch(/Cut end A square: the length is measured from it\.\nDeburr end A.*Lay leaf B, /s);
    expect(steps).toContain('its base edge as far from end A as the leaf says');
    expect(steps).not.toContain('leaf A');
    const job = readSample(
      `copeleaf: 1\ntube: { od: 30, wall: 2, between: 600, ends: { A: ${flat}, B: { ${ROUND}, angle: 50 } } }\n`,
    );
    const printed = solveHands(job).flatMap((each) =>
      leavesOf(each, { ...contextOf(job), ticketed: true }, false),
    );
    expect(printed.map(({ title }) => title)).toEqual(['tube 1, end B']);
  });

  test('at both ends: the blank is its length', () => {
    // A box's face is half its depth from its axis.
    const steps = stepsFor(`  between: 600\n  ends: { A: ${FLATS[0]}, B: ${FLATS[1]} }\n`);
    expect(steps).toContain('Cut the blank square at both ends, 575 mm long.');
    expect(steps).not.toMatch(/leaf|leaves/);
    expect(steps.match(/Seat it on/g)).toHaveLength(2);
  });

  test.each(FLATS)('its footprint is its own outline, scribed round it and not printed: %s', (flat) => {
    const job = readSample(
      `copeleaf: 1\ntube: { od: 30, wall: 2, between: 600, ends: { A: ${flat}, B: { ${ROUND}, angle: 50 } } }\n`,
    );
    for (const ticketed of [true, false]) {
      const [solution] = solveHands(job);
      const printed = solution ? printedOf(solution, { ...contextOf(job), ticketed }, true) : [];
      expect(printed.filter(({ part }) => part !== undefined)).toEqual([{ end: 'B', part: 0 }]);
    }
    const steps = stepsFor(`  between: 600\n  ends: { A: ${flat}, B: { ${ROUND}, angle: 50 } }\n`, true);
    expect(steps).toMatch(/Wrap the footprint of end B .*Lay leaf B, .*scribe round its end A on the /s);
    expect(stepsFor(`  between: 600\n  ends: { A: ${flat}, B: ${flat} }\n`, true)).toContain(
      'Hold the tube in place and scribe both footprints round it.',
    );
  });

  test('and its vent is drilled once its place is scribed; one in a printed footprint before the end is seated', () => {
    const steps = (flat: string, header: string) =>
      stepsFor(`  between: 600\n  ends: { A: ${flat}, B: { ${header}, angle: 50 } }\n`, true);
    expect(steps(FLATS[0] ?? '', ROUND)).toMatch(/inside end B’s footprint.*Deburr end B.*scribe round its/s);
    expect(steps(FLATS[1] ?? '', 'onto: { plate: {} }')).toMatch(
      /scribe round its end A.*inside end A’s footprint/s,
    );
  });

  test('but for one whose flat is too narrow, or that lies on a corner', () => {
    for (const box of ['wide: 33, deep: 50, corner: 6', 'wide: 60, deep: 50, corner: 6, roll: 20'])
      expect(
        stepsFor(
          `  between: 600\n  ends: { A: { onto: { box: { ${box} } }, angle: 90 }, B: { ${ROUND}, angle: 50 } }\n`,
        ),
      ).toContain('leaf A');
  });
});

test('an angle over 90° is told with the heel, which lies opposite the side where it was read', () => {
  const told = (end: string) =>
    ticketsFor(
      `tube: { od: 30, wall: 2, between: 600, ends: { A: { ${ROUND}, ${end} }, B: { ${ROUND}, angle: 50 } } }\n`,
    )[0]
      ?.ends[0]?.facts.filter(({ fact }) => fact === 'clocking')
      .map(({ text }) => text);
  expect(told('angle: 118')).toEqual([
    '118° is read on the spine, so the heel is opposite the spine, at 62°',
  ]);
  // 35 and 180 degrees to the right are 145 to the left.
  expect(told('angle: 118, clock: 35')).toEqual([
    '118° is read 35° right of the spine, so the heel is 145° left of the spine, at 62°',
  ]);
  expect(told('angle: 118, clock: 180')).toEqual([
    '118° is read opposite the spine, so the heel is on the spine, at 62°',
  ]);
  expect(told('angle: 90')).toEqual([]);
  expect(told('angle: 62')).toEqual([]);
});

test('a ticket tells how two headers in one plane stand, where an angle read off square at one end shows', () => {
  const told = (a: string, b: string) =>
    ticketsFor(
      `tube: { od: 30, wall: 2, between: 600, ends: { A: { ${ROUND}, ${a} }, B: { ${ROUND}, ${b} } } }\n`,
    )[0]
      ?.tube.filter(({ fact }) => fact === 'header')
      .map(({ label, text }) => `${label} ${text}`);
  // Heels on opposite sides, as between two parallels; and the same with 90 - 60 at one end.
  expect(told('angle: 60', 'angle: 60, clock: 180')).toEqual(['headers parallel']);
  expect(told('angle: 60', 'angle: 30, clock: 180')).toEqual(['headers 30° apart']);
  expect(told('angle: 60', 'angle: 60, clock: 35')).toEqual([]);
});

describe('where a tube lands is marked by its footprint where that is printed', () => {
  const PLATE_A =
    '  between: 600\n  ends: { A: { onto: { plate: {} }, angle: 60 }, B: { onto: { od: 42.4 }, angle: 50 } }\n';

  test('else the tube is held in place and scribed round', () => {
    expect(stepsFor(BY_NUMBERS)).toContain('Hold the tube in place and scribe both footprints round it.');
    expect(stepsFor(BY_NUMBERS, true)).not.toContain('Hold the tube in place');
  });

  test('wrapped round what is round, laid where one is flat', () => {
    expect(stepsFor(BY_NUMBERS, true)).toContain(
      'Wrap each end’s footprint round its header, printed side out, its work point where the centre lines cross, and scribe by it.',
    );
    expect(stepsFor(PLATE_A, true)).toContain('Lay or wrap each end’s footprint on its header');
    expect(stepsFor(ONE_END, true)).toContain('Wrap the footprint of end A round the 42.4 mm header');
    expect(stepsFor(MITRED, true)).not.toContain('footprint');
  });

  test('of a pair each blank is told by its hand, two of which look alike', () => {
    expect(
      ticketsFor(`pair: true\ntube:\n  od: 30\n  wall: 2\n${BY_NUMBERS}`)[0]?.steps.map(({ text }) => text),
    ).toContainEqual(expect.stringMatching(/^Scribe the spine .* Write hand, A and B by it[.]$/));
    expect(stepsFor(BY_NUMBERS)).not.toContain('Write');
  });

  test('of a box its corners are measured where the seam shows that it is another', () => {
    const box = '  ends: { A: { onto: { plate: {} }, angle: 60 } }\n';
    const [ticket] = ticketsFor(`tube:\n  section: { wide: 50, deep: 30 }\n  wall: 2.5\n${box}`);
    expect(ticket?.steps[0]?.text).toContain('then the tube’s corners, and print again by that.');
  });

  test('of several headers before they are joined, for the paper goes round each', () => {
    const several = `  ends: { A: [{ ${ROUND}, angle: 45 }, { ${ROUND}, angle: 45, clock: 180 }] }\n`;
    const joined = 'before these headers are joined to one another';
    expect(stepsFor(several, true)).toContain(joined);
    expect(stepsFor(several, true)).toContain('their work points where all centre lines cross');
    expect(stepsFor(ONE_END, true)).not.toContain(joined);
    expect(stepsFor(BY_NUMBERS, true)).not.toContain(joined);
  });

  test('an end that is welded shut later asks for its vent now, where it can be reached only now', () => {
    const now = 'If end B will be welded shut too, now drill one 5 mm vent, well inside end A’s footprint';
    expect(stepsFor(ONE_END)).toContain(`${now}, through the header’s wall`);
    expect(
      stepsFor(`  ends: { A: [{ onto: { plate: {} }, angle: 45 }, { ${ROUND}, angle: 45, clock: 180 }] }\n`),
    ).toContain(`${now}, through the wall of header 2`);
    expect(stepsFor('  ends: { A: { onto: { plate: {} }, angle: 60 } }\n')).toContain(
      'drill a 5 mm vent in the tube first',
    );
  });

  test('and one vent, at an end that is named, into what is hollow', () => {
    expect(stepsFor(BY_NUMBERS)).toContain('Drill one 5 mm vent, well inside end A’s footprint');
    expect(stepsFor(PLATE_A)).toContain('Drill one 5 mm vent, well inside end B’s footprint');
    const plates = '{ onto: { plate: {} }, angle: 60 }';
    expect(stepsFor(`  between: 600\n  ends: { A: ${plates}, B: ${plates} }\n`)).toContain(
      'Drill one 5 mm vent, in the tube itself',
    );
    const thin = ticketsFor(`tube:\n  od: 12\n  wall: 1\n${BY_NUMBERS}`)[0]?.steps.map(({ text }) => text);
    expect(thin).toContainEqual(expect.stringContaining('Drill one 3 mm vent'));
  });

  test('before its tube is seated there, unless its place is found at the frame', () => {
    const order = (tube: string, footprints: boolean): string =>
      (stepsFor(tube, footprints).match(/Drill one|footprints? |Seat it on/g) ?? []).join();
    expect(order(BY_NUMBERS, true)).toMatch(/^footprint ,Drill one,.*Seat it on/);
    expect(order(FITTED, true)).toMatch(/^Seat it on.*,footprint ,Drill one/);
    expect(order(BY_NUMBERS, false)).toMatch(/^Seat it on.*,footprints ,Drill one/);
  });
});

test('a bar has no inside to deburr, clean or vent', () => {
  const bar = ticketsFor(`tube:\n  od: 30\n  wall: 15\n${BY_NUMBERS}`)[0]
    ?.steps.map(({ text }) => text)
    .join('\n');
  expect(bar).toContain('Deburr end A. Seat it');
  expect(bar).not.toMatch(/inside and out|vent/);
});

test('a blank of no known length reaches to the long point beyond the work point, rounded up', () => {
  // The cut goes to both sides of the work point by half the tube's width by the cotangent of its angle: 15 cot 35° = 21.42 mm.
  const slant = (units: string, od: string) =>
    ticketsFor(
      `units: ${units}\ntube: { od: ${od}, wall: 2mm, ends: { A: { onto: { plate: {} }, angle: 35 } } }\n`,
    )[0]?.steps[1]?.text;
  expect(slant('mm', '30mm')).toContain(
    'Cut the blank at least as long as the tube is to be from the work point of end A, and 22 mm more',
  );
  // 5/8 in cot 35° = 0.893 in, over 14 sixteenths.
  expect(slant('in', '1-1/4in')).toContain('and 15/16 in more, where its long point lies.');
});

test('a gap that a square face leaves is added to the weld, but for one over 5 mm', () => {
  const warned = (od: number, wall: number, onto: number, root = 0) =>
    ticketsFor(
      `tube: { od: ${od}, wall: ${wall}, root: ${root}, edge: square, between: 900, ends: { A: { onto: { od: ${onto} }, angle: 60 }, B: plain } }\n`,
    )[0]
      ?.steps.flatMap(({ warnings }) => warnings)
      .join('\n');
  expect(warned(114.3, 3.6, 139.7)).toContain('make the leg of the weld there longer by as much');
  expect(warned(168.3, 7.1, 193.7)).toMatch(/A gap of 5\.9 mm .* too wide to fill .* refit\./);
  // With a root gap it is what a rod feels, that and what it is wider by: under 5 mm by itself, over it in all.
  expect(warned(114.3, 3.6, 139.7, 3)).toMatch(/A gap of 5\.\d mm .* too wide to fill .* refit\./);
});

test('the second end is filed as the first one, where both are filed until no rod goes in', () => {
  expect(stepsFor(BY_NUMBERS)).toContain("file until a 1.6 mm rod won't enter the gap anywhere");
  expect(stepsFor(BY_NUMBERS)).toContain('Seat it on the 42.4 mm header: file as at A.');
  expect(stepsFor(`  root: 2\n${BY_NUMBERS}`)).not.toContain('file as at');
});

test('a tube with one joint is set at its angle, to each of its headers', () => {
  expect(stepsFor(ONE_END)).toContain('Set it at 60° to the 42.4 mm header.');
  expect(stepsFor(KNIFE)).toContain('Set it square to the 30 mm header.');
  expect(stepsFor(NODE)).toContain('Set it at 60° to header 1 and at 50° to header 2.');
});

const NODE =
  '  ends:\n    A:\n      - { onto: { od: 42.4 }, angle: 60 }\n      - { onto: { od: 42.4 }, angle: 50, clock: 180, offset: 2 }\n';

test('of several headers it is said whose clock and offset are told', () => {
  const [ticket] = ticketsFor(`tube:\n  od: 30\n${NODE.replace('clock: 180', 'clock: 160')}`);
  const facts = ticket?.ends[0]?.facts.map(({ label, text }) => `${label} ${text}`) ?? [];
  expect(facts).toContain('clocking header 2: 160° right of the spine');
  expect(facts.filter((text) => text.startsWith('offset header 2: 2 mm'))).toHaveLength(1);
  const one = ticketsFor(`tube:\n  od: 30\n${BY_NUMBERS}`)[0]?.ends[1]?.facts;
  // Where end A's heel lies on the spine, that is the tube's rotation.
  expect(one?.find(({ label }) => label === 'clocking')).toBe(undefined);
  const turned = BY_NUMBERS.replace('angle: 60', 'angle: 60, clock: 10');
  expect(turned).not.toBe(BY_NUMBERS);
  const other = ticketsFor(`tube:\n  od: 30\n${turned}`)[0]?.ends[1]?.facts;
  expect(other?.find(({ label }) => label === 'clocking')?.text).toBe('35° right of the spine');
});

test('what a picture shows is not told in words too: a turn by quarters, and how far a mitre turns', () => {
  const told = (tube: string): readonly string[] =>
    ticketsFor(`tube:\n  od: 30\n${tube}`).flatMap(({ ends }) =>
      ends.flatMap(({ name, facts }) =>
        facts
          .filter(({ fact }) => fact === 'clocking' || fact === 'header')
          .map(({ fact }) => `${name} ${fact}`),
      ),
    );
  expect(told(NODE)).toEqual(['A header', 'A header']);
  expect(told(NODE.replace('clock: 180', 'clock: 179'))).toEqual(['A header', 'A header', 'A clocking']);
  expect(told(MITRED)).toEqual([]);
  // No picture of both ends stands where one end has one header.
  expect(told(`  note: leans back\n${ONE_END.replace('60 }', '60, clock: 90 }')}`)).toEqual([
    'A header',
    'A clocking',
  ]);
});

test('a rotation mark is made on the heel side; a square joint has none, and it is said which side serves', () => {
  const marked = (angle: number, offset: number) =>
    stepsFor(
      `  between: mark\n  ends: { A: { ${ROUND}, angle: 60 }, B: { ${ROUND}, angle: ${angle}, offset: ${offset}, clock: mark } }\n`,
    );
  expect(marked(50, 0)).toContain('its heel side, which faces the acute corner');
  expect(marked(90, 0)).not.toContain('acute');
  expect(marked(90, 0)).toContain('a side that faces along the header: either side');
  expect(marked(90, 3)).toContain('the side from which the header passes 3 mm to the right');
});

test('a tube that goes among others has both ends cut before either is seated, unless one is found at the frame', () => {
  const order = (more: string): string => (stepsFor(more).match(/ut end [AB]|Seat it/g) ?? []).join(', ');
  const note = '  note: goes between the posts\n';
  expect(order(BY_NUMBERS)).toBe('ut end A, Seat it, ut end B, Seat it');
  expect(order(`${BY_NUMBERS}${note}`)).toBe('ut end A, ut end B, Seat it, Seat it');
  expect(order(`${FITTED}${note}`)).toBe(order(FITTED));
});
