import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Job } from '../../src/job/job.ts';
import { headerFacts } from '../../src/leaf/card/header-facts.ts';
import { linesAcross } from '../../src/leaf/picture/heels-picture.ts';
import { footprintOf } from '../../src/saddle/footprint.ts';
import { placeFacts, placesOnHeaders } from '../../src/shop/frame/place-facts.ts';
import { pieceOf } from '../../src/shop/piece.ts';
import { stepsOf } from '../../src/shop/steps/steps.ts';
import { type StandingFrame, standingFrame } from '../../src/together/frame-notes.ts';
import { frameReport, goesTo, landingLine } from '../../src/together/frame-report.ts';
import { solvePieces } from '../../src/together/pieces.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { readText } from './read-lines.ts';

// What a person marks out by the words of ticket and footprint, against places in space that know only points and sizes.

const job: Job = readText(readFileSync(new URL('../../samples/kayak-rack.yaml', import.meta.url), 'utf8'));
const whole = standingFrame(job) as StandingFrame;
const nameOf = (tube: number): string => job.tubes[tube]?.name ?? '';

type Place = readonly [number, number, number];
const plus = (a: Place, k: number, b: Place): Place => [a[0] + k * b[0], a[1] + k * b[1], a[2] + k * b[2]];
const dotOf = (a: Place, b: Place): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Place, b: Place): Place => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const unit = (a: Place): Place => plus([0, 0, 0], 1 / Math.hypot(...a), a);
const pointOf = (name: string): Place => whole.frame.points.get(name) as Place;

/** As a ticket says it: `A at foot rear, B at foot mid, station 180° faces up`. */
function laid(tube: number): { axis: Place; zero: Place; from: Place } {
  const [, a = '', b = '', station = '', way] =
    /^A at (.+?)(?: \(.*\))?, B at (.+?)(?: \(.*\))?, station (\S+)° faces (up|back)$/.exec(
      goesTo(job, whole, tube) ?? '',
    ) ?? [];
  const axis = unit(plus(pointOf(b), -1, pointOf(a)));
  const up: Place = way === 'up' ? [0, 0, 1] : [0, 1, 0];
  const spine = unit(plus(up, -dotOf(up, axis), axis));
  // Seen from end A, stations grow to the right: about the axis as a right-handed screw turns.
  const turn = (-Number(station) * Math.PI) / 180;
  const zero = plus(plus([0, 0, 0], Math.cos(turn), spine), Math.sin(turn), cross(axis, spine));
  return { axis, zero, from: pointOf(a) };
}

/** Where the axis of a tube through this point comes out of a cylinder, on the way into its body. */
function outOf(at: Place, body: Place, from: Place, axis: Place, radius: number): Place {
  const off = plus(plus(at, -1, from), -dotOf(plus(at, -1, from), axis), axis);
  const way = plus(body, -dotOf(body, axis), axis);
  const [a, b, c] = [dotOf(way, way), dotOf(off, way), dotOf(off, off) - radius ** 2];
  return plus(at, (Math.sqrt(b * b - a * c) - b) / a, body);
}

test('what a ticket says of a landing leads to where the tube’s centre line comes out of the header', () => {
  let tried = 0;
  for (const landing of whole.marked) {
    const { on, tube, end, mark } = landing;
    const section = job.tubes[on]?.section;
    const header = whole.standings[on];
    if (section?.kind !== 'round' || mark === undefined || !header) continue;
    const { axis, zero, from } = laid(on);
    const own = laid(tube);
    const body = end === 'A' ? own.axis : plus([0, 0, 0], -1, own.axis);
    const place = outOf(own.from, body, from, axis, section.od.mm / 2);
    const station = Number(/station (\S+)°/.exec(landingLine(job, landing, whole.standings))?.[1]);
    const turned = (station * Math.PI) / 180;
    const way = plus(plus([0, 0, 0], Math.cos(turned), zero), Math.sin(turned), cross(axis, zero));
    const out = plus(plus(place, -1, from), -dotOf(plus(place, -1, from), axis), axis);
    expect(dotOf(unit(out), way), `${nameOf(tube)} on ${nameOf(on)}`).toBeGreaterThan(Math.cos(0.011));
    // A stop at end A stands at its long point: so far before the first point.
    const swapped = whole.placings.get(on)?.swapped;
    const first = header.solution.ends[swapped ? 'B' : 'A'];
    const stop = first?.kind === 'coped' ? first.longPoint.setback : 0;
    expect(dotOf(plus(place, -1, from), axis) - stop, `${nameOf(tube)} on ${nameOf(on)}`).toBeCloseTo(
      mark,
      6,
    );
    tried += 1;
  }
  expect(tried).toBeGreaterThan(30);
});

test('what lands over a splice stands with both tubes that are spliced there', () => {
  const on = whole.marked.filter(({ tube }) => nameOf(tube) === 'post mid').filter(({ end }) => end === 'A');
  // 800 mm from either sill's end A, half of 42.4 mm to each side.
  expect(on.map((landing) => [nameOf(landing.on), landingLine(job, landing, whole.standings)])).toEqual([
    ['sill a', 'centre 800 mm from a stop at end A, station 0° (on top), covers 779 mm to 821 mm'],
    ['sill b', 'centre 800 mm from a stop at end A, station 180° (on top), covers 779 mm to 821 mm'],
  ]);
});

test('a landing whose centre line comes out beside what it touches says so', () => {
  const said = whole.marked.map((landing) => ({
    ...landing,
    text: landingLine(job, landing, whole.standings),
  }));
  const beside = said.filter(({ mark, from, to }) => mark !== undefined && (mark < from || mark > to));
  // The post before the cross-member stands on the end of a sill, the stay from the corner touches three tubes there.
  expect(beside.length).toBeGreaterThan(8);
  expect(said.filter(({ text }) => text.includes('touches only'))).toEqual(beside);
  expect(beside.map(({ text }) => text)).toContain(
    'centre line 0 mm from a stop at end A, station 0° (on top), touches only 16.5 mm to 21 mm',
  );
});

test('from where landings are measured stands once over those of a tube in `check`', () => {
  const lines = frameReport(job, whole).split('\n');
  const heads = lines.filter((line) => line.includes('from a stop square against its end A:'));
  expect(heads).toHaveLength(new Set(whole.marked.map(({ on }) => on)).size);
  expect(lines.filter((line) => line.includes('stop'))).toEqual(heads);
});

test('a ticket tells that an end stands on a plate, and which of tubes that would hold their air in has a vent', () => {
  const lines = solvePieces(job).flatMap((piece) => placeFacts(job, piece).flat());
  const said = lines.map(({ label, text }) => `${label}: ${text}`);
  expect(said).toContainEqual(expect.stringMatching(/^deck stay: .*B at deck \(on the plate\)/));
  const sealed = whole.warnings.filter(({ code }) => code === 'sealed');
  expect(sealed.length).toBe(3);
  expect(said.filter((line) => line.startsWith('vent: drill 5 mm, to the open'))).toHaveLength(3);
});

test('a footprint laid with its cross as it says covers what the ticket says', () => {
  const { placeOf } = placesOnHeaders(job);
  let tried = 0;
  for (const piece of solvePieces(job)) {
    for (const end of ['A', 'B'] as const) {
      const cope = piece.ends[end];
      if (cope?.kind !== 'coped') continue;
      for (const [part, { angle }] of cope.end.parts.entries()) {
        const landing = cope.joint.landings[part];
        const [, first] = placeOf?.(piece, end, part) ?? [];
        const entry = landing?.solid.enter(0, 0);
        if (!first || !landing || !entry || landing.stops) continue;
        const [, at = '', arrow] = /^(\S+) mm, .*arrow to ([AB])$/.exec(first.text) ?? [];
        const covers = whole.marked.find(
          ({ on, tube, end: its }) =>
            nameOf(on) === first.label && its === end && piece.places?.[0]?.tube === tube,
        );
        const along = footprintOf(cope, 0, part).runs.flatMap((run) =>
          run.flatMap((bezier) => bezier.map((each) => each.along)),
        );
        const middle = landing.solid.develop(0, 0, entry.z).along;
        const way = (arrow === 'B' ? 1 : -1) * (angle.rad <= Math.PI / 2 ? 1 : -1);
        const reach = along.map((each) => Number(at) + way * (each - middle));
        // Distances are told to half a millimetre; a curve's handles lie a little outside it.
        expect(Math.abs(Math.min(...reach) - (covers?.from ?? 0)), first.label).toBeLessThan(0.6);
        expect(Math.abs(Math.max(...reach) - (covers?.to ?? 0)), first.label).toBeLessThan(0.6);
        tried += 1;
      }
    }
  }
  expect(tried).toBeGreaterThan(8);
});

test('in the picture from end A a header that ends at the joint lies on the side to which its tube runs', () => {
  let tried = 0;
  for (const { seat, solution } of whole.standings) {
    const lines = linesAcross(solution, ENGLISH);
    for (const end of ['A', 'B'] as const) {
      const cope = solution.ends[end];
      if (cope?.kind !== 'coped' || cope.end.parts.length < 2) continue;
      const own = lines.filter((line) => line.end === end);
      for (const [part, { stops }] of cope.end.parts.entries()) {
        const header = whole.standings[seat.ends[end].headers[part] ?? -1];
        const tip = own[part]?.line[1];
        if (!stops || !header || !tip) continue;
        // From the joint to the middle of the header, as it looks along the tube with the spine up.
        const joint = plus(seat.from, end === 'A' ? 0 : seat.length, seat.axis);
        const middle = plus(header.seat.from, header.seat.length / 2, header.seat.axis);
        const way = plus(middle, -1, joint);
        const [up, right] = [dotOf(way, seat.spine), dotOf(way, cross(seat.axis, seat.spine))];
        const off = Math.atan2(tip.x, tip.y) - Math.atan2(right, up);
        expect(Math.cos(off), `${nameOf(header.tube)} seen along ${solution.tube.name}`).toBeGreaterThan(
          0.95,
        );
        tried += 1;
      }
    }
  }
  expect(tried).toBeGreaterThan(8);
});

test('a card tells the side of such a header that the picture shows', () => {
  let tried = 0;
  for (const piece of solvePieces(job)) {
    const lines = linesAcross(piece, ENGLISH);
    for (const end of ['A', 'B'] as const) {
      const cope = piece.ends[end];
      if (cope?.kind !== 'coped' || cope.end.parts.length < 2) continue;
      const told = headerFacts(cope, 'mm', ENGLISH).filter(({ fact }) => fact === 'clocking');
      const own = lines.filter((line) => line.end === end);
      for (const { part = 0, text } of told) {
        const tip = own[part]?.line[1];
        if (!cope.end.parts[part]?.stops || !tip) continue;
        const [, degrees = '0', hand = 'right'] = /([\d.]+)° (left|right)/.exec(text) ?? [];
        const right = text.includes('opposite') ? 180 : (hand === 'left' ? -1 : 1) * Number(degrees);
        expect(Math.cos(Math.atan2(tip.x, tip.y) - (right * Math.PI) / 180), text).toBeGreaterThan(0.95);
        tried += 1;
      }
    }
  }
  expect(tried).toBeGreaterThan(4);
});

test('a square end that has no printed footprint is centred by the ticket of the tube that it lands on; on a plate by none', () => {
  const framed = readText(`
copeleaf: 1
frame:
  points: { a: [0, 0, 0], b: [900, 0, 0], foot: { on: sill, at: 300 }, top: { from: foot, by: [0, 0, 500] }, c: [0, 300, 0], d: [0, 300, 500] }
  tubes:
    - { name: sill, along: [a, b], section: { wide: 60, deep: 40, corner: 6 }, wall: 3 }
    - { name: post, along: [foot, top], od: 30, wall: 2 }
    - { name: leg, along: [c, d], od: 30, wall: 2.6, ends: { A: { flat: z } } }
`);
  const said = solvePieces(framed).flatMap((piece) =>
    stepsOf(pieceOf(piece, undefined, true, false, ENGLISH)).map(({ text }) => text),
  );
  expect(said.filter((text) => text.startsWith('Hold'))).toEqual([
    'Hold the tube in place, centred where its header’s ticket says, and scribe its footprint on the 60 mm x 40 mm box.',
    'Hold the tube in place and scribe its footprint on the plate.',
  ]);
  const places = solvePieces(framed).flatMap((piece) => placeFacts(framed, piece).flat());
  expect(places.map(({ text }) => text)).toContainEqual(expect.stringMatching(/^centre 300 mm from a stop/));
});
