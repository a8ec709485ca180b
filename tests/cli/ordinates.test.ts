import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, test } from 'vitest';
import { outside } from '../print/exact-lines.ts';
import { stationsOf, tubesOf } from './read-tables.ts';
import { copeleaf, folderWith, namesIn } from './run-command.ts';

describe('a tube and a header by flags', () => {
  // Computed by brute force on implicit solids, by a second program; printed to 1e-4 mm.
  const first = '--od 38.1 --wall 2.4 --onto 44.5 --angle 60';
  const second = '--od 31.75 --wall 2.4 --onto 38.1 --angle 48 --offset 3 --clock 35';
  const third = '--od 31.75 --wall 2.4 --onto 38.1 --angle 132 --offset -3 --clock -20';
  const worked: readonly (readonly [flags: string, phi: number, out: number, inn: number, square: number])[] =
    [
      [first, 0, 36.6906, 35.305, 36.6906],
      [first, 45, 28.2258, 28.598, 28.598],
      [first, 90, 13.2745, 17.0427, 17.0427],
      [first, 180, 14.6936, 16.0792, 16.0792],
      [second, 0, 31.502, 31.1209, 31.502],
      [second, 90, 30.0137, 30.1998, 30.1999],
      [second, 270, 5.7059, 10.3695, 10.3695],
      [third, 45, 4.432, 10.3022, 10.3022],
      [third, 180, 38.8569, 36.944, 38.8569],
    ];
  for (const flags of [first, second, third]) {
    it.each(['A', 'B'])(`${flags}: end %s has the worked setbacks to 1e-4 mm`, async (end) => {
      const [tube, ...others] = await tubesOf([...flags.split(' '), '--end', end, '--every', '45deg']);
      expect(others).toEqual([]);
      expect(Object.keys(tube?.ends ?? {})).toEqual([end]);
      for (const [, phi, ...lines] of worked.filter(([of]) => of === flags)) {
        const found = stationsOf(tube, end).find((station) => station.phi === phi);
        [found?.outside, found?.inside, found?.square].forEach((setback, i) => {
          expect(Math.abs((setback ?? Number.NaN) - (lines[i] ?? Number.NaN)), `${phi}`).toBeLessThanOrEqual(
            1e-4,
          );
        });
      }
    });
  }
});

describe('round onto round, from the heel in steps of 22.5 degrees', () => {
  // Derived by brute force on implicit solids, by a second program; printed to 1e-4 mm.
  const tables = [
    { od: 50, onto: 50, angle: 90, setbacks: [25, 23.097, 17.6777, 9.5671, 0, 9.5671, 17.6777, 23.097, 25] },
    {
      od: 40,
      onto: 60,
      angle: 90,
      setbacks: [30, 29.0073, 26.4575, 23.6343, 22.3607, 23.6343, 26.4575, 29.0073, 30],
    },
    {
      od: 40,
      onto: 60,
      angle: 60,
      setbacks: [46.188, 44.1627, 38.7155, 31.7094, 25.8199, 22.8717, 22.3855, 22.8267, 23.094],
    },
    {
      od: 38.1,
      onto: 50.8,
      angle: 45,
      setbacks: [54.971, 52.0096, 43.9239, 33.1901, 23.7595, 18.6098, 16.9831, 16.8098, 16.871],
    },
  ];
  const ends = ({ onto, angle }: { onto: number; angle: number }) => {
    const end = `{ onto: { od: ${onto} }, angle: ${angle} }`;
    return `{ A: ${end}, B: ${end} }`;
  };
  const job = `copeleaf: 1\ntubes:\n${tables.map((each) => `  - { od: ${each.od}, between: 800, ends: ${ends(each)} }\n`).join('')}`;

  it('both ends of each tube of a job have the tabled setbacks to 1e-4 mm, and back again', async () => {
    const tubes = await tubesOf(['-', '--every', '22.5deg'], job);
    expect(tubes).toHaveLength(tables.length);
    tables.forEach(({ setbacks }, place) => {
      for (const end of ['A', 'B']) {
        const stations = stationsOf(tubes[place], end);
        expect(stations.map(({ phi }) => phi)).toEqual(Array.from({ length: 16 }, (_, i) => i * 22.5));
        stations.forEach((station, i) => {
          const tabled = setbacks[Math.min(i, 16 - i)] ?? Number.NaN;
          expect(Math.abs(station.outside - tabled), `${place} ${end} ${station.phi}`).toBeLessThanOrEqual(
            1e-4,
          );
        });
      }
    });
  });

  it('the dihedral is in degrees, to the tabled hundredth', async () => {
    // Derived by a second program from the two surfaces' normals: r/R 0.5 at 60 degrees.
    const [tube] = await tubesOf('--od 40 --onto 80 --angle 60 --every 45'.split(' '));
    [60, 85.37, 120, 125.5, 120].forEach((dihedral, i) => {
      const ours = stationsOf(tube, 'A')[i]?.dihedral ?? Number.NaN;
      expect(Math.abs(ours - dihedral)).toBeLessThanOrEqual(0.005 + 1e-9);
    });
  });
});

/** Two tubes: a pair that is wider than one header, without a wall; and one with a plain end, whose name is awkward. */
const JOB = `copeleaf: 1
tubes:
  - name: cradle upright
    od: 31.75
    between: 500
    pair: true
    copies: 2
    ends:
      A: { onto: { od: 38.1 }, angle: 72, clock: 20, offset: 1 }
      B: { onto: { od: 25.4 }, angle: 90, clock: 35 }
  - name: 'post, "tall"'
    od: 40
    wall: 2
    between: 300
    ends:
      A: { onto: { od: 60 }, angle: 90 }
      B: plain
`;

describe('as JSON', () => {
  it('the tubes come in the order of the job, the opposite hand after its twin, each with its coped ends', async () => {
    const tubes = await tubesOf(['-'], JOB);
    expect(tubes.map(({ ends, ...tube }) => ({ ...tube, ends: Object.keys(ends) }))).toEqual([
      { name: 'cradle upright', hand: 'as-drawn', copies: 2, ends: ['A', 'B'] },
      { name: 'cradle upright', hand: 'opposite', copies: 2, ends: ['A', 'B'] },
      { name: 'post, "tall"', hand: 'as-drawn', copies: 1, ends: ['A'] },
    ]);
  });

  it('a station has the lines that exist, and a dihedral only where the outside touches', async () => {
    const [twin, , post] = await tubesOf(['-'], JOB);
    for (const station of stationsOf(post, 'A')) {
      expect(Object.keys(station)).toEqual([
        'phi',
        'contact',
        'outside',
        'inside',
        'square',
        'cut',
        'dihedral',
      ]);
    }
    const wide = stationsOf(twin, 'B');
    // Beside the header where r |sin| > R: r 15.875, R 12.7, so from 53.13 degrees off the heel.
    for (const { phi, ...station } of wide) {
      const off = Math.abs(Math.sin(((phi - 35) * Math.PI) / 180)) * 15.875 > 12.7;
      expect(Object.keys(station), `${phi}`).toEqual(
        off ? ['contact', 'outside', 'cut'] : ['contact', 'outside', 'cut', 'dihedral'],
      );
      expect(station.contact, `${phi}`).toBe(!off);
    }
    expect(wide.filter(({ contact }) => !contact)).toHaveLength(10);
  });

  it('the opposite hand has the same lines, read the other way round', async () => {
    const [twin, opposite] = await tubesOf(['-'], JOB);
    for (const end of ['A', 'B']) {
      const there = stationsOf(twin, end);
      stationsOf(opposite, end).forEach(({ outside }, i, { length }) => {
        expect(Math.abs(outside - (there[(length - i) % length]?.outside ?? Number.NaN))).toBeLessThan(1e-9);
      });
    }
  });

  it('lengths have at least 9 significant digits', async () => {
    const [tube] = await tubesOf('--od 38.1 --onto 44.5 --angle 60 --every 10'.split(' '));
    const landing = { radius: 19.05, wall: 0, header: 22.25, angle: Math.PI / 3, clock: 0, offset: 0 };
    for (const station of stationsOf(tube, 'A')) {
      const exact = outside(landing, (station.phi * Math.PI) / 180);
      expect(Math.abs(station.outside / exact - 1)).toBeLessThan(5e-10);
    }
  });
});

describe('stations beside the equal ones', () => {
  const rectangular = (end: string): string =>
    `copeleaf: 1\ntube: { section: { wide: 50, deep: 30, corner: 4 }, wall: 2, ends: { A: ${end} } }\n`;

  it('a rectangular tube has its folds, its long and short point and each break, in order', async () => {
    const job = rectangular('{ onto: { box: { wide: 40, deep: 40, corner: 0 } }, angle: 60, clock: 90 }');
    const [tube] = await tubesOf(['-', '--every', '7mm'], job);
    const stations = stationsOf(tube, 'A');
    const places = stations.map(({ s = Number.NaN }) => s);
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    // Half a wide face less its corner is 21, a corner is 2 pi, the deep face between corners 22, the wide one 42.
    const corner = 2 * Math.PI;
    const half = [21, 21 + corner, 43 + corner, 43 + 2 * corner];
    const girth = 2 * (42 + 22) + 4 * corner;
    const folds = [...half, ...half.map((s) => girth - s)];
    const has = (at: number): number => places.filter((s) => Math.abs(s - at) < 1e-6).length;
    expect(folds.map(has)).toEqual(folds.map(() => 1));
    expect(has(7)).toBe(1);
    const { out } = await copeleaf(folderWith(), ['check', '-', '--as', 'json'], { input: job });
    const { longPoint, throat } = JSON.parse(out).tubes[0].ends.A;
    for (const { s, setback } of [longPoint, throat]) {
      expect(has(s)).toBe(1);
      expect(stations.find((each) => Math.abs((each.s ?? 0) - s) < 1e-6)?.cut).toBeCloseTo(setback, 9);
    }
    // At clock 90 the header lies along the wide faces: 40 wide, the narrow side of 30 is on it all round.
    expect(stations.every(({ contact }) => contact)).toBe(true);
  });

  it('where a cut passes the side of a header two rows share a station, one with contact and one without', async () => {
    const job = rectangular('{ onto: { box: { wide: 40, deep: 40, corner: 0 } }, angle: 90 }');
    const [tube] = await tubesOf(['-', '--every', '7mm'], job);
    const stations = stationsOf(tube, 'A');
    // The wide face reaches 25 to either side, the header 20.
    const at = stations.filter(({ s = 0 }) => Math.abs(s - 20) < 1e-6);
    expect(at.map(({ contact }) => contact)).toEqual([true, false]);
    expect(at[0]?.cut).toBeCloseTo(20, 6);
    expect(at[1]?.cut).toBeCloseTo(0, 6);
  });

  it('a round tube has its equal stations, and two rows at a step between two headers', async () => {
    const first = '{ onto: { box: { wide: 20, deep: 60, corner: 0 } }, angle: 90 }';
    const second = '{ onto: { od: 60 }, angle: 90, shift: -20 }';
    const [tube] = await tubesOf(
      ['-'],
      `copeleaf: 1\ntube: { od: 40, ends: { A: [${first}, ${second}] } }\n`,
    );
    const stations = stationsOf(tube, 'A');
    const equal = Array.from({ length: 24 }, (_, i) => 15 * i);
    // The narrow header's sides stand 10 from the plane of the axes: asin(10 / 20) is 30 degrees, an equal station too.
    expect([...new Set(stations.map(({ phi }) => phi))]).toEqual(equal);
    expect(stations).toHaveLength(24 + 4);
    const at30 = stations.filter(({ phi }) => phi === 30);
    expect(at30).toHaveLength(2);
    expect(at30[0]?.cut).toBeCloseTo(30, 6);
    expect(at30[1]?.cut).toBeCloseTo(Math.sqrt(900 - 100) - 20, 4);
  });
});

describe('as CSV', () => {
  it('has a header, one line a station, and what the JSON has', async () => {
    const folder = folderWith({ 'job.yaml': JOB });
    const { code, out, err } = await copeleaf(folder, [
      'ordinates',
      'job.yaml',
      '--every',
      '45deg',
      '--as',
      'csv',
    ]);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out.endsWith('\n')).toBe(true);
    const [header, ...lines] = out.slice(0, -1).split('\n');
    expect(header).toBe('tube,hand,end,phi,contact,outside,inside,square,cut,dihedral');
    // RFC 4180: a field with a comma or a quote is quoted, and a quote in it doubled.
    const quoted = (name: string) => (/[",]/.test(name) ? `"${name.replaceAll('"', '""')}"` : name);
    const wanted = (await tubesOf(['-', '--every', '45deg'], JOB)).flatMap(({ name, hand, ends }) =>
      Object.entries(ends).flatMap(([end, { stations }]) =>
        stations.map(({ phi, contact, outside, inside = '', square = '', cut, dihedral = '' }) =>
          [quoted(name), hand, end, phi, contact, outside, inside, square, cut, dihedral].join(','),
        ),
      ),
    );
    expect(wanted).toHaveLength(40);
    expect(lines).toEqual(wanted);
  });
});

describe('as text', () => {
  it('names tube, hand and end, and gives each station the way round and the lines, in the units of the job', async () => {
    const { out } = await copeleaf(folderWith(), ['ordinates', '-', '--every', '90deg'], { input: JOB });
    expect(out).toMatch(/^cradle upright, end A$/m);
    expect(out).toMatch(/^cradle upright, end B, opposite hand$/m);
    expect(out).toMatch(/mm/);
    const post = out.slice(out.indexOf('post, "tall", end A'));
    expect(post).toMatch(/^ +station +round +outside +inside +square +cut to$/m);
    // 40 mm round is 125.66; at 90 degrees R 30, r 20: 30 at the heel, sqrt(900 - 400) = 22.36 at the sides.
    expect(post).toMatch(/^ +90° +31\.42 +22\.36 +24\.00 +24\.00 +22\.36$/m);
    expect(post).toMatch(/^ +180° +62\.83 +30\.00 +30\.00 +30\.00 +30\.00$/m);
  });

  it('gives inches to a thousandth, and the cut as on a tape', async () => {
    const flags = '--od 1-1/2in --onto 2in --angle 90 --units in --every 90';
    const { out } = await copeleaf(folderWith(), ['ordinates', ...flags.split(' ')]);
    // Round: 1.5 pi / 4 = 1.178; at the side sqrt(1 - 0.5625) = 0.661 in, nearest 1/32: 21/32.
    expect(out).toMatch(/^ +0° +0\.000 +1\.000 +1$/m);
    expect(out).toMatch(/^ +90° +1\.178 +0\.661 +~21\/32$/m);
  });

  it('says where the tube passes beside the header', async () => {
    const flags = '--od 50 --onto 30 --angle 60 --every 90';
    const { out } = await copeleaf(folderWith(), ['ordinates', ...flags.split(' ')]);
    expect(out.split('\n').filter((line) => /misses$/.test(line))).toHaveLength(2);
    expect(out).toMatch(/^ +90° .*misses$/m);
  });

  it('is what comes without --as, in steps of 15 degrees', async () => {
    const { out } = await copeleaf(folderWith(), [
      'ordinates',
      '--od',
      '30',
      '--onto',
      '40',
      '--angle',
      '70',
    ]);
    const stations = out.split('\n').flatMap((line) => /^ +([\d.]+)°/.exec(line)?.[1] ?? []);
    expect(stations).toEqual(Array.from({ length: 24 }, (_, i) => `${i * 15}`));
  });
});

describe('--every', () => {
  const flags = '--od 30 --onto 40 --angle 70'.split(' ');

  it.each([
    ['22.5deg', 22.5],
    ['22,5', 22.5],
    ["7°30'", 7.5],
    ['360', 360],
  ])('takes %s', async (every, step) => {
    const [tube] = await tubesOf([...flags, '--every', every]);
    const phis = stationsOf(tube, 'A').map(({ phi }) => phi);
    expect(phis).toEqual(Array.from({ length: 360 / step }, (_, i) => i * step));
  });

  it.each(['7deg', '0', '-15', '720', 'often', ''])('refuses %s, and says what to write', async (every) => {
    const { code, out, err } = await copeleaf(folderWith(), ['ordinates', ...flags, '--every', every]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(`--every ${every}`.trimEnd());
    expect(err).toMatch(/^ {2}instead {2}.*15deg/m);
  });
});

test('a step too small for its thousands of stations is refused for that', async () => {
  const { err } = await copeleaf(folderWith(), [
    'ordinates',
    '--od',
    '30',
    '--onto',
    '40',
    '--angle',
    '70',
    '--every',
    '0.001deg',
  ]);
  expect(err).toContain('more than 36,000 stations');
});

describe('where it reads and writes', () => {
  const one = 'copeleaf: 1\ntube: { od: 30, ends: { A: { onto: { od: 40 }, angle: 70 } } }\n';

  it('reads the same from standard input as from a file', async () => {
    const folder = folderWith({ 'job.yaml': one });
    const fromFile = await copeleaf(folder, ['ordinates', 'job.yaml']);
    const fromPipe = await copeleaf(folder, ['ordinates', '-'], { input: one });
    expect(fromFile.out).toContain('outside');
    expect(fromPipe).toEqual(fromFile);
    expect(namesIn(folder)).toEqual(['job.yaml']);
  });

  it('names standard input in a message about it', async () => {
    const { code, err } = await copeleaf(folderWith(), ['ordinates', '-'], {
      input: 'copeleaf: 1\ntube: { od: 0 }\n',
    });
    expect(code).toBe(2);
    expect(err).toMatch(/standard input, line 2/);
  });

  it('--out writes a file with what would be on standard output, in place of one of that name', async () => {
    const folder = folderWith({ 'job.yaml': one, 'table.csv': 'old' });
    const shown = await copeleaf(folder, ['ordinates', 'job.yaml', '--as', 'csv']);
    const kept = await copeleaf(folder, ['ordinates', 'job.yaml', '--as', 'csv', '--out', 'table.csv']);
    expect({ code: kept.code, out: kept.out }).toEqual({ code: 0, out: '' });
    expect(readFileSync(join(folder, 'table.csv'), 'utf8')).toBe(shown.out);
    expect(namesIn(folder)).toEqual(['job.yaml', 'table.csv']);
  });

  it('--out - is standard output', async () => {
    const folder = folderWith({ 'job.yaml': one });
    const shown = await copeleaf(folder, ['ordinates', 'job.yaml', '--as', 'json']);
    expect(await copeleaf(folder, ['ordinates', 'job.yaml', '--as', 'json', '--out', '-'])).toEqual(shown);
  });
});
