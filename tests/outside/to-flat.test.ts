import { expect, test } from 'vitest';
import { reportJob } from '../../src/together/report-job.ts';
import { DEEP } from '../count.ts';
import { complaintsAbout, readSample } from '../job/sample.ts';
import type { AskedPart } from './asked-end.ts';
import { partAt } from './solids/implicit-headers.ts';

const DEGREE = Math.PI / 180;

interface Ask {
  readonly tube?: string;
  readonly onto?: string;
  readonly angle?: number;
  readonly keys?: string;
}

function jobOf({ tube = '', onto = BOX, angle = 90, keys = '' }: Ask): string {
  return `copeleaf: 1
tube:
  section: { wide: 50mm, deep: 50mm, corner: 6mm }
  wall: 3mm
${tube}  ends: { A: { onto: ${onto}, angle: ${angle}deg${keys} } }
`;
}

const BOX = '{ box: { wide: 50mm, deep: 50mm, corner: 6mm } }';

function reportOf(ask: Ask) {
  const [tube] = reportJob(readSample(jobOf(ask)));
  const end = tube?.ends.A;
  if (!tube || !end || end === 'plain') throw new Error('the end was asked to be coped');
  return { ...end, warnings: tube.warnings };
}

/** The box as an inequality, with the corners that it has. */
function boxAt(angle: number): (x: number, y: number, z: number) => number {
  const header = { kind: 'box', wide: 50, deep: 50, corner: 6, roll: 0 } as const;
  const part: AskedPart = { header, angle: angle * DEGREE, clock: 0, offset: 0, shift: 0 };
  const { solid } = partAt('A', part);
  return (x, y, z) => solid([x, y, z]);
}

// On a box with sharp corners the tube's whole outside meets the flat: the plane 25 from the axis, climbing with cot(angle).
test.each([90, 60])('at %d degrees the cut is a plane, and what is left at the corners is told', (angle) => {
  const { cope, gap, warnings } = reportOf({ angle, keys: ', to: flat' });
  const away = boxAt(angle);
  let widest = 0;
  const { section } = cope.joint;
  for (let i = 0; i < 400; i++) {
    const station = (i * section.turn) / 400;
    const { x, y } = section.at(station);
    const { setback } = cope.cut(station);
    expect(setback).toBeCloseTo((25 + x * Math.cos(angle * DEGREE)) / Math.sin(angle * DEGREE), 9);
    expect(cope.touching(station).contact).toBe(true);
    const gapHere = away(x, y, setback);
    widest = Math.max(widest, gapHere);
    // Over the flat, 38 wide, it touches.
    if (Math.abs(y) < 19) expect(gapHere).toBeCloseTo(0, 9);
  }
  expect(gap.mm).toBeGreaterThanOrEqual(widest - 1e-9);
  // At full width from the corner's centre, 6 sqrt(2), less its radius.
  expect(gap.mm).toBeCloseTo(6 * (Math.SQRT2 - 1), 6);
  expect(warnings.map(({ code }) => code)).toEqual(['gap']);
  expect(warnings[0]?.text).toContain("2.49 mm stays at the box's corner");
});

test('with a root gap the plane is so much further out, and the corner is told beyond the root', () => {
  const { cope, gap } = reportOf({ keys: ', to: flat, root: 2mm' });
  const { section } = cope.joint;
  for (let i = 0; i < 50; i++) expect(cope.cut((i * section.turn) / 50).setback).toBeCloseTo(27, 9);
  // 2 mm above the face and beside the box's own side: the corner's centre is 8 below and 6 beside.
  expect(gap.mm).toBeCloseTo(Math.hypot(8, 6) - 6 - 2, 6);
});

test('the warning for box on box names what to write, and which header it speaks of', () => {
  const { warnings } = reportOf({});
  const found = warnings.find(({ code }) => code === 'wider');
  const wider = found?.text ?? '';
  expect(found?.inFile).toContain('`to: flat`');
  expect(wider).toContain('12 mm wider than the flat of the 50mm x 50mm box, which is 38 mm');
  expect(wider).toContain('Cut it to the flat');
  // As it says, nothing is as thin as a knife then, and nothing lacks room.
  const codes = reportOf({ keys: ', to: flat' }).warnings.map(({ code }) => code);
  expect(codes).not.toContain('wider');
  expect(codes).not.toContain('feather');
});

// Its gap is looked for beside each of many places where the wall leaves the box, which takes long.
test.runIf(DEEP)('wider than the whole face it is still said, of the header by its name', () => {
  const narrow = '{ box: { wide: 40mm, deep: 50mm, corner: 6mm } }';
  const { warnings } = reportOf({ onto: narrow, keys: ', to: flat' });
  expect(warnings.find(({ code }) => code === 'wider')?.text).toContain(
    '10 mm wider than the 40mm x 50mm box, which is 40 mm',
  );
});

test('a tube says it for each of its ends that land on a box', () => {
  const { cope } = reportOf({ tube: '  to: flat\n' });
  expect(cope.cut(25).setback).toBeCloseTo(25, 9);
});

test.each([
  ['an end on a round header', jobOf({ onto: '{ od: 60mm }', keys: ', to: flat' })],
  ['a tube none of whose ends lands on a box', jobOf({ onto: '{ od: 60mm }', tube: '  to: flat\n' })],
])('there is no flat for %s', (_, job) => {
  const [complaint, ...others] = complaintsAbout(job);
  expect(complaint).toMatchObject({ code: 'no-flat' });
  expect(others).toEqual([]);
});

test('no other word is taken', () => {
  expect(complaintsAbout(jobOf({ keys: ', to: corner' }))).toMatchObject([{ code: 'choice' }]);
});
