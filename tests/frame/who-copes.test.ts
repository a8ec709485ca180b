import { describe, expect, test } from 'vitest';
import type { Job } from '../../src/job/job.ts';
import { standingFrame } from '../../src/together/frame-notes.ts';
import { copedOf, endOf, fileOf, readLines, readText } from './read-lines.ts';

const ROUND = 'od: 31.75, wall: 2';
const tube = (name: string, along: string, more = ROUND): string =>
  `name: ${name}, along: [${along}], ${more}`;
const lengthOf = (job: Job, place: number): number => {
  const between = job.tubes[place]?.between;
  return between && 'mm' in between ? between.mm : Number.NaN;
};
const deg = (rad: number): number => (rad * 180) / Math.PI;

// Of a corner of three equal tubes: x to the right, y back, z down.
const CORNER = {
  o: '[0, 0, 0]',
  x: '[600, 0, 0]',
  y: '[0, 500, 0]',
  z: '[0, 0, -700]',
  d: '[-400, -300, 500]',
};

describe('corners', () => {
  const RING = { a: '[0, 0, 0]', b: '[900, 0, 0]', c: '[900, 600, 0]', d: '[0, 600, 0]' };
  const SIDES = [tube('front', 'a, b'), tube('right', 'b, c'), tube('back', 'c, d'), tube('left', 'd, a')];

  test('a rectangle of four equal tubes has four mitres of 45 degrees, each towards the other tube', () => {
    const job = readLines(RING, SIDES);
    const round = ['front', 'right', 'back', 'left'];
    round.forEach((name, i) => {
      const [before, after] = [round[(i + 3) % 4], round[(i + 1) % 4]];
      expect(endOf(job, name, 'A')).toBe(`mitre ${before}`);
      expect(endOf(job, name, 'B')).toBe(`mitre ${after}`);
    });
    for (const [i, between] of [900, 600, 900, 600].entries()) {
      expect(lengthOf(job, i)).toBeCloseTo(between, 9);
    }
    // Seen from A to B, with up before one, stations grow to the right: all others stand on the left.
    for (const name of round) {
      for (const end of ['A', 'B'] as const) {
        const { first } = copedOf(job, name, end);
        expect(deg(first.angle.rad)).toBeCloseTo(45, 9);
        expect(deg(first.clock.rad)).toBeCloseTo(270, 9);
      }
    }
  });

  test('legs that come later leave the mitres, and cope under both where they stand', () => {
    const feet = { e: '[0, 0, -700]', f: '[900, 0, -700]', g: '[900, 600, -700]', h: '[0, 600, -700]' };
    const legs = ['a, e', 'b, f', 'c, g', 'd, h'].map((along, i) => tube(`leg ${i}`, along));
    const job = readLines({ ...RING, ...feet }, [...SIDES, ...legs]);
    for (const name of ['front', 'right', 'back', 'left']) {
      for (const end of ['A', 'B'] as const) expect(endOf(job, name, end)).toMatch(/^mitre /);
    }
    expect(endOf(job, 'leg 0', 'A')).toBe('stopped front + stopped left');
    expect(endOf(job, 'leg 2', 'A')).toBe('stopped right + stopped back');
    expect(endOf(job, 'leg 0', 'B')).toBe('plain 0.000 open');
  });

  test('legs that come first are plain and run past by the reach of the rails, which cope onto them', () => {
    const job = readLines(CORNER, [tube('leg', 'o, z'), tube('rail x', 'o, x'), tube('rail y', 'o, y')]);
    // No mitre needs 60 degrees, and these make 90: the first two are one.
    expect(endOf(job, 'leg', 'A')).toBe('mitre rail x');
    const whole = readLines(CORNER, [
      tube('leg', 'o, z', `${ROUND}, through: true`),
      tube('rail x', 'o, x'),
      tube('rail y', 'o, y'),
    ]);
    expect(endOf(whole, 'leg', 'A')).toBe('plain 15.875 open');
    expect(lengthOf(whole, 0)).toBeCloseTo(700 + 15.875, 6);
    expect(endOf(whole, 'rail x', 'A')).toBe('stopped leg');
    expect(endOf(whole, 'rail y', 'A')).toBe('stopped leg + stopped rail x');
  });

  test('rungs are coped square onto the rails of a ladder', () => {
    const points = { a: '[0, 0, 0]', b: '[0, 0, 2000]', c: '[400, 0, 0]', d: '[400, 0, 2000]' };
    const rungs = [300, 700, 1100].flatMap((z) => [
      tube(`rung ${z}`, `[0, 0, ${z}], [400, 0, ${z}]`, 'od: 25, wall: 2'),
    ]);
    const job = readLines(points, [tube('left', 'a, b'), tube('right', 'c, d'), ...rungs]);
    for (const z of [300, 700, 1100]) {
      expect(endOf(job, `rung ${z}`, 'A')).toBe('left');
      expect(endOf(job, `rung ${z}`, 'B')).toBe('right');
      expect(deg(copedOf(job, `rung ${z}`, 'A').first.angle.rad)).toBe(90);
    }
  });

  test("a tripod's third leg is coped onto the two before it, where they stand", () => {
    const leg = (degrees: number, reach: number): string => {
      const turn = (degrees * Math.PI) / 180;
      return `[${(reach * Math.cos(turn)).toFixed(4)}, ${(reach * Math.sin(turn)).toFixed(4)}, 0]`;
    };
    const feet = (reach: number) => ({
      top: '[0, 0, 1000]',
      p: leg(0, reach),
      q: leg(120, reach),
      r: leg(240, reach),
    });
    const legs = ['p', 'q', 'r'].map((foot) => tube(foot, `top, ${foot}`));
    // Feet 300 from the middle make 28 degrees; 900 from it, 71.
    const narrow = readLines(feet(300), legs);
    expect(endOf(narrow, 'p', 'A')).toMatch(/^plain \d+\.\d{3} open$/);
    expect(endOf(narrow, 'q', 'A')).toBe('stopped p');
    expect(endOf(narrow, 'r', 'A')).toBe('stopped p + stopped q');
    const wide = readLines(feet(900), legs);
    expect(endOf(wide, 'p', 'A')).toBe('mitre q');
    expect(endOf(wide, 'q', 'A')).toBe('mitre p');
    expect(endOf(wide, 'r', 'A')).toBe('stopped p + stopped q');
  });
});

describe('at a point', () => {
  test('what passes through it comes before all that end there, so that nothing is mitred', () => {
    const job = readLines({ ...CORNER, w: '[-600, 0, 0]' }, [
      tube('leg', 'o, z'),
      tube('rail y', 'o, y'),
      tube('rail', 'w, x'),
    ]);
    expect(endOf(job, 'leg', 'A')).toBe('rail');
    expect(endOf(job, 'rail y', 'A')).toBe('rail + stopped leg');
  });

  test('a tube that passes keeps its true offset, which may not be over the snap', () => {
    const by = (mm: number) =>
      readLines({ o: `[0, ${mm}, 0]`, z: `[0, ${mm}, -700]`, w: '[-600, 0, 0]', x: '[600, 0, 0]' }, [
        tube('rail', 'w, x'),
        tube('leg', 'o, z'),
      ]);
    const [inside, beside] = [by(0.4), by(0.6)];
    expect(Math.abs(copedOf(inside, 'leg', 'A').first.offset.mm)).toBeCloseTo(0.4, 9);
    expect(inside.frame?.notes).toEqual([]);
    expect(beside.frame?.notes.map(({ code }) => code)).toEqual(['near']);
  });

  test('`through` goes first, `after` after what it names, and both leave no mitre', () => {
    const tubes = (first = ROUND, second = ROUND) => [
      tube('rail x', 'o, x', first),
      tube('rail y', 'o, y', second),
    ];
    const plain = readLines(CORNER, tubes());
    expect([endOf(plain, 'rail x', 'A'), endOf(plain, 'rail y', 'A')]).toEqual([
      'mitre rail y',
      'mitre rail x',
    ]);
    const through = readLines(CORNER, tubes(ROUND, `${ROUND}, through: true`));
    expect([endOf(through, 'rail x', 'A'), endOf(through, 'rail y', 'A')]).toEqual([
      'stopped rail y',
      'plain 15.875 open',
    ]);
    const after = readLines(CORNER, tubes(`${ROUND}, after: [rail y]`));
    expect([endOf(after, 'rail x', 'A'), endOf(after, 'rail y', 'A')]).toEqual([
      'stopped rail y',
      'plain 15.875 open',
    ]);
  });

  test('`mitre: false` at either end leaves the first one plain and the second coped onto it', () => {
    for (const [x, y] of [
      [', ends: { A: { mitre: false } }', ''],
      ['', ', ends: { A: { mitre: false } }'],
    ]) {
      const job = readLines(CORNER, [tube('rail x', 'o, x', ROUND + x), tube('rail y', 'o, y', ROUND + y)]);
      expect(endOf(job, 'rail x', 'A')).toBe('plain 15.875 open');
      expect(endOf(job, 'rail y', 'A')).toBe('stopped rail x');
    }
  });

  test('bodies that make less than 60 degrees are mitred only where that is asked', () => {
    const at = (degrees: number, more = '') => {
      const turn = (degrees * Math.PI) / 180;
      const points = {
        o: '[0, 0, 0]',
        x: '[600, 0, 0]',
        y: `[${600 * Math.cos(turn)}, ${600 * Math.sin(turn)}, 0]`,
      };
      const job = readLines(points, [tube('one', 'o, x', ROUND + more), tube('two', 'o, y')]);
      return endOf(job, 'two', 'A');
    };
    expect(at(60)).toBe('mitre one');
    expect(at(59.9)).toBe('stopped one');
    expect(at(59.9, ', ends: { A: { mitre: true } }')).toBe('mitre one');
    expect(at(150)).toBe('mitre one');
  });

  test('tubes of other outsides are not mitred, nor rectangular ones whose sections do not meet', () => {
    const two = (one: string, other: string) =>
      endOf(readLines(CORNER, [tube('one', 'o, x', one), tube('two', 'o, y', other)]), 'two', 'A');
    expect(two('od: 31.75, wall: 2', 'od: 33.7, wall: 2')).toBe('stopped one');
    expect(two('od: 31.75, wall: 2', 'od: 31.75, wall: 3')).toBe('mitre one');
    const box = (wide: number, deep: number, more = '') =>
      `section: { wide: ${wide}, deep: ${deep}, corner: 4 }, wall: 2${more}`;
    expect(two(box(50, 30), box(50, 30))).toBe('mitre one');
    expect(two(box(50, 30), box(50, 30, ', face: right'))).toBe('stopped one');
    expect(two(box(40, 40), box(40, 40, ', face: right'))).toBe('mitre one');
    // Both with their wide faces to the inside of the corner.
    expect(two(box(50, 30, ', face: back'), box(50, 30, ', face: right'))).toBe('mitre one');
  });

  test('two of one outside in line within a degree are a splice: plain, and together a tube that passes', () => {
    const spliced = (z: number, section = ROUND) =>
      readLines({ ...CORNER, w: `[-600, 0, ${z}]` }, [
        tube('left', 'w, o'),
        tube('right', 'o, x', section),
        tube('leg', 'o, z'),
      ]);
    const job = spliced(10);
    expect([endOf(job, 'left', 'B'), endOf(job, 'right', 'A')]).toEqual(['plain 0.000', 'plain 0.000']);
    // It lands on the one to whose side it leans, half over that one's end, which is no end.
    expect(endOf(job, 'leg', 'A')).toBe('right');
    expect(endOf(spliced(-10), 'leg', 'A')).toBe('left');
    // Ten in 600 is a little out of level as well, and no fault of the splice.
    expect(standingFrame(job)?.warnings.map(({ code }) => code)).toEqual(['askew']);
    // 10.6 in 600 is more than a degree.
    expect(endOf(spliced(10.6), 'left', 'B')).toBe('mitre right');
  });

  test('a tube that runs through across two in line comes before their splice: both cope onto it', () => {
    // The bay of a rack, its brace in one length, the other one in two halves.
    const BAY = { a: '[0, 0, 0]', b: '[0, 0, 1100]', c: '[1400, 0, 1100]', d: '[1400, 0, 0]' };
    const x = '{ middle: [a, c] }';
    for (const more of [ROUND, `${ROUND}, through: true`]) {
      const halves = [tube('low half', 'x, d'), tube('high half', 'x, b')];
      const job = readLines({ ...BAY, x }, [tube('brace', 'a, c', more), ...halves]);
      expect([endOf(job, 'low half', 'A'), endOf(job, 'high half', 'A')]).toEqual(['brace', 'brace']);
      expect(endOf(job, 'brace', 'A')).toMatch(/^plain/);
      expect(standingFrame(job)?.warnings.map(({ code }) => code)).not.toContain('clash');
    }
  });

  test('of two that are both in two halves the first is spliced and the second copes onto it', () => {
    const points = { ...CORNER, w: '[-600, 0, 0]', v: '[0, -500, 0]' };
    const halves = ['left: w, o', 'front: v, o', 'right: o, x', 'back: o, y'].map((each) => {
      const [name = '', along = ''] = each.split(': ');
      return tube(name, along);
    });
    const job = readLines(points, halves);
    expect([endOf(job, 'left', 'B'), endOf(job, 'right', 'A')]).toEqual(['plain 0.000', 'plain 0.000']);
    expect([endOf(job, 'front', 'B'), endOf(job, 'back', 'A')]).toEqual(['left', 'left']);
    expect(standingFrame(job)?.warnings).toEqual([]);
  });

  test('a sleeve over a splice leaves it one', () => {
    const job = readLines({ ...CORNER, w: '[-600, 0, 0]' }, [
      tube('left', 'w, o'),
      tube('right', 'o, x'),
      tube('sleeve', '[-60, 0, 0], [60, 0, 0]', 'od: 38.1, wall: 3, ends: { A: plain, B: plain }'),
    ]);
    expect([endOf(job, 'left', 'B'), endOf(job, 'right', 'A')]).toEqual(['plain 0.000', 'plain 0.000']);
  });
});

describe('ends as they are asked for', () => {
  const RAIL = [tube('rail', '[-600, 0, 0], [600, 0, 0]'), tube('post', '[300, 0, 0], [300, 0, 900]')];

  test('`plain` with `past` runs on by so much or falls short by it, and the length says so', () => {
    for (const past of [25, -4]) {
      const ends = `, ends: { B: { plain: true, past: ${past} } }`;
      const job = readLines(CORNER, [tube('rail', 'o, x', ROUND + ends)]);
      expect(endOf(job, 'rail', 'B')).toBe(`plain ${past.toFixed(3)} open`);
      expect(lengthOf(job, 0)).toBeCloseTo(600 + past, 9);
    }
  });

  test('`past` without `plain` is for an end that comes out plain', () => {
    const ends = ', ends: { B: { past: 25 } }';
    expect(endOf(readLines(CORNER, [tube('rail', 'o, x', ROUND + ends)]), 'rail', 'B')).toBe(
      'plain 25.000 open',
    );
  });

  test('`flat` cuts in the plane through its point', () => {
    const splayed = (ends: string) =>
      readLines({ top: '[0, 0, 900]', foot: '[300, 0, 0]' }, [tube('leg', 'top, foot', ROUND + ends)]);
    const job = splayed(', ends: { B: { flat: z } }');
    expect(endOf(job, 'leg', 'B')).toBe('flat');
    const { first } = copedOf(job, 'leg', 'B');
    expect(deg(first.angle.rad)).toBeCloseTo(deg(Math.atan2(900, 300)), 9);
    expect(lengthOf(job, 0)).toBeCloseTo(Math.hypot(900, 300), 9);
    const tilted = splayed(', ends: { B: { flat: [0, 1, 3] } }');
    const sine = 2700 / Math.hypot(900, 300) / Math.hypot(1, 3);
    expect(deg(copedOf(tilted, 'leg', 'B').first.angle.rad)).toBeCloseTo(deg(Math.asin(sine)), 9);
    // Square to its plane it is cut square.
    const plumb = readLines({ top: '[0, 0, 900]', foot: '[0, 0, 0]' }, [
      tube('leg', 'top, foot', `${ROUND}, ends: { B: { flat: z } }`),
    ]);
    expect(deg(copedOf(plumb, 'leg', 'B').first.angle.rad)).toBe(90);
  });

  test('`inside` is a plain end in a sleeve', () => {
    const job = readLines({ ...CORNER, w: '[-600, 0, 0]' }, [
      tube('outer', 'o, x', 'od: 42.4, wall: 3'),
      tube('inner', 'w, [150, 0, 0]', 'od: 33.7, wall: 3, ends: { B: { inside: outer } }'),
    ]);
    expect(endOf(job, 'inner', 'B')).toBe('plain 0.000 inside outer');
  });

  test('`onto` names what is landed on, and a header that ends there counts where it stands', () => {
    const names = (onto: string) =>
      readLines(CORNER, [
        tube('rail x', 'o, x', `${ROUND}, through: true`),
        tube('rail y', 'o, y'),
        tube('leg', 'o, z', `${ROUND}, ends: { A: { onto: ${onto} } }`),
      ]);
    expect(endOf(names('[rail y]'), 'leg', 'A')).toBe('stopped rail y');
    expect(endOf(names('rail x'), 'leg', 'A')).toBe('stopped rail x');
    expect(endOf(names('[rail y, rail x]'), 'leg', 'A')).toBe('stopped rail y + stopped rail x');
  });

  test('an end whose point lies inside another tube beside its axis copes onto that too, and it is told', () => {
    const job = readLines({ p: '[300, 6, 0]', q: '[300, 6, 900]' }, [
      RAIL[0] ?? '',
      tube('post', 'p, q', 'od: 20, wall: 2'),
    ]);
    expect(endOf(job, 'post', 'A')).toBe('rail');
    expect(Math.abs(copedOf(job, 'post', 'A').first.offset.mm)).toBeCloseTo(6, 9);
    expect(job.frame?.notes).toMatchObject([{ code: 'near', tubes: [1, 0] }]);
    const far = readLines({ p: '[300, 17, 0]', q: '[300, 17, 900]' }, [
      RAIL[0] ?? '',
      tube('post', 'p, q', 'od: 20, wall: 2'),
    ]);
    expect(endOf(far, 'post', 'A')).toBe('plain 0.000 open');
  });

  test('of two tubes that both end inside the other the later one copes', () => {
    const job = readLines({ p: '[0, 0, 5]', q: '[600, 0, 5]', r: '[4, 4, 0]', s: '[4, 4, 700]' }, [
      tube('rail', 'p, q'),
      tube('post', 'r, s'),
    ]);
    expect(endOf(job, 'rail', 'A')).toMatch(/^plain/);
    expect(endOf(job, 'post', 'A')).toBe('rail');
  });
});

describe('points', () => {
  test('those nearer than the snap are joined to the first, both names stay, and it is told', () => {
    const points = {
      a: '[0, 0, 0]',
      b: '[0.3, 0.3, 0]',
      c: '[0.6, 0.5, 0]',
      x: '[600, 0, 0]',
      y: '[0, 600, 0]',
    };
    const tubes = [tube('one', 'a, x'), tube('two', 'b, y')];
    const job = readLines(points, tubes);
    expect(job.frame?.notes.map(({ code, text }) => [code, text])).toEqual([
      ['joined', 'b lies nearer to a than the snap: they are one point, where a is.'],
    ]);
    expect(Object.fromEntries(job.frame?.points ?? [])).toMatchObject({
      a: [0, 0, 0],
      b: [0, 0, 0],
      c: [0.6, 0.5, 0],
    });
    expect(endOf(job, 'two', 'A')).toBe('mitre one');
    const joined = (snap: string) =>
      readLines(points, tubes, [snap]).frame?.notes.filter(({ code }) => code === 'joined');
    expect(joined('snap: 0.2')).toEqual([]);
    expect(joined('snap: 1')).toHaveLength(2);
  });

  test('a point on a tube, on its outside, in the middle, part of the way, or from another', () => {
    const job = readLines(
      {
        a: '[0, 0, 0]',
        b: '[600, 800, 0]',
        on: '{ on: rail, at: 250 }',
        out: '{ on: rail, at: 250, out: up }',
        half: '{ middle: [a, b] }',
        most: '{ middle: [a, b], share: 0.9 }',
        by: '{ from: half, by: [0, 0, 1in] }',
      },
      [tube('rail', 'a, b')],
    );
    const points = job.frame?.points;
    const at = (name: string): number[] => (points?.get(name) ?? []).map((mm) => Number(mm.toFixed(9)) + 0);
    expect(at('on')).toEqual([150, 200, 0]);
    expect(at('out')).toEqual([150, 200, 15.875]);
    expect(at('half')).toEqual([300, 400, 0]);
    expect(at('most')).toEqual([540, 720, 0]);
    expect(at('by')).toEqual([300, 400, 25.4]);
  });

  test('on the outside of a box, its wide face up, half its depth or half its width away', () => {
    const box = tube('rail', 'a, b', 'section: { wide: 60, deep: 40, corner: 4 }, wall: 2');
    const at = (way: string, more = '') =>
      readLines({ a: '[0, 0, 0]', b: '[600, 0, 0]', p: `{ on: rail, at: 250, out: ${way} }` }, [box + more])
        .frame?.points.get('p')
        ?.map((mm) => Number(mm.toFixed(9)) + 0);
    expect(at('up')).toEqual([250, 0, 20]);
    expect(at('front')).toEqual([250, -30, 0]);
    expect(at('front', ', face: front')).toEqual([250, -20, 0]);
  });

  test('names are the text of the file, numerals included, and a typeset prime is a prime', () => {
    const job = readLines({ 1: '[0, 0, 0]', '007': '[600, 0, 0]', 'a’': '[600, 500, 0]' }, [
      tube('2', '1, 007'),
      tube('0x1F', "007, a'"),
    ]);
    expect([...(job.frame?.points.keys() ?? [])]).toEqual(['1', '007', "a'"]);
    expect(job.tubes.map(({ name }) => name)).toEqual(['2', '0x1F']);
  });
});

describe('a mirror', () => {
  const HALF = { a: '[0, 0, 0]', b: '[400, 0, 0]', c: '[600, 0, 500]', e: '[900, 0, 500]' };
  const MIRROR = ['mirror: { x: 600 }'];

  test('each twin stands right after its original, what lies on the plane or is its own image is single', () => {
    const job = readLines(
      { ...HALF, f: '[600, 900, 500]', g: '[300, 0, 500]' },
      [tube('side', 'a, c'), tube('ridge', 'c, f'), tube('cross', 'g, e'), tube('foot', 'a, b')],
      MIRROR,
    );
    expect(job.tubes.map(({ name }) => name)).toEqual(['side', "side'", 'ridge', 'cross', 'foot', "foot'"]);
    expect(job.frame?.points.get("a'")).toEqual([1200, 0, 0]);
    expect(job.frame?.points.has("c'")).toBe(false);
    expect(job.frame?.seats[1]).toMatchObject({ along: ["a'", 'c'], from: [1200, 0, 0] });
  });

  test('names in the keys of a twin are those of twins where there are such', () => {
    const job = readLines(
      { ...HALF, p: '{ on: side, at: 300 }', q: '[300, 700, 0]', d: '[600, 0, 0]' },
      [
        tube('side', 'a, c'),
        tube('king', 'c, d'),
        tube('stay', 'p, q', `${ROUND}, ends: { A: { onto: [side] } }`),
        tube('strut', 'b, c', `${ROUND}, after: [side, king]`),
      ],
      MIRROR,
    );
    expect(endOf(job, "stay'", 'A')).toBe("side'");
    expect(job.tubes.map(({ name }) => name)).toContain("strut'");
  });

  test('a tube or a point that is written out under the primed name replaces the twin', () => {
    const job = readLines(
      { ...HALF, "b'": '[850, 0, 0]' },
      [tube('side', 'a, c'), tube("side'", 'e, c', 'od: 33.7, wall: 2'), tube('foot', 'a, b')],
      MIRROR,
    );
    expect(job.tubes.map(({ name }) => name)).toEqual(['side', "side'", 'foot', "foot'"]);
    expect(job.frame?.seats[1]?.from).toEqual([900, 0, 500]);
    expect(job.frame?.points.get("b'")).toEqual([850, 0, 0]);
  });

  test('a tube that crosses the plane and is not its own twin is doubled', () => {
    const job = readLines({ ...HALF, h: '[800, 400, 0]' }, [tube('brace', 'a, h')], MIRROR);
    expect(job.tubes.map(({ name }) => name)).toEqual(['brace', "brace'"]);
  });

  test('two twins that end at one point and are not mitred are no pair; mitred they are', () => {
    const apex = (more: string) => fileOf(HALF, [tube('side', 'a, c', ROUND + more)], MIRROR);
    expect(endOf(readText(apex('')), "side'", 'B')).toBe('mitre side');
    const cut = readText(apex(', ends: { B: { mitre: false } }'));
    expect([endOf(cut, 'side', 'B'), endOf(cut, "side'", 'B')]).toEqual([
      expect.stringMatching(/^plain/),
      'stopped side',
    ]);
  });
});

test('two tubes that all but lie in line are refused, however far off their walls meet', () => {
  const points = {
    o: '[0, 0, 0]',
    p: '[-667.1183, -38.0320, -208.5827]',
    q: '[346.2739, -554.7832, -249.6196]',
    r: '[-228.8445, -357.3837, 556.6930]',
    s: '[-205.9601, -321.3764, 500.8774]',
  };
  const wide = 'od: 160, wall: 2';
  const tubes = ['p', 'q', 'r', 's'].map((to) => tube(`to ${to}`, `o, ${to}`, wide));
  expect(() => readLines(points, tubes)).toThrow(/under 15/);
});
