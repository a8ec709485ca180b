import { describe, expect, test } from 'vitest';
import { standingFrame } from '../../src/together/frame-notes.ts';
import { frameReport } from '../../src/together/frame-report.ts';
import { reportJob } from '../../src/together/report-job.ts';
import { refusalOf } from '../job/sample.ts';
import { fileOf, readText } from './read-lines.ts';

const ROUND = 'od: 31.75, wall: 2';

type File = Parameters<typeof fileOf>;

/** What `check` says of a frame: its mistakes, or where there are none the warnings of its tubes and what it tells of the whole. */
function toldOf(...file: File): string {
  const said: string[] = [];
  const refused = refusalOf(() => {
    const job = readText(fileOf(...file));
    for (const { solution, warnings } of reportJob(job)) {
      const { name } = solution.tube;
      said.push(...warnings.map(({ code, end, inFile }) => `${name} ${end ?? ''}: ${code}: ${inFile}`));
    }
    const whole = standingFrame(job);
    if (whole) said.push(frameReport(job, whole));
  });
  return [...refused.map(({ read, why, instead }) => `${read}: ${why}: ${instead}`), ...said].join('\n');
}

const MIRROR = ['mirror: { x: 400 }'];

/** Half of a trestle for two kayaks, its legs splayed and cut level; `feet` are those of its front and its back leg. */
function trestle(feet: { readonly front?: string; readonly back?: string; readonly flat?: string }): File {
  const { front = '[-80, -60, 0]', back = '[-80, 560, 0]', flat = 'z' } = feet;
  const level = `ends: { B: { flat: ${flat} } }`;
  return [
    { corner: '[0, 0, 700]', 'corner back': '[0, 500, 700]', foot: front, 'foot back': back },
    [
      `name: long side, along: [corner, "corner'"], ${ROUND}`,
      `name: short side, along: [corner, corner back], ${ROUND}`,
      `name: long side back, along: [corner back, "corner back'"], ${ROUND}`,
      `name: leg, along: [corner, foot], ${ROUND}, ${level}`,
      `name: leg back, along: [corner back, foot back], ${ROUND}, ${level}`,
    ],
    MIRROR,
  ];
}

/** A bay of a rack: a post, a rail at its foot and a brace from there, each of its own size, in this order in the file. */
function bay(...order: readonly ('post' | 'rail' | 'brace' | 'bar')[]): File {
  const tubes = {
    post: 'name: post, along: [low, high], od: 42.4, wall: 2.6',
    rail: 'name: rail, along: [low, far], od: 42.4, wall: 2.6',
    brace: 'name: brace, along: [low, [600, 0, 500]], od: 26.9, wall: 2.6',
    bar: 'name: bar, along: [[0, 0, 550], [1200, 0, 550]], od: 33.7, wall: 2.6',
  };
  return [{ low: '[0, 0, 0]', high: '[0, 0, 1000]', far: '[1200, 0, 0]' }, order.map((name) => tubes[name])];
}

/** Two rails so far apart with a web between them, leaning to the right by so much. */
function webBetweenRails(apart: number, lean: number): File {
  const rails = [0, apart].map(
    (z) => `name: rail ${z}, along: [[0, 0, ${z}], [1000, 0, ${z}]], od: 60, wall: 2`,
  );
  return [
    { foot: '[300, 0, 0]' },
    [...rails, `name: web, along: [foot, [${300 + lean}, 0, ${apart}]], od: 50, wall: 2`],
  ];
}

/** A sill in lengths, through these points. */
function sill(...through: readonly string[]): File {
  const points = through.map((at, i) => [`p${i}`, at] as const);
  const lengths = through
    .slice(1)
    .map((_, i) => `name: sill ${i}, along: [p${i}, p${i + 1}], od: 48.3, wall: 2.6`);
  // A post at the first point, by which the sill runs on beyond it.
  const post = 'name: post, along: [p0, [0, 0, 500]], od: 42.4, wall: 2.6';
  return [Object.fromEntries(points), [...lengths, post]];
}

/** Two posts of a rack with a shelf bar between them, so far up each; the back post written along these points. */
function shelf(back: string, at = 400, atBack = at, od = '48.3'): File {
  return [
    {
      foot: '[0, 0, 0]',
      top: '[0, 0, 1800]',
      'foot back': '[0, 600, 0]',
      'top back': '[0, 600, 1800]',
      rest: `{ on: post, at: ${at} }`,
      'rest back': `{ on: post back, at: ${atBack} }`,
    },
    [
      'name: post, along: [foot, top], od: 48.3, wall: 2.6',
      `name: post back, along: [${back}], od: ${od}, wall: 2.6`,
      'name: bar, along: [rest, rest back], od: 33.7, wall: 2.6',
    ],
  ];
}

/** A cradle for a kayak as a closed frame with a bar, its corners so far apart in numbers as they are written. */
function cradle(wide: string, high: string, zero = '0', highFar = high, behind = '0'): File {
  const half = `{ middle: [low, high] }`;
  return [
    {
      low: `[${zero}, 0, 0]`,
      high: `[0, 0, ${high}]`,
      'low far': `[${wide}, 0, 0]`,
      'high far': `[${wide}, ${behind}, ${highFar}]`,
      half,
      'half far': half.replaceAll(/low|high/g, '$& far'),
    },
    ['low, high', 'high, high far', 'low far, high far', 'low, low far', 'half, half far'].map(
      (along, i) => `name: t${i}, along: [${along}], od: ${i < 4 ? 42.4 : 33.7}, wall: 2.6`,
    ),
  ];
}

/** Two posts that stand on the floor, the back one up to this point. */
function posts(top: string, od = '48.3'): File {
  return [
    { foot: '[0, 0, 0]', 'foot back': '[0, 600, 0]', top: '[0, 0, 1800]', 'top back': top },
    [
      'name: post, along: [foot, top], od: 48.3, wall: 2.6, ends: { A: { flat: z } }',
      `name: post back, along: [foot back, top back], od: ${od}, wall: 2.6, ends: { A: { flat: z } }`,
    ],
  ];
}

const WRONG: readonly (readonly [string, File, RegExp])[] = [
  [
    'feet cut in a plane that lies nearly along the legs',
    trestle({ flat: '[0, 1, 0]' }),
    /flat.*leg lies at 4.9 degrees to that plane, under 15.*`flat: z`, which cuts it nearly square/,
  ],
  [
    'the same of a leg that runs along no axis',
    trestle({ front: '[-700, -100, 0]', flat: 'y' }),
    /leg lies at 5.8 degrees to that plane.*: a plane that cuts across the tube/,
  ],
  [
    'a thin tube that stands before a thick one at their point',
    bay('brace', 'post', 'rail'),
    /post A: wider: .*brace comes before post, so post is coped onto it; `after: \[post\]` at brace turns that round/,
  ],
  [
    'an acute angle that follows from points',
    webBetweenRails(300, 900),
    /web A: heel-angle: .*In a job file: the points that it runs `along`/,
  ],
  [
    'points so near that hardly a tube is left',
    webBetweenRails(80, 0),
    /web : short: Only .*In a job file: the points that it runs `along`/,
  ],
  [
    'points so near that nothing is left',
    webBetweenRails(50, 40),
    /^web: the cuts of its two ends cross by [\d.]+ mm and leave no tube between them: points further apart$/,
  ],
  [
    'a sill in two lengths with a kink where it is spliced',
    sill('[0, 0, 0]', '[8, 800, 0]', '[0, 1600, 0]'),
    /kink +p1 is 8 mm off the line from p0 to p2: the two tubes are nearly in line there/,
  ],
  [
    'a post written from the top, and the height of a shelf counted from its foot',
    shelf('top back, foot back'),
    /sense +bar leans: rest is 400 mm from foot on post, rest back as far from top back on post back, which is written the other way/,
  ],
  [
    'points in cm where the tubes are in mm',
    cradle('180', '100'),
    /all points are in mm, and hardly a frame is that small: its longest tube is 180 mm.*unit, if they are in cm/,
  ],
  [
    'two of the three lengths of a point changed round',
    posts('[0, 1800, 600]'),
    /swapped +post back leans over 60°; with two .* lengths of top back changed round it would stand as post does/,
  ],
  [
    'two of the three lengths of a foot changed round',
    trestle({ front: '[0, -60, -80]' }),
    /uneven +The feet stand at two heights: foot, foot' are 80 mm lower than foot back, foot back'/,
  ],
  [
    'a corner of a closed frame that is out by a little',
    cradle('180', '100', '0mm', '99'),
    /askew +t1 is a little out of true: high far lies 1 mm below high\./,
  ],
  [
    'a number of a point in another column',
    cradle('1800', '1000', '0', '1000', '100'),
    /askew +high far lies 100 mm behind all the other points, which are in one plane/,
  ],
  [
    'a brace that stops before the bar it was to land on',
    bay('post', 'rail', 'brace', 'bar'),
    // To the bar's underside: (550 - 16.85 - 500) / sin(atan(500 / 600)).
    /short-of +End B of brace stops 51.8 mm short of bar\. .* move its point onto bar/,
  ],
];

describe('a wrong frame is told what is wrong with it', () => {
  test.each(WRONG)('%s', (_, file, fault) => {
    const told = toldOf(...file);
    expect(told).toMatch(fault);
    // What nobody writes in a frame, where all that follows from points.
    expect(told).not.toMatch(/`between|off-square|girth|`od`|`wide`/);
  });
});

test('the trestle with no mistake is told of its thin edges and its air alone', () => {
  expect(toldOf(...trestle({}))).not.toMatch(/flat/);
  expect(toldOf(...bay('post', 'rail', 'brace'))).not.toMatch(/wider/);
});

describe('what is meant is not doubted', () => {
  const arc = [-3, -1, 1, 3].map((i) => {
    const turn = (i * 1.25 * Math.PI) / 180;
    return `[${6000 * Math.sin(turn)}, ${6000 * Math.cos(turn)}, 0]`;
  });
  test.each<readonly [string, File]>([
    ['a splice', sill('[0, 0, 0]', '[0, 800, 0]', '[0, 1600, 0]')],
    ['a mitre of three degrees', sill('[0, 0, 0]', '[21.5, 800, 0]', '[0, 1600, 0]')],
    ['an arc of several lengths, 2.5 degrees from one to the next', sill(...arc)],
    ['a small frame, one of its numbers with its unit', cradle('180', '100', '0mm')],
    ['a frame of seven diameters', cradle('300', '120')],
    [
      'stubs that are drawn for their joint',
      [
        { o: '[0, 0, 0]' },
        ['[150, 0, 0]', '[0, 150, 0]', '[0, 0, 150]'].map(
          (to, i) => `name: t${i}, along: [o, ${to}], od: 42.4, wall: 2.6`,
        ),
      ],
    ],
    ['a stay that leans as far, of another size', posts('[0, 1800, 600]', '33.7')],
    ['a stay that leans as far, to a point of its own', posts('[0, 1900, 600]')],
    ['a stay at 45 degrees', posts('[0, 1200, 600]')],
    ['posts written one way', shelf('foot back, top back')],
    ['a closed frame as it was drawn, to a hundredth', cradle('1800', '1000', '0', '1000.01')],
    [
      'a frame that leans a little throughout',
      [
        Object.fromEntries(
          [0, 1, 2, 3, 4, 5, 6].map((i) => [`p${i}`, `[${400 * i}, ${3 * i}, ${i % 2 ? 0 : 200}]`]),
        ),
        [0, 1, 2, 3, 4].map((i) => `name: t${i}, along: [p${i}, p${i + 2}], od: 30, wall: 2`),
      ],
    ],
    ['a level bar between posts written opposite ways', shelf('top back, foot back', 400, 1400)],
    ['a bar at half their height', shelf('top back, foot back', 900)],
    ['a bar that leans between posts of two sizes', shelf('top back, foot back', 400, 400, '42.4')],
  ])('%s', (_, file) => {
    expect(toldOf(...file)).not.toMatch(/^ +(kink|sense|swapped|askew|uneven|short-of)|hardly a frame/m);
  });
});
