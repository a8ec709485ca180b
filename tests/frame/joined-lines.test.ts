import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Refusal } from '../../src/job/text/complaint.ts';
import { howMany } from '../count.ts';
import { axesOf, far, framed, type Place, type PlainLine, readBack } from './lines.ts';

const HEAD = 'name,x1,y1,z1,x2,y2,z2,od,wall';

/** What all tubes of a rack measure across. */
const SIZE = 20;

function row(name: string, from: Place, to: Place, size = `${SIZE},1`): string {
  return [name, ...from, ...to, size].join(',');
}

/** Written to 0.001 mm, a point lies up to half of that off in x, y and z, and one on a tube as far once more along it. */
const WRITTEN = 0.002;

const share = fc.double({ min: 0.2, max: 0.8, noNaN: true });
const nudge = fc.tuple(share, share, share).map(([x, y, z]): Place => [x * 2 - 1, y * 2 - 1, z * 2 - 1]);

/** A random rack: knots of a lattice and none in line, tubes between them, stays from knots to places on tubes. */
const racks = fc.record({
  knots: fc.array(nudge, { minLength: 8, maxLength: 8 }),
  tubes: fc.uniqueArray(
    fc.tuple(fc.nat(7), fc.nat(7)).filter(([a, b]) => a < b),
    {
      minLength: 2,
      maxLength: 6,
      selector: ([a, b]) => 8 * a + b,
    },
  ),
  stays: fc.array(fc.tuple(fc.nat(7), fc.nat(9), share), { maxLength: 3 }),
  split: fc.array(share, { maxLength: 3 }),
  jitter: fc.constantFrom(0, 0.1),
  jitters: fc.array(nudge, { minLength: 40, maxLength: 40 }),
});

type Rack = typeof racks extends fc.Arbitrary<infer R> ? R : never;

function along({ from, to }: PlainLine, part: number): Place {
  const [x, y, z] = [0, 1, 2].map((k) => (from[k] ?? 0) + part * ((to[k] ?? 0) - (from[k] ?? 0)));
  return [x ?? 0, y ?? 0, z ?? 0];
}

/** A line of a rack, and the line on which it ends, where it is a stay. */
interface RackLine extends PlainLine {
  readonly on?: RackLine;
}

function rackOf({ knots, tubes, stays }: Rack): readonly RackLine[] {
  const places = knots.map(
    ([x, y, z], i): Place => [500 * (i & 1) + 60 * x, 500 * ((i >> 1) & 1) + 60 * y, 500 * (i >> 2) + 60 * z],
  );
  const knot = (i: number): Place => places[i] ?? [0, 0, 0];
  const lines: RackLine[] = tubes.map(([a, b]) => ({ from: knot(a), to: knot(b) }));
  for (const [from, host, part] of stays) {
    const on = lines[host % lines.length];
    if (on && far(on.from, knot(from)) > 1 && far(on.to, knot(from)) > 1)
      lines.push({ from: knot(from), to: along(on, part), on });
  }
  return lines;
}

/**
 * Whether the places of ends and of partings are the same or well apart, and no two tubes lie along one another. What lies nearer than the
 * snap is joined by intent, to the first of them, and tubes along one another are one tube or can't be coped.
 */
function isApart(rack: Rack, lines: readonly PlainLine[]): boolean {
  const parted = lines.flatMap((line, i) => {
    const part = rack.split[i];
    return part === undefined ? [] : [along(line, part)];
  });
  const places = [...parted, ...lines.flatMap(({ from, to }) => [from, to])];
  const isOneOrFar = places.every((a) => places.every((b) => far(a, b) === 0 || far(a, b) > SIZE));
  return isOneOrFar && lines.every((a, i) => lines.slice(i + 1).every((b) => !isSame(a, b)));
}

function isSame(a: PlainLine, b: PlainLine): boolean {
  const ends = (from: Place, to: Place): boolean => far(a.from, from) + far(a.to, to) === 0;
  return ends(b.from, b.to) || ends(b.to, b.from);
}

/** The rows of a rack: the first tubes in two pieces, each end off by the jitter, one line twice and one without length. */
function rowsOf(rack: Rack, lines: readonly PlainLine[]): readonly string[] {
  let used = 0;
  const off = ([x, y, z]: Place): Place => {
    const by = rack.jitters[used++ % rack.jitters.length] ?? [0, 0, 0];
    return [x + rack.jitter * by[0], y + rack.jitter * by[1], z + rack.jitter * by[2]];
  };
  const rows = lines.flatMap((line, i) => {
    const part = rack.split[i];
    if (part === undefined) return [row(`t${i}`, off(line.from), off(line.to))];
    const inner = along(line, part);
    const second =
      i % 2 === 0 ? row('piece', off(inner), off(line.to)) : row('piece', off(line.to), off(inner));
    return [row(`t${i}`, off(line.from), off(inner)), second];
  });
  const twice = lines.at(-1);
  const isWhole = rack.split[lines.length - 1] === undefined;
  const double = twice && isWhole ? [row('double', off(twice.to), off(twice.from))] : [];
  return [...rows, ...double, row('dot', off([9, 9, 9]), off([9, 9, 9]))];
}

/** What a frame's reader refuses of lines that are read right: tubes at too small an angle, or too short for their ends. */
const GEOMETRY = ['angle', 'too-short'];

/** How far a line may be read from where it was drawn: its ends are off by what is written and jittered, and it follows the one it is on. */
function offBy({ on }: RackLine, jitter: number): number {
  return WRITTEN + 3 * jitter + (on ? offBy(on, jitter) : 0);
}

test('random lines read back through the frame’s reader as they were drawn', () => {
  let read = 0;
  let all = 0;
  fc.assert(
    fc.property(racks, (rack) => {
      const lines = rackOf(rack);
      fc.pre(isApart(rack, lines));
      const { text, told } = framed([HEAD, ...rowsOf(rack, lines)].join('\n'));
      expect(told.join()).toContain('(dot)');
      all += 1;
      let axes: ReadonlyMap<string, PlainLine>;
      try {
        const job = readBack(text);
        expect(job.frame?.notes.filter(({ code }) => code === 'joined')).toEqual([]);
        axes = axesOf(job);
      } catch (error) {
        if (!(error instanceof Refusal)) throw error;
        for (const { code } of error.complaints) expect(GEOMETRY).toContain(code);
        return;
      }
      read += 1;
      expect([...axes.keys()]).toEqual(lines.map((_, i) => `t${i}`));
      for (const [i, line] of lines.entries()) {
        const { from, to } = line;
        const axis = axes.get(`t${i}`);
        const most = offBy(line, rack.jitter);
        expect(far(axis?.from ?? [0, 0, 0], from)).toBeLessThan(most);
        expect(far(axis?.to ?? [0, 0, 0], to)).toBeLessThan(most);
      }
    }),
    { numRuns: howMany({ short: 25, deep: 200, asked: 'LINE_RACKS' }), endOnFailure: true },
  );
  expect(read / all).toBeGreaterThan(0.5);
});

test('ends that lie on one another’s tubes in a circle are places, and read back', () => {
  const [a, b, c]: readonly Place[] = [
    [0, 0, 0],
    [900, 0, 0],
    [450, 800, 0],
  ];
  if (!a || !b || !c) return;
  const inner = (from: Place, to: Place): Place => along({ from, to }, 0.7);
  // A tripod of rods, each end of which rests on the next one.
  const rods = [
    [a, inner(b, c)],
    [b, inner(c, a)],
    [c, inner(a, b)],
  ] as const;
  const { text } = framed([HEAD, ...rods.map(([from, to], i) => row(`rod ${i}`, from, to))].join('\n'));
  expect(text).not.toContain('{ on:');
  expect(far(axesOf(readBack(text)).get('rod 0')?.to ?? a, inner(b, c))).toBeLessThan(WRITTEN);
});

test('where a rail runs through, pieces that meet it from both sides are two tubes', () => {
  const rail = row('rail', [0, 0, 0], [1000, 0, 0]);
  const rungs = [row('rung', [500, -400, 0], [500, 0, 0]), row('rung', [500, 0, 0], [500, 400, 0])];
  const { text, tubes } = framed([HEAD, rail, ...rungs].join('\n'));
  expect(tubes).toBe(3);
  // They are coped onto it and not spliced through it.
  const ends = readBack(text).tubes.map(({ ends: { A, B } }) => [A?.kind, B?.kind]);
  expect(ends).toEqual([
    ['plain', 'plain'],
    ['plain', 'coped'],
    ['coped', 'plain'],
  ]);
  const halves = [row('rail', [0, 0, 0], [500, 0, 0]), row('rail', [500, 0, 0], [1000, 0, 0])];
  expect(framed([HEAD, ...halves, ...rungs].join('\n')).tubes).toBe(3);
  expect(framed([HEAD, ...halves, ...rungs].join('\n'), { keepPieces: true }).tubes).toBe(4);
  const other = row('rail', [500, 0, 0], [1000, 0, 0], '25,1');
  expect(framed([HEAD, halves[0], other].join('\n')).tubes).toBe(2);
});

test('points that come to lie beside one another once they are laid on a tube are one', () => {
  const { text, points } = framed(
    [
      HEAD,
      row('rail', [0, 0, 0], [1000, 0, 0]),
      row('left', [500, -0.4, 0], [500, -400, 0]),
      row('right', [500, 0.4, 0], [500, 400, 0]),
    ].join('\n'),
  );
  expect(points).toBe(5);
  expect(text).toContain('left on rail: { on: rail, at: 500 }  # right A');
});
