import { expect, test } from 'vitest';
import { type StandingFrame, standingFrame } from '../../src/together/frame-notes.ts';
import { readLines } from '../frame/read-lines.ts';

const ROUND = 'od: 42.4, wall: 2.6';

/** Two lengths of a rail, the second from the far end back, and a post under it, its top so far from the splice and leaning by so much. */
function railOnPost(beyond: number, lean = 0): StandingFrame {
  const job = readLines(
    { a: '[0, 0, 900]', b: '[800, 0, 900]', c: '[1800, 0, 900]', p: `[${800 + beyond + lean}, 0, 0]` },
    [
      `name: low, along: [a, b], ${ROUND}`,
      `name: high, along: [c, b], ${ROUND}`,
      `name: post, along: [p, [${800 + beyond}, 0, 900]], ${ROUND}`,
    ],
  );
  const whole = standingFrame(job);
  if (!whole) throw new Error('no frame');
  return whole;
}

/** On which length the post lands, from where to where, and its mark, to a hundredth. */
function landed({ landings }: StandingFrame): readonly (readonly (number | undefined)[])[] {
  const round = (mm: number | undefined) => (mm === undefined ? undefined : Number(mm.toFixed(2)));
  return landings.map(({ on, from, to, mark }) => [on, round(from), round(to), round(mark)]);
}

test('a post that stands under a splice is marked out on both lengths', () => {
  const whole = railOnPost(0);
  expect(landed(whole)).toEqual([
    [0, 778.8, 821.2, 800],
    [1, 978.8, 1021.2, 1000],
  ]);
  expect(whole.warnings).toEqual([]);
});

test('where its centre line comes out on one length alone, the other has what the footprint covers', () => {
  // Its centre line meets the underside 21.2 below the axis: by the lean of 45 degrees so far to the right.
  const [on, other] = landed(railOnPost(0, 900));
  expect([on?.[0], on?.[3]]).toEqual([0, undefined]);
  expect([other?.[0], other?.[3]]).toEqual([1, 978.8]);
  expect((on?.[1] ?? 0) + (other?.[2] ?? 0)).toBeCloseTo(1800, 6);
  expect((on?.[2] ?? 0) + (other?.[1] ?? 0)).toBeCloseTo(1800, 6);
});

test('a post that stands clear of the splice is on the length it stands on', () => {
  expect(landed(railOnPost(-21.3)).map(([on]) => on)).toEqual([0]);
  expect(landed(railOnPost(21.3)).map(([on]) => on)).toEqual([1]);
  expect(landed(railOnPost(-10)).map(([on]) => on)).toEqual([0, 1]);
});
