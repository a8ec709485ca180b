import { plateProfile } from '../../space/plate.ts';
import { prism } from '../../space/prism.ts';
import type { PlateHeader } from '../job.ts';
import type { HeaderFacts } from '../kind.ts';

export function plateFacts(header: PlateHeader): HeaderFacts {
  return {
    said: ({ headers }) => headers.plate(),
    setting: 'plate',
    across: Number.POSITIVE_INFINITY,
    towards: 0,
    wall: true,
    mirrored: header,
    shape: () => ({ kind: 'plane', filled: true }),
    solid: (angle, offset, root) => prism(plateProfile(root), angle, offset),
  };
}
