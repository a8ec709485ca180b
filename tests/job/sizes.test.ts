import { describe, expect, test } from 'vitest';
import { jobFromFlags } from '../../src/job/flags.ts';
import type { Tube } from '../../src/job/job.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { A4, complaintsAbout, readSample, refusalOf } from './sample.ts';

function rail(size: string, end = 'onto: { od: 89 }, angle: 60'): string {
  return `copeleaf: 1\ntube:\n  ${size}\n  ends:\n    A: { ${end} }\n`;
}

function tubeOf(text: string): Tube {
  const [tube] = readSample(text).tubes;
  if (tube === undefined) throw new Error('no tube');
  return tube;
}

describe('a tube takes its size by name', () => {
  // ASME B36.10M: NPS 1-1/2 is 48.3 mm, schedule 40 of it 3.68 mm.
  test('a pipe with its schedule is diameter and wall', () => {
    expect(tubeOf(rail('pipe: NPS 1-1/2 sch 40'))).toMatchObject({
      section: { od: { mm: 48.3, wrote: 'NPS 1-1/2' } },
      wall: { mm: 3.68, wrote: 'sch 40' },
    });
  });

  test('a pipe without a schedule is the diameter, and the wall may be given', () => {
    expect(tubeOf(rail('pipe: NPS 1-1/2')).wall).toBeUndefined();
    expect(tubeOf(rail('pipe: NPS 1-1/2\n  wall: 3'))).toMatchObject({
      section: { od: { mm: 48.3 } },
      wall: { mm: 3 },
    });
  });

  test('European pipe by its own sizes', () => {
    expect(tubeOf(rail('pipe: EN 48.3 x 2.6'))).toMatchObject({
      section: { od: { mm: 48.3 } },
      wall: { mm: 2.6 },
    });
  });

  // Birmingham gauge 16 is .065 in.
  test('a wall by its gauge', () => {
    expect(tubeOf(rail('od: 1-1/4in\n  wall: 16 BWG')).wall).toMatchObject({ mm: 1.651, wrote: '16 BWG' });
  });

  test.each(['NPS 2', 'NPS 2 sch 40'])('and a header by %s is its outside diameter', (pipe) => {
    const end = tubeOf(rail('od: 38.1', `onto: { pipe: ${pipe} }, angle: 60`)).ends.A;
    expect(end).toMatchObject({ parts: [{ onto: { kind: 'round', od: { mm: 60.3, wrote: 'NPS 2' } } }] });
  });

  test('by flags as well', () => {
    const flags = { pipe: 'NPS 1-1/2 sch 40', onto: '60.3', angle: '60', root: '1' };
    const { tubes } = jobFromFlags(flags, { words: ENGLISH, paper: A4 });
    expect(tubes).toMatchObject([
      { section: { od: { mm: 48.3 } }, wall: { mm: 3.68 }, ends: { A: { root: { mm: 1 } } } },
    ]);
  });
});

describe('a size that does not stand is told once', () => {
  test.each<[string, string, string, RegExp]>([
    ['two sizes', rail('od: 48.3\n  pipe: NPS 1-1/2'), 'size-twice', /one of the two/],
    ['two walls', rail('pipe: NPS 1-1/2 sch 40\n  wall: 3'), 'wall-twice', /`pipe: NPS 1-1\/2`, or no wall/],
    ['two walls, European', rail('pipe: EN 48.3 x 2.6\n  wall: 3'), 'wall-twice', /EN 48.3/],
    ['an unknown size', rail('pipe: NPS 1-3/4'), 'pipe', /NPS 1-1\/2 or NPS 2/],
    ['a wall that fills the pipe', rail('pipe: EN 48.3 x 25'), 'wall', /24.15 mm at most/],
    ['a gauge of no kind', rail('od: 38.1\n  wall: 16 ga'), 'gauge', /16 BWG/],
    ['a size under od', rail('od: NPS 1-1/2 sch 40'), 'length', /48.3mm, or `pipe: NPS 1-1\/2 sch 40`/],
    ['a pipe that is a list', rail('pipe: [NPS 2]'), 'shape', /NPS/],
    [
      'a header of two sizes',
      rail('od: 38.1', 'onto: { od: 60, pipe: NPS 2 }, angle: 60'),
      'size-twice',
      /one/,
    ],
    ['a header of no size', rail('od: 38.1', 'onto: { pipe: 2 }, angle: 60'), 'pipe', /NPS/],
  ])('%s', (_, text, code, instead) => {
    const complaints = complaintsAbout(text);
    expect(complaints.map((each) => each.code)).toEqual([code]);
    expect(complaints[0]?.instead).toMatch(instead);
  });

  test.each([
    [{ od: 'NPS 1-1/2 sch 40', onto: '60', angle: '60' }, '--pipe NPS 1-1/2 sch 40'],
    [{ od: '40', onto: 'NPS 2', angle: '60' }, 'its outside diameter, 60.3mm'],
    [{ od: '40', pipe: 'NPS 2', onto: '60', angle: '60' }, 'one of the two'],
  ])('by flags %o', (flags, instead) => {
    const complaints = refusalOf(() => jobFromFlags(flags, { words: ENGLISH, paper: A4 }));
    expect(complaints).toMatchObject([{ file: 'flags', instead: expect.stringContaining(instead) }]);
    expect(complaints[0]?.instead).not.toMatch(/--onto|pipe: /);
  });
});

describe('the root of the weld', () => {
  const ends = (A: string, B: string) =>
    `between: 500\n  ends:\n    A: { onto: { od: 60 }, angle: 60${A} }\n    B: { onto: { od: 60 }, angle: 60${B} }\n`;

  test("an end's own goes before its tube's, and 0 is one", () => {
    const tube = tubeOf(`copeleaf: 1\ntube:\n  od: 40\n  root: 1mm\n  ${ends('', ', root: 0')}`);
    expect(tube.ends).toMatchObject({ A: { root: { mm: 1, wrote: '1mm' } }, B: { root: { mm: 0 } } });
  });

  test('none is left where none is asked for', () => {
    expect(tubeOf(rail('od: 40')).ends.A).not.toHaveProperty('root');
  });

  test.each([
    ['-0.1', ['negative']],
    ['10', ['too-large']],
    ['9.99', []],
    ['wide', ['length']],
  ])('of %s', (root, codes) => {
    expect(complaintsAbout(rail(`od: 40\n  root: ${root}`)).map((each) => each.code)).toEqual(codes);
    const onEnd = rail('od: 40', `onto: { od: 89 }, angle: 60, root: ${root}`);
    expect(complaintsAbout(onEnd).map((each) => each.code)).toEqual(codes);
  });
});

test('a tube with two square ends and its length is a blank', () => {
  const text = 'copeleaf: 1\ntube: { od: 40, between: 500, ends: { A: plain, B: plain } }\n';
  expect(tubeOf(text)).toMatchObject({
    between: { mm: 500 },
    ends: { A: { kind: 'plain' }, B: { kind: 'plain' } },
  });
});
