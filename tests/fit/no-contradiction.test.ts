import { expect, test } from 'vitest';
import { reportsAsData } from '../../src/fit/as-data.ts';
import { checkReport } from '../../src/fit/check-report.ts';
import { zonesOf } from '../../src/leaf/card/zones.ts';
import { inOrder } from '../../src/saddle/ordinates.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { reportJob } from '../../src/together/report-job.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { someOf } from '../count.ts';
import { readSample } from '../job/sample.ts';

function jobOf(end: string, tube = ''): ReturnType<typeof readSample> {
  return readSample(`copeleaf: 1
tube:
  od: 40mm
  wall: 4mm
${tube}  ends: { A: ${end} }
`);
}

/** What `check` says, on one line. */
function said(end: string, tube = ''): string {
  const [report] = reportJob(jobOf(end, tube));
  if (!report) throw new Error('no tube was read');
  return checkReport(report, ENGLISH).replace(/\s+/g, ' ');
}

test('where a tube passes its header, contact is full where it touches, and no more is said', () => {
  const missing = said('{ onto: { od: 44.5mm }, angle: 60deg, offset: 8mm }');
  expect(missing).toContain('misses end A');
  expect(missing).not.toContain('full contact with this edge');
  expect(missing).toContain('full contact where it touches: no gap stays there');
  expect(said('{ onto: { od: 44.5mm }, angle: 60deg }')).toContain(
    'full contact with this edge: no gap stays',
  );
});

test.each([
  ['hardly', 38, false],
  ['less than half way round', 28, false],
  ['more than half way round', 10, true],
  ['all round', 0, true],
])('touching %s, offset %s: what an error opens is said, %s', (_, offset, told) => {
  const words = said(`{ onto: { od: 44.5mm }, angle: 60deg, offset: ${offset}mm }`);
  expect(words.includes('an error of')).toBe(told);
});

// Two tubes that turn by 90 degrees stand at 90 degrees on the inside of the turn and at 270 on its outside, and along
// the sides they run on into each other at 180.
test('a mitre is welded tube to tube: on the screen, in JSON, ordinates and the zones of the leaf', () => {
  const mitre = '{ onto: { mitre: { turn: 90deg } } }';
  expect(said(mitre)).toContain('the surfaces meet at 90° to 270°');
  expect(JSON.stringify(reportsAsData(reportJob(jobOf(mitre))))).toContain(
    '"dihedral":{"least":90,"most":270}',
  );
  const [table] = inOrder(solveHands(jobOf(mitre)), { perTurn: 4, apart: 10 });
  const dihedrals = table?.rows.map(({ dihedral = 0 }) => Math.round((dihedral * 180e6) / Math.PI) / 1e6);
  expect(dihedrals).toEqual([90, 180, 270, 180]);
  const zones = table ? zonesOf(table.cope, ENGLISH) : [];
  expect(Math.round(zones[0]?.angles?.least ?? 0)).toBe(90);
  expect(Math.round(zones[2]?.angles?.most ?? 0)).toBe(270);
});

test('the edge of a mitre is as thin as it stands to its own plane', () => {
  const codes = (turn: number): readonly string[] =>
    reportJob(jobOf(`{ onto: { mitre: { turn: ${turn}deg } } }`)).flatMap(({ warnings }) =>
      warnings.map(({ code }) => code),
    );
  // The acute edge is 90 degrees less half the turn: a knife under 15.
  expect(codes(149)).not.toContain('feather');
  expect(codes(151)).toContain('feather');
});

test('no end with a root gap is told that no gap stays', () => {
  const ends = [
    '{ onto: { od: 44.5mm }, angle: 60deg }',
    '{ onto: { od: 44.5mm }, angle: 60deg, offset: 8mm }',
    '{ onto: { od: 44.5mm }, angle: 60deg, edge: square }',
    '{ onto: { od: 44.5mm }, angle: 60deg, land: 2mm }',
    '{ onto: { mitre: { turn: 90deg } } }',
    '{ onto: { plate: {} }, angle: 70deg }',
    '{ onto: { box: { wide: 60mm, deep: 60mm, wall: 4mm } }, angle: 70deg }',
    '{ onto: { bend: { od: 60mm, radius: 200mm } }, angle: 70deg }',
  ];
  for (const end of someOf(ends, { short: 4 })) {
    const words = said(end, '  root: 2mm\n');
    expect(words, end).not.toContain('no gap stays');
    expect(words, end).toMatch(
      /the root gap of 2mm \([^)]*\) is (the same (all round|wherever it reaches)|wider by)/,
    );
  }
});
