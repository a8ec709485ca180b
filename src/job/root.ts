import type { Length } from '../measure/units.ts';
import { complain, type Desk, type Spot } from './text/desk.ts';
import { lengthAt } from './text/values.ts';

/** No weld is meant to fill as much; it is rather a length that got to the wrong key. */
const TOO_WIDE = 10;

/** The gap meant to stay open for the weld: from 0 to under 10 mm. */
export function rootAt(desk: Desk, spot: Spot | undefined): Length | undefined {
  const root = lengthAt(desk, spot, 'zero-or-more');
  if (spot === undefined || root === undefined || root.mm < TOO_WIDE) return root;
  const why = `a weld's root is not left open by ${TOO_WIDE} mm and more`;
  return complain(desk, spot, 'too-large', why, `a length under ${TOO_WIDE} mm, such as 1mm`);
}
