import type { Length } from '../../measure/units.ts';
import { bothUnits, lengthAsWritten } from '../../measure/write.ts';
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
    words: bothUnits(od),
    name: `the ${lengthAsWritten(od)} header`,
    said: ({ headers }) => headers.round(header),
    setting: `round ${keyed(od.mm)}`,
    across: radius,
    towards: radius,
    room: { mm: od.mm, of: 'the header it lands on' },
    wall: true,
    mirrored: header,
    shape: () => ({ kind: 'bar', ring: circleRing(radius), edges: [], girth: Math.PI * od.mm }),
    solid: (angle, offset) => roundHeader(radius, angle, offset),
  };
}
