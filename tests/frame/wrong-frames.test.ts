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
];

describe('a wrong frame is told what is wrong with it', () => {
  test.each(WRONG)('%s', (_, file, fault) => {
    expect(toldOf(...file)).toMatch(fault);
  });
});

test('the trestle with no mistake is told of its thin edges and its air alone', () => {
  const told = toldOf(...trestle({}));
  expect(told).not.toMatch(/flat/);
});
