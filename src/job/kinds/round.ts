import type { Length } from '../../measure/units.ts';
import { circleRing } from '../../space/outline.ts';
import { roundHeader } from '../../space/round.ts';
import type { RoundHeader } from '../job.ts';
import { type HeaderFacts, keyed } from '../kind.ts';

export function roundOf(od: Length | undefined): RoundHeader | undefined {
  return od && { kind: 'round', od };
}

export function roundFacts(header: RoundHeader): HeaderFacts {
  const { od } = header;
  const radius = od.mm / 2;
  return {
    said: ({ headers }) => headers.round(header),
    setting: `round ${keyed(od.mm)}`,
    across: radius,
    towards: radius,
    room: { mm: od.mm, of: 'header' },
    wall: true,
    mirrored: header,
    shape: () => ({ kind: 'bar', ring: circleRing(radius), edges: [], girth: Math.PI * od.mm }),
    solid: (angle, offset, root) => roundHeader(radius + root, angle, offset),
  };
}
