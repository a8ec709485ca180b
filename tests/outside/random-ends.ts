import type { AskedEnd, AskedHeader, AskedPart, AskedTube } from './asked-end.ts';
import { between, type Random } from './random-joints.ts';
import { crossesBody } from './solids/implicit-headers.ts';

/** What a random end lands on; `rolled` is a box turned out of the plane of the axes, `sharp` one without radii. */
export type EndKind = 'round' | 'plate' | 'mitre' | 'box' | 'sharp' | 'rolled' | 'bend' | 'union';

export const END_KINDS: readonly EndKind[] = [
  'round',
  'plate',
  'mitre',
  'box',
  'sharp',
  'rolled',
  'bend',
  'union',
];

/**
 * One end of a kind on a tube of 10 to 60 mm across, angles from 25 to 155 degrees. Headers are from half as large as
 * the tube to three times, so that some are wider than what they land on; offsets run until only a quarter of the tube
 * still touches. Three walls in ten are thick, so that the deepest point often lies inside the wall.
 */
export function randomEnd(random: Random, kind: EndKind, tubeKind: AskedTube['kind']): AskedEnd {
  const tube = randomTube(random, tubeKind);
  const across = halfOf(tube);
  const wall =
    (tube.kind === 'round' ? tube.radius : tube.deep / 2) *
    (random() < 0.3 ? between(random, 0.35, 0.8) : between(random, 0.04, 0.35));
  if (kind !== 'union') return { tube, wall, parts: [clearPart(random, kind, tube)] };
  const kinds: readonly EndKind[] = ['round', 'plate', 'box', 'sharp', 'rolled', 'bend'];
  const draw = (): AskedPart => {
    const part = clearPart(random, kinds[Math.floor(random() * kinds.length)] ?? 'round', tube);
    return { ...part, shift: between(random, -0.6, 0.6) * across };
  };
  const others = random() < 0.4 ? [draw(), draw()] : [draw()];
  return { tube, wall, parts: [draw(), ...others] };
}

function randomTube(random: Random, kind: AskedTube['kind']): AskedTube {
  if (kind === 'round') return { kind, radius: between(random, 5, 30) };
  const [a, b] = [between(random, 10, 60), between(random, 10, 60)];
  const corner = random() < 0.2 ? 0 : (Math.min(a, b) / 2) * between(random, 0.05, 0.95);
  return { kind, wide: Math.max(a, b), deep: Math.min(a, b), corner };
}

/** A part whose bend, if it is one, does not come back to the tube's body, which is refused. */
function clearPart(random: Random, kind: EndKind, tube: AskedTube): AskedPart {
  for (;;) {
    const part = randomPart(random, kind, halfOf(tube));
    if (!crossesBody(tube, part)) return part;
  }
}

function halfOf(tube: AskedTube): number {
  return tube.kind === 'round' ? tube.radius : tube.wide / 2;
}

function randomPart(random: Random, kind: EndKind, across: number): AskedPart {
  const header = randomHeader(random, kind, across);
  const angle =
    header.kind === 'mitre' ? Math.PI / 2 - header.turn / 2 : between(random, 25, 155) * (Math.PI / 180);
  const flat = header.kind === 'plate' || header.kind === 'mitre';
  const reach = headerHalf(header) + across / 2;
  const offset = flat || random() < 0.25 ? 0 : between(random, -1, 1) * reach;
  return { header, angle, clock: between(random, 0, 2 * Math.PI), offset, shift: 0 };
}

function headerHalf(header: AskedHeader): number {
  if (header.kind === 'box') return header.wide / 2;
  return header.kind === 'round' || header.kind === 'bend' ? header.radius : 0;
}

function randomHeader(random: Random, kind: EndKind, across: number): AskedHeader {
  const size = across * between(random, 0.5, 3);
  switch (kind) {
    case 'plate':
      return { kind };
    case 'mitre':
      return { kind, turn: between(random, 5, 150) * (Math.PI / 180) };
    case 'box':
    case 'sharp':
    case 'rolled':
      return randomBox(random, kind, size, across * between(random, 0.5, 3));
    case 'bend': {
      const bendRadius = size * between(random, 1.6, 10);
      return { kind, radius: size, bendRadius, centre: between(random, -Math.PI, Math.PI) };
    }
    default:
      return { kind: 'round', radius: size };
  }
}

function randomBox(random: Random, kind: 'box' | 'sharp' | 'rolled', a: number, b: number): AskedHeader {
  const sharp = kind === 'sharp' || (kind === 'rolled' && random() < 0.3);
  const corner = sharp ? 0 : Math.min(a, b) * between(random, 0.05, 0.95);
  const roll =
    kind === 'box' || (kind === 'sharp' && random() < 0.5) ? 0 : between(random, -Math.PI, Math.PI);
  return { kind: 'box', wide: 2 * a, deep: 2 * b, corner, roll };
}

/** An end in words that can be pasted into a test. */
export function spellEnd(end: AskedEnd): string {
  return JSON.stringify(end);
}
