import type { Angle, Length } from '../measure/units.ts';

/** The angle turned the other way; its words with it. */
export function mirroredAngle(angle: Angle): Angle {
  if (angle.rad === 0) return angle;
  const { rad, wrote, opposite } = angle;
  if (opposite !== undefined) return { ...angle, rad: -rad, wrote: opposite, opposite: wrote };
  return { ...angle, rad: -rad, wrote: withOtherSign(wrote) };
}

/** The length to the other side; its words with it. */
export function mirroredLength(length: Length): Length {
  return length.mm === 0 ? length : { ...length, mm: -length.mm, wrote: withOtherSign(length.wrote) };
}

/** `35deg` becomes `-35deg`, and back. */
function withOtherSign(wrote: string): string {
  const unsigned = wrote.replace(/^[-+\u2010-\u2015\u2212\uFE58\uFE63\uFF0B\uFF0D]\s*/, '');
  const negative = unsigned !== wrote && !/^[+\uFF0B]/.test(wrote);
  return `${negative ? '' : '-'}${unsigned}`;
}
