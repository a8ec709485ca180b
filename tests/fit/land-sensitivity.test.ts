import { expect, test } from 'vitest';
import type { RandomJoint } from '../outside/random-joints.ts';
import { askOf, endUnderTest, withLand } from './ends-under-test.ts';

// A round joint by its closed formula, and the face with its land as points of it: 720 round the tube and 120 ever nearer to either
// side of each brink, at 25 depths of the land and 25 behind it. Points can only miss the deepest foul, by less than 5e-4 mm here.
const AGREE = 5e-4;
const ROUND = 2 * Math.PI;
const DEGREE = Math.PI / 180;

/** A header as an end meets it. */
type Header = Pick<RandomJoint, 'header' | 'angle' | 'offset' | 'clock'>;

function setback({ header, angle, offset, clock }: Header, rho: number, station: number): number | undefined {
  const beside = rho * Math.sin(station - clock) - offset;
  if (Math.abs(beside) > header) return undefined;
  const x = rho * Math.cos(station - clock);
  return (x * Math.cos(angle) + Math.sqrt(header ** 2 - beside ** 2)) / Math.sin(angle);
}

function trimmed(met: Header, rho: number, station: number): number {
  const plane = (rho * Math.cos(station - met.clock) * Math.cos(met.angle)) / Math.sin(met.angle);
  return setback(met, rho, station) ?? plane;
}

/** From a point of the tube's outside to the header. */
function distance({ header, angle, offset, clock }: Header, rho: number, station: number, z: number): number {
  const [x, y] = [rho * Math.cos(station - clock), rho * Math.sin(station - clock)];
  return Math.abs(Math.hypot(x * Math.cos(angle) - z * Math.sin(angle), y - offset) - header);
}

function home(station: number): number {
  return station - ROUND * Math.round(station / ROUND);
}

/** Where lines at these radii begin to touch, and as a leaf of another scale has them. */
function brinks(headers: readonly Header[], radii: readonly number[], scale: number): number[] {
  const found = headers.flatMap(({ header, offset, clock }) =>
    radii.flatMap((rho) =>
      [(offset + header) / rho, (offset - header) / rho]
        .filter((sine) => Math.abs(sine) <= 1)
        .flatMap((sine) => [clock + Math.asin(sine), clock + Math.PI - Math.asin(sine)]),
    ),
  );
  const printed = found.flatMap((each) => [-ROUND, 0, ROUND].map((turn) => scale * (home(each) + turn)));
  return [...found, ...printed.filter((each) => Math.abs(each) <= Math.PI)];
}

function stations(headers: readonly Header[], radii: readonly number[], scale: number): number[] {
  const ring = Array.from({ length: 720 }, (_, i) => (i * ROUND) / 720);
  const ways = Array.from({ length: 120 }, (_, i) => 0.3 * 0.78 ** i);
  const near = brinks(headers, radii, scale).flatMap((at) => ways.flatMap((way) => [at - way, at + way]));
  return [...ring, ...near];
}

/** The widest gap where an end with a land, made for the one header, is slid onto the other. */
function gapOn(
  made: Header,
  met: Header,
  { tube, wall }: RandomJoint,
  land: number,
  cut: (station: number) => number,
  scale = 1,
): number {
  const there = (station: number): number => home(station) / scale;
  const zones = [
    { from: 0, to: land, isLand: true },
    { from: land, to: wall, isLand: false },
  ];
  let slide = Number.NEGATIVE_INFINITY;
  for (const { from, to, isLand } of zones) {
    for (let i = 0; i <= 24; i++) {
      const rho = tube - from - ((to - from) * i) / 24;
      for (const station of stations([made, met], [rho, tube], scale)) {
        const touched = setback(met, rho, station);
        if (touched === undefined) continue;
        const bevelled = trimmed(made, rho, there(station));
        const face = isLand ? Math.max(bevelled, cut(there(station))) : bevelled;
        slide = Math.max(slide, touched - scale * face);
      }
    }
  }
  const gaps = stations([made, met], [tube], scale)
    .filter((at) => setback(made, tube, at) !== undefined && setback(met, tube, at) !== undefined)
    .map((at) => distance(met, tube, at, scale * cut(there(at)) + slide));
  return Math.max(...gaps);
}

// Found by drawing many: the foul that stops such an end lies beside the step from its land to its bevel, or where a leaf of the wrong
// scale has a brink.
const CASES: readonly (RandomJoint & { readonly land: number })[] = [
  {
    tube: 38.339654612483336,
    wall: 1.8166136653905078,
    header: 76.88046998530626,
    angle: 0.6620980257298945,
    clock: 2.76082310706695,
    offset: -38.54081533241663,
    land: 0.7542925683310636,
  },
];

test.each(CASES)(
  'what a slip opens of an end with a land is exact: tube of radius $tube',
  ({ land, ...joint }) => {
    const { cope, report } = endUnderTest(askOf(joint), withLand(land));
    const cut = (station: number): number => cope.cut(station).setback;
    const gap = gapOn(joint, joint, joint, land, cut);
    expect(Math.abs(report.gap.mm - gap)).toBeLessThan(AGREE);
    const opens = (change: (sign: number) => Header): number =>
      Math.max(0, ...[1, -1].map((sign) => gapOn(joint, change(sign), joint, land, cut) - gap));
    const scales = [1.01, 0.99].map((scale) => gapOn(joint, joint, joint, land, cut, scale) - gap);
    const second = {
      angle: opens((sign) => ({ ...joint, angle: joint.angle + sign * DEGREE })),
      clock: opens((sign) => ({ ...joint, clock: joint.clock + sign * DEGREE })),
      offset: opens((sign) => ({ ...joint, offset: joint.offset + sign })),
      scale: Math.max(0, ...scales),
    };
    for (const slip of ['angle', 'clock', 'offset', 'scale'] as const) {
      expect(Math.abs(report.sensitivity[slip] - second[slip]), slip).toBeLessThan(AGREE);
    }
  },
);
