import { expect, it } from 'vitest';
import { innerEdgeOf } from '../../src/leaf/card/edge-words.ts';
import type { Leaf } from '../../src/leaf/leaf.ts';
import { textsOf } from './collisions.ts';
import { kindCasesOf, partOf, round, tubeOnto } from './random-kinds.ts';
import { type Ask, casesOf, length } from './random-tubes.ts';

function only(ask: Ask) {
  const [first] = casesOf(ask);
  if (!first) throw new Error('one end');
  return first;
}

function cardOf(ask: Ask): string {
  return textsOf(only(ask).leaf.card).join(' ');
}

function isDashed({ wrap }: Leaf): boolean {
  return wrap.marks.some((mark) => mark.kind === 'stroke' && mark.purpose === 'other-edge');
}

const SLANTED: Ask = { od: 31.75, wall: 2.41, A: { header: 38.1, angle: 62 } };
const SQUARE_ON: Ask = { od: 31.75, wall: 2.41, A: { header: 38.1, angle: 90 } };

it('near the heel of a slanted joint the inner edge is left long, and nowhere on a square one', () => {
  // (x cos + sqrt(R^2 - y^2)) / sin at the heel: the smaller radius reaches further, by wall / tan 62; at 90 degrees it never does.
  const { cope } = only(SLANTED);
  expect((cope.inside?.(0).setback ?? 0) - cope.outside(0).setback).toBeCloseTo(
    -2.41 / Math.tan((62 * Math.PI) / 180),
    9,
  );
  expect(innerEdgeOf(cope)).toBe('inWaste');
  expect(innerEdgeOf(only(SQUARE_ON).cope)).toBe('onBody');
  expect(cardOf(SLANTED)).toContain('so the inside edge stays long');
  expect(cardOf(SQUARE_ON)).not.toContain('waste');
});

it('on a plate that is met square the inner edge ends where the outer one does', () => {
  const [flat] = kindCasesOf(tubeOnto(round(48.3), [partOf({ kind: 'plate' }, 90)], 3));
  expect(flat && innerEdgeOf(flat.cope)).toBe('same');
});

it('what is cut in one plane needs no tilt of its cut, but where a land is left on it', () => {
  const part = partOf({ kind: 'plate' }, 60);
  const tube = tubeOnto(round(48.3), [part], 3);
  const preparation = { edge: 'bevel', land: length(1.5) } as const;
  const [flat] = kindCasesOf(tube);
  const [land] = kindCasesOf({ ...tube, ends: { A: { kind: 'coped', parts: [part], preparation } } });
  expect(flat && innerEdgeOf(flat.cope)).toBe('flat');
  expect(land && innerEdgeOf(land.cope)).toBe('inWaste');
  // Nor a second line to cut to.
  expect([flat, land].map((each) => each && isDashed(each.leaf))).toEqual([false, true]);
});

it('without a wall there is no dashed line to speak of', () => {
  const { wall: _, ...bare } = SLANTED;
  expect(innerEdgeOf(only(bare).cope)).toBe('unknown');
  expect(cardOf(bare)).toContain('bevel the inside edge until it seats');
  expect(cardOf(bare)).not.toContain('dash');
});

it.each(['bevel', 'square', 'inside', 'land'] as const)(
  'the card names the dashed line of an end with the edge %s',
  (edge) => {
    const said = cardOf({ ...SLANTED, edge });
    const bevelled = edge === 'bevel' || edge === 'land';
    expect(said).toContain(
      bevelled ? 'the inside edge stays long, out to them' : 'dashes where the outside edge',
    );
  },
);

it('lengths in the words of an edge are those that were written', () => {
  const part = partOf({ kind: 'plate' }, 60);
  const tube = tubeOnto(round(48.3), [part], 3);
  const preparation = { edge: 'bevel', land: length(1.5) } as const;
  const [land] = kindCasesOf({ ...tube, ends: { A: { kind: 'coped', parts: [part], preparation } } });
  expect(land && textsOf(land.leaf.card).join(' ')).toContain('Feather edges are left 1.5mm');
});

it('a card says once which side of the paper is out, and that of a footprint, which is not to cut by, does not', () => {
  const [one] = kindCasesOf(tubeOnto(round(48.3), [partOf({ kind: 'plate' }, 60)], 3));
  const said = one ? textsOf(one.leaf.card).join(' ') : '';
  expect(said.match(/printed side out/g)).toHaveLength(1);
  expect(one?.footprints.flatMap(({ card }) => textsOf(card)).join(' ')).not.toContain('printed side out');
});
