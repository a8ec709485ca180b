import { degrees } from '../../measure/units.ts';
import { plateProfile } from '../../space/plate.ts';
import { prism } from '../../space/prism.ts';
import type { MitreHeader } from '../job.ts';
import type { HeaderFacts } from '../kind.ts';
import { needed } from '../rectangle.ts';
import { complain, type Spot } from '../text/desk.ts';
import { type Fields, textOf } from '../text/fields.ts';
import { angleAt, lengthAt, missing } from '../text/values.ts';

export function readMitre(fields: Fields): MitreHeader | undefined {
  const turn = needed(fields, 'turn', angleAt, '90deg');
  if (turn && !(degrees(turn.rad) > 1e-9 && degrees(turn.rad) < 180 - 1e-9)) {
    return complain(fields.at('turn'), 'angle-range', fields.desk.words.headers.noTurn);
  }
  const [pieces, radius] = [fields.get('pieces'), fields.get('radius')];
  if (!turn || (!pieces && !radius)) return turn && { kind: 'mitre', turn };
  if (!pieces || !radius) {
    const [has, lacks] = pieces ? ['pieces', 'radius'] : ['radius', 'pieces'];
    return missing(fields.spot, lacks, fields.desk.words.headers.needsBoth(fields.desk.say.key(has)));
  }
  const count = piecesAt(pieces);
  const length = lengthAt(radius, 'positive');
  if (count === undefined || length === undefined) return undefined;
  return { kind: 'mitre', turn, segments: { pieces: count, radius: length } };
}

function piecesAt(spot: Spot): number | undefined {
  const text = textOf(spot, spot.desk.words.headers.pieces)?.trim();
  if (text === undefined) return undefined;
  const count = /^\d{1,3}$/.test(text) ? Number(text) : 0;
  if (count >= 2 && count <= 100) return count;
  return complain(spot, 'pieces', spot.desk.words.headers.noPieces);
}

export function mitreFacts(header: MitreHeader): HeaderFacts {
  const { turn, segments } = header;
  return {
    said: ({ headers }) => headers.mitre(header),
    setting: `mitre ${turn.rad.toFixed(9)} ${segments?.pieces ?? 2}`,
    across: Number.POSITIVE_INFINITY,
    towards: 0,
    wall: false,
    mirrored: header,
    shape: () => ({ kind: 'plane', filled: false }),
    // The other tube is cut back from the plane by the other half.
    solid: (angle, offset, root) => prism(plateProfile(root / 2), angle, offset),
  };
}
