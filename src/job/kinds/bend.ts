import { bentHeader } from '../../space/bend.ts';
import { diameterAt } from '../diameter.ts';
import type { BendHeader } from '../job.ts';
import { type HeaderFacts, keyed } from '../kind.ts';
import { mirroredAngle } from '../mirrored.ts';
import { pipeAt } from '../pipe.ts';
import { needed } from '../rectangle.ts';
import { complain } from '../text/desk.ts';
import type { Fields } from '../text/fields.ts';
import { angleAt, lengthAt, NO_ANGLE } from '../text/values.ts';

export function readBend(fields: Fields): BendHeader | undefined {
  const od = fields.has('pipe')
    ? pipeAt(fields.get('pipe'))?.od
    : needed(fields, 'od', (at) => diameterAt(at, 'header'), '44.5mm');
  const radius = needed(fields, 'radius', (at) => lengthAt(at, 'positive'), '150mm');
  const centre = fields.has('centre') ? angleAt(fields.get('centre')) : NO_ANGLE;
  if (!od || !radius || !centre) return undefined;
  if (radius.mm > od.mm / 2) return { kind: 'bend', od, radius, centre };
  return complain(fields.at('radius'), 'bend', fields.desk.words.headers.bentTooTight(od, radius));
}

export function bendFacts(header: BendHeader): HeaderFacts {
  const { od, radius, centre } = header;
  const size = { tubeRadius: od.mm / 2, bendRadius: radius.mm, centre: centre.rad };
  return {
    said: ({ headers }) => headers.bend(header),
    setting: `bend ${keyed(od.mm)} ${keyed(radius.mm)}`,
    across: Number.POSITIVE_INFINITY,
    towards: od.mm / 2,
    room: { mm: od.mm, of: 'header' },
    wall: true,
    mirrored: { ...header, centre: mirroredAngle(centre) },
    shape: () => ({ kind: 'bent', bend: header }),
    solid: (angle, offset, root) =>
      bentHeader({ ...size, tubeRadius: size.tubeRadius + root }, angle, offset),
  };
}
