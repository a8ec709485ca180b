import { describe, expect, test } from 'vitest';
import { main } from '../../src/cli/main.ts';
import type { Shell } from '../../src/cli/shell.ts';
import { ENGLISH } from '../../src/words/english.ts';

interface Run {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs the command in this process, the job on its standard input. */
async function check(job: string, ...flags: string[]): Promise<Run> {
  let out = '';
  let err = '';
  const shell: Shell = {
    words: ENGLISH,
    cwd: '/',
    home: new URL('file:///'),
    env: { LANG: 'de_DE.UTF-8' },
    out: async (data) => {
      out += typeof data === 'string' ? data : new TextDecoder().decode(data);
    },
    err: (text) => {
      err += text;
    },
    input: async () => Buffer.from(job),
  };
  const code = await main(['check', '-', ...flags], shell);
  return { code, out, err };
}

async function asJson(job: string) {
  const { code, out, err } = await check(job, '--as', 'json');
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).not.toMatch(/-0(?![.\d])/);
  return JSON.parse(out);
}

const STAY = `copeleaf: 1
units: mm
tube:
  name: bunk stay
  od: 31.75
  wall: 2.4
  between: 619
  pair: true
  copies: 2
  ends:
    A: { onto: { od: 44.5 }, angle: 118, clock: -35 }
    B: { onto: { od: 44.5 }, angle: 48, clock: 395, offset: -3, edge: square }
`;

const COPED = [
  'longPoint',
  'throat',
  'angle',
  'clock',
  'offset',
  'standOff',
  'gap',
  'dihedral',
  'sensitivity',
];

describe('check --as json', () => {
  test('has the keys it promises, and no others', async () => {
    const report = await asJson(STAY);
    expect(Object.keys(report)).toEqual(['units', 'tubes']);
    expect(report.units).toBe('mm');
    expect(report.tubes.map(({ hand }: { hand: string }) => hand)).toEqual(['as-drawn', 'opposite']);
    for (const tube of report.tubes) {
      expect(Object.keys(tube).sort()).toEqual(
        ['name', 'hand', 'copies', 'od', 'between', 'overall', 'blank', 'twist', 'ends', 'warnings'].sort(),
      );
      expect(tube).toMatchObject({ name: 'bunk stay', copies: 2, od: 31.75, between: 619 });
      expect(Object.keys(tube.ends)).toEqual(['A', 'B']);
      for (const end of [tube.ends.A, tube.ends.B]) {
        expect(Object.keys(end).sort()).toEqual([...COPED].sort());
        expect(Object.keys(end.longPoint)).toEqual(['phi', 'setback']);
        expect(Object.keys(end.throat)).toEqual(['phi', 'setback']);
        expect(Object.keys(end.gap)).toEqual(['phi', 'mm']);
        expect(Object.keys(end.dihedral)).toEqual(['least', 'most']);
        expect(Object.keys(end.sensitivity)).toEqual(['angle', 'clock', 'offset', 'scale']);
      }
      for (const warning of tube.warnings) {
        expect(Object.keys(warning)).toEqual(['code', 'text', 'end']);
      }
    }
  });

  test('angles stay as written, clocks come home to [0, 360), the opposite hand turns clock, offset and twist', async () => {
    const [drawn, opposite] = (await asJson(STAY)).tubes;
    expect(drawn.ends.A).toMatchObject({ angle: 118, clock: 325, offset: 0 });
    expect(drawn.ends.B).toMatchObject({ angle: 48, clock: 35, offset: -3 });
    // A's heel is opposite its clock: 145. From there to 35 it is 110 back.
    expect(drawn.twist).toBeCloseTo(-110, 9);
    expect(opposite.ends.A).toMatchObject({ angle: 118, clock: 35, offset: 0 });
    expect(opposite.ends.B).toMatchObject({ angle: 48, clock: 325, offset: 3 });
    expect(opposite.twist).toBeCloseTo(110, 9);
    for (const key of ['between', 'overall', 'blank']) expect(opposite[key]).toBeCloseTo(drawn[key], 9);
  });

  test.each([
    ['0', 0],
    ['360', 0],
    ['-360', 0],
    ['-0', 0],
    ['-1', 359],
    ['-0.000000000001', 0],
    ['359.99999999999', 0],
    ['365', 5],
  ])('clock %s is said as %d, and nothing is -0', async (clock, said) => {
    const { tubes } = await asJson(
      `copeleaf: 1\ntube:\n  od: 30\n  pair: true\n  between: 300\n  ends: { A: { onto: { od: 30 }, angle: 90, clock: ${clock}, offset: -0 }, B: { onto: { od: 40 }, angle: 70, clock: 20 } }\n`,
    );
    expect(tubes[0].ends.A.clock).toBe(said);
    expect(tubes[1].ends.A.clock).toBe(said === 0 ? 0 : 360 - said);
    for (const tube of tubes) {
      for (const { phi } of [tube.ends.A.longPoint, tube.ends.A.throat, tube.ends.A.gap]) {
        expect(phi).toBeGreaterThanOrEqual(0);
        expect(phi).toBeLessThan(360);
      }
    }
  });

  test('what has no value is left out: no wall, no second end', async () => {
    const { tubes } = await asJson(
      'copeleaf: 1\ntube:\n  od: 30\n  ends: { B: { onto: { od: 60 }, angle: 60 } }\n',
    );
    const [tube] = tubes;
    expect(Object.keys(tube).sort()).toEqual(['copies', 'ends', 'hand', 'name', 'od', 'warnings']);
    expect(Object.keys(tube.ends)).toEqual(['B']);
    expect(Object.keys(tube.ends.B).sort()).toEqual(COPED.filter((key) => key !== 'standOff').sort());
    expect(tube.ends.B.gap).toEqual({ phi: 0, mm: 0 });
  });

  test('a plain end is just that, and leaves no twist', async () => {
    const { tubes } = await asJson(
      'copeleaf: 1\ntube:\n  od: 30\n  wall: 2\n  between: 300\n  ends: { A: plain, B: { onto: { od: 60 }, angle: 90 } }\n',
    );
    expect(tubes[0].ends.A).toEqual({ plain: true });
    expect(tubes[0]).not.toHaveProperty('twist');
    // sqrt(30^2 - 15^2) is cut off at B, nothing at A.
    expect(tubes[0].overall).toBeCloseTo(300 - Math.sqrt(675), 9);
  });

  test('a warning about the whole tube has no end', async () => {
    const { tubes } = await asJson(
      'copeleaf: 1\ntube:\n  od: 30\n  between: 55\n  ends: { A: { onto: { od: 60 }, angle: 90 }, B: plain }\n',
    );
    expect(tubes[0].warnings).toEqual([{ code: 'short', text: expect.stringMatching(/25/) }]);
  });

  test('gives lengths to 9 significant digits', async () => {
    // The worked value of the setback at the heel: (19.05 cos 60 + 22.25) / sin 60 = 36.690609693.
    const { tubes } = await asJson(
      'copeleaf: 1\ntube:\n  od: 38.1\n  wall: 2.4\n  ends: { A: { onto: { od: 44.5 }, angle: 60 } }\n',
    );
    expect(tubes[0].ends.A.throat.phi).toBe(0);
    expect(Math.abs(tubes[0].ends.A.throat.setback - 31.775 / Math.sin(Math.PI / 3))).toBeLessThan(1e-8);
  });
});

describe('check --strict', () => {
  const good = 'copeleaf: 1\ntube:\n  od: 30\n  ends: { A: { onto: { od: 60 }, angle: 60 } }\n';
  const warned = good.replace('angle: 60', 'angle: 20');

  test.each(['text', 'json'])(
    'exits 2 on a warning and 0 without, its result the same as ever, as %s',
    async (as) => {
      const lax = await check(warned, '--as', as);
      const strict = await check(warned, '--as', as, '--strict');
      expect([lax.code, strict.code]).toEqual([0, 2]);
      expect(strict.out).toBe(lax.out);
      expect(lax.out).toContain('heel-angle');
      expect((await check(good, '--as', as, '--strict')).code).toBe(0);
    },
  );
});
